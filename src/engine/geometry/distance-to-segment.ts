import { dot, fromTo, lengthOf, movedAlong, type Point } from "./vec2.ts";

/** The point of a segment that lies nearest to a point; beyond its ends that is the end itself. */
export const nearestOnSegment = (start: Point, end: Point, point: Point): Point => {
  const along = fromTo(start, end);
  const squared = dot(along, along);
  if (squared === 0) return start;
  const times = dot(fromTo(start, point), along) / squared;
  return movedAlong(start, along, Math.min(1, Math.max(0, times)));
};

/** Distance from a point to a segment, not to the endless line through it. */
export const distanceToSegment = (start: Point, end: Point, point: Point): number =>
  lengthOf(fromTo(nearestOnSegment(start, end, point), point));
