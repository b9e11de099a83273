import type { LineModel, LinePlaces } from "./line-model.ts";

/** How millimetres become pixels in one drawing of the line. */
export interface LineFrame {
  readonly name: "wide" | "narrow";
  readonly widthPx: number;
  readonly pxPerMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
  /** Height of the picture above the rule. */
  readonly heightPx: number;
  /** Level of the needle. */
  readonly needlePx: number;
  readonly fontPx: number;
  /** Numbers stand on every so many millimetres of the rule. */
  readonly numberEveryMm: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
}

const HEIGHT_MM = 10.4;
const NEEDLE_BELOW_TOP_MM = 6;
const BEHIND_BUNDLE_MM = 11.5;
const FARTHEST_SHOWN_MM = 17;

const LOOKS = {
  wide: { widthPx: 837, fontPx: 16, numberEveryMm: 2, leastLeftMm: 8 },
  narrow: { widthPx: 356, fontPx: 15, numberEveryMm: 4, leastLeftMm: 6 },
} as const;

/** The farthest depth that the picture still holds; what lies beyond is drawn to the edge and said in words. */
const farthest = (model: LineModel, { bundleMm, leastMm }: LinePlaces): number => {
  const shown = model.answered && leastMm !== undefined ? [...model.yoursMm, leastMm + 1] : model.yoursMm;
  const inside = shown.filter((mm) => mm <= bundleMm + FARTHEST_SHOWN_MM);
  return Math.max(bundleMm + BEHIND_BUNDLE_MM, ...inside.map((mm) => mm + 1.5));
};

/** Frame of a drawing, from the span that this line needs. */
export const frameFor = (name: "wide" | "narrow", model: LineModel, places: LinePlaces): LineFrame => {
  const { widthPx, fontPx, numberEveryMm, leastLeftMm } = LOOKS[name];
  const leftMm = -Math.max(leastLeftMm, -places.freeEdgeMm + 2);
  const rightMm = farthest(model, places);
  const pxPerMm = widthPx / (rightMm - leftMm);
  const needlePx = NEEDLE_BELOW_TOP_MM * pxPerMm;
  return {
    name, widthPx, pxPerMm, leftMm, rightMm, needlePx, fontPx, numberEveryMm,
    heightPx: HEIGHT_MM * pxPerMm,
    x: (mm) => (mm - leftMm) * pxPerMm,
    y: (mm) => needlePx - mm * pxPerMm,
  };
};
