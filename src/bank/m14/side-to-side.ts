import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, childOf, drawCase, given, SUM_SAYS } from "./later-words.ts";

const PER_CENT = 100;
const OPERATED = { key: "operatedCm", unit: "cm", least: 40, greatest: 180, step: 1 } as const;
const OTHER = { key: "otherCm", unit: "cm", least: 60, greatest: 200, step: 1 } as const;

/** Hops that go with an age, roughly, so that none is absurd beside its child; no source. */
const HOPS = [{ fromYears: 13, least: 90, greatest: 190 }, { fromYears: 11, least: 70, greatest: 140 }, { fromYears: 0, least: 60, greatest: 120 }] as const;
const hopsAt = (years: number) => ({ ...OTHER, ...(HOPS.find(({ fromYears }) => fromYears <= years) ?? HOPS[0]) });

const symmetry = (givens: Givens): number => (PER_CENT * given(givens, "operatedCm")) / given(givens, "otherCm");
const answer = (say: Say): string => say.number(answerOf(say, "symmetryPercent"), 0);

/** 14l: the operated side as a share of the other. */
export const sideToSide: SumFamily = {
  kind: "sum",
  id: "side-to-side",
  code: "14l",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-load"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [OPERATED, OTHER],
  asks: [{ id: "symmetryPercent", unit: "%", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const about = drawCase(chance);
    const otherCm = chance.onGrid(hopsAt(Number(about["age"])));
    const least = Math.max(OPERATED.least, Math.ceil(otherCm * 0.6));
    return { givens: { operatedCm: chance.onGrid({ ...OPERATED, least, greatest: Math.min(OPERATED.greatest, otherCm - 1) }), otherCm }, about };
  },
  solve: (givens) => ({ symmetryPercent: symmetry(givens) }),
  slips: [
    { id: "turned-over", gives: ({ givens }) => ({ symmetryPercent: (PER_CENT * given(givens, "otherCm")) / given(givens, "operatedCm") }) },
    { id: "what-is-missing", gives: ({ givens }) => ({ symmetryPercent: PER_CENT - symmetry(givens) }) },
    { id: "share-of-both", gives: ({ givens }) => ({ symmetryPercent: (PER_CENT * given(givens, "operatedCm")) / (given(givens, "operatedCm") + given(givens, "otherCm")) }) },
  ],
  words: {
    en: {
      title: "One side against the other",
      stems: [
        (say) => [`${childOf(say)}, hops forward on one leg, first on the one that was not operated on. The plan at ${say.about("hospital")} asks for the operated side as a share of the other.`],
        (say) => [`Nine months after a repair of the ${say.about("side")} knee, ${childOf(say)}, is measured in hops. At ${say.about("hospital")} the result is written as symmetry.`],
        (say) => [`You read two distances to ${say.about("child")} and the parents, and they ask what they mean. The ${say.about("side")} knee was repaired.`],
      ],
      question: "What is the symmetry, the operated side as a share of the other? To the nearest per cent.",
      givens: { operatedCm: "Longest hop, operated side", otherCm: "Longest hop, other side" },
      asks: { symmetryPercent: "Symmetry" },
      says: SUM_SAYS,
      slips: {
        "turned-over": { name: "division turned over", because: () => ["Over a hundred would mean that the operated side hops farther. Divide the operated side by the other."] },
        "what-is-missing": { name: "what is missing", because: (say) => [`That is what the operated side lacks. Symmetry is what it has: ${answer(say)} per cent.`] },
        "share-of-both": { name: "share of both together", because: () => ["The other side alone is the measure, not the two together. Equal legs would read 50 that way."] },
      },
      working: (say) => [`100 × ${say.bare("operatedCm")} ÷ ${say.bare("otherCm")} = ${answer(say)} per cent`],
      right: (say) => [`${answer(say)} per cent. The other leg may have weakened as well, so symmetry says less than it seems to.`],
      off: (say) => [`Operated over other, times a hundred: ${answer(say)} per cent.`],
      inverse: () => [],
      turns: (say) => [`One centimetre more on the operated side adds ${say.number(PER_CENT / say.value("otherCm"))} points of symmetry; a weaker other side raises it without anything having healed.`],
    },
  },
};
