import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { antibiotic } from "../../facts/antibiotic.ts";
import { localAnaesthetic } from "../../facts/local-anaesthetic.ts";
import { drawPatient, whoIs } from "./dose-words.ts";

interface SheetPair {
  readonly topic: string;
  readonly mine: string;
  readonly theirs: string;
  readonly unit: string;
  readonly read: (pin: string) => string;
}

const anti = (pin: string): string => antibiotic(pin).value.value ?? "";
const local = (pin: string): string => localAnaesthetic(pin).value.value ?? "";

/** Printed values in which sheets differ. */
const PAIRS: Readonly<Record<string, SheetPair>> = {
  cefazolin: { topic: "cefazolin by weight", mine: "cefazolin.ashp@1", theirs: "cefazolin.third-sheet@1", unit: "mg/kg", read: anti },
  "cefazolin-cap": { topic: "the cap of cefazolin", mine: "cefazolin-cap.us-sheet@1", theirs: "cefazolin-cap.ashp@1", unit: "g", read: anti },
  "clindamycin-cap": { topic: "the cap of clindamycin", mine: "clindamycin-cap.us-sheet@1", theirs: "clindamycin-cap.ashp@1", unit: "mg", read: anti },
  "clindamycin-repeat": { topic: "the interval of clindamycin", mine: "clindamycin-repeat.us-sheet@1", theirs: "clindamycin-repeat.ashp@1", unit: "h", read: anti },
  "blood-loss": { topic: "the blood loss that calls for a repeat", mine: "blood-loss-repeat.us-sheet@1", theirs: "blood-loss-repeat.uk-sheet@1", unit: "mL/kg", read: anti },
  lidocaine: { topic: "the limit of lidocaine", mine: "la-limit.teaching-lidocaine@1", theirs: "la-limit.australia-lidocaine@1", unit: "mg/kg", read: local },
  "bupivacaine-adrenaline": { topic: "the limit of bupivacaine with adrenaline", mine: "la-limit.australia-bupivacaine-adrenaline@1", theirs: "la-limit.teaching-bupivacaine-adrenaline@1", unit: "mg/kg", read: local },
};

/** What stands on the own sheet decides: printed and in date, printed but past its date, or nothing at all. */
const STATES = ["printed", "turned", "out-of-date", "silent"] as const;
type State = (typeof STATES)[number];

const stateOf = (draw: Draw): State => STATES.find((state) => state === draw.about["state"]) ?? "printed";
const JUDGEMENTS: Readonly<Record<State, Judgement>> = {
  printed: { picks: "mine", reasons: ["local-counts", "report"] },
  turned: { picks: "mine", reasons: ["local-counts", "report"] },
  "out-of-date": { picks: "ask", reasons: ["not-valid", "report"] },
  silent: { picks: "ask", reasons: ["nothing-printed", "report"] },
};

const pairOf = (say: Say): SheetPair => PAIRS[say.about("pair")] as SheetPair;
const valueText = (pair: SheetPair, pin: string): string => `${pair.read(pin)}\u2009${pair.unit}`;
const ownText = (say: Say): string => {
  const pair = pairOf(say);
  return valueText(pair, say.about("state") === "turned" ? pair.theirs : pair.mine);
};
const otherText = (say: Say): string => {
  const pair = pairOf(say);
  return valueText(pair, say.about("state") === "turned" ? pair.mine : pair.theirs);
};
const OWN: Readonly<Record<State, (say: Say) => string>> = {
  printed: (say) => `Your sheet, in date, says ${ownText(say)}.`,
  turned: (say) => `Your sheet, in date, says ${ownText(say)}.`,
  "out-of-date": (say) => `Your sheet says ${ownText(say)}, but its date of review is two years past.`,
  silent: () => "Your sheet has no line for it.",
};
const told = (say: Say): string => `It is about ${pairOf(say).topic}. ${OWN[say.about("state") as State](say)} A colleague who came from ${say.about("other")} holds up theirs: ${otherText(say)}.`;
const OPTIONS = { mine: "Follow the sheet of this hospital", theirs: "Follow the other sheet", middle: "Take the middle of the two", larger: "Take the larger, within reason", ask: "Give nothing by either sheet yet; ask" } as const;
const decided = (say: Say): string => OPTIONS[JUDGEMENTS[say.about("state") as State].picks as keyof typeof OPTIONS];

