import { withUnit } from "../../engine/quantity/format.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { testAccuracy } from "../../facts/test-accuracy.ts";
import { CHILDREN, counted, HOSPITALS, SIDES } from "../m01/common.ts";

type Finding = "locked" | "blood" | "clean";
type Case = "locked in time" | "locked too late" | "blood in time" | "blood too late" | "clean";

const SENSITIVITY_PIN = "sensitivity.munger-mri@1";
const SENSITIVITY = testAccuracy(SENSITIVITY_PIN);
const LOCKED_DAYS = [3, 5, 7] as const;
const BLOOD_DAYS = [8, 10, 12] as const;

/** What the sheet says for each case, and what of it decides. */
const JUDGEMENTS: Readonly<Record<Case, Judgement>> = {
  "locked in time": { picks: "beside", reasons: ["one-plan", "in-time"] },
  "locked too late": { picks: "without", reasons: ["one-plan", "too-late"] },
  "blood in time": { picks: "wait", reasons: ["two-plans", "in-time"] },
  "blood too late": { picks: "ask", reasons: ["two-plans", "too-late"] },
  clean: { picks: "again", reasons: ["misses"] },
};

interface Days {
  readonly finding: Finding;
  /** From the injury or the locking to today. */
  readonly gone: number;
  /** From today to the picture. */
  readonly ahead: number;
  readonly limit: number;
}

const daysOf = ({ about }: Pick<Draw, "about">): Days => {
  const finding = (about["finding"] ?? "clean") as Finding;
  return { finding, gone: Number(about["goneDays"]), ahead: Number(about["aheadDays"]), limit: Number(about[finding === "blood" ? "bloodDays" : "lockedDays"]) };
};
const caseOf = (draw: Pick<Draw, "about">): Case => {
  const { finding, gone, ahead, limit } = daysOf(draw);
  if (finding === "clean") return "clean";
  return `${finding} ${gone + ahead > limit ? "too late" : "in time"}`;
};
const decide = (draw: Pick<Draw, "about">): Judgement => JUDGEMENTS[caseOf(draw)];

const ABOUT = ["finding", "goneDays", "aheadDays", "lockedDays", "bloodDays"] as const;
const shown = (say: Say): Pick<Draw, "about"> => ({ about: Object.fromEntries(ABOUT.map((key) => [key, say.about(key)])) });
const days = (count: number): string => counted(count, "day");
const child = (say: Say): string => `${say.about("child")}, ${say.about("age")}`;
const sheet = (say: Say): string => `The sheet at ${say.about("hospital")}: a locked knee goes to theatre within ${say.about("lockedDays")} days of locking, whatever a picture shows. A knee that filled with blood and is not locked gets a picture within ${say.about("bloodDays")} days of the injury, and what it shows decides what is done; if it cannot be had by then, the senior surgeon is asked.`;

const STORIES: Readonly<Record<Finding, (say: Say, told: Days) => string>> = {
  locked: (say, { gone, ahead }) => `${child(say)}, has not been able to straighten the ${say.about("side")} knee for ${days(gone)}. The next free place in the scanner is in ${days(ahead)}.`,
  blood: (say, { gone, ahead }) => `${child(say)}, twisted the ${say.about("side")} knee ${days(gone)} ago. It filled with blood within hours; it can be straightened. The next free place in the scanner is in ${days(ahead)}.`,
  clean: (say) => `${child(say)}, has a ${say.about("side")} knee that caught and let go several times. The scan was done, and its report names no tear. Since then the knee has caught again; today it moves freely.`,
};
const story = (say: Say): string => STORIES[daysOf(shown(say)).finding](say, daysOf(shown(say)));
const sum = (say: Say): string => {
  const { finding, gone, ahead, limit } = daysOf(shown(say));
  return `Days since the ${finding === "locked" ? "locking" : "injury"}: ${gone}; from today to the picture: ${ahead}. Together ${gone} + ${ahead} = ${days(gone + ahead)}; the sheet allows ${limit}.`;
};
const found = (): string => `In young people with a torn cruciate ligament, one study found a sensitivity of ${withUnit(SENSITIVITY.value.value ?? "", "%")} for a torn meniscus.`;

const WHY: Readonly<Record<Case, string>> = {
  "locked in time": "Torn or not in the picture, this knee goes to theatre. The picture comes in time, so it may help the pack and the talk with the family; it moves nothing.",
  "locked too late": "Torn or not in the picture, this knee goes to theatre, and the picture would come after the sheet’s last day. Nobody waits for it.",
  "blood in time": "The sheet makes two plans of the two answers, and the picture comes in time. This is the knee for which one waits.",
  "blood too late": "The sheet makes two plans of the two answers, but the picture comes too late to choose. That is for the senior surgeon to settle, today.",
  clean: "A clean report leaves a chance that the meniscus is torn, and a knee that goes on catching raises it. Look at the knee again.",
};
const why = (say: Say): string => WHY[caseOf(shown(say))];
const isClean = (say: Say): boolean => caseOf(shown(say)) === "clean";

