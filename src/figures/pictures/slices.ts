import { withUnit } from "../../engine/quantity/format.ts";
import { element, px } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, givenOf, inWords, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

const SIDE_PX = 8;
const TOP_PX = 40;
const SLAB_PX = 76;

const numberIn = (text: string): number => Number(text.replace(",", ".").replace(/[^\d.]/g, ""));

/** The two lengths that the learner typed; none before an answer. */
const ownEnds = (own: Own | undefined): readonly number[] =>
  own?.response.kind === "range" ? [numberIn(own.response.from), numberIn(own.response.to)].filter((length) => Number.isFinite(length) && length > 0) : [];

/** Neighbouring slices in proportion: those that show the tear, and one beyond at either end that does not. */
export const sliceRow: DrawPicture = (item, own) => {
  const [count, sliceMm, gapMm] = [givenOf(item, "slices"), givenOf(item, "sliceMm"), givenOf(item, "gapMm")];
  const slabs = count + 2;
  const perMm = (WIDTH_PX - 2 * SIDE_PX) / (slabs * sliceMm + (slabs - 1) * gapMm);
  const left = (slab: number): number => SIDE_PX + slab * (sliceMm + gapMm) * perMm;
  const width = sliceMm * perMm;
  const drawing = Array.from({ length: slabs }, (_, slab) => {
    const isSeen = slab > 0 && slab <= count;
    const [x, middle] = [left(slab), left(slab) + width / 2];
    const tear = isSeen ? element("path", { class: "tear", d: `M${px(middle - 3)} ${TOP_PX + 22}l6 12l-6 10l5 12` }) : "";
    return element("rect", { class: "t-plateau", x, y: TOP_PX, width, height: SLAB_PX }) + tear + words(middle, TOP_PX - 10, [isSeen ? String(slab) : "–", { ...MIDDLE, class: "num" }]);
  });
  const thickness = withUnit(sliceMm.toFixed(1), "mm");
  const gap = gapMm === 0 ? "no gap" : `gap ${withUnit(gapMm.toFixed(1), "mm")}`;
  const ends = ownEnds(own);
  const middle = WIDTH_PX / 2;
  const bars = ends.map((length, row) => {
    const half = Math.min(middle - 2, (length * perMm) / 2);
    const y = TOP_PX + SLAB_PX + 58 + row * 36;
    return element("path", { class: "dimmine", d: `M${px(middle - half)} ${y}H${px(middle + half)}M${px(middle - half)} ${y - 6}v12M${px(middle + half)} ${y - 6}v12` }) + words(middle, y - 8, [`yours ${withUnit(length.toFixed(1), "mm")}`, { ...MIDDLE, class: "dimmine-t" }]);
  });
  const said = ends.length === 2 ? `Your lengths of ${ends.map((length) => withUnit(length.toFixed(1), "mm")).join(" and ")} lie under the slices, in the same proportion.` : "";
  return {
    markup: drawn({ name: "small", heightPx: TOP_PX + SLAB_PX + 36 + (bars.length === 0 ? 0 : 24 + bars.length * 36) }, [...drawing, words(middle, TOP_PX + SLAB_PX + 24, [`slice ${thickness}, ${gap}`, MIDDLE]), ...bars]),
    text: inWords(`${slabs} neighbouring ${aboutOf(item, "plane")} slices in proportion, each ${thickness} thick, ${gap} between them. The tear is seen on ${count} of them; on the one beyond at either end it is not.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
