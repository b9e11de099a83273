import { RADIANS_PER_DEGREE } from "../../quantity/tolerance.ts";
import type { Knee } from "../knee.ts";
import { structureOf } from "../knee.ts";
import type { Meniscus } from "../meniscus.ts";
import type { Place } from "./field.ts";
import { lesionNumbers, type Lesion } from "./lesion.ts";
import type { SceneNumbers } from "./numbers.ts";

/** Shape numbers of the reference knee that the axial map does not have; all assumed, all from the ledger. */
export const SHAPES = [
  "condyleFront", "condyleUp", "condyleX_M", "condyleX_L", "condyleHalf_M", "condyleHalf_L", "condyleCrown_M", "condyleCrown_L", "contactY", "rollBack",
  "roofY", "roofZ", "roofHalfX", "roofHalfY", "roofHalfZ", "dishM", "crownL", "spineM", "spineL", "frontDrop", "backDrop",
  "heightA_M", "heightA_L", "heightB_M", "heightB_L", "heightP_M", "heightP_L", "freeEdge",
  "aclX", "aclY", "aclZ", "aclFX", "aclFY", "aclFZ", "aclWide", "aclThick", "pclX", "pclY", "pclZ", "pclFX", "pclFY", "pclFZ", "pclWide", "pclThick",
  "popZ", "popDownX", "popDownY", "popDownZ", "popUpX", "popUpY", "popUpZ", "hiatus", "wall", "frontX", "frontY", "frontHalfX", "frontHalfY", "recess",
  "fatX", "fatY", "fatZ", "fatHalfX", "fatHalfY", "fatHalfZ", "fatCarve",
] as const;
export type Shapes = Readonly<Record<(typeof SHAPES)[number], number>>;

/** A rod with a hook: from its shaft to the corner, and from there to its point. Places in mm of the reference knee. */
export interface ProbeInScene {
  readonly from: Place;
  readonly corner: Place;
  readonly point: Place;
  readonly radiusMm: number;
}

export interface NeedleInScene {
  readonly from: Place;
  readonly tip: Place;
  readonly radiusMm: number;
}

export interface SceneSetting {
  /** A right knee; a left one is the mirror image of the finished picture. */
  readonly knee: Knee;
  /** Size of the knee as a share of the reference knee; greater than 0. */
  readonly scale: number;
  readonly shapes: Shapes;
  readonly flexionDeg: number;
  readonly openingMm: { readonly medial: number; readonly lateral: number };
  readonly lesion: Lesion;
  readonly tip: Place;
  readonly portal: Place;
  readonly probe: ProbeInScene | null;
  readonly needle: NeedleInScene | null;
  readonly stitches: readonly (readonly [Place, Place])[];
  readonly stitchRadiusMm: number;
}

/** A place where nothing reaches: parts that are not there stand here. */
const NOWHERE: Place = [900, 900, 900];
const MOST_STITCHES = 4;

const meniscusNumbers = ({ rim, freeEdge }: Meniscus, scale: number) => ({
  rimX: rim.centre.xMm / scale, rimY: rim.centre.yMm / scale, rimR: rim.radiusMm / scale,
  freeX: freeEdge.centre.xMm / scale, freeY: freeEdge.centre.yMm / scale, freeR: freeEdge.radiusMm / scale,
  hornA: rim.fromDeg * RADIANS_PER_DEGREE, hornP: rim.toDeg * RADIANS_PER_DEGREE,
});

const paired = <Name extends string>(medial: Readonly<Record<Name, number>>, lateral: Readonly<Record<Name, number>>): Readonly<Record<`${Name}_M` | `${Name}_L`, number>> =>
  Object.fromEntries([...Object.entries(medial).map(([name, value]) => [`${name}_M`, value]), ...Object.entries(lateral).map(([name, value]) => [`${name}_L`, value])]) as Readonly<Record<`${Name}_M` | `${Name}_L`, number>>;

const named = <Stem extends string>(stem: Stem, [x, y, z]: Place): Readonly<Record<`${Stem}X` | `${Stem}Y` | `${Stem}Z`, number>> =>
  ({ [`${stem}X`]: x, [`${stem}Y`]: y, [`${stem}Z`]: z }) as Readonly<Record<`${Stem}X` | `${Stem}Y` | `${Stem}Z`, number>>;

type StitchName = Extract<keyof SceneNumbers, `stitch${0 | 1 | 2 | 3}${string}`>;

const stitchNumbers = (stitches: SceneSetting["stitches"]): Readonly<Record<StitchName, number>> => {
  const ends = Array.from({ length: MOST_STITCHES }, (_, index) => stitches[index] ?? [NOWHERE, NOWHERE] as const);
  return Object.fromEntries(ends.flatMap(([from, to], index) => "XYZUVW".split("").map((axis, part) => [`stitch${index}${axis}`, [...from, ...to][part]]))) as Readonly<Record<StitchName, number>>;
};

const instrumentNumbers = ({ probe, needle, stitches, stitchRadiusMm }: SceneSetting) => ({
  ...named("probeA", probe?.from ?? NOWHERE), ...named("probeB", probe?.corner ?? NOWHERE), ...named("probeC", probe?.point ?? NOWHERE), probeR: probe?.radiusMm ?? 1,
  ...named("needleA", needle?.from ?? NOWHERE), ...named("needleB", needle?.tip ?? NOWHERE), needleR: needle?.radiusMm ?? 1,
  ...stitchNumbers(stitches), stitchR: stitchRadiusMm,
});

/**
 * All numbers of a scene, in mm of the reference knee.
 *
 * @throws {RangeError} If the knee is a left one or has no popliteus tendon.
 */
export const sceneNumbers = (one: SceneSetting): SceneNumbers => {
  const { knee, scale, shapes, openingMm } = one;
  if (knee.side !== "right") throw new RangeError(`knee must be a right one, got ${knee.side}`);
  const { centre, radiusMm } = structureOf(knee, "popliteus");
  const menisci = paired(meniscusNumbers(knee.medial, scale), meniscusNumbers(knee.lateral, scale));
  return {
    ...shapes, ...menisci,
    flexion: one.flexionDeg * RADIANS_PER_DEGREE,
    gapM: openingMm.medial / scale, gapL: openingMm.lateral / scale,
    popX: centre.xMm / scale, popY: centre.yMm / scale, popR: radiusMm / scale,
    ...named("tip", one.tip), ...named("portal", one.portal),
    ...instrumentNumbers(one),
    ...lesionNumbers(one.lesion, { menisci, shapes }),
  };
};
