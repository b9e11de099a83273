import { openShare } from "../../engine/fluid/open-share.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, given, measure } from "./fluid-words.ts";

const SCOPE = { key: "scopeMm", unit: "mm", least: 1.5, greatest: 3, step: 0.1 } as const;
const BORE = { key: "boreMm", unit: "mm", least: 1.9, greatest: 4.2, step: 0.1 } as const;
const WIDER = { least: 0.4, greatest: 1.2, step: 0.1 } as const;
const HUNDRED = 100;

const fill = (givens: Givens): number => given(givens, "scopeMm") / given(givens, "boreMm");
const share = (givens: Givens): number => HUNDRED * openShare({ scopeMm: given(givens, "scopeMm"), boreMm: given(givens, "boreMm") });
const solved = (givens: Givens): Solution => (fill(givens) > 0 && fill(givens) < 1 ? { sharePercent: share(givens) } : { says: "none" });
const gap = (say: Say): string => measure((say.value("boreMm") - say.value("scopeMm")) / 2, "mm", 2);
const answer = (say: Say): string => measure(answerIn(say, "sharePercent"), "%", 1);
const ratio = (say: Say): string => (say.value("scopeMm") / say.value("boreMm")).toFixed(3);

/** The two parts of the share, with the digits that the last one needs. */
const parts = (say: Say): string => {
  const k = say.value("scopeMm") / say.value("boreMm");
  return `${(1 - k ** 4).toFixed(5)} − ${((1 - k ** 2) ** 2).toFixed(5)} ÷ ${Math.log(1 / k).toFixed(5)}`;
};

/** 07d: what a scope leaves of the flow of its sheath, by the ideal law. */
export const annulus: SumFamily = {
  kind: "sum",
  id: "annulus",
  code: "07d",
  module: "M07",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m07-flow"],
  reads: ["needle-flow.measured@1"],
  sources: [],
  cautions: ["C15"],
  givens: [BORE, SCOPE],
  asks: [{ id: "sharePercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const scopeMm = chance.onGrid(SCOPE);
    return { givens: { boreMm: Number((scopeMm + chance.onGrid(WIDER)).toFixed(1)), scopeMm }, about: { who: chance.pick(["The trainee", "The scrub practitioner", "A colleague", "The assistant"]) } };
  },
  solve: solved,
  slips: [
    { id: "area-share", gives: ({ givens }) => ({ sharePercent: HUNDRED * (1 - fill(givens) ** 2) }) },
    { id: "gap-as-a-tube", gives: ({ givens }) => ({ sharePercent: HUNDRED * (1 - fill(givens)) ** 4 }) },
    { id: "whole-difference-for-the-gap", gives: ({ givens }) => ({ sharePercent: 2 ** 3 * share(givens) }) },
    { id: "fourth-powers-alone", gives: ({ givens }) => ({ sharePercent: HUNDRED * (1 - fill(givens) ** 4) }) },
  ],
  words: {
    en: {
      title: "What the scope leaves",
      stems: [
        (say) => [`Fluid runs into the joint through the gap between scope and sheath. ${say.about("who")} asks why so little comes. Take the scope as centred and the flow as laminar.`],
        (say) => [`${say.about("who")} says that the sheath is wide enough, since most of it looks open. Compare the sheath with the scope in it, centred, with the same sheath left open, both by the ideal law.`],
        (say) => [`A thin scope stands in the middle of its sheath, and the inflow must pass around it. ${say.about("who")} wants to know what the scope takes away. Use the ideal law for both.`],
      ],
      question: "What share of the open sheath’s ideal flow is left with the scope in it? In per cent, to the nearest tenth.",
      givens: { boreMm: "Inner diameter of the sheath", scopeMm: "Outer diameter of the scope" },
      asks: { sharePercent: "Share of the open flow" },
      says: { none: "No flow at all", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "area-share": { name: "share of the area", because: (say) => [`That much of the opening is free. But in a gap of ${gap(say)} all the liquid runs close to a wall, and the flow of a gap falls with its cube.`] },
        "gap-as-a-tube": { name: "gap taken for a tube", because: () => ["A gap goes all the way round the scope; a tube of the same width would leave far less. The ring has its own formula."] },
        "whole-difference-for-the-gap": { name: "whole difference taken for the gap", because: (say) => [`The difference of the diameters lies on two sides: the gap is ${gap(say)}. Twice the gap makes the flow about eight times too large.`] },
        "fourth-powers-alone": { name: "scope’s wall left out", because: () => ["One less the fourth power treats the scope as if the liquid slid along it. It sticks there too, and that takes nearly all that is left."] },
      },
      working: (say) => [
        `Scope over sheath: k = ${say.bare("scopeMm")} ÷ ${say.bare("boreMm")} = ${ratio(say)}`,
        "Share: (1 − k⁴) − (1 − k²)² ÷ ln(1 ÷ k), the concentric annulus",
        `${parts(say)} = ${answer(say)}`,
      ],
      right: (say) => [`${answer(say)} by the ideal law. In practice an open sheath at working pressure gains less than the law says, so taking the scope out helps less than this suggests; no measured flow of such a gap was found.`],
      off: (say) => [`The gap is ${gap(say)} on each side. Use the law of the ring for the flow with the scope and the law of the tube for the flow without it; length and pressure cancel.`],
      inverse: () => [],
      turns: (say) => [`Nothing but the two diameters counts. A scope a tenth of a millimetre thinner would leave ${measure(HUNDRED * openShare({ scopeMm: say.value("scopeMm") - 0.1, boreMm: say.value("boreMm") }), "%", 1)}.`],
    },
  },
};
