import { arcPoint } from "../engine/geometry/arc.ts";
import type { Knee } from "../engine/knee/knee.ts";
import type { Place } from "../engine/knee/scope/field.ts";
import type { Compartment } from "../engine/knee/scope/lesion.ts";
import type { NeedleInScene, ProbeInScene } from "../engine/knee/scope/scene-numbers.ts";
import { along, length, minus, unit } from "../engine/knee/scope/vec3.ts";
import { scopeNumber } from "../facts/scope-model.ts";

/** What else is in the joint: nothing, a probe or a needle through the other portal, or stitches over the meniscus. */
export const INSTRUMENTS = ["none", "probe", "needle", "stitches"] as const;
export type Instrument = (typeof INSTRUMENTS)[number];

/** Length of the probe's hook in the picture, in mm; the page prints it, so that it can be a ruler. */
export const HOOK_MM = 4;

interface Bench {
  readonly knee: Knee;
  readonly scale: number;
  readonly target: Place;
  /** The portal through which the scope does not look. */
  readonly other: Place;
  readonly of: Compartment;
}

export interface InScene {
  readonly probe: ProbeInScene | null;
  readonly needle: NeedleInScene | null;
  readonly stitches: readonly (readonly [Place, Place])[];
}

const NOTHING: InScene = { probe: null, needle: null, stitches: [] };

const RAISED_MM = 1.6;
const FAR_SIDE_MM = 2.5;

/** A probe that lies over the target, its hook across the line of sight and level, so that its length shows. */
const probeAt = ({ target, other, scale }: Bench): InScene => {
  const hookMm = HOOK_MM / scale;
  const corner: Place = [target[0], target[1] + 3, target[2] + RAISED_MM];
  const way = unit(minus(corner, other));
  const aside = unit([way[1], -way[0], 0]);
  const sign = target[0] < 0 ? -1 : 1;
  return { ...NOTHING, probe: { from: other, corner, point: along(corner, aside, hookMm * sign), radiusMm: scopeNumber("probe-radius") / scale } };
};

const needleAt = ({ target, other, scale }: Bench): InScene => {
  const tip = along(target, unit(minus(target, other)), FAR_SIDE_MM);
  return { ...NOTHING, needle: { from: other, tip, radiusMm: scopeNumber("needle-radius") / scale } };
};

/** Height of a stitch over the plateau at the share of the width where it enters or leaves. */
const stitchEnd = ({ knee, scale, of }: Bench, angleDeg: number, share: number): Place => {
  const { rim, freeEdge } = knee[of];
  const [outer, inner] = [arcPoint(rim, angleDeg), arcPoint(freeEdge, angleDeg)];
  const at = (from: number, to: number): number => (from + (to - from) * share) / scale;
  return [at(outer.xMm, inner.xMm), at(outer.yMm, inner.yMm), 1.1 + 5 * (1 - share) ** 1.3 * (of === "medial" ? 0.96 : 1)];
};

/** Stitches along the back of the meniscus: upright ones, a level one and a slanted one. */
const stitchesAt = (bench: Bench): InScene => ({
  ...NOTHING,
  stitches: [[-62, 0.14, -62, 0.52], [-76, 0.14, -76, 0.52], [-96, 0.3, -86, 0.3], [-100, 0.14, -107, 0.5]]
    .map(([first = 0, near = 0, second = 0, far = 0]) => [stitchEnd(bench, first, near), stitchEnd(bench, second, far)] as const),
});

const BY_KIND: Readonly<Record<Instrument, (bench: Bench) => InScene>> = { none: () => NOTHING, probe: probeAt, needle: needleAt, stitches: stitchesAt };

/** The instrument in the scene, in mm of the reference knee. */
export const instrumentsOf = (instrument: Instrument, bench: Bench): InScene => BY_KIND[instrument](bench);

/** From the lens to a place, in mm of the reference knee. */
export const farFrom = (tip: Place, place: Place): number => length(minus(place, tip));
