import { withUnit } from "../../engine/quantity/format.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { discoid as ledger } from "../../facts/discoid.ts";
import { CHILDREN, given, PERCENT, SIDES } from "../m01/common.ts";

const WIDTH = { key: "widthMm", unit: "mm", least: 11, greatest: 26, step: 0.1 } as const;
const TIBIA = { key: "tibialMm", unit: "mm", least: 50, greatest: 80, step: 1 } as const;
const COMPARTMENT = { key: "compartmentMm", unit: "mm", least: 22, greatest: 38, step: 1 } as const;
const SLICES = { key: "slices", unit: "pieces", least: 1, greatest: 9, step: 1 } as const;
const THICKNESS = { key: "sliceMm", unit: "mm", least: 3, greatest: 5, step: 1 } as const;

const limit = (pin: string): number => ledger(pin).number.value ?? 0;
const WIDTH_LIMIT = limit("discoid-width.threshold@1");
const SHARE_LIMIT = limit("discoid-share.threshold@1");
const SLICES_LIMIT = limit("discoid-slices.threshold@1");
const AGES = ["7", "9", "10", "12", "13"] as const;
/** Whole tibial widths of this question’s own children: wider with age, and narrower than an adult’s (author’s own choice, no source). */
const TIBIA_AT = { "7": { least: 50, greatest: 58 }, "9": { least: 53, greatest: 63 }, "10": { least: 54, greatest: 66 }, "12": { least: 58, greatest: 70 }, "13": { least: 60, greatest: 74 } } as const;
/** Thickness of the slices for which the count was defined. */
const COUNTED_SLICE_MM = 5;
const [WIDTH_SAID, SHARE_SAID, SLICE_SAID] = [withUnit(String(WIDTH_LIMIT), "mm"), withUnit(String(SHARE_LIMIT), "%"), withUnit(String(COUNTED_SLICE_MM), "mm")];

type Picks = Readonly<Record<string, string>>;
const met = (isMet: boolean): string => (isMet ? "met" : "not-met");
const shareOf = (givens: Givens, wholeKey: string): number => (PERCENT * given(givens, "widthMm")) / given(givens, wholeKey);
const bySlices = (givens: Givens): string => met(given(givens, "slices") >= SLICES_LIMIT);

const truth = ({ givens, about }: Draw): Picks => ({
  width: met(given(givens, "widthMm") > WIDTH_LIMIT),
  share: met(shareOf(givens, "tibialMm") > SHARE_LIMIT),
  slices: given(givens, "sliceMm") === COUNTED_SLICE_MM ? bySlices(givens) : "cannot",
  next: about["symptoms"] === "none" ? "watch" : "rim",
});
const unlessSame = (draw: Draw, picks: Picks): Picks | null => {
  const right = truth(draw);
  return Object.keys(right).every((id) => right[id] === (picks[id] ?? right[id])) ? null : { ...right, ...picks };
};
const isClear = (givens: Givens): boolean => compareOnGrid(given(givens, "widthMm"), WIDTH_LIMIT) !== 0 && Math.abs(shareOf(givens, "tibialMm") - SHARE_LIMIT) > 0.2;
/** Slices that join the horns follow from the width: about as many as fit into it, one more or one fewer. */
const drawSlices = (chance: Chance, widthMm: number, sliceMm: number): number => Math.min(SLICES.greatest, Math.max(SLICES.least, Math.floor(widthMm / sliceMm) + chance.pick([-1, 0, 1])));
const share = (say: Say): string => say.number((PERCENT * say.value("widthMm")) / say.value("tibialMm"));

const COMPLAINTS: Readonly<Record<string, string>> = { none: "There are no symptoms; the scan was made for another reason.", snapping: "The knee snaps.", locking: "The knee has locked twice.", pain: "The outer side hurts on stairs." };
const complaint = (say: Say): string => COMPLAINTS[say.about("symptoms")] ?? "";

