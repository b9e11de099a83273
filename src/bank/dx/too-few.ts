import { differenceInterval } from "../../engine/evidence/difference-interval.ts";
import { type Interval, wilson } from "../../engine/evidence/wilson.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, PERCENT, withPlaces } from "../m01/common.ts";

const FIRST_RIGHT = { key: "firstRight", unit: "pieces", least: 1, greatest: 28, step: 1 } as const;
const FIRST = { key: "firstLearners", unit: "pieces", least: 4, greatest: 28, step: 1 } as const;
const SECOND_RIGHT = { key: "secondRight", unit: "pieces", least: 0, greatest: 28, step: 1 } as const;
const SECOND = { ...FIRST, key: "secondLearners" } as const;

const HOSPITAL = { least: 4, greatest: 6, step: 1 } as const;
const YEAR = { least: 20, greatest: 28, step: 1 } as const;
/** Where fewer answered, a figure is a person. */
const LEAST_PRINTED = 5;

interface Counts {
  readonly events: number;
  readonly total: number;
  readonly otherEvents: number;
  readonly otherTotal: number;
}

interface Claim {
  /** What somebody would like to write. */
  readonly text: (say: Say) => string;
  /** Labels of the two groups; the second is absent where one group stands alone. */
  readonly groups: (say: Say) => readonly [string, string?];
  readonly decide: (givens: Givens) => Judgement;
}

const countsOf = (givens: Givens): Counts => ({ events: given(givens, "firstRight"), total: given(givens, "firstLearners"), otherEvents: given(givens, "secondRight"), otherTotal: given(givens, "secondLearners") });
const isApart = ({ low, high }: Interval): boolean => low > 0 || high < 0;
const isSmall = ({ total, otherTotal }: Counts): boolean => Math.min(total, otherTotal) < LEAST_PRINTED;

/** Two groups: apart only where the interval of the difference stays on one side of nought. */
const between = (givens: Givens, also: readonly string[] = []): Judgement => {
  const counts = countsOf(givens);
  if (isApart(differenceInterval(counts))) return { picks: "interval", reasons: ["apart"] };
  return { picks: "not", reasons: ["overlap", ...also, ...(isSmall(counts) ? ["person"] : [])] };
};

const hospitals = (say: Say): readonly [string, string] => [say.about("first"), say.about("second")];
const CLAIMS: Readonly<Record<string, Claim>> = {
  better: { text: (say) => `${say.about("first")} teaches the ${say.about("item")} better than ${say.about("second")}.`, groups: hospitals, decide: (givens) => between(givens) },
  best: { text: (say) => `Of our five hospitals ${say.about("first")} came first with the ${say.about("item")}, and it should show the others how.`, groups: hospitals, decide: (givens) => between(givens, ["some-first"]) },
  year: { text: (say) => `After this year’s course learners have the ${say.about("item")} right more often than after last year’s.`, groups: () => ["This year", "Last year"], decide: (givens) => between(givens) },
  whole: { text: (say) => `In the whole group so many had the ${say.about("item")} right, and learners like ours may be expected to.`, groups: () => ["Whole group"], decide: () => ({ picks: "interval", reasons: ["both-ends"] }) },
  seen: { text: (say) => `In this group so many had the ${say.about("item")} right on the first try; the others made slips that we will talk through.`, groups: () => ["Whole group"], decide: () => ({ picks: "stands", reasons: ["own-group"] }) },
};
const claimOf = (about: Draw["about"]): Claim => CLAIMS[about["claim"] ?? ""] ?? (CLAIMS["better"] as Claim);
const decide = ({ givens, about }: Pick<Draw, "givens" | "about">): Judgement => claimOf(about).decide(givens);

