import artery from "../../content/ledger/bundle-line.json" with { type: "json" };
import json from "../../content/ledger/knee-model.json" with { type: "json" };
import structure from "../../content/ledger/structure-size.json" with { type: "json" };
import zone from "../../content/ledger/zone-width.json" with { type: "json" };
import type { KneeSpreads } from "../engine/knee/population.ts";
import type { BundleSizes, CollateralSizes, KneeSizes, MeniscusSizes, Side } from "../engine/knee/sizes.ts";
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "knee-model". */
export const kneeModel = (pin: string): Pinned => pinnedIn(json, pin);

/** The age bands of the model knee: those of the zone widths, and one below them. */
export const KNEE_BANDS = ["2-4", "5-7", "8-10", "11-13", "14-16"] as const;
export type KneeBand = (typeof KNEE_BANDS)[number];
export type KneeSex = "boys" | "girls";

export interface KneeChoice {
  readonly band: KneeBand;
  readonly side: Side;
  /** From 10 years on the sexes differ in the gap to the artery and the width of the lateral meniscus; left out, the middle of both. */
  readonly sex?: KneeSex;
  /** Outer wall of the capsule beyond the junction, in mm. Unknown in children, so that whoever draws it says which it is. */
  readonly capsuleMm: number;
}

const singleOf = ({ entry, number: { value } }: Pinned): number => {
  if (value === undefined) throw new RangeError(`pin must hold a single value, got ${entry}`);
  return value;
};

const sizeOf = (key: string): number => singleOf(kneeModel(`${key}@1`));
const reference = (key: string): number => sizeOf(`${key}.reference`);
const isGrown = (band: KneeBand): boolean => band === "11-13" || band === "14-16";

/** Middle of the adult range for the outer wall of the capsule beyond the junction, in mm; for a child it carries C9. */
export const ADULT_CAPSULE_MM: number = sizeOf("capsule-wall.adult");

const ARTERY_RADIUS: Readonly<Record<KneeBand, () => number>> = {
  "2-4": () => sizeOf("artery-radius.2-4"),
  "5-7": () => singleOf(pinnedIn(structure, "artery-radius.5-7@1")),
  "8-10": () => singleOf(pinnedIn(structure, "artery-radius.8-10@1")),
  "11-13": () => singleOf(pinnedIn(structure, "artery-radius.11-13@1")),
  "14-16": () => singleOf(pinnedIn(structure, "artery-radius.14-16@1")),
};

const peronealRadiusMm = (band: KneeBand): number => {
  if (band === "14-16") return sizeOf("peroneal-radius.14-16");
  return singleOf(pinnedIn(structure, band === "2-4" || band === "5-7" ? "peroneal-radius.under-8@1" : "peroneal-radius.8-14@1"));
};

const gapMm = ({ band, sex }: KneeChoice): number => {
  if (!isGrown(band)) return sizeOf(`artery-gap.${band}`);
  if (sex === undefined) return sizeOf("artery-gap-10-18.both");
  return pinnedIn(artery, `junction-to-bundle.${sex}@1`).number.mean ?? Number.NaN;
};

const hornWidthMm = ({ band, sex }: KneeChoice): number => sizeOf(isGrown(band) ? `horn-width-10-18.${sex ?? "both"}` : `horn-width.${band}`);

const lateralSizes = (choice: KneeChoice, scale: number): MeniscusSizes => {
  const widthMm = hornWidthMm(choice);
  return {
    centreOutwardMm: reference("lateral-centre") * scale,
    centreFrontMm: 0,
    rimRadiusMm: reference("lateral-rim-radius") * scale,
    frontWidthMm: widthMm,
    bodyWidthMm: widthMm,
    backWidthMm: widthMm,
    frontEndDeg: reference("lateral-front-end"),
    backEndDeg: reference("lateral-back-end"),
  };
};

