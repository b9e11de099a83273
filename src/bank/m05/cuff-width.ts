import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { isSays } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { cuffWidthCm } from "../../engine/theatre/cuff-width-cm.ts";
import { cuff } from "../../facts/cuff.ts";
import { answerIn, CHILDREN, childOf, given, measure } from "./theatre-words.ts";

const WIDTH_RULE = "cuff-width.boa@1";
const GIRTH = { key: "girthCm", unit: "cm", least: 22, greatest: 50, step: 0.5 } as const;
const NARROW = { key: "narrowCuffCm", unit: "cm", least: 2.5, greatest: 5, step: 0.5 } as const;
const MIDDLE = { key: "middleCuffCm", unit: "cm", least: 3, greatest: 8, step: 0.5 } as const;
const WIDE = { key: "wideCuffCm", unit: "cm", least: 3.5, greatest: 12, step: 0.5 } as const;
const STEP = { least: 1, greatest: 3, step: 0.5 } as const;

const cuffsOf = (givens: Givens): readonly number[] => [given(givens, "narrowCuffCm"), given(givens, "middleCuffCm"), given(givens, "wideCuffCm")];

/** The narrowest cuff that is wider than what is needed. */
const choose = (givens: Givens, leastCm: number): Solution => {
  const cuffCm = cuffsOf(givens).filter((widthCm) => compareOnGrid(widthCm, leastCm) > 0).sort((first, second) => first - second)[0];
  return cuffCm === undefined ? { says: "none" } : { leastCm, cuffCm };
};

const leastOf = (givens: Givens): number => (given(givens, "girthCm") > 0 ? cuffWidthCm({ girthCm: given(givens, "girthCm") }) : Number.NaN);

/** The same width with another cuff, where there is one. */
const withCuff = (givens: Givens, widthCm: number | undefined): Solution | null =>
  widthCm === undefined || isSays(choose(givens, leastOf(givens))) ? null : { leastCm: leastOf(givens), cuffCm: widthCm };

/** The widest that lies there, where a wrong width would find none wide enough. */
const orWidest = (givens: Givens, leastCm: number): Solution => {
  const chosen = choose(givens, leastCm);
  return isSays(chosen) ? { leastCm, cuffCm: given(givens, "wideCuffCm") } : chosen;
};

/** The widest that lies there, taken although it is too narrow. */
const widestAllTheSame = (givens: Givens): Solution | null =>
  isSays(choose(givens, leastOf(givens))) ? { leastCm: leastOf(givens), cuffCm: given(givens, "wideCuffCm") } : null;

/** Ages that go with a girth, roughly: no published girths by age were found, so no age stands beside a limb that it could not have. */
const AGES_FROM_CM = [{ fromCm: 42, ages: ["13", "14", "15", "16"] }, { fromCm: 32, ages: ["9", "10", "11", "12"] }, { fromCm: 0, ages: ["5", "6", "7", "8"] }] as const;
const drawChild = (chance: Chance, girthCm: number) => ({ child: chance.pick(CHILDREN), age: chance.pick<string>(AGES_FROM_CM.find(({ fromCm }) => fromCm <= girthCm)?.ages ?? []) });
const isNone = (say: Say): boolean => isSays(say.answer);
const half = (say: Say): string => measure(say.value("girthCm") / (2 * Math.PI), "cm", 3);
/** The greatest girth that a cuff will do for, cut to a tenth: a girth rounded up would need a wider one. */
const reach = (say: Say, cuffKey: string): string => measure(Math.floor(10 * 2 * Math.PI * say.value(cuffKey)) / 10, "cm", 1);
const chosen = (say: Say): string => measure(answerIn(say, "cuffCm"), "cm", 1);
const rule = (): string => `${cuff(WIDTH_RULE).value.value ?? ""}\u2009%`;

