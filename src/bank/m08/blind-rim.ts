import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { optics } from "../../facts/optics.ts";
import { answerText, given, isSaid, PERCENT } from "../m01/common.ts";

const RIM = { key: "rimMm", unit: "mm", least: 60, greatest: 115, step: 1 } as const;
const BLIND = { key: "blindPercent", unit: "%", least: 10, greatest: 40, step: 0.1 } as const;
const PIN = "blind-rim.medial@1";

const CASES: Readonly<Record<string, string>> = {
  "medial-adult": "This is the medial rim of an adult knee",
  "lateral-adult": "This is the lateral rim of an adult knee",
  "medial-child": "This is the medial rim of a child of ten",
};
const fits = (about: Draw["about"]): boolean => (about["case"] ?? "medial-adult") === "medial-adult";
const blind = (givens: Givens): number => (given(givens, "rimMm") * given(givens, "blindPercent")) / PERCENT;
const unlessFits = ({ about }: Draw, blindMm: number): { readonly blindMm: number } | null => (fits(about) ? null : { blindMm });
const caseText = (say: Say): string => CASES[say.about("case")] ?? "";
const rounded = { places: 1, unit: "mm" } as const;

/** 08e: how much of a rim stays blind, where the published share applies. */
export const blindRim: SumFamily = {
  kind: "sum",
  id: "blind-rim",
  code: "08e",
  module: "M08",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m08-unseen"],
  reads: [PIN],
  sources: [{ source: "morin-1993", entry: PIN }],
  cautions: ["C3", "C9"],
  givens: [RIM, BLIND],
  asks: [{ id: "blindMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const name = chance.pick(["medial-adult", "medial-adult", "lateral-adult", "medial-child"]);
    const rim = name === "medial-child" ? { ...RIM, greatest: 85 } : { ...RIM, least: 80 };
    return { givens: { rimMm: chance.onGrid(rim), blindPercent: optics(PIN).number.value ?? 0 }, about: { case: name, knees: chance.pick(["left", "right"]) }, origins: { blindPercent: { from: "study", entry: PIN } } };
  },
  solve: (givens, about) => {
    const blindMm = blind(givens);
    return fits(about) ? { blindMm } : { says: "cannot-be-told" };
  },
  slips: [
    { id: "seen-for-blind", gives: (draw) => (fits(draw.about) ? { blindMm: given(draw.givens, "rimMm") - blind(draw.givens) } : null) },
    { id: "divided-by-the-share", gives: (draw) => (fits(draw.about) ? { blindMm: given(draw.givens, "rimMm") / given(draw.givens, "blindPercent") } : null) },
    { id: "medial-share-on-the-lateral", gives: (draw) => (draw.about["case"] === "lateral-adult" ? unlessFits(draw, blind(draw.givens)) : null) },
    { id: "adult-share-on-a-child", gives: (draw) => (draw.about["case"] === "medial-child" ? unlessFits(draw, blind(draw.givens)) : null) },
    { id: "half-of-it-for-safety", gives: (draw) => unlessFits(draw, blind(draw.givens) / 2) },
  ],
  words: {
    en: {
      title: "The blind part of a rim",
      stems: [
        (say) => [`In five adult knees a share of the medial meniscocapsular rim stayed unseen after a look from the front and one through the notch. ${caseText(say)}, ${say.about("knees")} side, measured along the rim.`],
        (say) => [`${caseText(say)}, ${say.about("knees")} side. A paper on five adult knees prints how much of the medial rim is not seen from the front and through the notch.`],
        (say) => [`What was not seen was not looked at, however still the picture. The share is of the medial rim in five adult knees. ${caseText(say)}, ${say.about("knees")} side.`],
      ],
      question: "How many millimetres of this rim would stay blind? To the nearest tenth, or the answer in words.",
      givens: { rimMm: "Length of this rim", blindPercent: "Share of the medial rim not seen, five adult knees" },
      asks: { blindMm: "Blind part" },
      says: { none: "Nothing stays blind", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "seen-for-blind": { name: "seen for blind", because: () => ["That is what was seen. The share is of what was not."] },
        "divided-by-the-share": { name: "divided by the share", because: () => ["A share of a length is a product."] },
        "medial-share-on-the-lateral": { name: "medial share on the lateral side", because: () => ["The share was measured on the medial side. For the lateral rim nothing is printed here."] },
        "adult-share-on-a-child": { name: "adult share on a child", because: () => ["Five adult knees. How much of a child’s rim stays blind, nobody has measured that was found."] },
        "half-of-it-for-safety": { name: "half of it, to be careful", because: () => ["Half of a share that does not apply is no better than the whole of it."] },
      },
      working: (say) => isSaid(say) ? ["The share is of the medial rim of adults. This rim is another one, so it cannot be told."] : [`${say.bare("rimMm")} × ${say.bare("blindPercent")} ÷ 100 = ${answerText(say, "blindMm", rounded)}`],
      right: (say) => isSaid(say) ? ["It cannot be told: another side or another age than the five knees that were measured."] : [`${answerText(say, "blindMm", rounded)} of this rim are felt with a probe or seen from behind, or not at all.`],
      off: (say) => isSaid(say) ? ["Whose rim is it, and whose share? Where they differ, there is no number."] : ["Length of the rim times the share that is not seen."],
      inverse: () => [],
      turns: (say) => [isSaid(say) ? "On the medial rim of an adult it would be a product." : "On a lateral rim, or in a child, the answer would be in words."],
    },
  },
};
