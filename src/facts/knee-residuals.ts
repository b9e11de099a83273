import { plateauPoints } from "../engine/knee/plateau.ts";
import bundleLine from "../../content/ledger/bundle-line.json" with { type: "json" };
import kneeSize from "../../content/ledger/knee-size.json" with { type: "json" };
import shortest from "../../content/ledger/shortest-distance.json" with { type: "json" };
import zone from "../../content/ledger/zone-width.json" with { type: "json" };
import { type BundleDistances, bundleDistances } from "../engine/knee/bundle-distances.ts";
import { type Knee, kneeFrom } from "../engine/knee/knee.ts";
import { shortestToArtery } from "../engine/knee/shortest-to-artery.ts";
import { zoneWidths } from "../engine/knee/zone-widths.ts";
import { ADULT_CAPSULE_MM, KNEE_BANDS, type KneeBand, type KneeSex, kneeModel, kneeSizes } from "./knee-model.ts";
import { type Pinned, pinnedIn, type TopicData } from "./reader.ts";

/** One line of the table that sets the model against what was published. */
export interface Residual {
  /** Pin of the published entry, its name, unit and source. */
  readonly entry: string;
  readonly name: string;
  readonly unit: string;
  readonly source: string | null;
  readonly published: number;
  readonly model: number;
  /** Model less published. */
  readonly difference: number;
  /** Whether the model was made to give it, or it is only shown. */
  readonly fitted: boolean;
  /** What the project asks of a fitted value: at most this far from the published one; `null` where it is only shown. */
  readonly allowed: number | null;
}

const ZONE_ALLOWED_MM = 0.1;
const BUNDLE_ALLOWED_MM = 0.5;
const SHORTEST_ALLOWED_MM = 0.7;

const meanOf = ({ number: { mean, value }, entry }: Pinned): number => {
  const found = mean ?? value;
  if (found === undefined) throw new RangeError(`entry must hold a mean or a value, got ${entry}`);
  return found;
};

const residual = (pinned: Pinned, model: number, allowed: number | null): Residual => {
  const { entry, name, unit, source } = pinned;
  const published = meanOf(pinned);
  return { entry, name, unit, source, published, model, difference: model - published, fitted: allowed !== null, allowed };
};

const kneeOf = (band: KneeBand, sex?: KneeSex): Knee => kneeFrom(kneeSizes({ band, side: "right", capsuleMm: ADULT_CAPSULE_MM, ...(sex ? { sex } : {}) }));

const middleAge = (ages: string): number => {
  const [from = Number.NaN, to = Number.NaN] = ages.split("-").map(Number);
  return (from + to) / 2;
};

/** A measure of the model at an age between the middles of its bands, along the straight line between the two nearest. */
const atAge = (ageYears: number, measure: (band: KneeBand) => number): number => {
  const upper = Math.max(1, KNEE_BANDS.findIndex((band) => middleAge(band) >= ageYears));
  const [younger, older] = [KNEE_BANDS[upper - 1], KNEE_BANDS[upper]];
  if (younger === undefined || older === undefined) throw new RangeError(`ageYears must lie inside the bands, got ${ageYears}`);
  const share = (ageYears - middleAge(younger)) / (middleAge(older) - middleAge(younger));
  return measure(younger) * (1 - share) + measure(older) * share;
};

const zoneResiduals = (): readonly Residual[] =>
  KNEE_BANDS.filter((band) => band !== "2-4").flatMap((band) => {
    const separationMm = meanOf(pinnedIn(zone, "zone-separation.defined@1"));
    const { junctionMm, frontMm } = zoneWidths(kneeOf(band), separationMm);
    return [
      residual(pinnedIn(zone, `zone-width.${band}@1`), junctionMm, ZONE_ALLOWED_MM),
      residual(pinnedIn(zone, `zone-width-front.${band}@1`), frontMm, ZONE_ALLOWED_MM),
    ];
  });

/** Schachne's children of 10 to 18 years against the mean of the two oldest bands. */
const bundleResiduals = (): readonly Residual[] =>
  (["boys", "girls"] as const).flatMap((sex) => {
    const knees = (["11-13", "14-16"] as const).map((band) => bundleDistances(kneeOf(band, sex)));
    const mean = (part: keyof BundleDistances): number => knees.reduce((sum, one) => sum + one[part], 0) / knees.length;
    const line = (key: string, part: keyof BundleDistances): Residual => residual(pinnedIn(bundleLine, `${key}.${sex}@1`), mean(part), BUNDLE_ALLOWED_MM);
    return [line("free-edge-to-bundle", "freeEdgeMm"), line("mid-to-bundle", "middleMm"), line("junction-to-bundle", "junctionMm")];
  });

const SHEA_AGES = ["2-4", "5-8", "9-11"] as const;

const shortestResiduals = (): readonly Residual[] =>
  SHEA_AGES.flatMap((ages) => [
    residual(pinnedIn(shortest, `lateral-to-artery.${ages}@1`), atAge(middleAge(ages), (band) => shortestToArtery(kneeOf(band)).lateralMm), SHORTEST_ALLOWED_MM),
    residual(pinnedIn(shortest, `medial-to-artery.${ages}@1`), atAge(middleAge(ages), (band) => shortestToArtery(kneeOf(band)).medialMm), SHORTEST_ALLOWED_MM),
  ]);

const widthOf = (knee: Knee): number => {
  const across = plateauPoints(knee.plateau).map(({ xMm }) => xMm);
  return Math.max(...across) - Math.min(...across);
};

const shownResiduals = (): readonly Residual[] => {
  const shown = (topic: TopicData, pin: string, model: number): Residual => residual(pinnedIn(topic, pin), model, null);
  return [shown(kneeSize, "bicondylar-width.2-15@1", atAge(meanOf(kneeModel("mean-age.knee-size-132@1")), (band) => widthOf(kneeOf(band))))];
};

/**
 * The model of mean sizes against every published value that it was fitted to, and one that it was not: for the page that
 * says how the knee is built. The shares of simulated lines are in `touchShares`.
 *
 * @returns One line per published value; lengths in mm.
 */
export const residuals = (): readonly Residual[] => [...zoneResiduals(), ...bundleResiduals(), ...shortestResiduals(), ...shownResiduals()];
