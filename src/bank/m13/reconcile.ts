import type { LocalCount, LocalList } from "../../engine/kit/local-list.ts";
import { type ClassCount, reconcileByClass } from "../../engine/kit/reconcile-by-class.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { CountFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { childOf, drawPlace, signed } from "./count-words.ts";

const CLASSES = ["swabs", "needles", "blades", "tips"] as const;
type ClassId = (typeof CLASSES)[number];
const NAMES: Readonly<Record<ClassId, string>> = { swabs: "Swabs", needles: "Needles", blades: "Blades", tips: "Instrument tips" };

/** What is usually opened and added at other hospitals: swabs come in fives, needles in pairs. */
const USUAL: Readonly<Record<ClassId, LocalCount>> = {
  swabs: { comesIn: 5, opened: [5, 15], added: [0, 10], handedOffAtMost: 5 },
  needles: { comesIn: 2, opened: [2, 8], added: [0, 4], handedOffAtMost: 2 },
  blades: { comesIn: 1, opened: [1, 3], added: [0, 1], handedOffAtMost: 1 },
  tips: { comesIn: 1, opened: [4, 7], added: [0, 1], handedOffAtMost: 1 },
};

const asText = ({ opening, added, handedOff, present, notWhole }: ClassCount): string => [opening, added, handedOff, present, notWhole].join("|");

const countsOf = (about: Draw["about"], id: ClassId): ClassCount => {
  const [opening = 0, added = 0, handedOff = 0, present = 0, notWhole = 0] = (about[id] ?? "").split("|").map(Number);
  return { opening, added, handedOff, present, notWhole };
};

const allCounts = (about: Draw["about"]): Readonly<Record<ClassId, ClassCount>> =>
  Object.fromEntries(CLASSES.map((id) => [id, countsOf(about, id)])) as Record<ClassId, ClassCount>;

/** How the closing count differs from what must be there: all right, short, over, a pair that nets out, a broken tip. */
const DIFFERENCES: readonly Readonly<Partial<Record<ClassId | "broken", number>>>[] = [
  {},
  { swabs: -1 },
  { needles: -1 },
  { needles: -1, swabs: 1 },
  { needles: -1, blades: 1 },
  { swabs: -1, needles: 1 },
  { blades: -1, swabs: 1 },
  { needles: -2 },
  { tips: -1 },
  { broken: 1 },
  { broken: 1, needles: 1 },
  { swabs: -1, broken: 1 },
  { swabs: 1 },
];

const some = (chance: Chance, [least, greatest]: LocalCount["opened"], step: number): number => chance.onGrid({ least, greatest, step });

const drawClass = (chance: Chance, { comesIn, opened, added, handedOffAtMost }: LocalCount, change: { readonly difference: number; readonly broken: number }): ClassCount => {
  const counts = { opening: some(chance, opened, comesIn), added: some(chance, added, comesIn) };
  const whole = counts.opening + counts.added;
  const handedOff = Math.min(chance.below(handedOffAtMost + 1), whole - 1);
  return { ...counts, handedOff, present: Math.max(0, whole - handedOff + change.difference), notWhole: change.broken };
};

/** A closing count: at our own hospital with what its list says is opened and added there. */
const drawn = (chance: Chance, list: LocalList): Draw => {
  const place = drawPlace(chance);
  const usual = (id: ClassId): LocalCount => (place["hospital"] === list.hospital ? (list.counts[id] ?? USUAL[id]) : USUAL[id]);
  const { broken = 0, ...differences } = chance.pick(DIFFERENCES);
  const classes = CLASSES.map((id) => [id, asText(drawClass(chance, usual(id), { difference: differences[id] ?? 0, broken: id === "tips" ? broken : 0 }))]);
  return { givens: {}, about: { ...place, ...Object.fromEntries(classes) }, local: list.hash };
};

/** What is missing or too much in each class; a thing that is not whole is missing, for a part of it lies somewhere. */
const truthIn = ({ about }: Draw): Readonly<Record<ClassId, number>> => {
  const counts = allCounts(about);
  const { differences } = reconcileByClass(counts);
  return Object.fromEntries(CLASSES.map((id) => [id, (differences[id] ?? 0) - counts[id].notWhole])) as Record<ClassId, number>;
};

const ZEROS = Object.fromEntries(CLASSES.map((id) => [id, 0]));
const total = (truth: Readonly<Record<string, number>>): number => Object.values(truth).reduce((sum, value) => sum + value, 0);
const isClean = (truth: Readonly<Record<string, number>>): boolean => Object.values(truth).every((value) => value === 0);

/** The same sum with one column of the sheet left out. */
const without = (draw: Draw, column: "added" | "handedOff"): Readonly<Record<string, number>> | null => {
  const counts = allCounts(draw.about);
  const truth = truthIn(draw);
  const sign = column === "added" ? 1 : -1;
  return CLASSES.every((id) => counts[id][column] === 0) ? null : Object.fromEntries(CLASSES.map((id) => [id, truth[id] + sign * counts[id][column]]));
};

