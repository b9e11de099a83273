import { withUnit } from "../../engine/quantity/format.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily } from "../../engine/question/family.ts";
import type { SourceMark } from "../../engine/question/verdict.ts";
import type { Say } from "../../engine/question/say.ts";
import { bundleLine } from "../../facts/bundle-line.ts";
import type { Pinned } from "../../facts/reader.ts";
import { shortestDistance } from "../../facts/shortest-distance.ts";
import { zoneWidth } from "../../facts/zone-width.ts";

interface PaperCase {
  readonly first: Pinned;
  readonly second: Pinned;
  /** What the learner is about to do, in words that need no number. */
  readonly asked: string;
  readonly picks: "first" | "second" | "neither";
  readonly reasons: readonly string[];
}

const boys = bundleLine("junction-to-bundle.boys@1");
const girls = bundleLine("junction-to-bundle.girls@1");

/** Pairs of published values that look as if they disagreed, and the question that only one of them answers. */
const CASES: Readonly<Record<string, PaperCase>> = {
  "aimed-boys": { first: shortestDistance("lateral-to-artery.9-11@1"), second: boys, asked: "A boy of 12; the needle goes from the anterolateral portal straight towards the bundle, and you want the way behind the junction.", picks: "second", reasons: ["structure", "line", "age"] },
  "aimed-girls": { first: shortestDistance("lateral-to-artery.9-11@1"), second: girls, asked: "A girl of 14; the needle goes from the anterolateral portal straight towards the bundle, and you want the way behind the junction.", picks: "second", reasons: ["structure", "line", "age"] },
  "shortest-ten": { first: shortestDistance("lateral-to-artery.9-11@1"), second: boys, asked: "A boy of 10; you want to know how near the artery lies to the back of the lateral meniscus by the shortest way, whatever the needle does.", picks: "first", reasons: ["structure", "line"] },
  "shortest-seven": { first: girls, second: shortestDistance("lateral-to-artery.5-8@1"), asked: "A girl of 7; you want to know how near the artery lies to the back of the lateral meniscus by the shortest way.", picks: "second", reasons: ["structure", "line", "age"] },
  "bent-knee": { first: shortestDistance("capsule-to-artery.case-90@1"), second: shortestDistance("capsule-to-artery.case-straight@1"), asked: "The same knee on the table, bent to a right angle: how far was the artery from the back of the capsule in that one adolescent?", picks: "first", reasons: ["flexion"] },
  "straight-knee": { first: shortestDistance("capsule-to-artery.case-90@1"), second: shortestDistance("capsule-to-artery.case-straight@1"), asked: "The same knee, nearly straight: how far was the artery from the back of the capsule in that one adolescent?", picks: "second", reasons: ["flexion"] },
  "width-for-depth": { first: zoneWidth("zone-width.11-13@1"), second: boys, asked: "A boy of 12; you set the depth of a needle that is aimed at the bundle.", picks: "second", reasons: ["line"] },
  "width-for-width": { first: zoneWidth("zone-width.8-10@1"), second: girls, asked: "A girl of 9; you want to know how far the zone reaches sideways along the junction, from the popliteus tendon to the bundle.", picks: "first", reasons: ["line", "age"] },
  "device-fired": { first: shortestDistance("device-to-artery.posterior-horn@1"), second: shortestDistance("lateral-to-artery.5-8@1"), asked: "A child of 7; you want to tell a colleague how near a device came to the artery when it was really fired, in the worst case that could be arranged.", picks: "first", reasons: ["line"] },
  "adult-bend": { first: shortestDistance("device-to-artery.adult-90@1"), second: shortestDistance("device-to-artery.adult-120@1"), asked: "A child of 8; the knee will be bent, and you want a distance to the artery for this child.", picks: "neither", reasons: ["age", "flexion"] },
};

const caseOf = (draw: Draw | Say): PaperCase => CASES[typeof draw.about === "function" ? draw.about("case") : (draw.about["case"] ?? "")] ?? (CASES["aimed-boys"] as PaperCase);

const shownValue = ({ value, unit }: Pinned): string => {
  const number = value.mean ?? value.value ?? value.median ?? "";
  return unit === "mm" ? withUnit(number, "mm") : number;
};

const line = (label: string, pinned: Pinned): string => `${label} paper: ${pinned.name.charAt(0).toLowerCase()}${pinned.name.slice(1)}, ${shownValue(pinned)}.`;
const papers = (say: Say): readonly string[] => [line("First", caseOf(say).first), line("Second", caseOf(say).second)];
const chosen = (say: Say): string => {
  const { picks, first, second } = caseOf(say);
  return picks === "neither" ? "neither" : `${picks === "first" ? "the first" : "the second"}, ${shownValue(picks === "first" ? first : second)}`;
};