/** 09f: which criteria of a discoid meniscus are met, and what matters more before surgery. */
export const discoidCriteria: NameFamily = {
  kind: "name",
  id: "discoid",
  code: "09f",
  module: "M09",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m09-discoid"],
  reads: ["discoid-width.threshold@1", "discoid-share.threshold@1", "discoid-slices.threshold@1"],
  sources: [{ source: "nippon-1991", entry: "discoid-width.threshold@1" }, { source: "silverman-1989", entry: "discoid-slices.threshold@1" }],
  cautions: ["C3", "C9"],
  givens: [WIDTH, TIBIA, COMPARTMENT, SLICES, THICKNESS],
  attributes: [
    { id: "width", options: ["met", "not-met", "cannot"] },
    { id: "share", options: ["met", "not-met", "cannot"] },
    { id: "slices", options: ["met", "not-met", "cannot"] },
    { id: "next", options: ["rim", "watch", "size"] },
  ],
  draw: (chance) => {
    const age = chance.pick(AGES);
    const tibialMm = chance.onGrid({ ...TIBIA, ...TIBIA_AT[age] });
    const compartmentMm = Math.round(tibialMm * 0.45);
    const width = { ...WIDTH, greatest: Math.min(WIDTH.greatest, compartmentMm - 4) };
    const drawn = chance.onGrid(width);
    const fits = (widthMm: number): boolean => isClear({ widthMm, tibialMm, compartmentMm });
    const widthMm = [drawn, drawn + 0.3, drawn - 0.3, drawn + 0.6].map((one) => Number(one.toFixed(1))).find((one) => one >= width.least && fits(one)) ?? drawn;
    const about = { child: chance.pick(CHILDREN), age, side: chance.pick(SIDES), symptoms: chance.pick(["none", "snapping", "locking", "pain"]) };
    const sliceMm = chance.pick([3, 4, 5, 5, 5]);
    return { givens: { widthMm, tibialMm, compartmentMm, slices: drawSlices(chance, widthMm, sliceMm), sliceMm }, about };
  },
  truth,
  slips: [
    { id: "half-the-denominator", gives: (draw) => unlessSame(draw, { share: met(shareOf(draw.givens, "compartmentMm") > SHARE_LIMIT) }) },
    { id: "slices-of-any-thickness", gives: (draw) => unlessSame(draw, { slices: bySlices(draw.givens) }) },
    { id: "three-not-enough", gives: (draw) => (given(draw.givens, "slices") === SLICES_LIMIT && given(draw.givens, "sliceMm") === COUNTED_SLICE_MM ? unlessSame(draw, { slices: "not-met" }) : null) },
    { id: "size-decides", gives: (draw) => unlessSame(draw, { next: "size" }) },
  ],
  words: {
    en: {
      title: "Discoid, by which measure",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. ${complaint(say)} The scan of the ${say.about("side")} knee shows a broad lateral meniscus. The criteria below come from small, mostly adult series: width, share of the whole tibial width, and slices that join the two horns.`],
        (say) => [`A broad lateral meniscus in the ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}. ${complaint(say)} You check the three printed criteria one by one; they were made for other patients and other slices.`],
        (say) => [`The report says discoid, without saying by which measure. ${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, lateral meniscus. ${complaint(say)}`],
      ],
      question: `Which criteria are met, and what comes next? Width above ${WIDTH_SAID}; above ${SHARE_SAID} of the whole tibial width; ${SLICES_LIMIT} or more neighbouring sagittal slices of ${SLICE_SAID}.`,
      givens: { widthMm: "Width of the lateral meniscus, coronal", tibialMm: "Whole tibial width", compartmentMm: "Width of the lateral compartment", slices: "Neighbouring sagittal slices that join the horns", sliceMm: "Thickness of these slices" },
      attributes: { width: "Width", share: "Share of the tibia", slices: "Slices", next: "What matters more now" },
      options: { met: "Met", "not-met": "Not met", cannot: "Cannot be told", rim: "Whether the rim is stable, and the symptoms", watch: "No symptoms: it is watched", size: "The size decides" },
      slips: {
        "half-the-denominator": { name: "compartment for tibia", because: (say) => [`The share is taken of the whole tibial width, ${say.of("tibialMm")}. Of the compartment alone almost every meniscus is more than a fifth.`] },
        "slices-of-any-thickness": { name: "slices of another thickness", because: (say) => [`The count was defined for slices of ${SLICE_SAID}. Yours are ${say.of("sliceMm")}; a count of them meets or misses nothing.`] },
        "three-not-enough": { name: "three taken as too few", because: () => [`${SLICES_LIMIT} or more: ${SLICES_LIMIT} are enough.`] },
        "size-decides": { name: "size decides", because: (say) => [say.about("symptoms") === "none" ? "A broad meniscus that troubles nobody is watched. Size alone is no reason to operate." : "What decides is whether the rim is stable and what the child feels. Nearly half of a registry’s discoid menisci had a loose rim."] },
      },
      working: (say) => [
        `Width: ${say.of("widthMm")} against ${WIDTH_SAID}`,
        `Share: ${say.bare("widthMm")} ÷ ${say.bare("tibialMm")} = ${withUnit(share(say), "%")}, against ${SHARE_SAID}`,
        `Slices: ${say.bare("slices")} of ${say.of("sliceMm")}, against ${SLICES_LIMIT} of ${SLICE_SAID}`,
        say.about("symptoms") === "none" ? "No symptoms: watched." : "With symptoms: look at the rim before anything is cut.",
      ],
      right: (say) => [`The three measures do not always agree; say which one you mean. ${say.about("symptoms") === "none" ? "Without symptoms it is watched." : "Rim and symptoms weigh more than size."}`],
      off: () => ["Take each criterion with its own denominator and its own slices. Then leave them, and ask for symptoms and the rim."],
    },
  },
};
