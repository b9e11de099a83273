import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, CHILDREN, given, PERCENT, SIDES } from "./common.ts";

const WIDTH = { key: "widthMm", unit: "mm", least: 5, greatest: 12, step: 0.1 } as const;
const COMPARTMENT = { key: "compartmentMm", unit: "mm", least: 18, greatest: 35, step: 1 } as const;
const TIBIA = { key: "tibialMm", unit: "mm", least: 38, greatest: 78, step: 1 } as const;

/** A drawn meniscus takes between a quarter and a half of its compartment: neither torn away nor discoid. */
const LEAST_SHARE = 0.25;
const GREATEST_SHARE = 0.5;

const share = (givens: Givens, key: string): number => (PERCENT * given(givens, "widthMm")) / given(givens, key);

/** 01b: how much of its compartment a meniscus is wide. */
export const widthShare: SumFamily = {
  kind: "sum",
  id: "width-share",
  code: "01b",
  module: "M01",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m01-share"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [WIDTH, COMPARTMENT, TIBIA],
  asks: [{ id: "sharePercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const compartmentMm = chance.onGrid(COMPARTMENT);
    const tibialMm = Math.min(TIBIA.greatest, Math.max(TIBIA.least, 2 * compartmentMm + 3 + chance.below(6)));
    const width = { ...WIDTH, least: Math.max(WIDTH.least, Math.ceil(LEAST_SHARE * compartmentMm)), greatest: Math.min(WIDTH.greatest, Math.floor(GREATEST_SHARE * compartmentMm)) };
    return {
      givens: { widthMm: chance.onGrid(width), compartmentMm, tibialMm },
      about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), meniscus: chance.pick(["medial", "lateral"]) },
    };
  },
  solve: (givens) => ({ sharePercent: share(givens, "compartmentMm") }),
  slips: [
    { id: "whole-tibia", gives: ({ givens }) => ({ sharePercent: share(givens, "tibialMm") }) },
    { id: "upside-down", gives: ({ givens }) => ({ sharePercent: PERCENT ** 2 / share(givens, "compartmentMm") }) },
    { id: "against-the-rest", gives: ({ givens }) => ({ sharePercent: (PERCENT * given(givens, "widthMm")) / (given(givens, "compartmentMm") - given(givens, "widthMm")) }) },
  ],
  words: {
    en: {
      title: "Width as a share",
      stems: [
        (say) => [`On a coronal drawing of ${say.about("child")}’s ${say.about("side")} knee you measure the ${say.about("meniscus")} meniscus, its compartment and the whole tibia.`],
        (say) => [`Widths in millimetres grow with the child; shares can be compared. ${say.about("child")}, ${say.about("side")} knee, ${say.about("meniscus")} meniscus, coronal drawing.`],
        (say) => [`A share is told by what stands below the line. ${say.about("side").charAt(0).toUpperCase()}${say.about("side").slice(1)} knee of ${say.about("child")}: width of the ${say.about("meniscus")} meniscus, of its compartment, of the tibia.`],
      ],
      question: "What share of the width of its compartment does the meniscus take? In per cent, to one decimal.",
      givens: { widthMm: "Width of the meniscus", compartmentMm: "Width of its compartment", tibialMm: "Whole tibial width" },
      asks: { sharePercent: "Share of the compartment" },
      says: { none: "There is no such share", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "whole-tibia": { name: "whole tibia below the line", because: (say) => [`The compartment was asked, ${say.of("compartmentMm")}. The rule for discoid menisci does take the whole tibial width; this question does not.`] },
        "upside-down": { name: "upside down", because: () => ["A part of the compartment cannot be more than a hundred per cent of it. The meniscus stands above the line."] },
        "against-the-rest": { name: "against the rest", because: () => ["You set the meniscus against what it leaves bare. A share is of the whole."] },
      },
      working: (say) => [`${say.of("widthMm")} ÷ ${say.of("compartmentMm")} = ${answerText(say, "sharePercent", { places: 1, unit: "%" })}`],
      right: (say) => [`${answerText(say, "sharePercent", { places: 1, unit: "%" })} of the compartment. Whenever a share is printed, look for what stands below its line.`],
      off: () => ["Meniscus above the line, its own compartment below."],
      inverse: (say, { text }) => [`If the meniscus were ${text} wide. Here it is ${say.of("widthMm")}.`],
    },
  },
  inverseOf: "widthMm",
};
