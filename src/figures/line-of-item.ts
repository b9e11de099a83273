import type { Item } from "../engine/question/item.ts";
import { sumOnGrid } from "../engine/quantity/grid.ts";
import type { LineModel } from "./line-model.ts";

const LINE_KEYS = ["junctionToBundleMm", "freeEdgeToBundleMm"];

/** The line that a question is about, from the givens that it prints; null for a question about something else. */
export const lineOfItem = (item: Item, answered: boolean, yoursMm: readonly number[] = []): LineModel | null => {
  const value = (key: string): number | undefined => {
    const given = item.givens.find((one) => one.key === key);
    return given && Number(given.text);
  };
  if (!LINE_KEYS.every((key) => value(key) !== undefined)) return null;
  const junctionToBundleMm = value("junctionToBundleMm") ?? 0;
  const freeEdgeToBundleMm = value("freeEdgeToBundleMm") ?? 0;
  const entry = value("entryToJunctionMm");
  const marginMm = value("marginMm");
  const throughCapsuleMm = value("throughCapsuleMm");
  return {
    entryName: entry === undefined ? "free edge" : "entry",
    entryToJunctionMm: entry ?? sumOnGrid(freeEdgeToBundleMm, -junctionToBundleMm),
    junctionToBundleMm,
    freeEdgeToBundleMm,
    ...(marginMm === undefined ? {} : { marginMm }),
    ...(throughCapsuleMm === undefined ? {} : { throughCapsuleMm }),
    answered,
    yoursMm,
  };
};
