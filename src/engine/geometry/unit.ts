import { fromTo, lengthOf, type Point } from "./vec2.ts";

/** The direction of length 1 from the first point to the second; throws a RangeError where they are the same. */
export const unitTo = (first: Point, second: Point): Point => {
  const { xMm, yMm } = fromTo(first, second);
  const length = lengthOf({ xMm, yMm });
  if (length === 0) throw new RangeError(`second must differ from first, got ${second.xMm}, ${second.yMm} twice`);
  return { xMm: xMm / length, yMm: yMm / length };
};
