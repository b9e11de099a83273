import { requireCount, requireNotNegative } from "../quantity/require.ts";
import { DEGREES_PER_RADIAN } from "../quantity/tolerance.ts";
import { type Chance, chanceFor } from "../random/chance.ts";
import { normalDraw } from "../random/normal-draw.ts";
import { type Seed, seedText } from "../random/seed.ts";
import { type Knee, kneeFrom } from "./knee.ts";
import type { KneeSizes, PeronealSizes } from "./sizes.ts";

/** Standard deviations of what differs between the knees of one group, in mm; 0 included. */
export interface KneeSpreads {
  /** Popliteus tendon along the rim; the common peroneal nerve goes with it. */
  readonly tendonAlongRimMm: number;
  /** Junction to artery along the anterolateral line. */
  readonly arteryGapMm: number;
  /** Common peroneal nerve beside the tendon, from side to side and from front to back. */
  readonly peronealSideMm: number;
  readonly peronealDepthMm: number;
}

/** A group of children: its knee of mean sizes, and its spreads. */
export interface KneeGroup {
  readonly sizes: KneeSizes;
  readonly spreads: KneeSpreads;
}

export interface PopulationToDraw {
  readonly groups: readonly KneeGroup[];
  readonly seed: Seed;
  readonly count: number;
}

/** No knee lies farther from the mean than this many standard deviations. */
const GREATEST_DEVIATION = 3;
/** The gap to the artery never falls below this share of its mean, whatever the spread. */
const LEAST_GAP_SHARE = 0.05;
const MOST_TRIES = 1000;

const drawnNerve = ({ sizes, spreads }: KneeGroup, deviation: (spreadMm: number) => number): PeronealSizes => {
  const { peroneal, popliteus } = sizes;
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    const lateralOfTendonMm = peroneal.lateralOfTendonMm + deviation(spreads.peronealSideMm);
    const behindTendonMm = peroneal.behindTendonMm + deviation(spreads.peronealDepthMm);
    if (Math.hypot(lateralOfTendonMm, behindTendonMm) > popliteus.radiusMm + peroneal.radiusMm) return { ...peroneal, lateralOfTendonMm, behindTendonMm };
  }
  throw new RangeError(`peroneal must leave room beside the popliteus tendon, got ${peroneal.lateralOfTendonMm} lateral and ${peroneal.behindTendonMm} behind`);
};

/** One knee of a group: the mean knee with independent normal draws; a nerve that would overlap the tendon is drawn again. */
export const drawnSizes = (group: KneeGroup, chance: Chance): KneeSizes => {
  const { sizes, spreads } = group;
  const deviation = (spreadMm: number): number => spreadMm * normalDraw(chance, GREATEST_DEVIATION);
  const { popliteus, bundle, lateral } = sizes;
  const alongRimMm = deviation(spreads.tendonAlongRimMm);
  const gapMm = bundle.gapMm + deviation(spreads.arteryGapMm);
  return {
    ...sizes,
    popliteus: { ...popliteus, rimDeg: popliteus.rimDeg + (alongRimMm / lateral.rimRadiusMm) * DEGREES_PER_RADIAN },
    bundle: { ...bundle, gapMm: Math.max(gapMm, LEAST_GAP_SHARE * bundle.gapMm) },
    peroneal: drawnNerve(group, deviation),
  };
};

/**
 * Knees of one or several groups in turn, the same ones for the same seed.
 *
 * @param groups - At least one group; knee number i belongs to group i modulo their number.
 * @param seed - A whole number from 0 to 4294967295, or 32 hexadecimal digits.
 * @param count - How many knees; 0 included.
 * @returns The knees in the order in which they were drawn.
 * @throws {RangeError} If there is no group, the seed or count is not of its form, or a spread is negative.
 */
export const kneePopulation = ({ groups, seed, count }: PopulationToDraw): readonly Knee[] => {
  requireCount({ count });
  for (const { spreads } of groups) requireNotNegative({ ...spreads });
  const chance = chanceFor("knee", 1, seedText(seed));
  return Array.from({ length: count }, (_, index) => {
    const group = groups[index % groups.length];
    if (group === undefined) throw new RangeError(`groups must hold at least one group, got ${groups.length}`);
    return kneeFrom(drawnSizes(group, chance));
  });
};
