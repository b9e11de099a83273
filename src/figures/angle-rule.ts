import { type AxialView, blockedInside } from "./axial-model.ts";
import { AXIAL_WORDS, deg } from "./axial-words.ts";
import { element, label, px } from "./markup.ts";

const HEIGHT_PX = 84;
const BOX_TOP_PX = 18;
const BOX_PX = 30;
const LEAST_FOR_WORD_PX = 52;
const NUMBER_EVERY_DEG = 10;

interface RuleFrame {
  readonly widthPx: number;
  readonly x: (angleDeg: number) => number;
}

const frameFor = (widthPx: number, { angles, model }: AxialView): RuleFrame => {
  const from = Math.min(angles.rim.fromDeg, model.bearingDeg) - 3;
  const to = Math.max(angles.rim.toDeg, model.bearingDeg) + 3;
  return { widthPx, x: (angleDeg) => ((angleDeg - from) / (to - from)) * widthPx };
};

const boxes = ({ x }: RuleFrame, view: AxialView): string => {
  const { angles } = view;
  const box = (from: number, to: number) => ({ x: x(from), y: BOX_TOP_PX, width: x(to) - x(from), height: BOX_PX });
  const clear = angles.clear.map(({ fromDeg, toDeg }) => {
    const shape = box(fromDeg, toDeg);
    const word = shape.width < LEAST_FOR_WORD_PX ? "" : label(shape.x + shape.width / 2, BOX_TOP_PX + 20, { text: AXIAL_WORDS.en.clear, "text-anchor": "middle" });
    return element("rect", { ...shape, class: "clear" }) + word;
  });
  const blocked = blockedInside(view).map(({ fromDeg, toDeg }) => element("rect", { ...box(fromDeg, toDeg), fill: "url(#p-forbid)", class: "forbid" }));
  return [...clear, ...blocked].join("");
};

const scale = ({ widthPx, x }: RuleFrame, { angles, model }: AxialView): string => {
  const y = BOX_TOP_PX + BOX_PX;
  const first = Math.ceil((Math.min(angles.rim.fromDeg, model.bearingDeg) - 3) / 2) * 2;
  const last = Math.max(angles.rim.toDeg, model.bearingDeg) + 3;
  const marks = Array.from({ length: Math.max(0, Math.floor((last - first) / 2) + 1) }, (_, index) => first + 2 * index);
  const numbered = marks.filter((angle) => angle % NUMBER_EVERY_DEG === 0);
  return [
    element("path", { class: "ax", d: `M0 ${y}H${px(widthPx)}${marks.map((angle) => `M${px(x(angle))} ${y}v${angle % NUMBER_EVERY_DEG === 0 ? 11 : 6}`).join("")}` }),
    ...numbered.map((angle) => label(x(angle), y + 28, { text: deg(angle), class: "num", "text-anchor": "middle" })),
  ].join("");
};

/** The angles at the portal on a rule: what is blocked is inked, what is clear stays paper, and where the needle stands; drawn narrow for a phone, its letters stay large. */
export const angleRule = (view: AxialView, widthPx: number, screen: "" | "wide" | "narrow" = ""): string => {
  const frame = frameFor(widthPx, view);
  const x = frame.x(view.model.bearingDeg);
  const hand = element("path", { class: "minef", d: `M${px(x - 7)} 4H${px(x + 7)}L${px(x)} ${BOX_TOP_PX - 2}Z` }) + element("path", { class: "mine", "stroke-width": 2, d: `M${px(x)} ${BOX_TOP_PX - 2}V${BOX_TOP_PX + BOX_PX + 8}` });
  return element("svg", { class: `fig rule ${screen}`.trim(), viewBox: `0 0 ${px(widthPx)} ${HEIGHT_PX}`, "aria-hidden": "true", focusable: "false" }, boxes(frame, view) + scale(frame, view) + hand);
};
