import { withUnit } from "../../engine/quantity/format.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, GivenSpec, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { optics } from "../../facts/optics.ts";
import { answerText, given, isSaid, PERCENT } from "../m01/common.ts";

const LENGTH = { unit: "mm" as const, step: 0.1 };
const SEEN_SCAN = { key: "seenScanMm", ...LENGTH, least: 4, greatest: 14 };
const WHOLE_SCAN = { key: "wholeScanMm", ...LENGTH, least: 34, greatest: 46 };
const SEEN_CUT = { key: "seenCutMm", ...LENGTH, least: 4, greatest: 16 };
const WHOLE_CUT = { key: "wholeCutMm", ...LENGTH, least: 30, greatest: 44 };
const PUBLISHED = ["unseen.hidden-zone-mri@1", "unseen.hidden-zone-dissection@1"] as const;

type About = Draw["about"];
const keys = (ruler: string | undefined): { readonly seen: string; readonly whole: string } => (ruler === "dissection" ? { seen: SEEN_CUT.key, whole: WHOLE_CUT.key } : { seen: SEEN_SCAN.key, whole: WHOLE_SCAN.key });
const other = (ruler: string | undefined): string => (ruler === "dissection" ? "scan" : "dissection");
const unseen = (givens: Givens, seen: string, whole: string): Solution => ({ unseenPercent: PERCENT * (1 - given(givens, seen) / given(givens, whole)) });
const own = (givens: Givens, about: About): Solution => unseen(givens, keys(about["ruler"]).seen, keys(about["ruler"]).whole);
const isChild = (about: About): boolean => about["who"] === "child";
const whose = (say: Say): string => (say.about("who") === "child" ? "The question is now asked for a child of nine, who has been neither scanned nor cut." : "The question stays with this adult knee.");
const seenOf = (say: Say): string => say.bare(keys(say.about("ruler")).seen);
const wholeOf = (say: Say): string => say.bare(keys(say.about("ruler")).whole);

/** Two rulers on one specimen: they differ by a few millimetres, as they do in print. */
const drawRulers = (chance: Chance): Givens => {
  const seenScanMm = chance.onGrid(SEEN_SCAN);
  const wholeScanMm = chance.onGrid(WHOLE_SCAN);
  const near = (spec: GivenSpec, mm: number, apartMm: number): number =>
    chance.onGrid({ ...spec, least: Math.max(spec.least, Math.floor(mm) - apartMm), greatest: Math.min(spec.greatest, Math.ceil(mm) + apartMm) });
  return { seenScanMm, wholeScanMm, seenCutMm: near(SEEN_CUT, seenScanMm, 2), wholeCutMm: near(WHOLE_CUT, wholeScanMm, 4) };
};

/** 08d: the share of a meniscal rim that was not seen, by one named ruler. */
export const unseenShare: SumFamily = {
  kind: "sum",
  id: "unseen",
  code: "08d",
  module: "M08",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m08-unseen"],
  reads: PUBLISHED,
  sources: [{ source: "hidden-zone", entry: "unseen.hidden-zone-mri@1" }],
  cautions: ["C3", "C9"],
  givens: [SEEN_SCAN, WHOLE_SCAN, SEEN_CUT, WHOLE_CUT],
  asks: [{ id: "unseenPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({
    givens: drawRulers(chance),
    about: { ruler: chance.pick(["scan", "dissection"]), who: chance.pick(["adult", "adult", "adult", "child"]) },
  }),
  solve: (givens, about) => {
    const solution = own(givens, about);
    return isChild(about) ? { says: "cannot-be-told" } : solution;
  },
  slips: [
    { id: "two-rulers", gives: ({ givens, about }) => (isChild(about) ? null : unseen(givens, keys(about["ruler"]).seen, keys(other(about["ruler"])).whole)) },
    { id: "two-rulers-above", gives: ({ givens, about }) => (isChild(about) ? null : unseen(givens, keys(other(about["ruler"])).seen, keys(about["ruler"]).whole)) },
    { id: "other-ruler", gives: ({ givens, about }) => own(givens, { ruler: other(about["ruler"]) }) },
    { id: "seen-for-unseen", gives: ({ givens, about }) => (isChild(about) ? null : { unseenPercent: PERCENT - ((own(givens, about) as Record<string, number>)["unseenPercent"] ?? 0) }) },
    { id: "adult-for-child", gives: ({ givens, about }) => (isChild(about) ? own(givens, about) : null) },
  ],
  words: {
    en: {
      title: "Not seen, by which ruler",
      stems: [
        (say) => [`In one invented adult specimen the posterior horn was measured twice: on a scan and by dissection. Each ruler has its own seen length and its own whole length. ${whose(say)} The ruler to use: ${say.about("ruler")}.`],
        (say) => [`Two rulers were laid on the same adult meniscus, the scan and the dissection; the numbers are invented. ${whose(say)} Work with the ${say.about("ruler")}.`],
        (say) => [`A share needs one ruler above and below the line. An invented adult specimen, seen and whole length by scan and by dissection. ${whose(say)} Named ruler: ${say.about("ruler")}.`],
      ],
      question: "What share of the length was not seen? To one decimal, or the answer in words.",
      givens: { seenScanMm: "Seen, on the scan", wholeScanMm: "Whole length, on the scan", seenCutMm: "Seen, by dissection", wholeCutMm: "Whole length, by dissection" },
      asks: { unseenPercent: "Not seen" },
      says: { none: "Everything was seen", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "two-rulers": { name: "two rulers in one fraction", because: () => ["Above the line stands one ruler, below it the other. Two rulers in one fraction give a share of nothing."] },
        "two-rulers-above": { name: "the other ruler above the line", because: (say) => [`Below the line stands the ${say.about("ruler")}, above it the other ruler. Seen and whole have to be measured alike.`] },
        "other-ruler": { name: "the other ruler", because: (say) => [`The ${say.about("ruler")} was named, and you used the other one. Both can be right; say which.`] },
        "seen-for-unseen": { name: "seen for unseen", because: () => ["That is the share that was seen. What is missing to a hundred was not."] },
        "adult-for-child": { name: "adult share on a child", because: () => ["These lengths are of an adult specimen. A share of a child’s meniscus cannot be read from them."] },
      },
      working: (say) => isSaid(say) ? ["No child was measured. An adult share is not a child’s share."] : [
        `Seen: ${seenOf(say)} ÷ ${wholeOf(say)} = ${say.number(PERCENT - ((say.answer as Record<string, number>)["unseenPercent"] ?? 0))} %`,
        `Not seen: ${answerText(say, "unseenPercent", { places: 1, unit: "%" })}, by ${say.about("ruler")}`,
      ],
      right: (say) => isSaid(say) ? ["It cannot be told: adults were measured, and this is a child."] : [`${answerText(say, "unseenPercent", { places: 1, unit: "%" })} by ${say.about("ruler")}. One paper on adults prints ${PUBLISHED.map((pin) => withUnit(optics(pin).value.value ?? "", "%")).join(" and ")}, one by each ruler.`],
      off: (say) => isSaid(say) ? ["Ask in whom it was measured before you take a share of it."] : ["Take seen and whole length from the same ruler, and what is missing to a hundred."],
      inverse: () => [],
      turns: (say) => [isSaid(say) ? "In the adult specimen itself it would be a sum." : "For a child the answer would be in words: it cannot be told."],
    },
  },
};
