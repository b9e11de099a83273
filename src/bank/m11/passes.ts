import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { passes } from "../../engine/repair/passes.ts";
import { answerValue, counted, given } from "../m01/common.ts";
import { CASE_ABOUT, caseOf, STITCH_SAYS } from "./stitch-words.ts";

const ANCHORED = { key: "anchored", unit: "pieces", least: 1, greatest: 6, step: 1 } as const;
const INSIDE_OUT = { key: "insideOut", unit: "pieces", least: 1, greatest: 5, step: 1 } as const;

const countsOf = (givens: Givens): { readonly passes: number; readonly anchors: number; readonly needles: number } => {
  const anchored = given(givens, "anchored");
  const insideOut = given(givens, "insideOut");
  if (!Number.isFinite(anchored + insideOut)) return { passes: Number.NaN, anchors: Number.NaN, needles: Number.NaN };
  const first = passes({ stitches: Math.max(0, Math.round(anchored)), method: "two-anchor" });
  const second = passes({ stitches: Math.max(0, Math.round(insideOut)), method: "inside-out" });
  return { passes: first.passes + second.passes, anchors: first.anchors, needles: second.needles };
};

const value = (say: Say, id: string): string => String(answerValue(say, id));

/** 11c: needle passes, anchors left in the knee and needles to be counted. */
export const needlePasses: SumFamily = {
  kind: "sum",
  id: "passes",
  code: "11c",
  module: "M11",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m11-count"],
  reads: [],
  sources: [],
  cautions: ["C5"],
  givens: [ANCHORED, INSIDE_OUT],
  asks: [
    { id: "passes", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "anchors", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "needles", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({ givens: { anchored: chance.onGrid(ANCHORED), insideOut: chance.onGrid(INSIDE_OUT) }, about: CASE_ABOUT(chance) }),
  solve: (givens) => ({ ...countsOf(givens) }),
  slips: [
    { id: "stitches-for-passes", gives: ({ givens }) => ({ ...countsOf(givens), passes: given(givens, "anchored") + given(givens, "insideOut") }) },
    { id: "devices-for-anchors", gives: ({ givens }) => ({ ...countsOf(givens), anchors: given(givens, "anchored") }) },
    { id: "sutures-for-needles", gives: ({ givens }) => ({ ...countsOf(givens), needles: given(givens, "insideOut") }) },
    { id: "needles-of-both", gives: ({ givens }) => ({ ...countsOf(givens), needles: countsOf(givens).passes }) },
  ],
  words: {
    en: {
      title: "Passes, anchors, needles",
      stems: [
        (say) => [`${caseOf(say)} Part of it is closed with two-anchor stitches, one device each; part with inside-out stitches, each one suture with a needle at either end.`],
        (say) => [`${caseOf(say)} The surgeon names the plan aloud, so that the count can be prepared: two-anchor stitches, one device each, and inside-out stitches, each a suture with two needles.`],
        (say) => [`The circulating nurse asks what will pass, what will stay and what must come back. ${caseOf(say)} Two-anchor stitches use one device each; an inside-out stitch is one suture with a needle at either end.`],
      ],
      question: "How many needle passes through the meniscus, how many anchors left in the knee, and how many loose needles to count back?",
      givens: { anchored: "Two-anchor stitches", insideOut: "Inside-out stitches" },
      asks: { passes: "Passes", anchors: "Anchors that stay", needles: "Loose needles to count back" },
      says: { ...STITCH_SAYS, none: "Nothing to count here" },
      slips: {
        "stitches-for-passes": { name: "stitches taken for passes", because: () => ["Every stitch goes through twice, once on either side of its bridge. Each pass is a hole in the meniscus."] },
        "devices-for-anchors": { name: "devices taken for anchors", because: (say) => [`${counted(say.bare("anchored"), "device leaves two anchors", "devices leave two anchors each")}. The record needs what stays in the knee, not what was unwrapped.`] },
        "sutures-for-needles": { name: "sutures taken for needles", because: (say) => [`A suture carries a needle at either end: ${counted(say.bare("insideOut"), "suture")}, twice as many needles. A count of sutures loses half of the needles.`] },
        "needles-of-both": { name: "device needles counted as loose", because: () => ["The needle of a device never leaves it, so it is counted with the device. Only the needles of the inside-out sutures lie loose."] },
      },
      working: (say) => [
        `Passes: 2 × (${say.bare("anchored")} + ${say.bare("insideOut")}) = ${value(say, "passes")}`,
        `Anchors: 2 × ${say.bare("anchored")} = ${value(say, "anchors")}`,
        `Loose needles: 2 × ${say.bare("insideOut")} = ${value(say, "needles")}`,
        "Two anchors a device and two needles a suture: common practice, no source; the packet in your hand decides.",
      ],
      right: (say) => [`${value(say, "passes")} passes, ${value(say, "anchors")} anchors that stay and ${value(say, "needles")} loose needles that must come back, each looked at for its tip.`],
      off: () => ["Every stitch passes twice. A two-anchor stitch leaves two anchors and no loose needle; an inside-out stitch leaves no anchor and two loose needles."],
      inverse: () => [],
      turns: () => ["One two-anchor stitch more adds two passes and two anchors; one inside-out stitch more adds two passes and two needles."],
    },
  },
};