/** Right answers of two groups so that the first looks better; two hospitals are drawn so that nothing sets them apart. */
const drawTwo = (chance: Chance, size: typeof HOSPITAL | typeof YEAR, mayBeApart: boolean): Givens => {
  const [total, otherTotal] = [chance.onGrid(size), chance.onGrid(size)];
  const all = Array.from({ length: total }, (_, at) => at + 1).flatMap((events) => Array.from({ length: otherTotal + 1 }, (_, otherEvents) => ({ events, total, otherEvents, otherTotal })));
  const looksBetter = all.filter((counts) => counts.events / total > counts.otherEvents / otherTotal && counts.events * 2 >= total && counts.otherEvents * 3 >= otherTotal && isApart(differenceInterval(counts)) === mayBeApart);
  const { events, otherEvents } = chance.pick(looksBetter);
  return { firstRight: events, firstLearners: total, secondRight: otherEvents, secondLearners: otherTotal };
};
const drawOne = (chance: Chance): Givens => {
  const firstLearners = chance.onGrid(YEAR);
  return { firstRight: chance.onGrid({ least: Math.ceil(firstLearners / 3), greatest: firstLearners - 2, step: 1 }), firstLearners };
};

const claim = (say: Say): Claim => claimOf({ claim: say.about("claim") });
const givensIn = (say: Say): Givens => Object.fromEntries([FIRST_RIGHT, FIRST, SECOND_RIGHT, SECOND].filter(({ key }) => say.has(key)).map(({ key }) => [key, say.value(key)]));
const percent = (share: number): string => withPlaces(PERCENT * share, 0, "%");
const points = (share: number): string => `${share < 0 ? "−" : ""}${Math.abs(PERCENT * share).toFixed(0)}`;
const group = (say: Say, at: 0 | 1, what: string): string => `${claim(say).groups(say)[at] ?? ""}, ${what}`;
const judged = (say: Say): Judgement => claim(say).decide(givensIn(say));

const wilsonLine = (say: Say, at: 0 | 1): string => {
  const [right, all] = at === 0 ? (["firstRight", "firstLearners"] as const) : (["secondRight", "secondLearners"] as const);
  const { low, high } = wilson({ events: say.value(right), total: say.value(all) });
  return `${claim(say).groups(say)[at] ?? ""}: ${say.bare(right)} of ${say.bare(all)}, ${percent(say.value(right) / say.value(all))}, by Wilson from ${percent(low)} to ${percent(high)}`;
};
const differenceLine = (say: Say): string => {
  const { low, high } = differenceInterval(countsOf(givensIn(say)));
  return `Difference: from ${points(low)} to ${points(high)} points in a hundred (Newcombe 1998), ${isApart({ low, high }) ? "on one side of nought" : "nought among them"}`;
};