const brokenAsWhole = (draw: Draw): Readonly<Record<string, number>> | null => {
  const { notWhole } = countsOf(draw.about, "tips");
  const truth = truthIn(draw);
  return notWhole === 0 ? null : { ...truth, tips: truth.tips + notWhole };
};

/** Calling a match; where only a broken tip or only netting would lead there, those slips have the name. */
const matchCalled = (draw: Draw): Readonly<Record<string, number>> | null => {
  const truth = truthIn(draw);
  return total(truth) === 0 || isClean(brokenAsWhole(draw) ?? { tips: 1 }) ? null : ZEROS;
};

const tipsLine = ({ notWhole }: ClassCount): string => (notWhole === 0 ? ", every tip looked at and whole" : `, ${notWhole} of them with its end broken off`);
const sheetLine = (say: Say, id: ClassId): string => {
  const counts = countsOf({ [id]: say.about(id) }, id);
  return `${NAMES[id]}: ${counts.opening} at opening, ${counts.added} added, ${counts.handedOff} handed off and signed for, ${counts.present} on the trolley${id === "tips" ? tipsLine(counts) : ""}.`;
};
const sheet = (say: Say): readonly string[] => CLASSES.map((id) => sheetLine(say, id));
const drawOf = (say: Say): Draw => ({ givens: {}, about: Object.fromEntries(CLASSES.map((id) => [id, say.about(id)])) });
const differenceLine = (say: Say): string => CLASSES.map((id) => `${NAMES[id].toLowerCase()} ${signed(truthIn(drawOf(say))[id])}`).join(", ");
const workLine = (say: Say, id: ClassId): string => {
  const { opening, added, handedOff, present, notWhole } = countsOf({ [id]: say.about(id) }, id);
  const whole = notWhole === 0 ? `${present}` : `${present} − ${notWhole}`;
  return `${NAMES[id]}: ${whole} on the trolley against ${opening} + ${added} − ${handedOff} = ${opening + added - handedOff}, so ${signed(truthIn(drawOf(say))[id])}`;
};

/** 13a: the closing count against what must be there, class by class. */
export const reconcile: CountFamily = {
  kind: "count",
  id: "reconcile",
  code: "13a",
  module: "M13",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m13-reconcile"],
  reads: [],
  sources: [],
  cautions: ["C2", "C5"],
  givens: [],
  classes: CLASSES,
  draw: (chance, local = LOCAL_LIST) => drawn(chance, local),
  truth: truthIn,
  slips: [
    { id: "match-called", gives: (draw) => matchCalled(draw) },
    { id: "netted", gives: (draw) => (!isClean(truthIn(draw)) && total(truthIn(draw)) === 0 ? ZEROS : null) },
    { id: "broken-called-whole", gives: (draw) => brokenAsWhole(draw) },
    { id: "handed-off-forgotten", gives: (draw) => without(draw, "handedOff") },
    { id: "added-forgotten", gives: (draw) => without(draw, "added") },
  ],
  words: {
    en: {
      title: "Does the count agree?",
      stems: [
        (say) => [`The wound of ${childOf(say)}, is about to be closed, and the count is read out.`, ...sheet(say)],
        (say) => [`You take over at the closing count in a theatre at ${say.about("hospital")}. The sheet and the trolley say this.`, ...sheet(say)],
        (say) => [`${childOf(say)}, ${say.about("side")} knee. Before closure two people count together, class by class.`, ...sheet(say)],
      ],
      question: "What is missing (below 0) or too much (above 0) in each class, counting only what is whole? Write 0 where a class agrees.",
      givens: {},
      classes: NAMES,
      slips: {
        "match-called": { name: "called a match", because: (say) => [`The count does not agree: ${differenceLine(say)}. A class that does not agree, short or over, stops closure until the team has acted.`] },
        netted: { name: "classes set off against each other", because: (say) => [`One class short and another over do not make a match: ${differenceLine(say)}. What is too many in one class does not bring back what another has lost.`] },
        "broken-called-whole": { name: "a broken tip counted as whole", because: () => ["A tip without its end is on the trolley, and a part of it is somewhere else. Complete is not enough; it has to be intact."] },
        "handed-off-forgotten": { name: "handed off forgotten", because: () => ["What was handed off and signed for is no longer on the trolley and is not missing. Take it from what must be there."] },
        "added-forgotten": { name: "added forgotten", because: () => ["What was added during the case must be there as well. Start from opening plus added, not from opening alone."] },
      },
      working: (say) => CLASSES.map((id) => workLine(say, id)),
      right: (say) => [`${differenceLine(say)}. Each class stands by itself, and what is not whole is missing.`.replace(/^./, (letter) => letter.toUpperCase())],
      off: (say) => [`By class: opening plus added less handed off must lie on the trolley, whole. Here: ${differenceLine(say)}.`],
      moves: () => ["One thing handed off and not written down makes its class short by one, and changes nothing else."],
      turns: () => ["The count agrees only where all four stand at 0. Anything else stops closure until the team has acted."],
    },
  },
};
