import lines from "../../content/ledger/simulated-line.json" with { type: "json" };
import { wilson } from "../engine/evidence/wilson.ts";
import { contactShare } from "../engine/knee/contact-share.ts";
import type { AimedLine } from "../engine/knee/line-to-peroneal-mm.ts";
import { type KneeGroup, kneePopulation } from "../engine/knee/population.ts";
import type { Side } from "../engine/knee/sizes.ts";
import type { Seed } from "../engine/random/seed.ts";
import { ADULT_CAPSULE_MM, KNEE_BANDS, type KneeBand, kneeSizes, kneeSpreads } from "./knee-model.ts";
import { type Pinned, pinnedIn } from "./reader.ts";

/** A share of simulated lines that touch the peroneal nerve, published and in drawn knees; shares 0 to 1. A simulated touch is not an injury rate (C14). */
export interface TouchShare {
  readonly entry: string;
  readonly name: string;
  readonly source: string | null;
  readonly published: number;
  /** 95 % interval of the published share, by Wilson's formula on the count nearest to it. */
  readonly low: number;
  readonly high: number;
  readonly model: number | null;
  readonly inside: boolean;
  readonly fitted: boolean;
}

const LINES: readonly { readonly pin: string; readonly line: AimedLine; readonly fitted: boolean }[] = [
  { pin: "line-touches-peroneal.al-lateral-edge@1", line: { portal: "AL", edge: "lateral" }, fitted: true },
  { pin: "line-touches-peroneal.am-lateral-edge@1", line: { portal: "AM", edge: "lateral" }, fitted: true },
  { pin: "line-touches-peroneal.al-second@1", line: { portal: "AL", edge: "medial" }, fitted: false },
  { pin: "line-touches-peroneal.am-second@1", line: { portal: "AM", edge: "medial" }, fitted: false },
];

/** Scans behind an entry, from its population. */
const scansOf = (pinned: Pinned): number => {
  const scans = lines.entries.find(({ key }) => key === pinned.key)?.population.n;
  if (!scans) throw new RangeError(`entry must say its number of scans, got ${pinned.entry}`);
  return scans;
};

/** The mean knee of a band with its spreads, for drawing. */
export const kneeGroup = (band: KneeBand, side: Side = "right"): KneeGroup => {
  const choice = { band, side, capsuleMm: ADULT_CAPSULE_MM };
  return { sizes: kneeSizes(choice), spreads: kneeSpreads(choice) };
};

const shareOf = (pinned: Pinned): number => (pinned.number.value ?? Number.NaN) / 100;

/**
 * Houston's shares against drawn knees of 5 to 16 years, each band as often as the others (his ages are not shown). The two
 * lines to the lateral edge of the popliteus tendon were fitted; the second pair, whose target was not read but inferred to
 * be the medial edge, is only shown.
 *
 * @param seed - Seed of the draw.
 * @param count - How many knees; at least 1.
 * @returns One line per share.
 */
export const touchShares = (seed: Seed, count: number): readonly TouchShare[] => {
  const groups = KNEE_BANDS.filter((band) => band !== "2-4").map((band) => kneeGroup(band));
  const knees = kneePopulation({ groups, seed, count });
  return LINES.map(({ pin, line, fitted }) => {
    const pinned = pinnedIn(lines, pin);
    const published = shareOf(pinned);
    const { low, high } = wilson({ events: Math.round(published * scansOf(pinned)), total: scansOf(pinned) });
    const model = contactShare(knees, line);
    return { entry: pin, name: pinned.name, source: pinned.source, published, low, high, model, inside: model !== null && model >= low && model <= high, fitted };
  });
};
