import { withUnit } from "../../engine/quantity/format.ts";
import { element } from "../markup.ts";
import { type DrawPicture, drawn, givenOf, inWords, line, MIDDLE, WIDTH_PX, words } from "./picture.ts";

const PER_CM = 9;
const LIMB_Y = 96;
const CUFF_Y = 192;
const CUFF_PX = 54;
const GAP_PX = 26;
const CUFFS = ["narrowCuffCm", "middleCuffCm", "wideCuffCm"] as const;
const TAPER = 0.82;

const cm = (value: number): string => withUnit(value.toFixed(1), "cm");

/** A limb from the side with a tape round it, its thickness in proportion to the cuffs. */
const limb = (girthCm: number): string => {
  const half = (girthCm / Math.PI / 2) * PER_CM;
  const [tape, far] = [96, half * TAPER];
  return [
    line(`M8 ${LIMB_Y - half}Q${WIDTH_PX / 2} ${LIMB_Y - half * 1.04} ${WIDTH_PX - 8} ${LIMB_Y - far}V${LIMB_Y + far}Q${WIDTH_PX / 2} ${LIMB_Y + half * 1.04} 8 ${LIMB_Y + half}`, "t-plateau"),
    line(`M${tape} ${LIMB_Y - half * 0.96}q9 ${half * 0.96} 0 ${half * 1.92}`, "dimstrong"),
    line(`M${tape} ${LIMB_Y - half * 0.96}q-9 ${half * 0.96} 0 ${half * 1.92}`, "drop"),
    words(tape + 16, LIMB_Y + 5, [`girth ${cm(girthCm)}`, { class: "num" }]),
  ].join("");
};

/** The cuffs at hand, flat beside each other, each with its width. */
const cuffs = (widthsCm: readonly number[]): string => {
  const whole = widthsCm.reduce((sum, width) => sum + width * PER_CM, 0) + (widthsCm.length - 1) * GAP_PX;
  let left = (WIDTH_PX - whole) / 2;
  return widthsCm.map((width) => {
    const x = left;
    left += width * PER_CM + GAP_PX;
    const middle = x + (width * PER_CM) / 2;
    return element("rect", { class: "t-plateau", x, y: CUFF_Y, width: width * PER_CM, height: CUFF_PX }) + line(`M${x + 4} ${CUFF_Y + 8}v${CUFF_PX - 16}M${x + width * PER_CM - 4} ${CUFF_Y + 8}v${CUFF_PX - 16}`, "t-thin") + words(middle, CUFF_Y + CUFF_PX + 20, [cm(width), { ...MIDDLE, class: "num" }]);
  }).join("");
};

/** A limb with its girth and the cuffs at hand, all in one proportion; after an answer the learner's least width on the limb. */
export const cuffOnLimb: DrawPicture = (item, own) => {
  const girthCm = givenOf(item, "girthCm");
  const widths = CUFFS.map((key) => givenOf(item, key));
  const least = own?.values["leastCm"] ?? 0;
  const isInside = least > 0 && least <= 14;
  const said = least > 0 ? `Your least width of ${cm(least)} ${isInside ? "lies on the limb as a band" : "is wider than the picture"}.` : "";
  const half = (girthCm / Math.PI / 2) * PER_CM;
  const x = 216;
  const band = isInside ? element("rect", { class: "mineband", x, y: LIMB_Y - half, width: Math.min(132, least * PER_CM), height: 2 * half }) + words(Math.min(WIDTH_PX - 50, x + (least * PER_CM) / 2), LIMB_Y - half - 8, [`yours ${cm(least)}`, { ...MIDDLE, class: "dimmine-t" }]) : "";
  return {
    markup: drawn({ name: "small", heightPx: CUFF_Y + CUFF_PX + 32 }, [limb(girthCm), cuffs(widths), band]),
    text: inWords(`A limb from the side, ${cm(girthCm)} round where the cuff will lie. Under it three cuffs, ${widths.map(cm).join(", ")} wide, all in one proportion.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
