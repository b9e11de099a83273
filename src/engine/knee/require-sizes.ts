import { requireFinite, requireNotNegative, requireNumber, requirePositive } from "../quantity/require.ts";
import type { KneeSizes, MeniscusSizes } from "./sizes.ts";

const requireMeniscus = (name: string, sizes: MeniscusSizes): void => {
  const { centreOutwardMm, centreFrontMm, rimRadiusMm, frontEndDeg, backEndDeg } = sizes;
  requireFinite({ [`${name}.centreOutwardMm`]: centreOutwardMm, [`${name}.centreFrontMm`]: centreFrontMm });
  requirePositive({ [`${name}.rimRadiusMm`]: rimRadiusMm });
  for (const key of ["frontWidthMm", "bodyWidthMm", "backWidthMm"] as const) {
    requireNumber(`${name}.${key}`, sizes[key], { least: 0, greatest: rimRadiusMm });
  }
  requireNumber(`${name}.frontEndDeg`, frontEndDeg, { least: 0, greatest: 180 });
  requireNumber(`${name}.backEndDeg`, backEndDeg, { least: -180, greatest: 0 });
};

const flat = (prefix: string, values: object): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(values).flatMap(([key, value]) => (typeof value === "number" ? [[`${prefix}.${key}`, value]] : [])));

/** Checks every size of a knee: all finite; radii, widths, thicknesses and the gap to the artery greater than 0. */
export const requireSizes = (sizes: KneeSizes): void => {
  if (sizes.side !== "right" && sizes.side !== "left") throw new RangeError(`side must be right or left, got ${String(sizes.side)}`);
  requireMeniscus("lateral", sizes.lateral);
  requireMeniscus("medial", sizes.medial);
  const { plateauMarginMm, portalBesideTendonMm, capsuleMm, patellarTendon, popliteus, bundle, peroneal } = sizes;
  requireNotNegative({ plateauMarginMm, portalBesideTendonMm });
  requirePositive({ capsuleMm, "bundle.gapMm": bundle.gapMm });
  for (const [name, part] of Object.entries({ patellarTendon, popliteus, bundle, peroneal, vein: bundle.vein, tibialNerve: bundle.tibialNerve, lateralCollateral: sizes.lateralCollateral, medialCollateral: sizes.medialCollateral })) {
    const all = flat(name, part);
    requireFinite(all);
    requirePositive(Object.fromEntries(Object.entries(all).filter(([key]) => /(radius|Radius|width|thickness|halfLength)Mm$/.test(key))));
  }
};