const words: JudgeFamily["words"][Language] = {
  title: "Two sheets, two numbers",
  stems: [
    (say) => [`You work at ${say.about("hospital")}. ${whoIs(say)} ${told(say)}`],
    (say) => [`Before the list at ${say.about("hospital")} two sheets lie on the table. ${told(say)} The child is ${say.about("child")}, ${say.about("age")}.`],
    (say) => [`${whoIs(say)} You prepare the case at ${say.about("hospital")}. ${told(say)}`],
  ],
  question: "Which do you follow here, and why? Name every reason that holds.",
  givens: {},
  options: OPTIONS,
  reasons: {
    "local-counts": "The sheet in force here counts for whoever works here",
    report: "The difference is reported to those who keep the sheet",
    "not-valid": "A sheet past its date is no longer in force",
    "nothing-printed": "Where the own sheet is silent, another’s number is not ours",
    "safer-between": "Between two numbers one is safer than at either",
    "newer-better": "What comes from elsewhere is newer",
  },
  slips: {
    averaged: { name: "averaged", because: (say) => [say.about("state") === "silent" ? "There is one number on the table, and it is not ours. It has no middle with a line that is missing." : "The middle of two sheets is a third sheet that nobody wrote, checked or signed. A colleague who comes later will find neither number."] },
    larger: { name: "the larger taken", because: () => ["A larger number is not a better one. Whoever chooses by size no longer chooses by the sheet that the whole team works by."] },
    "other-sheet": { name: "the other sheet followed", because: (say) => [`It may be a good sheet, at ${say.about("other")}. Here it counts only after those who keep ours have taken it up.`] },
    "asked-though-in-force": { name: "asked where the sheet holds", because: () => ["Asking is never wrong in a theatre. Here the sheet is in date and has the line, so the team need not wait; the difference is reported afterwards."] },
    "old-sheet": { name: "a sheet followed that does not hold", because: (say) => [say.about("state") === "silent" ? "There is no line to follow. Asking costs a minute." : "The date of review is past, so nobody stands behind that number today. Asking costs a minute."] },
  },
  working: (say) => ["Is there a line on the own sheet, and is it in date? Then follow it and report the difference.", "If not: ask the pharmacist or the anaesthetist before anything is drawn up, and report it as well.", `Here: ${decided(say).toLowerCase()}.`],
  right: (say) => [`${decided(say)}. And the difference goes to those who keep the sheet.`],
  off: (say) => [`Here: ${decided(say).toLowerCase()}. ${say.about("state") === "silent" ? "Another’s number is a reason to ask and to report, not to use it." : "Two numbers are a reason to report, never a reason to reckon a third."}`],
  moves: () => ["A sheet past its date, or without the line, turns “follow ours” into “ask”. A larger or smaller number on the other sheet turns nothing."],
  turns: () => ["The other number would be followed only where it stands in our own sheet."],
};

/** 12i: two sheets that differ. */
export const twoSheets: JudgeFamily = {
  kind: "judge",
  id: "two-sheets",
  code: "12i",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m12-sheet"],
  reads: [...new Set(Object.values(PAIRS).flatMap(({ mine, theirs }) => [mine, theirs]))],
  sources: [{ source: "ashp-2013", entry: "cefazolin.ashp@1" }, { source: "us-sheet", entry: "clindamycin-cap.us-sheet@1" }, { source: "uk-sheet", entry: "blood-loss-repeat.uk-sheet@1" }, { source: "third-sheet", entry: "cefazolin.third-sheet@1" }, { source: "em-page-2023", entry: "la-limit.teaching-lidocaine@1" }, { source: "au-toxicity", entry: "la-limit.australia-lidocaine@1" }],
  cautions: ["C2", "C4"],
  givens: [],
  options: ["mine", "theirs", "middle", "larger", "ask"],
  reasons: ["local-counts", "report", "not-valid", "nothing-printed", "safer-between", "newer-better"],
  draw: (chance) => {
    const { about } = drawPatient(chance);
    const [hospital, other] = chance.shuffled(["Saltmere", "Northmoor", "Thornbeck"]);
    return { givens: {}, about: { ...about, hospital: hospital ?? "", other: other ?? "", pair: chance.pick(Object.keys(PAIRS)), state: chance.pick(STATES) } };
  },
  decide: (draw) => JUDGEMENTS[stateOf(draw)],
  slips: [
    { id: "averaged", gives: () => ({ picks: "middle", reasons: ["safer-between"] }) },
    { id: "larger", gives: () => ({ picks: "larger", reasons: ["newer-better"] }) },
    { id: "other-sheet", gives: () => ({ picks: "theirs", reasons: ["newer-better"] }) },
    { id: "asked-though-in-force", gives: (draw) => (JUDGEMENTS[stateOf(draw)].picks === "mine" ? { picks: "ask", reasons: ["report"] } : null) },
    { id: "old-sheet", gives: (draw) => (JUDGEMENTS[stateOf(draw)].picks === "ask" ? { picks: "mine", reasons: ["local-counts"] } : null) },
  ],
  words: { en: words },
};