/** 05a: how wide a cuff must be at least, and which of those at hand will do. */
export const cuffWidth: SumFamily = {
  kind: "sum",
  id: "cuff-width",
  code: "05a",
  module: "M05",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m05-width"],
  reads: [WIDTH_RULE],
  sources: [{ source: "boa-2021", entry: WIDTH_RULE }],
  cautions: ["C15"],
  givens: [GIRTH, NARROW, MIDDLE, WIDE],
  asks: [
    { id: "leastCm", unit: "cm", roundTo: 0.1, rounding: "up", safeSide: "up" },
    { id: "cuffCm", unit: "cm", roundTo: 0.5, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const girthCm = chance.onGrid(GIRTH);
    const neededCm = Math.ceil(2 * leastOf({ girthCm })) / 2;
    if (chance.happens(1, 8)) {
      const wideCuffCm = Math.min(WIDE.greatest, neededCm - 0.5);
      return { givens: { girthCm, narrowCuffCm: Math.min(NARROW.greatest, wideCuffCm - 1), middleCuffCm: wideCuffCm - 0.5, wideCuffCm }, about: drawChild(chance, girthCm) };
    }
    const narrowCuffCm = Math.max(NARROW.least, Math.min(NARROW.greatest, neededCm - chance.pick([0.5, 1, 1.5])));
    const middleCuffCm = Math.min(MIDDLE.greatest, narrowCuffCm + chance.onGrid(STEP));
    const wideCuffCm = Math.min(WIDE.greatest, Math.max(middleCuffCm, neededCm) + chance.onGrid(STEP));
    return { givens: { girthCm, narrowCuffCm, middleCuffCm, wideCuffCm }, about: drawChild(chance, girthCm) };
  },
  solve: (givens) => choose(givens, leastOf(givens)),
  slips: [
    { id: "half-the-girth", gives: ({ givens }) => orWidest(givens, given(givens, "girthCm") / 2) },
    { id: "whole-diameter", gives: ({ givens }) => orWidest(givens, 2 * leastOf(givens)) },
    { id: "none-said", gives: ({ givens }) => (isSays(choose(givens, leastOf(givens))) ? null : { says: "none" }) },
    { id: "widest-all-the-same", gives: ({ givens }) => widestAllTheSame(givens) },
    { id: "one-too-narrow", gives: ({ givens }) => withCuff(givens, cuffsOf(givens).filter((widthCm) => widthCm < leastOf(givens)).at(-1)) },
    { id: "widest-whatever", gives: ({ givens }) => { const solution = choose(givens, leastOf(givens)); return isSays(solution) || solution["cuffCm"] === given(givens, "wideCuffCm") ? null : withCuff(givens, given(givens, "wideCuffCm")); } },
  ],
  words: {
    en: {
      title: "Width of the cuff",
      stems: [
        (say) => [`You measure round the thigh of ${childOf(say)} where the cuff will lie. Three cuffs are at hand. The standard asks for a width of more than ${rule()} of the diameter of the limb; take the limb as round.`],
        (say) => [`Three cuffs lie ready for ${childOf(say)}, and the girth of the thigh has been measured. By the standard a cuff is wider than ${rule()} of the limb’s diameter, the limb taken as round.`],
        (say) => [`“Which cuff?” asks the practitioner. ${childOf(say)} has the girth below, measured under the cuff’s place on the thigh, which is taken as round. More than ${rule()} of the diameter, says the standard.`],
      ],
      question: "What width must the cuff exceed, rounded up to a tenth of a centimetre, and which is the narrowest cuff here that does? If none does, say so.",
      givens: { girthCm: "Girth of the thigh under the cuff", narrowCuffCm: "First cuff, width", middleCuffCm: "Second cuff, width", wideCuffCm: "Third cuff, width" },
      asks: { leastCm: "Width to exceed", cuffCm: "Narrowest cuff that will do" },
      says: { none: "None of these cuffs is wide enough", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "half-the-girth": { name: "half the girth, not half the diameter", because: (say) => [`${say.of("girthCm")} is the distance round. The diameter is that over π, and half of the diameter is ${half(say)}.`] },
        "whole-diameter": { name: "whole diameter", because: (say) => [`Girth over π is the whole diameter. More than half of it is asked: ${half(say)}.`] },
        "none-said": { name: "none called wide enough", because: (say) => [`More than half of the diameter is asked, ${half(say)}, and ${chosen(say)} is more. Half the girth or the whole diameter would ask for too much.`] },
        "widest-all-the-same": { name: "widest taken all the same", because: (say) => [`The width is right, and ${say.of("wideCuffCm")} does not exceed it. The widest at hand is not wide enough by being the widest.`] },
        "one-too-narrow": { name: "one too narrow", because: () => ["The width is right, but that cuff does not exceed it. A cuff that is too narrow needs more pressure for the same effect."] },
        "widest-whatever": { name: "the widest, whatever the limb", because: (say) => [`It is wide enough, and so is the one of ${chosen(say)}. On a short thigh a needlessly wide cuff comes near the field.`] },
      },
      working: (say) => [
        `Half the diameter: ${say.of("girthCm")} ÷ (2 × π) = ${half(say)}, rounded up: ${isNone(say) ? measure(Math.ceil((10 * say.value("girthCm")) / (2 * Math.PI)) / 10, "cm", 1) : measure(Math.ceil(10 * answerIn(say, "leastCm")) / 10, "cm", 1)}`,
        isNone(say) ? `The widest here is ${say.of("wideCuffCm")}: none will do.` : `The narrowest wider than that: ${chosen(say)}`,
      ],
      right: (say) => isNone(say) ? [`The limb needs more than ${half(say)} and the widest here has ${say.of("wideCuffCm")}. Fetch another; do not make up for width with pressure.`] : [`More than ${half(say)}, so the cuff of ${chosen(say)}. The wider the cuff, the less pressure it needs.`],
      off: (say) => [`Girth ÷ (2 × π) is half the diameter: ${half(say)}. Then look for the first cuff beyond it.`],
      inverse: () => [],
      turns: (say) => [`The first cuff will do up to a girth of ${reach(say, "narrowCuffCm")}, the second up to ${reach(say, "middleCuffCm")}, the third up to ${reach(say, "wideCuffCm")}.`],
    },
  },
};
