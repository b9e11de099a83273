import { dot, fromTo, lengthOf, movedAlong, type Point } from "./vec2.ts";

/** A circle; as the outline of a round structure also its edge. */
export interface Circle {
  readonly centre: Point;
  readonly radiusMm: number;
}

/**
 * Distances along a ray at which it crosses a circle, the near one first; negative behind its start. `null` where
 * the line misses. The direction must have length 1.
 */
export const crossings = (start: Point, direction: Point, { centre, radiusMm }: Circle): readonly [number, number] | null => {
  const toCentre = fromTo(start, centre);
  const foot = dot(toCentre, direction);
  const asideSquared = dot(toCentre, toCentre) - foot * foot;
  const halfSquared = radiusMm * radiusMm - asideSquared;
  if (halfSquared < 0) return null;
  const half = Math.sqrt(halfSquared);
  return [foot - half, foot + half];
};

/** The same two distances, but both that of the nearest point where the line misses, as at a tangent up to rounding. */
export const crossingsOrFoot = (start: Point, direction: Point, circle: Circle): readonly [number, number] => {
  const foot = dot(fromTo(start, circle.centre), direction);
  return crossings(start, direction, circle) ?? [foot, foot];
};

/** Distance at which a ray leaves a circle for good; throws a RangeError where it never lies inside. */
export const exitDistance = (start: Point, direction: Point, circle: Circle): number => {
  const [, far] = crossings(start, direction, circle) ?? [0, -1];
  if (far < 0) throw new RangeError(`direction must lead through the circle at ${circle.centre.xMm}, ${circle.centre.yMm}, got ${direction.xMm}, ${direction.yMm}`);
  return far;
};

/** Distance from a point to the edge of a circle; negative inside. */
export const gapToCircle = (point: Point, { centre, radiusMm }: Circle): number => lengthOf(fromTo(point, centre)) - radiusMm;

/** Where two circles that overlap cross each other: first the point to the left of the way from the first to the second. */
export const circleCrossings = (first: Circle, second: Circle): readonly [Point, Point] | null => {
  const between = fromTo(first.centre, second.centre);
  const distance = lengthOf(between);
  const along = (distance * distance + first.radiusMm ** 2 - second.radiusMm ** 2) / (2 * distance);
  const asideSquared = first.radiusMm ** 2 - along * along;
  if (distance === 0 || asideSquared < 0) return null;
  const foot = movedAlong(first.centre, between, along / distance);
  const aside = Math.sqrt(asideSquared) / distance;
  const left = { xMm: -between.yMm, yMm: between.xMm };
  return [movedAlong(foot, left, aside), movedAlong(foot, left, -aside)];
};
