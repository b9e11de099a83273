import { rayAt } from "./camera.ts";
import type { Camera } from "./camera.ts";
import { cast } from "./cast.ts";
import type { Field, Place } from "./field.ts";
import { SOLIDS } from "./scene.ts";
import { dot3, length, minus } from "./vec3.ts";
import { DEGREES_PER_RADIAN } from "../../quantity/tolerance.ts";

/** What a picture can show, each with a name of its own; keys of the words that a page prints. */
export const LABELS = [
  "medial-condyle", "lateral-condyle", "notch-wall", "medial-plateau", "lateral-plateau", "spines",
  "medial-front-horn", "medial-body", "medial-back-horn", "lateral-front-horn", "lateral-body", "lateral-back-horn",
  "anterior-cruciate", "posterior-cruciate", "popliteus", "synovium", "fat", "strip", "probe", "needle", "stitch", "dark",
] as const;
export type Label = (typeof LABELS)[number];

interface Looked {
  readonly field: Field;
  readonly surface: Field;
  readonly camera: Camera;
  readonly fieldDeg: number;
}

/** Half the width of the notch and of the spines, where bone is no longer condyle or plateau, in mm of the reference knee. */
const NOTCH_HALF_MM = 9;
const SPINES_HALF_MM = 7;
const NOTCH_FROM_MM = 8;
/** Rim angles at which the body of a meniscus ends and its horns begin, in degrees; a convention of the text. */
const BODY_FRONT_DEG = 45;
const BODY_BACK_DEG = -45;

const ofBone = (solid: string, [x, , z]: Place): Label => {
  if (solid === "tibia" && Math.abs(x) < SPINES_HALF_MM) return "spines";
  if (solid === "tibia") return x < 0 ? "medial-plateau" : "lateral-plateau";
  if (Math.abs(x) < NOTCH_HALF_MM && z > NOTCH_FROM_MM) return "notch-wall";
  return x < 0 ? "medial-condyle" : "lateral-condyle";
};

const ofMeniscus = (surface: Field, place: Place): Label => {
  const angleDeg = (surface.extras(place)[1] ?? 0) * DEGREES_PER_RADIAN;
  const side = place[0] < 0 ? "medial" : "lateral";
  if (angleDeg > BODY_FRONT_DEG) return `${side}-front-horn`;
  return angleDeg < BODY_BACK_DEG ? `${side}-back-horn` : `${side}-body`;
};

/** The name of what a ray met. */
export const labelAt = (surface: Field, id: number, place: Place): Label => {
  const solid = SOLIDS[id];
  if (solid === undefined) return "dark";
  if (solid === "tibia" || solid === "femur") return ofBone(solid, place);
  if (solid === "meniscus") return ofMeniscus(surface, place);
  return solid === "wall" ? "synovium" : solid;
};

/** One ray of the grid: its place in the picture (−1 to 1, right and up), what it met, and how far off. */
export interface Sample {
  readonly u: number;
  readonly v: number;
  readonly label: Label;
  readonly distanceMm: number;
}

/**
 * A grid of rays through the round picture.
 *
 * @param looked - Field, surface, camera and field angle.
 * @param across - Rays along the diameter; at least 2.
 */
export const sampled = ({ field, surface, camera, fieldDeg }: Looked, across: number): readonly Sample[] =>
  Array.from({ length: across * across }, (_, index) => [((index % across) + 0.5) * 2 / across - 1, 1 - (Math.floor(index / across) + 0.5) * 2 / across] as const)
    .filter(([u, v]) => Math.hypot(u, v) <= 1)
    .map(([u, v]) => {
      const { id, place, distanceMm } = cast(field, camera.tip, rayAt(camera, fieldDeg, [u, v]));
      return { u, v, label: labelAt(surface, id, place), distanceMm };
    });

/** A thing in view, and the share of the picture that it fills, 0 to 1. */
export interface Share {
  readonly label: Label;
  readonly share: number;
}

/** What is in view, the largest first. */
export const sharesOf = (samples: readonly Sample[]): readonly Share[] => {
  const counts = new Map<Label, number>();
  for (const { label } of samples) counts.set(label, (counts.get(label) ?? 0) + 1);
  return [...counts].map(([label, count]) => ({ label, share: count / samples.length })).toSorted((first, second) => second.share - first.share || LABELS.indexOf(first.label) - LABELS.indexOf(second.label));
};

/** Where a place lies in the picture. */
export interface Sighted {
  /** Clock angle from the middle, 0 up and positive clockwise, in degrees, and share of the radius (beyond 1 outside). */
  readonly clockDeg: number;
  readonly radius: number;
  readonly distanceMm: number;
  /** False where something stands in front of it. */
  readonly isOpen: boolean;
}

const CLOSE_MM = 3;

/** Where a target lies in the picture, and whether the line to it is open: up to a few millimetres of its own tissue. */
export const sightOf = ({ field, camera, fieldDeg }: Looked, target: Place): Sighted => {
  const way = minus(target, camera.tip);
  const distanceMm = length(way);
  const direction: Place = [way[0] / distanceMm, way[1] / distanceMm, way[2] / distanceMm];
  const offDeg = Math.acos(Math.min(1, Math.max(-1, dot3(direction, camera.ahead)))) * DEGREES_PER_RADIAN;
  const clockDeg = Math.atan2(dot3(direction, camera.right), dot3(direction, camera.up)) * DEGREES_PER_RADIAN;
  return { clockDeg: (clockDeg + 360) % 360, radius: offDeg / (fieldDeg / 2), distanceMm, isOpen: cast(field, camera.tip, direction).distanceMm > distanceMm - CLOSE_MM };
};

const MOST_ACROSS = 200;

/**
 * What is in view: every label with its share of the picture, the largest first.
 *
 * @param looked - Field and surface of a scene, its camera, and the field's full angle in the medium, in degrees.
 * @param across - Rays along the diameter, 2 to 200 included; 28 tells shares to about a hundredth.
 * @throws {RangeError} If the number of rays is not a whole one in that range.
 */
export const whatIsInView = (looked: Looked, across = 28): readonly Share[] => {
  if (!Number.isInteger(across) || across < 2 || across > MOST_ACROSS) throw new RangeError(`across must be at least 2 and at most ${MOST_ACROSS}, got ${across}`);
  return sharesOf(sampled(looked, across));
};
