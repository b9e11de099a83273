import { optics } from "../facts/optics.ts";
import type { Pinned } from "../facts/reader.ts";
import { shortestDistance } from "../facts/shortest-distance.ts";
import { zoneWidth } from "../facts/zone-width.ts";
import { annulusGap } from "./physical/annulus-gap.ts";
import { fieldCone } from "./physical/field-cone.ts";
import type { PhysicalFigure } from "./physical/physical-figure.ts";
import { type AtAge, growthCurves, papersCompared, type Published } from "./physical/spreads.ts";

/** Figures that a module may show by name, from the ledger and from the numbers of its own case. */

type Settings = Readonly<Record<string, unknown>>;

const numberIn = (settings: Settings, name: string, usual: number): number => {
  const value = settings[name] === undefined ? usual : Number(settings[name]);
  if (!Number.isFinite(value) || value < 0) throw new Error(`${name} must be a number of at least 0, got ${String(settings[name])}`);
  return value;
};

const published = ({ name, number, value }: Pinned): Published =>
  ({ name, mean: number.mean ?? number.value ?? 0, sd: number.sd ?? null, said: { mean: value.mean ?? value.value ?? "", sd: value.sd ?? "" } });

const atAges = (read: (pin: string) => Pinned, topic: string, bands: readonly string[]): readonly AtAge[] =>
  bands.map((band) => {
    const [fromYears = 0, toYears = 0] = band.split("-").map(Number);
    return { ...published(read(`${topic}.${band}@1`)), fromYears, toYears };
  });

const ZONE_BANDS = ["5-7", "8-10", "11-13", "14-16"];
const ARTERY_BANDS = ["2-4", "5-8", "9-11"];
const SAME_WORDS = ["lateral-to-artery.9-11@1", "lateral-to-artery.adult@1", "device-to-artery.posterior-horn@1"];
const USUAL = { fieldDeg: 105, distanceMm: 10, scopeMm: 2.3, boreMm: 2.7 } as const;
const SCALE_MM = 20;

const BY_NAME: Readonly<Record<string, (settings: Settings) => PhysicalFigure>> = {
  "field-cone": (settings) => fieldCone({
    viewDeg: numberIn(settings, "view", 0), fieldInAirDeg: numberIn(settings, "field", USUAL.fieldDeg),
    refractiveIndex: optics("refractive-index.saline-20@1").number.value ?? 1, distanceMm: numberIn(settings, "distance", USUAL.distanceMm),
  }),
  "annulus-gap": (settings) => annulusGap({ scopeMm: numberIn(settings, "scope", USUAL.scopeMm), boreMm: numberIn(settings, "bore", USUAL.boreMm) }),
  "growth-curves": () => growthCurves([
    { name: "Popliteus tendon to bundle along the junction", points: atAges(zoneWidth, "zone-width", ZONE_BANDS) },
    { name: "Lateral meniscus to popliteal artery, shortest", points: atAges(shortestDistance, "lateral-to-artery", ARTERY_BANDS) },
  ]),
  "papers-compared": () => papersCompared({ title: "“Meniscus to artery” in three papers", rows: SAME_WORDS.map((pin) => published(shortestDistance(pin))), greatestMm: SCALE_MM }),
};

/** Names of these figures. */
export const MODULE_FIGURES: readonly string[] = Object.keys(BY_NAME);

/**
 * The figure of that name; null for a name that is none of these.
 *
 * @throws {Error} If a setting is no number of at least 0.
 */
export const moduleFigure = (name: string, settings: Settings = {}): PhysicalFigure | null => BY_NAME[name]?.(settings) ?? null;
