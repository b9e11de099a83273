import { withUnit } from "../../engine/quantity/format.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { stitch } from "../../facts/stitch.ts";
import { CHILDREN } from "../m01/common.ts";

interface BenchCase {
  readonly pins: readonly string[];
  /** The claim that somebody makes, in one sentence. */
  readonly claim: (say: Say) => string;
  readonly judgement: Judgement;
}

const HUMAN = { horizontal: "stitch-strength.human-horizontal@1", double: "stitch-strength.human-double-vertical@1", vertical: "stitch-strength.human-vertical@1" } as const;
const BOVINE = { oblique: "stitch-strength.bovine-oblique@1", vertical: "stitch-strength.bovine-vertical@1", horizontal: "stitch-strength.bovine-horizontal@1" } as const;
const NAMES: Readonly<Record<string, string>> = {
  [HUMAN.horizontal]: "horizontal stitch, adult human menisci",
  [HUMAN.double]: "double vertical stitch, adult human menisci",
  [HUMAN.vertical]: "vertical stitch, adult human menisci",
  [BOVINE.oblique]: "oblique stitch, cattle menisci",
  [BOVINE.vertical]: "vertical stitch, cattle menisci",
  [BOVINE.horizontal]: "horizontal stitch, cattle menisci",
};

const ADD_UP: Judgement = { picks: "reject", reasons: ["one-stitch", "not-a-child"] };
const ONE_BENCH: Judgement = { picks: "rank", reasons: ["same-bench"] };
const TWO_BENCHES: Judgement = { picks: "reject", reasons: ["other-bench"] };
const sum = (say: Say): string => `${say.about("child")}’s tear gets ${say.about("stitches")} of these stitches, so the repair holds ${say.about("stitches")} times the figure.`;

const CASES: Readonly<Record<string, BenchCase>> = {
  "add-vertical": { pins: [HUMAN.vertical], claim: sum, judgement: ADD_UP },
  "add-horizontal": { pins: [HUMAN.horizontal], claim: sum, judgement: ADD_UP },
  "add-cattle": { pins: [BOVINE.oblique], claim: sum, judgement: ADD_UP },
  "weight-by-stitches": { pins: [BOVINE.vertical], claim: (say) => `${say.about("child")} weighs so much; divided by ${say.about("stitches")} stitches, that is far below the figure, so full weight is allowed.`, judgement: ADD_UP },
  "rank-human": { pins: [HUMAN.vertical, HUMAN.horizontal], claim: () => "On this bench the vertical stitch took more than the horizontal one.", judgement: ONE_BENCH },
  "rank-human-double": { pins: [HUMAN.double, HUMAN.horizontal], claim: () => "On this bench the double vertical stitch took more than the horizontal one.", judgement: ONE_BENCH },
  "rank-cattle": { pins: [BOVINE.oblique, BOVINE.horizontal], claim: () => "In this series the oblique stitch took more than the horizontal one.", judgement: ONE_BENCH },
  "cattle-over-human": { pins: [BOVINE.horizontal, HUMAN.vertical], claim: () => "The horizontal stitch of the one paper is stronger than the vertical stitch of the other.", judgement: TWO_BENCHES },
  "human-for-human": { pins: [HUMAN.vertical, BOVINE.vertical], claim: () => "The vertical stitch has become twice as strong between the two papers.", judgement: TWO_BENCHES },
};

const caseOf = (draw: Pick<Draw, "about">): BenchCase => CASES[draw.about["case"] ?? ""] ?? (CASES["add-vertical"] as BenchCase);
const said = (say: Say): BenchCase => caseOf({ about: { case: say.about("case") } });
const shown = (pin: string): string => {
  const { value } = stitch(pin);
  return `${NAMES[pin] ?? pin}: ${withUnit(value.mean ?? value.value ?? "", "N")}`;
};
const bench = (say: Say): string => `Load at failure of one stitch, on a bench: ${said(say).pins.map(shown).join("; ")}.`;

/** 11h: what a bench figure of one stitch may be used for. */
export const loadShare: JudgeFamily = {
  kind: "judge",
  id: "load-share",
  code: "11h",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-strength"],
  reads: [...Object.values(HUMAN), ...Object.values(BOVINE)],
  sources: [{ source: "rimmer-1995", entry: HUMAN.vertical }, { source: "pullout-2006", entry: BOVINE.vertical }],
  cautions: ["C9"],
  givens: [],
  options: ["accept", "rank", "reject"],
  reasons: ["one-stitch", "not-a-child", "same-bench", "other-bench", "too-small"],
  draw: (chance) => ({ givens: {}, about: { case: chance.pick(Object.keys(CASES)), child: chance.pick(CHILDREN), stitches: chance.pick(["3", "4", "5", "6"]) } }),
  decide: (draw) => caseOf(draw).judgement,
  slips: [
    { id: "taken-as-a-safety-factor", gives: (draw) => ({ picks: "accept", reasons: caseOf(draw).judgement.reasons }) },
    { id: "ranked-across-benches", gives: (draw) => (caseOf(draw).judgement.picks === "reject" ? { picks: "rank", reasons: caseOf(draw).judgement.reasons } : null) },
    { id: "nothing-may-be-said", gives: (draw) => (caseOf(draw).judgement.picks === "rank" ? { picks: "reject", reasons: caseOf(draw).judgement.reasons } : null) },
    { id: "figure-too-small", gives: (draw) => ({ picks: caseOf(draw).judgement.picks, reasons: ["too-small"] }) },
  ],
  words: {
    en: {
      title: "What a bench figure can carry",
      stems: [
        (say) => [bench(say), `Somebody says: “${said(say).claim(say)}”`],
        (say) => [`In a teaching round somebody says: “${said(say).claim(say)}”`, bench(say)],
        (say) => [`A number with a unit invites arithmetic. ${bench(say)}`, `The claim: “${said(say).claim(say)}”`],
      ],
      question: "What can be done with this claim, and why?",
      givens: {},
      options: { accept: "Accept it, also for this child", rank: "Accept it as a ranking on that bench, no more", reject: "Reject it" },
      reasons: { "one-stitch": "The figure is of one stitch; stitches do not share a load evenly", "not-a-child": "No child’s meniscus was on the bench", "same-bench": "Same tissue and same bench for both", "other-bench": "Other tissue or another bench", "too-small": "The figure is too small to matter" },
      slips: {
        "taken-as-a-safety-factor": { name: "taken for a safety factor", because: () => ["Single stitches in adult or animal tissue, pulled on a bench until they failed. No child’s load can be set against that."] },
        "ranked-across-benches": { name: "ranked where nothing can be ranked", because: () => ["A ranking needs the same tissue and the same bench, and it needs two things to rank. Here one of them is missing."] },
        "nothing-may-be-said": { name: "nothing left to say", because: () => ["Both were pulled on the same bench in the same tissue. That one took more than the other, there, may be said."] },
        "figure-too-small": { name: "figure called too small", because: () => ["Small or large is not the point. Whose tissue, how many stitches and which bench are."] },
      },
      working: () => ["Ask: one stitch or several? Whose tissue? The same bench?", "Bench figures cannot be added up for a child; two figures of one bench can be ranked there."],
      right: () => ["A bench figure compares on its own bench. It neither adds up nor walks out of the laboratory."],
      off: () => ["Two figures of one bench can be ranked on it. Anything beyond that, sums, other benches, children, is not in the figure."],
      moves: () => ["With both stitches from one bench, a ranking is allowed; with one figure only, there is nothing to rank."],
      turns: () => ["If somebody measured several stitches together in children’s menisci. Nobody was found who did."],
    },
  },
};
