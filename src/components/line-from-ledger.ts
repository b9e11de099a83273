import { bundleLine } from "../facts/bundle-line.ts";
import type { LineModel } from "../figures/line-model.ts";

const numberIn = (settings: Readonly<Record<string, unknown>>, name: string): number | undefined => {
  const value = settings[name];
  if (value === undefined) return undefined;
  const number = Number(value);
  if (!Number.isFinite(number) || number <= 0) throw new Error(`${name} must be a number greater than 0, got ${String(value)}`);
  return number;
};

/** The line of a module's figure: distances of the study, entry, need and margin of the module's own case. */
export const lineFromLedger = (settings: Readonly<Record<string, unknown>>): LineModel => {
  const sex = settings["sex"] === "girls" ? "girls" : "boys";
  const mean = (topic: string): number => bundleLine(`${topic}.${sex}@1`).number.mean ?? 0;
  const marginMm = numberIn(settings, "margin");
  const throughCapsuleMm = numberIn(settings, "need");
  const depth = numberIn(settings, "depth");
  return {
    entryName: "entry",
    entryToJunctionMm: numberIn(settings, "entry") ?? 4,
    junctionToBundleMm: mean("junction-to-bundle"),
    freeEdgeToBundleMm: mean("free-edge-to-bundle"),
    ...(marginMm === undefined ? {} : { marginMm }),
    ...(throughCapsuleMm === undefined ? {} : { throughCapsuleMm }),
    answered: marginMm !== undefined || throughCapsuleMm !== undefined,
    yoursMm: depth === undefined ? [] : [depth],
  };
};
