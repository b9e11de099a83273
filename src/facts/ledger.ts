import bundleLine from "../../content/ledger/bundle-line.json" with { type: "json" };
import capsule from "../../content/ledger/capsule.json" with { type: "json" };
import zoneWidth from "../../content/ledger/zone-width.json" with { type: "json" };
import { withUnit } from "../engine/quantity/format.ts";
import { isUnitId } from "../engine/quantity/units.ts";
import type { EntryData, RevisionData, TopicData, ValueText } from "./reader.ts";

/** The whole number ledger, for pages and tools. Islands read a single topic instead, so that no page carries it all. */
export const LEDGER: readonly TopicData[] = [bundleLine, zoneWidth, capsule];

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

const united = (text: string, unit: string): string => (isUnitId(unit) ? withUnit(text, unit) : text);

/** A value as a page prints it: "5.2 ± 1.6 mm", "8–10 mm", "not found". */
export const valueText = (value: ValueText | null, unit: string, part: "mean" | "sd" | "both" = "both"): string => {
  if (value === null) return "not found";
  if (part === "sd" && value.sd !== undefined) return united(value.sd, unit);
  const { mean, sd, from, to } = value;
  if (mean !== undefined && part === "mean") return united(mean, unit);
  if (mean !== undefined && sd !== undefined) return united(`${mean} ± ${sd}`, unit);
  if (mean !== undefined) return united(from === undefined ? mean : `${mean} (${from}–${to})`, unit);
  if (from !== undefined) return united(`${from}–${to}`, unit);
  return united(value.value ?? value.median ?? "", unit);
};
