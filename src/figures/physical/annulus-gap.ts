import { withUnit } from "../../engine/quantity/format.ts";
import { element } from "../markup.ts";
import { drawn, inWords, MIDDLE, WIDTH_PX, words } from "../pictures/picture.ts";
import type { PhysicalFigure } from "./physical-figure.ts";

export interface AnnulusGap {
  /** Outside of the scope; greater than 0 and less than the bore. */
  readonly scopeMm: number;
  /** Inside of the sheath. */
  readonly boreMm: number;
}

const CENTRES = [WIDTH_PX * 0.25, WIDTH_PX * 0.75] as const;
const BORE_PX = 76;
const MIDDLE_PX = 104;
const HEIGHT_PX = 214;
/** A thin annulus with the inner tube against the wall lets through this many times what the centred one does: 1 + 1.5 e² at e = 1. */
const TOUCHING = 1 + 1.5;

const end = (centrePx: number, offPx: number, scopePx: number): string =>
  element("circle", { class: "t-fill", cx: centrePx, cy: MIDDLE_PX, r: BORE_PX }) + element("circle", { class: "t-out", cx: centrePx, cy: MIDDLE_PX, r: BORE_PX }) +
  element("circle", { class: "t-bone", cx: centrePx, cy: MIDDLE_PX + offPx, r: scopePx }) + element("circle", { class: "t-out", cx: centrePx, cy: MIDDLE_PX + offPx, r: scopePx });

/**
 * The scope in its sheath from the front, centred and against the wall.
 *
 * @throws {RangeError} If the scope does not fit into the bore.
 */
export const annulusGap = ({ scopeMm, boreMm }: AnnulusGap): PhysicalFigure => {
  if (!(scopeMm > 0 && scopeMm < boreMm)) throw new RangeError(`scopeMm must be greater than 0 and less than boreMm, got ${scopeMm}`);
  const gapMm = (boreMm - scopeMm) / 2;
  const scopePx = (BORE_PX * scopeMm) / boreMm;
  const share = 1 - (scopeMm / boreMm) ** 2;
  const [gap, double, open] = [withUnit(gapMm.toFixed(2), "mm"), withUnit((2 * gapMm).toFixed(2), "mm"), withUnit((100 * share).toFixed(0), "%")];
  const said = `A scope of ${withUnit(scopeMm.toFixed(1), "mm")} in a bore of ${withUnit(boreMm.toFixed(1), "mm")}, from the front.`;
  const gaps = `Centred, the gap is ${gap} all round. Against the wall it goes from nothing to ${double}. Either way ${open} of the bore is open.`;
  const flow = `Against the wall about ${TOUCHING} times as much flows, because the wide side gains more than the narrow one loses.`;
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, [
      end(CENTRES[0], 0, scopePx), end(CENTRES[1], BORE_PX - scopePx, scopePx),
      words(CENTRES[0], MIDDLE_PX + 5, ["scope", MIDDLE]), words(CENTRES[1], MIDDLE_PX + BORE_PX - scopePx + 5, ["scope", MIDDLE]),
      words(CENTRES[0], 18, [`gap ${gap}`, MIDDLE]), words(CENTRES[1], 18, [`gap 0 to ${double}`, MIDDLE]),
      words(CENTRES[0], HEIGHT_PX - 12, ["centred", { ...MIDDLE, class: "dim" }]), words(CENTRES[1], HEIGHT_PX - 12, ["against the wall", { ...MIDDLE, class: "dim" }]),
    ]),
    text: inWords(said, gaps, flow),
    caption: `${gaps} ${flow}`,
  };
};