const REASON_TEXTS: Readonly<Record<string, string>> = {
  structure: "at which structure it ends, artery or bundle",
  line: "where it begins or which line it follows",
  age: "in whom it was measured",
  flexion: "how far the knee was bent",
};
const because = (say: Say): string => {
  const reasons = caseOf(say).reasons.map((reason) => REASON_TEXTS[reason] ?? reason);
  return [reasons.slice(0, -1).join("; "), ...reasons.slice(-1)].filter((part) => part !== "").join("; and ");
};

/** Where a value comes from, as the page names it. */
const markOf = ({ source, entry }: Pinned): SourceMark => ({ source: source ?? "", entry });
const marks = [...new Map(Object.values(CASES).flatMap(({ first, second }) => [markOf(first), markOf(second)]).map((mark) => [mark.entry, mark])).values()];

const drawnCase = (name: string): Draw => {
  const { first, second } = CASES[name] as PaperCase;
  return { givens: {}, about: { case: name }, sources: [markOf(first), markOf(second)], cautions: first.adult || second.adult ? ["C3", "C9"] : ["C3"] };
};

const reads = [...new Set(Object.values(CASES).flatMap(({ first, second }) => [first.entry, second.entry]))].sort();
const words: JudgeFamily["words"][Language] = {
  title: "Two papers, one question",
  stems: [
    (say) => [caseOf(say).asked, ...papers(say)],
    (say) => [...papers(say), `They look as if they disagreed. ${caseOf(say).asked}`],
    (say) => [`Two values lie on the table. ${papers(say).join(" ")}`, caseOf(say).asked],
  ],
  question: "Which value answers this question, and what makes the difference between the two?",
  givens: {},
  options: { first: "The first", second: "The second", average: "The average of the two", neither: "Neither of them" },
  reasons: { structure: "They end at different structures", line: "They start at different places or run along different lines", age: "Only one was measured in such a child, or none was", imaging: "One is MRI and the other is not, so it cannot be used at all", flexion: "The knee was bent differently" },
  slips: {
    averaged: { name: "averaged", because: () => ["Two different quantities have no average. Half of their sum is the distance to nothing."] },
    "the-other-one": { name: "the other paper", because: (say) => [`The question is answered by ${chosen(say)}. What decides is ${because(say)}.`] },
    "both-rejected": { name: "both rejected", because: (say) => [`One of them does answer the question: ${chosen(say)}. That the other ends elsewhere, or is of others, takes nothing from it.`] },
    "second-though-neither": { name: "one taken where neither holds", because: (say) => [`Neither answers this question. What decides is ${because(say)}.`] },
    "machine-blamed": { name: "the machine blamed", because: () => ["Cadaver, scan and film differ by a little. Here the quantities differ: that is the reason, not the machine."] },
  },
  working: (say) => [`Ask of each value: from where, to what, along which line, in whom, how far bent.`, `It is ${chosen(say)}. What decides is ${because(say)}.`],
  right: (say) => [`It is ${chosen(say)}. Both values can be true. What decides is ${because(say)}.`],
  off: (say) => [`It is ${chosen(say)}. What decides is ${because(say)}.`],
  moves: () => ["The answer moves with the question, not with the papers: another line, another structure, another age, another bend, and the other value may be the one."],
  turns: () => ["When a paper measures what you are about to do: this structure, along this line, in a child of this age, with the knee bent like this."],
};

/** 10k: two published values that seem to disagree, and which of them applies. */
export const twoPapers: JudgeFamily = {
  kind: "judge",
  id: "two-papers",
  code: "10k",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m10-reject"],
  reads,
  sources: marks,
  cautions: ["C3", "C9"],
  givens: [],
  options: ["first", "second", "average", "neither"],
  reasons: ["structure", "line", "age", "imaging", "flexion"],
  draw: (chance) => drawnCase(chance.pick(Object.keys(CASES))),
  decide: (draw) => {
    const { picks, reasons } = caseOf(draw);
    return { picks, reasons };
  },
  slips: [
    { id: "averaged", gives: (draw) => ({ picks: "average", reasons: caseOf(draw).reasons }) },
    { id: "the-other-one", gives: (draw) => ({ picks: caseOf(draw).picks === "first" ? "second" : "first", reasons: caseOf(draw).reasons }) },
    { id: "both-rejected", gives: (draw) => (caseOf(draw).picks === "neither" ? null : { picks: "neither", reasons: caseOf(draw).reasons }) },
    { id: "second-though-neither", gives: (draw) => (caseOf(draw).picks === "neither" ? { picks: "second", reasons: caseOf(draw).reasons } : null) },
    { id: "machine-blamed", gives: (draw) => ({ picks: caseOf(draw).picks, reasons: ["imaging"] }) },
  ],
  words: { en: words },
};
