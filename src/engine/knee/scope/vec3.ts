import type { Place } from "./field.ts";

/** Plain vectors in space for the view through the scope; lengths in mm where they are places. */
export const minus = ([ax, ay, az]: Place, [bx, by, bz]: Place): Place => [ax - bx, ay - by, az - bz];
export const along = ([ax, ay, az]: Place, [bx, by, bz]: Place, times: number): Place => [ax + bx * times, ay + by * times, az + bz * times];
export const scaled = ([x, y, z]: Place, times: number): Place => [x * times, y * times, z * times];
export const length = ([x, y, z]: Place): number => Math.hypot(x, y, z);
export const unit = (place: Place): Place => scaled(place, 1 / length(place));
export const dot3 = ([ax, ay, az]: Place, [bx, by, bz]: Place): number => ax * bx + ay * by + az * bz;
export const cross = ([ax, ay, az]: Place, [bx, by, bz]: Place): Place => [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
