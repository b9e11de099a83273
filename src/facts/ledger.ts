import antibiotic from "../../content/ledger/antibiotic.json" with { type: "json" };
import bundleLine from "../../content/ledger/bundle-line.json" with { type: "json" };
import capsule from "../../content/ledger/capsule.json" with { type: "json" };
import carbon from "../../content/ledger/carbon.json" with { type: "json" };
import count from "../../content/ledger/count.json" with { type: "json" };
import cuff from "../../content/ledger/cuff.json" with { type: "json" };
import discoid from "../../content/ledger/discoid.json" with { type: "json" };
import growth from "../../content/ledger/growth.json" with { type: "json" };
import jointPressure from "../../content/ledger/joint-pressure.json" with { type: "json" };
import kneeModel from "../../content/ledger/knee-model.json" with { type: "json" };
import kneeSize from "../../content/ledger/knee-size.json" with { type: "json" };
import liquid from "../../content/ledger/liquid.json" with { type: "json" };
import localAnaesthetic from "../../content/ledger/local-anaesthetic.json" with { type: "json" };
import meniscusSize from "../../content/ledger/meniscus-size.json" with { type: "json" };
import optics from "../../content/ledger/optics.json" with { type: "json" };
import posteriorPortal from "../../content/ledger/posterior-portal.json" with { type: "json" };
import rehabilitation from "../../content/ledger/rehabilitation.json" with { type: "json" };
import repairResult from "../../content/ledger/repair-result.json" with { type: "json" };
import scopeModel from "../../content/ledger/scope-model.json" with { type: "json" };
import score from "../../content/ledger/score.json" with { type: "json" };
import shortestDistance from "../../content/ledger/shortest-distance.json" with { type: "json" };
import simulatedLine from "../../content/ledger/simulated-line.json" with { type: "json" };
import stitch from "../../content/ledger/stitch.json" with { type: "json" };
import structureSize from "../../content/ledger/structure-size.json" with { type: "json" };
import tear from "../../content/ledger/tear.json" with { type: "json" };
import testAccuracy from "../../content/ledger/test-accuracy.json" with { type: "json" };
import zoneWidth from "../../content/ledger/zone-width.json" with { type: "json" };
import { withUnit } from "../engine/quantity/format.ts";
import { isUnitId } from "../engine/quantity/units.ts";
import type { EntryData, RevisionData, TopicData, ValueText } from "./reader.ts";

/** The whole number ledger, for pages and tools. Islands read a single topic instead, so that no page carries it all. */
export const LEDGER: readonly TopicData[] = [
  bundleLine,
  zoneWidth,
  capsule,
  shortestDistance,
  simulatedLine,
  posteriorPortal,
  structureSize,
  meniscusSize,
  discoid,
  kneeSize,
  kneeModel,
  scopeModel,
  tear,
  stitch,
  repairResult,
  testAccuracy,
  optics,
  liquid,
  jointPressure,
  cuff,
  localAnaesthetic,
  antibiotic,
  count,
  carbon,
  rehabilitation,
  growth,
  score,
];

export interface LedgerHit {
  readonly topic: TopicData;
  readonly entry: EntryData;
  readonly revision: RevisionData;
}

const newest = (entry: EntryData): RevisionData | undefined => entry.revisions.find(({ replacedBy }) => replacedBy === undefined);

/** An entry by its key, newest revision, or by key@revision; throws a RangeError for one that the ledger does not hold. */
export const ledgerEntry = (name: string): LedgerHit => {
  const [key = "", number] = name.split("@");
  for (const topic of LEDGER) {
    const entry = topic.entries.find((one) => one.key === key);
    const revision = entry && (number === undefined ? newest(entry) : entry.revisions.find((one) => String(one.revision) === number));
    if (entry && revision) return { topic, entry, revision };
  }
  throw new RangeError(`name must be an entry of the number ledger, got ${name}`);
};

/** What stands beside a value that was remembered and not read; empty for every other. */
export const verifyMark = ({ state }: RevisionData): string => (state === "memory" ? " (to be verified)" : "");

const united = (text: string, unit: string): string => (isUnitId(unit) ? withUnit(text, unit) : text);

/** The shapes a value may have, in the order in which they are tried. */
const SHAPES: readonly ((value: ValueText, unit: string) => string | null)[] = [
  ({ events, total }) => (events === undefined ? null : `${events} of ${total}`),
  ({ median, from, to }, unit) => (median === undefined ? null : united(`median ${median}${from === undefined ? "" : ` (${from}–${to})`}`, unit)),
  ({ mean, sd }, unit) => (mean === undefined || sd === undefined ? null : united(`${mean} ± ${sd}`, unit)),
  ({ mean, from, to }, unit) => (mean === undefined ? null : united(from === undefined ? mean : `${mean} (${from}–${to})`, unit)),
  ({ from, to }, unit) => (from === undefined ? null : united(`${from}–${to}`, unit)),
  ({ value }, unit) => united(value ?? "", unit),
];

/** A value as a page prints it: "5.2 ± 1.6 mm", "8–10 mm", "3 of 29", "not found"; or its mean or spread alone. */
export const valueText = (value: ValueText | null, unit: string, part: "mean" | "sd" | "both" = "both"): string => {
  if (value === null) return "not found";
  const alone = part === "both" ? undefined : value[part];
  if (alone !== undefined) return united(alone, unit);
  for (const shape of SHAPES) {
    const text = shape(value, unit);
    if (text !== null) return text;
  }
  return "";
};