const words: JudgeFamily["words"][Language] = {
  title: "Does the picture change the plan?",
  stems: [
    (say) => [story(say), sheet(say)],
    (say) => [sheet(say), story(say)],
    (say) => [`Before a scan is asked for, say what you would do with either answer. ${story(say)}`, sheet(say)],
  ],
  question: "What does the picture do for the plan, and why? Name the reasons that decide it.",
  givens: {},
  options: {
    wait: "It decides: wait for the picture",
    beside: "It changes nothing: keep the plan, and take the picture on the way",
    without: "It changes nothing: keep the plan, and go without it",
    ask: "It would decide, but cannot: ask the senior surgeon",
    again: "The clean picture settles nothing: look at the knee again",
    closed: "The clean picture settles it: no operation",
  },
  reasons: {
    "one-plan": "Either answer leads to the same plan",
    "two-plans": "The two answers lead to different plans",
    "in-time": "It comes within the days of the sheet",
    "too-late": "It comes after the days of the sheet",
    misses: "Such a scan misses some tears",
    "picture-first": "A picture always comes first",
    "clean-ends": "A clean picture ends the matter",
  },
  slips: {
    "picture-always-first": { name: "always the picture first", because: (say) => [caseOf(shown(say)) === "blood in time" ? "Here the picture does come first, because two plans hang on it, and not because it always does." : "The sheet sends a locked knee to theatre whatever the picture shows. To wait for an answer that moves nothing is only to wait."] },
    "days-miscounted": { name: "days counted from today", because: (say) => [`The days of the sheet run from the injury or the locking, not from today. ${sum(say)}`] },
    "picture-refused": { name: "picture refused", because: (say) => [daysOf(shown(say)).finding === "locked" ? "It changes no plan, and still it comes in time: it costs no day, and it may help the pack and the talk with the family." : "Without a picture nobody knows which of the two plans is this child’s. The sheet does not send every swollen knee to theatre."] },
    "clean-ends-it": { name: "a clean picture taken for the end", because: () => [`Look at its sensitivity. ${found()} The rest were torn and called whole.`] },
    "same-scan-again": { name: "the same scan again", because: () => ["What the first scan could not show, the second may miss as well. The knee has told you more since: look at the knee."] },
  },
  working: (say) => (isClean(say) ? ["The report is one result, and a result moves a chance; it does not replace it.", found(), why(say)] : ["What would you do if it showed a tear, and what if it showed none?", sum(say), why(say)]),
  right: (say) => [why(say)],
  off: (say) => [`${isClean(say) ? found() : sum(say)} ${why(say)}`],
  moves: () => ["The finding decides whether there are two plans or one, and the days decide whether the picture can still choose between them. Whose days they are, your own sheet says."],
  turns: (say) => [isClean(say) ? "A clean report would weigh more if such scans missed fewer tears, and if the knee had stopped catching." : `The answer turns where ${days(daysOf(shown(say)).limit)} from the ${daysOf(shown(say)).finding === "locked" ? "locking" : "injury"} have passed.`],
};

const drawCase = (chance: Chance): Draw => {
  const finding = chance.pick<Finding>(["locked", "locked", "blood", "blood", "clean"]);
  const [lockedDays, bloodDays] = [chance.pick(LOCKED_DAYS), chance.pick(BLOOD_DAYS)];
  const goneDays = 1 + chance.below(2);
  const room = (finding === "blood" ? bloodDays : lockedDays) - goneDays;
  const aheadDays = chance.happens(1, 2) ? 1 + chance.below(room) : room + 1 + chance.below(goneDays);
  return {
    givens: {},
    about: { finding, goneDays: String(goneDays), aheadDays: String(aheadDays), lockedDays: String(lockedDays), bloodDays: String(bloodDays), child: chance.pick(CHILDREN), age: String(8 + chance.below(9)), side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) },
    sources: finding === "clean" ? [{ source: SENSITIVITY.source ?? "", entry: SENSITIVITY_PIN }] : [],
  };
};

/** Where a slip is made, and what it gives there. */
const slipped = (cases: Readonly<Partial<Record<Case, Judgement>>>) => (draw: Draw): Judgement | null => cases[caseOf(draw)] ?? null;

/** 02j: whether a picture changes the plan. */
export const noMri: JudgeFamily = {
  kind: "judge",
  id: "no-mri",
  code: "02j",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-plan"],
  reads: [SENSITIVITY_PIN],
  sources: [{ source: SENSITIVITY.source ?? "", entry: SENSITIVITY_PIN }],
  cautions: ["C2"],
  givens: [],
  options: ["wait", "beside", "without", "ask", "again", "closed"],
  reasons: ["one-plan", "two-plans", "in-time", "too-late", "misses", "picture-first", "clean-ends"],
  draw: drawCase,
  decide,
  slips: [
    { id: "picture-always-first", gives: slipped({ "locked in time": { picks: "wait", reasons: ["picture-first"] }, "locked too late": { picks: "wait", reasons: ["picture-first"] }, "blood in time": { picks: "wait", reasons: ["picture-first"] } }) },
    { id: "days-miscounted", gives: slipped({ "locked too late": { picks: "beside", reasons: ["one-plan", "in-time"] }, "blood too late": { picks: "wait", reasons: ["two-plans", "in-time"] } }) },
    { id: "picture-refused", gives: slipped({ "locked in time": { picks: "without", reasons: ["one-plan"] }, "blood in time": { picks: "without", reasons: ["one-plan"] }, "blood too late": { picks: "without", reasons: ["one-plan"] } }) },
    { id: "clean-ends-it", gives: slipped({ clean: { picks: "closed", reasons: ["clean-ends"] } }) },
    { id: "same-scan-again", gives: slipped({ clean: { picks: "wait", reasons: ["picture-first"] } }) },
  ],
  words: { en: words },
};
