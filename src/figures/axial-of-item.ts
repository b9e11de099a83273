import { compareOnGrid } from "../engine/quantity/grid.ts";
import type { Item } from "../engine/question/item.ts";
import { KNEE_BANDS } from "../facts/knee-model.ts";
import type { AxialSetting } from "./axial-setting.ts";

const FIRST_DEPTH_MM = 4;

/** The axial setting that a question with a needle in the model is about, with the learner's line or, before one, a needle straight back. */
export const axialOfItem = (item: Item, line?: { readonly angleDeg: number; readonly depthMm: number }): AxialSetting | null => {
  if (item.kind !== "line") return null;
  const value = (key: string): number => Number(item.givens.find((given) => given.key === key)?.text ?? 0);
  const band = KNEE_BANDS.find((one) => one === item.about["band"]) ?? "8-10";
  const depthMm = line && compareOnGrid(line.depthMm, 0) > 0 ? line.depthMm : FIRST_DEPTH_MM;
  return {
    band,
    side: item.about["side"] === "left" ? "left" : "right",
    portal: item.about["portal"] === "AM" ? "AM" : "AL",
    bearingDeg: line?.angleDeg ?? 0,
    depthMm,
    entryToJunctionMm: value("entryToJunctionMm"),
    marginMm: value("marginMm"),
    capsuleMm: value("throughCapsuleMm"),
  };
};
