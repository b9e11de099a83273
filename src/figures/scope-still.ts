import { rayAt } from "../engine/knee/scope/camera.ts";
import { cast } from "../engine/knee/scope/cast.ts";
import type { Field, Place } from "../engine/knee/scope/field.ts";
import type { Label } from "../engine/knee/scope/in-view.ts";
import { SOLIDS, type SolidName } from "../engine/knee/scope/scene.ts";
import { along, dot3, minus, unit } from "../engine/knee/scope/vec3.ts";
import { element } from "./markup.ts";
import { DISC, drawnRegion, outlinePath, surround } from "./scope-disc.ts";
import { type Corner, outlinedIn, outlinesOf, thinned } from "./scope-regions.ts";
import type { ScopeModel } from "./scope-setting.ts";

/** A still of the view through the scope for a question: tissue by its pattern, light and shade, and no word or number in it. */

type Tone = "lit" | "dim" | "deep";
export type Tissue = SolidName | "dark";
/** Which part of a tissue is seen is not drawn: all of it looks alike. */
const LOOKS_LIKE: Readonly<Record<Tissue, Label>> = {
  wall: "synovium", tibia: "medial-plateau", femur: "medial-condyle", "anterior-cruciate": "anterior-cruciate", "posterior-cruciate": "posterior-cruciate",
  popliteus: "popliteus", fat: "fat", meniscus: "medial-body", strip: "strip", probe: "probe", needle: "needle", stitch: "stitch", dark: "dark",
};

/** A ray of the still. */
export interface Glance {
  readonly u: number;
  readonly v: number;
  readonly label: Tissue;
  readonly distanceMm: number;
  readonly tone: Tone;
}

const ACROSS = 56;
const LEAST_SHARE = 0.003;
const TAP_MM = 0.05;
const CORNER_MM = 0.6;
/** A step of this share of the distance from one ray to the next is an edge, seen from its near side. */
const EDGE_SHARE = 0.09;
const DIM = 0.42;
const DEEP = 0.2;

/** A pixel, as a share of the radius. */
const UNSEEN = 0.0066;
/** In a still of half the size twice as much goes unseen. */
const SMALL = 2;

const TAPS: readonly Place[] = [[1, -1, -1], [-1, -1, 1], [-1, 1, -1], [1, 1, 1]];

/** The direction in which the distance grows: away from the surface. */
const slopeAt = (field: Field, place: Place): Place =>
  unit(TAPS.reduce<Place>((sum, tap) => along(sum, tap, field.nearest(along(place, tap, TAP_MM)).distanceMm), [0, 0, 0]));

/** How light a place is: deep where there is hardly room over it, dim where it turns away from the lens. */
const toneAt = ({ field, camera }: ScopeModel, place: Place): Tone => {
  const slope = slopeAt(field, place);
  const facing = Math.max(0, -dot3(slope, unit(minus(place, camera.tip))));
  const room = Math.min(1, Math.max(0, field.nearest(along(place, slope, CORNER_MM)).distanceMm / CORNER_MM));
  if (room < DEEP) return "deep";
  return facing ** 0.6 * (0.1 + 0.9 * room) < DIM ? "dim" : "lit";
};

const cells = (across: number): readonly (readonly [number, number])[] =>
  Array.from({ length: across * across }, (_, index) => [((index % across) + 0.5) * 2 / across - 1, 1 - (Math.floor(index / across) + 0.5) * 2 / across]);

/** All rays of a still, each with what it met and how light it is there; fewer of them tell shares but draw no still. */
export const glancesOf = (model: ScopeModel, across = ACROSS): readonly Glance[] => {
  const { field, camera, fieldDeg } = model;
  const hits = cells(across).filter(([u, v]) => Math.hypot(u, v) <= 1).map(([u, v]) => ({ u, v, ...cast(field, camera.tip, rayAt(camera, fieldDeg, [u, v])) }));
  return hits.map(({ u, v, id, place, distanceMm }) => ({ u, v, distanceMm, label: SOLIDS[id] ?? "dark", tone: id < 0 ? "deep" : toneAt(model, place) }));
};

/** Rays that lie behind an edge of the same tissue, so that a gap or a lip shows as a line. */
const behindEdge = (glances: readonly Glance[]): ReadonlySet<Glance> => {
  const keyOf = (u: number, v: number): string => `${Math.round((u + 1) * ACROSS)} ${Math.round((v + 1) * ACROSS)}`;
  const byPlace = new Map(glances.map((one) => [keyOf(one.u, one.v), one]));
  const step = 2 / ACROSS;
  const isBehind = (one: Glance): boolean => [[step, 0], [-step, 0], [0, step], [0, -step]].some(([du = 0, dv = 0]) => {
    const beside = byPlace.get(keyOf(one.u + du, one.v + dv));
    const beyond = byPlace.get(keyOf(one.u - du, one.v - dv));
    if (beside?.label !== one.label || beyond?.label !== one.label) return false;
    // A surface that turns away falls off more and more; behind an edge it goes on as before.
    const stepMm = one.distanceMm - beside.distanceMm;
    return stepMm > EDGE_SHARE * beside.distanceMm && beyond.distanceMm - one.distanceMm < stepMm;
  });
  return new Set(glances.filter(isBehind));
};

const shade = (outlines: readonly (readonly Corner[])[], mirror: number, name: string): string =>
  outlines.length === 0 ? "" : element("path", { class: name, d: outlinePath(outlines, mirror) });

/** The still alone: a disc of 300 px in its own square of 360. */
export const stillFrom = (glances: readonly Glance[], isMirrored: boolean, isSmall = false): string => {
  const thin = (line: readonly Corner[]): readonly Corner[] => thinned(line, isSmall ? UNSEEN * SMALL : UNSEEN);
  const mirror = isMirrored ? -1 : 1;
  const edges = behindEdge(glances);
  const marked = glances.map((one) => ({ u: one.u, v: one.v, label: edges.has(one) ? "deep" as const : one.tone }));
  const dim = marked.map((one) => ({ ...one, label: one.label === "lit" ? "lit" as const : "dim" as const }));
  return [
    ...outlinedIn(glances, ACROSS, LEAST_SHARE).map(({ label, outlines }) => drawnRegion({ label: LOOKS_LIKE[label], outlines: outlines.map(thin) }, mirror)),
    isSmall ? "" : shade(outlinesOf(dim, ACROSS)("dim").map(thin), mirror, "s-dim"),
    shade(outlinesOf(marked, ACROSS)("deep").map(thin), mirror, "s-deep"),
    element("path", { class: "surround", "fill-rule": "evenodd", d: surround() }),
    element("circle", { class: "t-out", cx: DISC.xPx, cy: DISC.yPx, r: DISC.radiusPx }),
  ].join("");
};
