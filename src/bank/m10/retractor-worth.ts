import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { AGES, CHILDREN, childOf } from "./needle-words.ts";

interface WorthCase {
  readonly told: string;
  readonly picks: "worth" | "not-here" | "ask";
  readonly reasons: readonly string[];
}

const CASES: Readonly<Record<string, WorthCase>> = {
  "no-window": { told: "No depth is left on any line that can be reached from the portals. The tear is worth repairing, and the surgeon at the table has gone inside out in children before.", picks: "worth", reasons: ["no-window", "seen"] },
  "near-nerve": { told: "The stitch belongs beside the popliteus tendon; the model says that every line there comes within the margin of the peroneal nerve. The senior surgeon, who knows the other way well, is scrubbed.", picks: "worth", reasons: ["no-window", "seen"] },
  "window-wide": { told: "A line with a wide window and a straight needle is there, and the tear is short.", picks: "not-here", reasons: ["window", "cut"] },
  "window-two-stitches": { told: "Two stitches are planned, both on lines with several millimetres of window.", picks: "not-here", reasons: ["window", "cut"] },
  "nobody-has-done-it": { told: "No line has a window. Nobody in the room has used a posterior retractor in a child.", picks: "ask", reasons: ["no-window", "skill"] },
  "anatomy-unknown": { told: "No line has a window. The child was operated on behind the knee before, and the notes are missing.", picks: "ask", reasons: ["no-window", "unknown"] },
  "colleague-says-never": { told: "No line has a window, and the surgeon has often used a retractor in children. A colleague says: “With a retractor nothing ever happens.”", picks: "worth", reasons: ["no-window", "seen"] },
  "habit": { told: "The plan shows a window on every line. A colleague says: “I always cut, then I am sure.”", picks: "not-here", reasons: ["window", "cut"] },
};

const caseOf = (about: string | undefined): WorthCase => CASES[about ?? ""] ?? (CASES["no-window"] as WorthCase);
const inCase = (draw: Draw): WorthCase => caseOf(draw.about["case"]);
const told = (say: Say): WorthCase => caseOf(say.about("case"));
/** Where somebody has to be asked first, going on either way is unsafe. */
const UNSAFE: Readonly<Record<WorthCase["picks"], readonly string[]>> = { worth: ["not-here", "always"], "not-here": ["always"], ask: ["worth", "not-here", "always"] };
const OPTION_TEXTS = { worth: "Worth its cut", "not-here": "Not worth it: the needle line will do", ask: "Stop and ask before going on", always: "Always worth it: it makes harm impossible" } as const;

const words: JudgeFamily["words"][Language] = {
  title: "Is the retractor worth its cut?",
  stems: [
    (say) => [`${childOf(say)}. ${told(say).told}`],
    (say) => [`Before the next step for ${childOf(say)}: ${told(say).told.charAt(0).toLowerCase()}${told(say).told.slice(1)}`],
    (say) => [`You are asked about ${childOf(say)}. ${told(say).told}`],
  ],
  question: "Is going inside out with a retractor worth its cut here, and why?",
  givens: {},
  options: OPTION_TEXTS,
  reasons: {
    "no-window": "No needle line is left that keeps the margin",
    window: "A needle line with a window is there",
    seen: "Metal that is seen stands between needle and nerve",
    cut: "A cut behind the knee has harm of its own",
    skill: "Whoever does it must have somebody beside them who has done it",
    unknown: "What lies behind this knee is not known",
    never: "0 of 10 means that it cannot happen",
  },
  slips: {
    "zero-means-never": { name: "0 of 10 taken for never", because: () => ["In ten adult knees with a retractor no branch was caught, and in ten without it two were. None of ten still allows more than one in four."] },
    "cut-for-safety": { name: "cut where a window was", because: () => ["The retractor is the way out, not the way in. Where a line has a window, the cut only adds harm of its own."] },
    "line-forced": { name: "line kept without a window", because: () => ["A line without a window is not made better by hope. Change the technique, or ask."] },
    "gone-ahead": { name: "gone ahead without asking", because: (say) => [say.about("case") === "anatomy-unknown" ? "What lies behind this knee may not be where it should be. Without the notes a cut is a guess." : "A way that nobody in the room has gone in a child is not begun on this child. Ask, or send for somebody who has."] },
    "asked-without-need": { name: "asked where the case answers", because: () => ["Asking is never wrong in a theatre. Here the window, or the person who knows the other way, is already there."] },
  },
  working: (say) => [`Is there a line with a window? Can the retractor be seen, and has somebody here done it?`, `Here: ${OPTION_TEXTS[told(say).picks].toLowerCase()}.`, "Deutsch 1999, adult knees: a nerve branch caught in 2 of 10 without a retractor, 0 of 10 with one."],
  right: (say) => [`${OPTION_TEXTS[told(say).picks]}. Window first, then technique, then who is in the room.`],
  off: (say) => [`Here: ${OPTION_TEXTS[told(say).picks].toLowerCase()}. Ask in this order: is a window left, can the retractor be seen, is somebody here who has done it.`],
  moves: () => ["A window that is found, or lost, turns the answer. So does the person who stands beside you."],
  turns: () => ["“Worth its cut” where no line is left and somebody who has done it is there; “not worth it” where a line has a window; “ask” where nobody can say."],
};

/** 10o, second step: whether the retractor is worth its cut. */
export const retractorWorth: JudgeFamily = {
  kind: "judge",
  id: "retractor-worth",
  code: "10o",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-fallback"],
  reads: ["nerve-caught.adult-without-retractor@1", "nerve-caught.adult-with-retractor@1"],
  sources: [{ source: "deutsch-1999", entry: "nerve-caught.adult-with-retractor@1" }],
  cautions: ["C2", "C6", "C9"],
  givens: [],
  options: ["worth", "not-here", "ask", "always"],
  reasons: ["no-window", "window", "seen", "cut", "skill", "unknown", "never"],
  draw: (chance) => ({ givens: {}, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), case: chance.pick(Object.keys(CASES)) } }),
  decide: (draw) => {
    const { picks, reasons } = inCase(draw);
    return { picks, reasons };
  },
  unsafeOptions: (draw) => UNSAFE[inCase(draw).picks],
  slips: [
    { id: "zero-means-never", gives: () => ({ picks: "always", reasons: ["never"] }) },
    { id: "cut-for-safety", gives: (draw) => (inCase(draw).picks === "not-here" ? { picks: "worth", reasons: ["seen"] } : null) },
    { id: "line-forced", gives: (draw) => (inCase(draw).picks === "not-here" ? null : { picks: "not-here", reasons: ["cut"] }) },
    { id: "gone-ahead", gives: (draw) => (inCase(draw).picks === "ask" ? { picks: "worth", reasons: inCase(draw).reasons } : null) },
    { id: "asked-without-need", gives: (draw) => (inCase(draw).picks === "ask" ? null : { picks: "ask", reasons: inCase(draw).reasons }) },
  ],
  words: { en: words },
};