const medialSizes = (scale: number): MeniscusSizes => ({
  centreOutwardMm: reference("medial-centre") * scale,
  centreFrontMm: 0,
  rimRadiusMm: reference("medial-rim-radius") * scale,
  frontWidthMm: reference("medial-front-width") * scale,
  bodyWidthMm: reference("medial-body-width") * scale,
  backWidthMm: reference("medial-back-width") * scale,
  frontEndDeg: reference("medial-front-end"),
  backEndDeg: reference("medial-back-end"),
});

const bundleSizes = (choice: KneeChoice, scale: number): BundleSizes => {
  const beside = (key: string): BundleSizes["vein"] => ({
    lateralMm: reference(`${key}-lateral`) * scale,
    backMm: reference(`${key}-back`) * scale,
    radiusMm: reference(`${key}-radius`) * scale,
  });
  return {
    aimDeg: sizeOf(`artery-angle.${choice.band}`),
    gapMm: gapMm(choice),
    arteryRadiusMm: ARTERY_RADIUS[choice.band](),
    vein: beside("vein"),
    tibialNerve: beside("tibial-nerve"),
  };
};

const collateralSizes = (key: string, scale: number): CollateralSizes => ({
  rimDeg: reference(`${key}-collateral-angle`),
  beyondRimMm: reference(`${key}-collateral-beyond`) * scale,
  halfLengthMm: reference(`${key}-collateral-half-length`) * scale,
  thicknessMm: reference(`${key}-collateral-thickness`) * scale,
});

/**
 * The sizes of the model knee of an age band, from pinned revisions of the ledger.
 *
 * @param band - Age band.
 * @param side - "right" or "left".
 * @param sex - "boys" or "girls"; only the bands from 11 years on differ.
 * @param capsuleMm - Outer wall of the capsule beyond the junction, in mm; greater than 0.
 * @returns All sizes, in mm and degrees, for `kneeFrom`.
 */
export const kneeSizes = (choice: KneeChoice): KneeSizes => {
  const { band, side, capsuleMm } = choice;
  const scale = sizeOf(`scale.${band}`);
  return {
    side,
    lateral: lateralSizes(choice, scale),
    medial: medialSizes(scale),
    plateauMarginMm: reference("plateau-margin") * scale,
    patellarTendon: {
      centreLateralMm: reference("tendon-lateral") * scale,
      centreFrontMm: sizeOf(`tendon-front.${band}`),
      widthMm: reference("tendon-width") * scale,
      thicknessMm: reference("tendon-thickness") * scale,
    },
    portalBesideTendonMm: reference("portal-beside") * scale,
    popliteus: { rimDeg: sizeOf(`popliteus-angle.${band}`), beyondRimMm: reference("popliteus-beyond") * scale, radiusMm: reference("popliteus-radius") * scale },
    bundle: bundleSizes(choice, scale),
    peroneal: { lateralOfTendonMm: reference("peroneal-lateral") * scale, behindTendonMm: reference("peroneal-back") * scale, radiusMm: peronealRadiusMm(band) },
    lateralCollateral: collateralSizes("lateral", scale),
    medialCollateral: collateralSizes("medial", scale),
    capsuleMm,
  };
};

const zoneSdMm = (band: KneeBand): number => pinnedIn(zone, `zone-width.${band === "2-4" ? "5-7" : band}@1`).number.sd ?? Number.NaN;

/** Spreads of an age band: the tendon's so that the zone spreads as published (below 5 years as at 5–7), the gap's as a share of its mean. */
export const kneeSpreads = (choice: KneeChoice): KneeSpreads => {
  const { band } = choice;
  const scale = sizeOf(`scale.${band}`);
  return {
    tendonAlongRimMm: sizeOf("tendon-spread.factor") * zoneSdMm(band),
    arteryGapMm: sizeOf("artery-gap-spread.share") * gapMm(choice),
    peronealSideMm: reference("peroneal-side-spread") * scale,
    peronealDepthMm: reference("peroneal-depth-spread") * scale,
  };
};

/** Age band in words. */
export const agesOf = (band: KneeBand): string => `${band.replace("-", "–")} years`;
