import { RADIANS_PER_DEGREE } from "../../quantity/tolerance.ts";
import type { SceneNumbers } from "./numbers.ts";

/**
 * Patterns that a scene can show. A discoid meniscus is a shape and not a tear; a hypermobile one is whole and follows the
 * probe; where fascicles are torn the gap beside the popliteus tendon is wide.
 */
export const PATTERNS = ["none", "longitudinal", "radial", "root", "flap", "horizontal", "complex", "ramp", "fascicle", "hypermobile", "discoid"] as const;
export type Pattern = (typeof PATTERNS)[number];
export type Compartment = "medial" | "lateral";

export interface Lesion {
  readonly pattern: Pattern;
  readonly of: Compartment;
  /** How far it gapes, or how far the strip of a tear along the fibres has moved to the notch: 0 to 1, ends included. */
  readonly amount: number;
}

type LesionName =
  | "cutAt_M" | "cutAt_L" | "cutOpen_M" | "cutOpen_L" | "cutReach_M" | "cutReach_L" | "cutSlant_M" | "cutSlant_L"
  | "flapLift_M" | "flapLift_L" | "splitOpen_M" | "splitOpen_L" | "rampOpen" | "stripOpen_M" | "stripOpen_L" | "stripAt" | "stripMove" | "stripSide";
export type LesionNumbers = Readonly<Partial<SceneNumbers>> & Readonly<Record<LesionName, number>>;

const NONE: Readonly<Record<LesionName, number>> = {
  cutAt_M: 0, cutAt_L: 0, cutOpen_M: 0, cutOpen_L: 0, cutReach_M: 0, cutReach_L: 0, cutSlant_M: 0, cutSlant_L: 0,
  flapLift_M: 0, flapLift_L: 0, splitOpen_M: 0, splitOpen_L: 0, rampOpen: 0, stripOpen_M: 0, stripOpen_L: 0, stripAt: 0.42, stripMove: 0, stripSide: -1,
};

interface Cut {
  readonly atDeg: number;
  readonly openMm: number;
  readonly reach: number;
  readonly slant?: number;
  readonly liftMm?: number;
}

const cutNumbers = (of: Compartment, { atDeg, openMm, reach, slant = 0, liftMm = 0 }: Cut): Readonly<Partial<SceneNumbers>> => {
  const letter = of === "medial" ? "M" : "L";
  return { [`cutAt_${letter}`]: atDeg * RADIANS_PER_DEGREE, [`cutOpen_${letter}`]: openMm, [`cutReach_${letter}`]: reach, [`cutSlant_${letter}`]: slant, [`flapLift_${letter}`]: liftMm };
};

interface Bases {
  readonly menisci: Readonly<Record<"rimX_L" | "rimY_L" | "rimR_L" | "freeX_L" | "freeY_L" | "freeR_L", number>>;
  readonly shapes: Readonly<Record<"freeEdge" | "wall" | "hiatus", number>>;
}

/** The free edge of a discoid meniscus on its way from the usual one to one that leaves a small hole by the spines. */
const discoidNumbers = (amount: number, { menisci, shapes }: Bases): Readonly<Partial<SceneNumbers>> => ({
  freeR_L: menisci.freeR_L + (3.5 - menisci.freeR_L) * amount,
  freeX_L: menisci.freeX_L - 0.45 * menisci.rimR_L * amount,
  freeEdge: shapes.freeEdge + 1.4 * amount,
});

/** The lateral meniscus drawn forwards by this, away from the wall and from the tendon. */
const HYPERMOBILE_MM = 5;
const hypermobileNumbers = (amount: number, { menisci, shapes }: Bases): Readonly<Partial<SceneNumbers>> => {
  const forwardMm = HYPERMOBILE_MM * amount;
  return { rimY_L: menisci.rimY_L + forwardMm, freeY_L: menisci.freeY_L + forwardMm, wall: shapes.wall + forwardMm };
};

const splitNumbers = ({ of, amount }: Lesion): Readonly<Partial<SceneNumbers>> => ({ [of === "medial" ? "splitOpen_M" : "splitOpen_L"]: 0.6 + 1.6 * amount });

const stripNumbers = ({ of, amount }: Lesion): Readonly<Partial<SceneNumbers>> => ({
  [of === "medial" ? "stripOpen_M" : "stripOpen_L"]: 1, stripMove: amount, stripSide: of === "medial" ? -1 : 1,
});

const CUT_DEG: Readonly<Record<"radial" | "root" | "flap" | "complex", Readonly<Record<Compartment, number>>>> = {
  radial: { medial: -52, lateral: -12 }, root: { medial: -108, lateral: -122 }, flap: { medial: -70, lateral: -60 }, complex: { medial: -70, lateral: -72 },
};

/** The rim angle of a tear that stands at one place, in degrees; null for one that runs along the rim, and for none. */
export const tearAngleDeg = ({ pattern, of }: Lesion): number | null =>
  pattern === "radial" || pattern === "root" || pattern === "flap" || pattern === "complex" ? CUT_DEG[pattern][of] : null;

const BY_PATTERN: Readonly<Record<Pattern, (lesion: Lesion, bases: Bases) => Readonly<Partial<SceneNumbers>>>> = {
  none: () => ({}),
  longitudinal: stripNumbers,
  radial: ({ of, amount }) => cutNumbers(of, { atDeg: CUT_DEG.radial[of], openMm: 1 + 3 * amount, reach: 0.75 }),
  root: ({ of, amount }) => cutNumbers(of, { atDeg: CUT_DEG.root[of], openMm: 1.2 + 3.4 * amount, reach: 1.5 }),
  flap: ({ of, amount }) => cutNumbers(of, { atDeg: CUT_DEG.flap[of], openMm: 1.2 + 1.6 * amount, reach: 0.7, slant: 1.1, liftMm: 2.2 * amount }),
  horizontal: splitNumbers,
  complex: (lesion) => ({ ...cutNumbers(lesion.of, { atDeg: CUT_DEG.complex[lesion.of], openMm: 1 + 2.4 * lesion.amount, reach: 0.7 }), ...splitNumbers(lesion) }),
  ramp: ({ amount }) => ({ rampOpen: 1 + 3 * amount }),
  fascicle: ({ amount }, { shapes }) => ({ hiatus: shapes.hiatus + 3.4 * amount }),
  hypermobile: ({ amount }, bases) => hypermobileNumbers(amount, bases),
  discoid: ({ amount }, bases) => discoidNumbers(amount, bases),
};

/**
 * The numbers that a lesion changes.
 *
 * @param lesion - Its pattern, its meniscus (a ramp tear is medial, and a discoid meniscus, a hypermobile one and torn fascicles are lateral, whatever is said), its amount.
 * @param bases - Numbers of the sound knee on which a lesion builds.
 * @throws {RangeError} If the amount is not 0 to 1.
 */
export const lesionNumbers = (lesion: Lesion, bases: Bases): LesionNumbers => {
  if (!(lesion.amount >= 0 && lesion.amount <= 1)) throw new RangeError(`amount must be at least 0 and at most 1, got ${lesion.amount}`);
  return { ...NONE, ...BY_PATTERN[lesion.pattern](lesion, bases) };
};