/** D8, here 15h: what a small group can carry. */
export const tooFew: JudgeFamily = {
  kind: "judge",
  id: "too-few",
  code: "15h",
  module: "DX",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["dx-small"],
  reads: [],
  sources: [],
  cautions: ["C12"],
  givens: [FIRST_RIGHT, FIRST, SECOND_RIGHT, SECOND],
  options: ["stands", "interval", "not"],
  reasons: ["overlap", "some-first", "person", "apart", "both-ends", "own-group", "plain", "footnote"],
  draw: (chance) => {
    const name = chance.pick(["better", "better", "best", "best", "year", "year", "whole", "seen"]);
    const isOne = name === "whole" || name === "seen";
    const two = (): Givens => (name === "year" ? drawTwo(chance, YEAR, chance.happens(1, 3)) : drawTwo(chance, HOSPITAL, false));
    const [first = "", second = ""] = chance.shuffled(["Saltmere", "Northmoor", "Hythe Vale", "Carrow", "Thornbeck"]);
    return { givens: isOne ? drawOne(chance) : two(), about: { claim: name, first, second, item: chance.pick(["depth of a stitch", "width of a cuff", "count at the end", "height of a bag"]) } };
  },
  decide,
  slips: [
    { id: "hospitals-ranked", gives: (draw) => (decide(draw).picks === "not" ? { picks: "stands", reasons: decide(draw).reasons } : null) },
    { id: "footnote-added", gives: (draw) => (decide(draw).picks === "not" ? { picks: "interval", reasons: decide(draw).reasons } : null) },
    { id: "share-without-ends", gives: (draw) => (decide(draw).picks === "interval" ? { picks: "stands", reasons: decide(draw).reasons } : null) },
    { id: "interval-for-a-report", gives: (draw) => (decide(draw).picks === "stands" ? { picks: "interval", reasons: decide(draw).reasons } : null) },
    { id: "nothing-may-be-said", gives: (draw) => (decide(draw).picks === "not" ? null : { picks: "not", reasons: decide(draw).reasons }) },
    { id: "plain-to-see", gives: (draw) => ({ picks: decide(draw).picks, reasons: ["plain"] }) },
  ],
  words: {
    en: {
      title: "What a small group can carry",
      stems: [
        (say) => [`For the board’s report somebody has written: “${claim(say).text(say)}”`],
        (say) => ["The report is nearly done, and one sentence is left to look at.", `“${claim(say).text(say)}”`],
        (say) => [`A sentence outlives its table. This one is to go to the board: “${claim(say).text(say)}”`],
      ],
      question: "How may the sentence stand, and why? Tick every reason that applies; below five learners a figure is a person.",
      givens: { firstRight: (say) => group(say, 0, "right"), firstLearners: (say) => group(say, 0, "learners"), secondRight: (say) => group(say, 1, "right"), secondLearners: (say) => group(say, 1, "learners") },
      options: { stands: "As it is written", interval: "With the interval beside it, and as no more than that", not: "Not at all: these returns cannot say" },
      reasons: { overlap: "The interval of the difference has nought among its values", "some-first": "Some hospital always comes first", person: "Fewer than five answered in one of the groups", apart: "The interval of the difference stays on one side of nought", "both-ends": "The share of the whole group has two ends", "own-group": "It claims nothing about anybody else", plain: "The difference is plain to see", footnote: "A footnote can say that the numbers are small" },
      slips: {
        "hospitals-ranked": { name: "ranked all the same", because: (say) => [`${differenceLine(say)}. If both were alike, a difference like this would surprise nobody.`] },
        "footnote-added": { name: "ranking with a footnote", because: () => ["A ranking with an interval beside it is still a ranking, and it will be read aloud without. Where nought is among the values, the sentence itself goes."] },
        "share-without-ends": { name: "more claimed than was seen", because: () => ["Another group of this size would have given other numbers. Without its ends the figure says more than it knows."] },
        "interval-for-a-report": { name: "interval where nothing is claimed", because: () => ["The sentence tells what was seen in this group and says nothing of any other. An interval would answer a question that it does not raise."] },
        "nothing-may-be-said": { name: "nothing left to say", because: (say) => [judged(say).picks === "stands" ? "What was seen may be told. It needs no interval, because it claims nothing about anybody else." : "A small group knows something, roughly. Print how roughly."] },
        "plain-to-see": { name: "plain to see", because: () => ["Small groups make large differences by chance. What the eye sees in five learners is mostly that."] },
      },
      working: (say) => [
        wilsonLine(say, 0),
        ...(say.has("secondLearners") ? [wilsonLine(say, 1), differenceLine(say)] : []),
        { not: "So these returns cannot say it.", interval: say.has("secondLearners") ? "So a difference may be stated, with its interval; what caused it is not in the numbers." : "So it may be stated, with both ends.", stands: "It speaks of this group alone, so it may stand as what was seen." }[judged(say).picks] ?? "",
      ],
      right: (say) => [{ not: `These returns cannot say.${judged(say).reasons.includes("person") ? " And where fewer than five answered, not even the figure is printed." : ""}`, interval: "With its interval, and as no more than that: not why, and not for whom else.", stands: "What was seen may be told. It is often the most useful line of the report." }[judged(say).picks] ?? ""],
      off: () => ["First ask about whom the sentence speaks. Where two groups are compared, look whether the interval of the difference has nought among its values."],
      moves: (say) => [say.has("secondLearners") ? `With four times as many learners and the same shares, the interval would be about half as wide${judged(say).picks === "not" ? ", and might leave nought outside" : ""}.` : "The sentence decides: the same count may be a report of this group or a claim about others."],
      turns: () => ["A claim about others needs an interval; a comparison needs one that leaves nought outside; a report of what was seen needs neither."],
    },
  },
};
