import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { meniscusSize } from "../../facts/meniscus-size.ts";
import { answerText, CHILDREN, given, PERCENT } from "./common.ts";

const AREA = { key: "areaMm2", unit: "mm2", least: 250, greatest: 900, step: 10 } as const;
const MEDIAL = { key: "medialCoverPercent", unit: "%", least: 40, greatest: 70, step: 0.01 } as const;
const LATERAL = { key: "lateralCoverPercent", unit: "%", least: 40, greatest: 70, step: 0.01 } as const;

const areasOf = (areaMm2: number, coverPercent: number): Readonly<Record<string, number>> => {
  const coveredMm2 = (areaMm2 * coverPercent) / PERCENT;
  return { coveredMm2, bareMm2: areaMm2 - coveredMm2 };
};
const keyOf = (side: string | undefined): string => (side === "lateral" ? LATERAL.key : MEDIAL.key);
const otherSide = (side: string | undefined): string => (side === "lateral" ? "medial" : "lateral");
const whose = (say: Say): string => (say.about("who") === "infant" ? "children of 1–36 months" : "healthy adults");
const square = { places: 0, unit: "mm2" } as const;

/** 01a: how much of a compartment the meniscus covers, and how much stays bare. */
export const coverArea: SumFamily = {
  kind: "sum",
  id: "cover-area",
  code: "01a",
  module: "M01",
  version: 0,
  firstWave: true,
  unsafe: false,
  objectives: ["m01-share"],
  reads: ["medial-cover.infant@1", "lateral-cover.infant@1", "medial-cover.adult@1", "lateral-cover.adult@1"],
  sources: [{ source: "coverage-infant", entry: "lateral-cover.infant@1" }, { source: "bloecker-2011", entry: "lateral-cover.adult@1" }],
  cautions: ["C9"],
  givens: [AREA, MEDIAL, LATERAL],
  asks: [
    { id: "coveredMm2", unit: "mm2", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "bareMm2", unit: "mm2", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const who = chance.pick(["infant", "adult"]);
    const [medial, lateral] = [`medial-cover.${who}@1`, `lateral-cover.${who}@1`];
    const area = who === "infant" ? { ...AREA, greatest: 450 } : { ...AREA, least: 700 };
    return {
      givens: { areaMm2: chance.onGrid(area), medialCoverPercent: meniscusSize(medial).number.value ?? 0, lateralCoverPercent: meniscusSize(lateral).number.value ?? 0 },
      about: { who, side: chance.pick(["medial", "lateral"]), child: chance.pick(CHILDREN) },
      origins: { medialCoverPercent: { from: "study", entry: medial }, lateralCoverPercent: { from: "study", entry: lateral } },
    };
  },
  solve: (givens, about) => areasOf(given(givens, "areaMm2"), given(givens, keyOf(about["side"]))),
  slips: [
    { id: "other-compartment", gives: ({ givens, about }) => areasOf(given(givens, "areaMm2"), given(givens, keyOf(otherSide(about["side"])))) },
    { id: "whole-plateau", gives: ({ givens, about }) => areasOf(2 * given(givens, "areaMm2"), given(givens, keyOf(about["side"]))) },
    {
      id: "exchanged",
      gives: ({ givens, about }) => {
        const { coveredMm2 = 0, bareMm2 = 0 } = areasOf(given(givens, "areaMm2"), given(givens, keyOf(about["side"])));
        return { coveredMm2: bareMm2, bareMm2: coveredMm2 };
      },
    },
  ],
  words: {
    en: {
      title: "Covered and bare",
      stems: [
        (say) => [`The ${say.about("side")} compartment of a tibia has the area below. Shares of the compartment that the menisci cover were published for ${whose(say)}.`],
        (say) => [`On a generated drawing you outline the ${say.about("side")} compartment of the tibia. Take the shares published for ${whose(say)}: each is a share of its own compartment.`],
        (say) => [`A meniscus spreads load because it covers cartilage. This is the ${say.about("side")} compartment; the shares are those of ${whose(say)}.`],
      ],
      question: "How much of this compartment does its meniscus cover, and how much stays bare? In whole square millimetres.",
      givens: {
        areaMm2: (say) => `Area of the ${say.about("side")} compartment`,
        medialCoverPercent: (say) => `Covered by the medial meniscus, ${whose(say)}`,
        lateralCoverPercent: (say) => `Covered by the lateral meniscus, ${whose(say)}`,
      },
      asks: { coveredMm2: "Covered", bareMm2: "Bare" },
      says: { none: "No area is covered here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "other-compartment": { name: "the other compartment’s share", because: (say) => [`You used the ${otherSide(say.about("side"))} share on the ${say.about("side")} side. The lateral meniscus covers more of its compartment than the medial one.`] },
        "whole-plateau": { name: "whole plateau", because: (say) => [`${say.of("areaMm2")} is one compartment already. The share belongs to that compartment, not to the plateau.`] },
        exchanged: { name: "covered and bare exchanged", because: (say) => [`The share says what is covered: ${say.of(keyOf(say.about("side")))}. What is left of a hundred stays bare.`] },
      },
      working: (say) => [
        `Covered: ${say.bare("areaMm2")} × ${say.bare(keyOf(say.about("side")))} ÷ 100 = ${answerText(say, "coveredMm2", square)}`,
        `Bare: ${say.bare("areaMm2")} less that, ${answerText(say, "bareMm2", square)}`,
      ],
      right: (say) => [`${answerText(say, "coveredMm2", square)} covered, ${answerText(say, "bareMm2", square)} bare. Between the third year and adult life nothing was found; do not draw a line between the two groups.`],
      off: () => ["One compartment, its own share: area times share is covered, the rest is bare."],
      inverse: () => [],
      turns: (say) => [`On the ${otherSide(say.about("side"))} side, with the same area, the answer would use ${say.of(keyOf(otherSide(say.about("side"))))}.`],
    },
  },
};
