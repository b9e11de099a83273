import { cautionLines } from "./caution-lines.ts";
import { type LineFrame, frameFor } from "./line-frame.ts";
import { type LineModel, type LinePlaces, placesOn } from "./line-model.ts";
import { needle } from "./line-needle.ts";
import { rule } from "./line-rule.ts";
import { BUNDLE, tissue } from "./line-tissue.ts";
import { LINE_WORDS, lineInWords, ownInWords } from "./line-words.ts";
import { element, label, pathThrough, px } from "./markup.ts";

const words = LINE_WORDS.en;

/** From this scale on the three names of the bundle have room side by side; under it the vein's stands over it. */
const ROOMY_PX_PER_MM = 12.6;

const bundleNames = ({ x, y, pxPerMm, fontPx }: LineFrame, { bundleMm }: LinePlaces): string =>
  BUNDLE.map(({ name, behindMm, upMm, radiusMm }) => {
    const isOver = name === "vein" && pxPerMm < ROOMY_PX_PER_MM;
    const under = name === "nerve" ? -3.6 : -2.8;
    return label(x(bundleMm + behindMm), isOver ? y(upMm + radiusMm) - 5 : y(under), { text: words[name], "text-anchor": isOver ? "start" : "middle", "font-size": fontPx });
  }).join("");

const leader = (from: readonly [number, number], to: readonly [number, number]): string => element("path", { class: "lead", d: pathThrough([from, to]) });

const labels = (frame: LineFrame, model: LineModel, places: LinePlaces): string => {
  const text = (x: number, y: number, [words, anchor = "middle"]: readonly [string, string?]): string => label(x, y, { text: words, "text-anchor": anchor, "font-size": frame.fontPx });
  const floor = frame.y(-4.1);
  const middle = places.junctionMm - (places.junctionMm - places.freeEdgeMm) / 3;
  const isWide = frame.name === "wide";
  const capsuleX = frame.x(places.junctionMm + (isWide ? 4.2 : 1.2));
  return [
    text(frame.x(frame.leftMm + 1.9), frame.y(3.6), [words.femur]),
    text(frame.x(frame.leftMm + 1.9), floor, [words.tibia]),
    isWide ? leader([frame.x(middle), frame.y(-1.4)], [frame.x(middle), floor - 14]) : "",
    isWide ? text(frame.x(middle), floor, [words.meniscus]) : "",
    isWide ? leader([frame.x(places.junctionMm + 0.5), frame.y(2.4)], [capsuleX - 8, frame.y(4.8)]) : "",
    text(capsuleX, frame.y(isWide ? 4.7 : 4.9), [isWide ? words.capsule : words.capsuleShort, "start"]),
    bundleNames(frame, places),
    isWide && model.entryName === "entry" ? text(frame.x(0) - 10, frame.needlePx - 20, [words.entryMark, "end"]) : "",
    isWide && model.entryName === "free edge" ? text(frame.x(0) - 8, frame.y(-1.5), [words.freeEdgeMark, "end"]) : "",
  ].join("");
};

const drawing = (name: "wide" | "narrow", model: LineModel, places: LinePlaces): string => {
  const frame = frameFor(name, model, places);
  const below = rule(frame, model, places);
  const height = below.bottomPx + (name === "wide" ? 12 : 32);
  const clip = `clip-${name}-${[model.entryToJunctionMm, model.junctionToBundleMm, model.freeEdgeToBundleMm, model.answered ? 1 : 0].join("-").replaceAll(".", "_")}`;
  return element("svg", { class: `fig ${name}`, viewBox: `0 0 ${px(frame.widthPx)} ${px(height)}`, "aria-hidden": "true", focusable: "false" }, [
    element("clipPath", { id: clip }, element("rect", { x: 0, y: 0, width: frame.widthPx, height: frame.heightPx })),
    element("g", { "clip-path": `url(#${clip})` }, tissue(frame, model, places)),
    needle(frame, model),
    below.markup,
    labels(frame, model, places),
    cautionLines({ yPx: below.bottomPx + 4, fontPx: frame.fontPx, isNarrow: name === "narrow" }),
  ].join(""));
};

export interface LineFigure {
  /** Two drawings of one model, for a wide and for a narrow page; a style rule shows one of them. */
  readonly markup: string;
  /** The figure in words, C8 included. */
  readonly text: string;
  /** Where the learner's own depths end; empty without one. */
  readonly own: string;
  /** What the zero of the rule is. */
  readonly zero: string;
}

/** The section along one needle, to scale along the needle only, with its text alternative from the same numbers. */
export const lineFigure = (model: LineModel): LineFigure => {
  const places = placesOn(model);
  return {
    markup: drawing("wide", model, places) + drawing("narrow", model, places),
    text: lineInWords(model, places),
    own: ownInWords(model, places).trim(),
    zero: model.entryName === "entry" ? words.zeroEntry : words.zeroEdge,
  };
};
