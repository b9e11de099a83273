import type { LineFrame } from "./line-frame.ts";
import type { LineModel } from "./line-model.ts";
import { element, px } from "./markup.ts";

const TICK_EVERY_MM = 2;

/** The tip: where the learner's needle ends, or the entry while nothing has been answered. */
export const tipOf = (model: LineModel): number => (model.yoursMm.length > 0 ? Math.max(...model.yoursMm) : 0);

const ticks = (frame: LineFrame, tipMm: number, half: number): string => {
  const first = Math.ceil(frame.leftMm / TICK_EVERY_MM) * TICK_EVERY_MM;
  const count = Math.max(0, Math.floor((Math.min(tipMm, frame.rightMm) - first) / TICK_EVERY_MM) + 1);
  return Array.from({ length: count }, (_, step) => `M${px(frame.x(first + step * TICK_EVERY_MM))} ${px(frame.needlePx - half)}v${2 * half}`).join("");
};

/** The needle up to its tip, ticked every two millimetres from the entry, with a halo so that it reads over a pattern. */
export const needle = (frame: LineFrame, model: LineModel): string => {
  if (model.entryName === "free edge") {
    return element("path", { class: "drop", d: `M0 ${px(frame.needlePx)}H${px(frame.widthPx)}` });
  }
  const isOwn = model.yoursMm.length > 0;
  const tipMm = tipOf(model);
  const tipPx = Math.min(frame.x(tipMm), frame.widthPx);
  const [line, fill] = isOwn ? ["mine", "minef"] : ["ndl", "ndlf"];
  const bevelPx = 9;
  const shaft = `M0 ${px(frame.needlePx)}H${px(tipPx - (tipMm === 0 ? 0 : bevelPx))}`;
  const bevel = `M${px(tipPx - bevelPx)} ${px(frame.needlePx - 2.5)}L${px(tipPx)} ${px(frame.needlePx + 2.5)}H${px(tipPx - bevelPx)}Z`;
  return [
    element("path", { class: "haloline", d: shaft }),
    element("path", { class: line, "stroke-width": 5, d: shaft }),
    tipMm === 0 ? "" : element("path", { class: fill, d: bevel }),
    element("path", { class: line, "stroke-width": 1.3, d: ticks(frame, tipMm, 6) }),
    element("circle", { cx: frame.x(0), cy: frame.needlePx, r: 6, class: "entry" }),
  ].join("");
};
