import { type LocalList, ownLimit } from "../../engine/kit/local-list.ts";
import type { Chance } from "../../engine/random/chance.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { isSays } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { clockMinutes } from "../../engine/theatre/clock-minutes.ts";
import { cuffPeriods } from "../../engine/theatre/cuff-periods.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { later, STARTS } from "./cuff-clock.ts";
import { AGES, answerIn, CHILDREN, childOf, given, HOSPITALS, measure } from "./theatre-words.ts";

const LIMIT = { key: "limitMin", unit: "min", least: 60, greatest: 100, step: 5 } as const;
const REST = { key: "restMin", unit: "min", least: 10, greatest: 20, step: 5 } as const;

const time = (about: Draw["about"], key: string): string => about[key] ?? "00:00";

const timesOf = (about: Draw["about"], restMin: number) =>
  cuffPeriods([{ upAt: time(about, "firstUpAt"), downAt: time(about, "downAt") }, { upAt: time(about, "againUpAt"), downAt: time(about, "nowAt") }], { restMin });

const leaves = (givens: Givens, countedMin: number): Solution => {
  const leftMin = given(givens, "limitMin") - countedMin;
  return leftMin > 0 ? { countedMin, leftMin } : { says: "none" };
};

const counted = ({ givens, about }: Draw): number => timesOf(about, given(givens, "restMin")).runningMin;
const second = (about: Draw["about"]): number => clockMinutes({ from: time(about, "againUpAt"), to: time(about, "nowAt") });
const restOf = (about: Draw["about"]): number => clockMinutes({ from: time(about, "downAt"), to: time(about, "againUpAt") });
const isLong = ({ givens, about }: Draw): boolean => restOf(about) >= given(givens, "restMin");
const solved = (draw: Draw): Solution => leaves(draw.givens, counted(draw));

/** A slip that would say none where none is right is no slip there. */
const unlessRight = (draw: Draw, solution: Solution): Solution | null => (isSays(solution) && isSays(solved(draw)) ? null : solution);

const signLost = (draw: Draw): Solution | null => {
  const over = counted(draw) - given(draw.givens, "limitMin");
  return over > 0 ? { countedMin: counted(draw), leftMin: over } : null;
};

/** Two periods by the rule of the hospital's sheet: our own one where it is our own hospital. */
const drawCase = (chance: Chance, list: LocalList): Draw => {
  const hospital = chance.pick(HOSPITALS);
  const restMin = ownLimit(list, hospital, "cuff-rest") ?? chance.onGrid(REST);
  const firstUpAt = later(chance.pick(STARTS), chance.below(30));
  const downAt = later(firstUpAt, 25 + chance.below(36));
  const againUpAt = later(downAt, chance.happens(3, 5) ? 3 + chance.below(restMin - 3) : restMin + chance.below(8));
  return {
    givens: { limitMin: ownLimit(list, hospital, "cuff-time") ?? chance.onGrid(LIMIT), restMin },
    about: { firstUpAt, downAt, againUpAt, nowAt: later(againUpAt, 10 + chance.below(36)), child: chance.pick(CHILDREN), age: chance.pick(AGES), hospital },
    local: list.hash,
    origins: { limitMin: { from: "local" }, restMin: { from: "local" } },
  };
};

const aboutOf = (say: Say): Draw["about"] => Object.fromEntries(["firstUpAt", "downAt", "againUpAt", "nowAt"].map((key) => [key, say.about(key)]));
const drawOf = (say: Say): Draw => ({ givens: { limitMin: say.value("limitMin"), restMin: say.value("restMin") }, about: aboutOf(say) });
const first = (say: Say): number => clockMinutes({ from: say.about("firstUpAt"), to: say.about("downAt") });
const rest = (say: Say): string => measure(restOf(aboutOf(say)), "min");
const countedText = (say: Say): string => measure(counted(drawOf(say)), "min");
const isOver = (say: Say): boolean => isSays(say.answer);
const restWords = (say: Say): string => (isLong(drawOf(say)) ? `The rest of ${rest(say)} was long enough, so the count began anew.` : `The rest of ${rest(say)} was shorter than ${say.of("restMin")}, so the first period still counts.`);
const rule = (say: Say): string => `The sheet of ${say.about("hospital")} hospital counts minutes under pressure; a rest of at least the stated length starts the count anew, a shorter one does not.`;

