import { needleUnder } from "../engine/knee/aimed-needle.ts";
import { kneePopulation } from "../engine/knee/population.ts";
import { KNEE_BANDS, type KneeBand, kneeSizes, kneeSpreads } from "../facts/knee-model.ts";
import { type AxialSetting, NEEDLE_RADIUS_MM, axialModelOf } from "./axial-setting.ts";
import { axialView, isClear } from "./axial-model.ts";

/** Knees drawn for a share: enough for a whole per cent, few enough for one frame of a page. */
export const SHARE_KNEES = 400;

/** Share of drawn knees of an age band in which this setting keeps the margin. A share of a model, not of children who are hurt. */
export const shareClear = (setting: AxialSetting): number => {
  const { band, side, capsuleMm, portal, bearingDeg, entryToJunctionMm, depthMm, marginMm } = setting;
  const choice = { band, side, capsuleMm };
  const knees = kneePopulation({ groups: [{ sizes: kneeSizes(choice), spreads: kneeSpreads(choice) }], seed: 1, count: SHARE_KNEES });
  const clear = knees.filter((knee) => {
    const needle = needleUnder({ knee, portal, bearingDeg, entryToJunctionMm, depthMm, needleRadiusMm: NEEDLE_RADIUS_MM });
    return needle !== null && needle.nearest.clearanceMm >= marginMm;
  });
  return clear.length / knees.length;
};

/** The same setting at every age: does it keep the margin there? */
export const otherAges = (setting: AxialSetting): readonly { readonly band: KneeBand; readonly isClear: boolean; readonly misses: boolean }[] =>
  KNEE_BANDS.map((band) => {
    const view = axialView(axialModelOf({ ...setting, band }, { isOwn: false, showsAngles: true }));
    return { band, isClear: isClear(view), misses: view.needle === null };
  });