/** 05e: what counts after two periods under pressure, by a local rule of rest. */
export const twoPeriods: SumFamily = {
  kind: "sum",
  id: "two-periods",
  code: "05e",
  module: "M05",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m05-minutes"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [LIMIT, REST],
  asks: [
    { id: "countedMin", unit: "min", roundTo: 1, rounding: "up", safeSide: "up" },
    { id: "leftMin", unit: "min", roundTo: 1, rounding: "down", safeSide: "down" },
  ],
  draw: (chance, local = LOCAL_LIST) => drawCase(chance, local),
  solve: (givens, about) => solved({ givens, about }),
  slips: [
    { id: "reset-after-a-short-rest", gives: (draw) => (isLong(draw) ? null : unlessRight(draw, leaves(draw.givens, second(draw.about)))) },
    { id: "never-reset", gives: (draw) => (isLong(draw) ? unlessRight(draw, leaves(draw.givens, timesOf(draw.about, given(draw.givens, "restMin")).totalMin)) : null) },
    { id: "rest-counted", gives: (draw) => { const solution = leaves(draw.givens, clockMinutes({ from: time(draw.about, "firstUpAt"), to: time(draw.about, "nowAt") })); return isSays(solution) ? null : solution; } },
    { id: "limit-left-whole", gives: (draw) => ({ countedMin: counted(draw), leftMin: given(draw.givens, "limitMin") }) },
    { id: "sign-lost", gives: signLost },
  ],
  words: {
    en: {
      title: "Two periods under the cuff",
      stems: [
        (say) => [`${childOf(say)}: cuff up at ${say.about("firstUpAt")}, down at ${say.about("downAt")}, up again at ${say.about("againUpAt")}. It is now ${say.about("nowAt")}, and the cuff is still up.`, rule(say)],
        (say) => [rule(say), `On the board for ${childOf(say)}: up ${say.about("firstUpAt")}, down ${say.about("downAt")}, up ${say.about("againUpAt")}, and not yet down. The clock shows ${say.about("nowAt")}.`],
        (say) => [`At ${say.about("nowAt")} the surgeon asks whether one more stitch is allowed. The cuff of ${childOf(say)} was up from ${say.about("firstUpAt")} to ${say.about("downAt")} and has been up again since ${say.about("againUpAt")}.`, rule(say)],
      ],
      question: "How many minutes count by this sheet, and how many are left? If none are left, say so.",
      givens: { limitMin: (say) => `Limit, sheet of ${say.about("hospital")} hospital`, restMin: (say) => `Rest that starts the count anew, at least, sheet of ${say.about("hospital")} hospital` },
      asks: { countedMin: "Minutes that count", leftMin: "Minutes left" },
      says: { none: "No minutes are left", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "reset-after-a-short-rest": { name: "count begun anew after a short rest", because: (say) => [`${rest(say)} of rest is less than the ${say.of("restMin")} that the sheet asks for. The first ${measure(first(say), "min")} still count.`] },
        "never-reset": { name: "count never begun anew", because: (say) => [`The rest of ${rest(say)} reached the ${say.of("restMin")} of the sheet. Its count begins anew with the second inflation. Counting on is cautious, but it is not what this sheet asks.`] },
        "rest-counted": { name: "rest counted as pressure", because: (say) => [`While the cuff was down, the leg had its blood. The ${rest(say)} between the periods are not minutes under pressure.`] },
        "limit-left-whole": { name: "limit left whole", because: (say) => [isOver(say) ? `${countedText(say)} count, and the limit is ${say.of("limitMin")}. All of it is used; nothing is left.` : `${countedText(say)} of the ${say.of("limitMin")} are used. What is left is what remains of the limit, not the whole of it.`] },
        "sign-lost": { name: "sign lost", because: (say) => [`${countedText(say)} count and the limit is ${say.of("limitMin")}. Those minutes are over the limit, not left.`] },
      },
      working: (say) => [
        `First ${measure(first(say), "min")}, rest ${rest(say)}, second ${measure(second(aboutOf(say)), "min")}`,
        restWords(say),
        isOver(say) ? `${countedText(say)} count, the limit is ${say.of("limitMin")}: none are left.` : `${countedText(say)} count; ${say.bare("limitMin")} − ${counted(drawOf(say))} = ${measure(answerIn(say, "leftMin"), "min")}`,
      ],
      right: (say) => isOver(say) ? [`${restWords(say)} ${countedText(say)} count, and none are left: say it aloud, now.`] : [`${restWords(say)} ${countedText(say)} count, ${measure(answerIn(say, "leftMin"), "min")} ${answerIn(say, "leftMin") === 1 ? "is" : "are"} left by this sheet. Minutes left are not minutes without harm.`],
      off: (say) => [`${restWords(say)} So ${countedText(say)} count${isOver(say) ? ", and none are left" : ""}.`],
      inverse: () => [],
      turns: (say) => [`The answer turns with the rest: from ${say.of("restMin")} on the count begins anew, one minute less and it does not.`],
    },
  },
};
