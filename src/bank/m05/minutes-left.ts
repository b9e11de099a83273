import { type LocalList, ownLimit } from "../../engine/kit/local-list.ts";
import type { Chance } from "../../engine/random/chance.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { isSays } from "../../engine/question/family-head.ts";
import { once } from "../../engine/question/once.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { minutesLeft } from "../../engine/theatre/minutes-left.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { clockOf, decimalMinutes, earlier, hourOf, later, minuteOf, signedMinutes, STARTS } from "./cuff-clock.ts";
import { AGES, CHILDREN, childOf, given, HOSPITALS, measure } from "./theatre-words.ts";

const LIMIT = { key: "limitMin", unit: "min", least: 45, greatest: 90, step: 5 } as const;
const WARNING = { key: "warningMin", unit: "min", least: 5, greatest: 15, step: 5 } as const;
const HOUR_MIN = 60;

const time = (about: Draw["about"], key: string): string => about[key] ?? "00:00";
const alarm = (clock: string) => ({ alarmHour: hourOf(clock), alarmMinute: minuteOf(clock) });

/** Used, left and the clock time of the alarm, counted from a start. */
const countFrom = (givens: Givens, startAt: string, nowAt: string) => {
  const [limitMin, warningMin] = [given(givens, "limitMin"), given(givens, "warningMin")];
  const counted = minutesLeft({ upAt: startAt, nowAt, limitMin });
  return { ...counted, alarmAt: earlier(counted.limitAt, warningMin) };
};

const solvedFrom = (givens: Givens, about: Draw["about"], startAt: string): Solution => {
  const { leftMin, alarmAt } = countFrom(givens, startAt, time(about, "nowAt"));
  return leftMin > 0 ? { leftMin, ...alarm(alarmAt) } : { says: "none" };
};

/** Counted from inflation, as the sheet says. */
const solved = once((givens, about) => solvedFrom(givens, about, time(about, "upAt")));

const orNull = (solution: Solution): Solution | null => (isSays(solution) ? null : solution);

/** An alarm whose minutes were added without carrying the hour. */
const uncarried = ({ givens, about }: Draw): Solution | null => {
  const right = solved(givens, about);
  const add = given(givens, "limitMin") - given(givens, "warningMin");
  const minute = minuteOf(time(about, "upAt")) + (add % HOUR_MIN);
  if (isSays(right) || minute < HOUR_MIN) return null;
  return { ...right, alarmHour: hourOf(time(about, "upAt")) + Math.floor(add / HOUR_MIN), alarmMinute: minute };
};

const hundredMinutes = ({ givens, about }: Draw): Solution | null => {
  const right = solved(givens, about);
  const leftMin = given(givens, "limitMin") - decimalMinutes(time(about, "upAt"), time(about, "nowAt"));
  return isSays(right) || leftMin <= 0 || leftMin === right["leftMin"] ? null : { ...right, leftMin };
};

const signLost = ({ givens, about }: Draw): Solution | null => {
  const { leftMin, alarmAt } = countFrom(givens, time(about, "upAt"), time(about, "nowAt"));
  return leftMin < 0 ? { leftMin: -leftMin, ...alarm(alarmAt) } : null;
};

const warningLeftOut = ({ givens, about }: Draw): Solution | null => {
  const right = solved(givens, about);
  return isSays(right) ? null : { ...right, ...alarm(countFrom(givens, time(about, "upAt"), time(about, "nowAt")).limitAt) };
};

/** A case with the limits of the hospital's sheet: our own ones where it is our own hospital. */
const drawCase = (chance: Chance, list: LocalList): Draw => {
  const hospital = chance.pick(HOSPITALS);
  const limitMin = ownLimit(list, hospital, "cuff-time") ?? chance.onGrid(LIMIT);
  const warningMin = ownLimit(list, hospital, "cuff-warning") ?? chance.onGrid(WARNING);
  const upAt = later(chance.pick(STARTS), chance.below(30));
  const cutMin = 4 + chance.below(9);
  const usedMin = chance.happens(1, 7) ? limitMin + chance.below(13) : cutMin + 3 + chance.below(limitMin - warningMin - cutMin - 5);
  return {
    givens: { limitMin, warningMin },
    about: { upAt, cutAt: later(upAt, cutMin), nowAt: later(upAt, usedMin), child: chance.pick(CHILDREN), age: chance.pick(AGES), hospital },
    local: list.hash,
    origins: { limitMin: { from: "local" }, warningMin: { from: "local" } },
  };
};

/** More minutes than there are, or an alarm that rings later than it should. */
const isTooLate = ({ givens, about }: Draw, values: Readonly<Record<string, number>>): boolean => {
  const right = solved(givens, about);
  if (isSays(right)) return true;
  if ((values["leftMin"] ?? 0) > (right["leftMin"] ?? 0)) return true;
  const { alarmHour, alarmMinute } = values;
  if (alarmHour === undefined || alarmMinute === undefined) return false;
  if (!Number.isInteger(alarmHour) || !Number.isInteger(alarmMinute)) return false;
  return signedMinutes(countFrom(givens, time(about, "upAt"), time(about, "nowAt")).alarmAt, clockOf(alarmHour, alarmMinute)) > 0;
};

const usedMin = (say: Say): number => signedMinutes(say.about("upAt"), say.about("nowAt"));
const left = (say: Say): number => say.value("limitMin") - usedMin(say);
const limitAt = (say: Say): string => later(say.about("upAt"), say.value("limitMin"));
const alarmAt = (say: Say): string => earlier(limitAt(say), say.value("warningMin"));
const isOver = (say: Say): boolean => left(say) <= 0;
const sheet = (say: Say): string => `The sheet of ${say.about("hospital")} hospital counts from inflation, and its alarm rings some minutes before the limit.`;

/** 05d: what a local limit leaves a cuff, and when its alarm must ring. */
export const cuffMinutesLeft: SumFamily = {
  kind: "sum",
  id: "minutes-left",
  code: "05d",
  module: "M05",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m05-minutes"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [LIMIT, WARNING],
  asks: [
    { id: "leftMin", unit: "min", roundTo: 1, rounding: "down", safeSide: "down" },
    { id: "alarmHour", unit: "h", roundTo: 1, rounding: "down", safeSide: "none" },
    { id: "alarmMinute", unit: "min", roundTo: 1, rounding: "down", safeSide: "none" },
  ],
  draw: (chance, local = LOCAL_LIST) => drawCase(chance, local),
  solve: (givens, about) => solved(givens, about),
  isUnsafe: isTooLate,
  slips: [
    { id: "counted-from-the-cut", gives: ({ givens, about }) => orNull(solvedFrom(givens, about, time(about, "cutAt"))) },
    { id: "counted-from-now", gives: ({ givens, about }) => orNull(solvedFrom(givens, about, time(about, "nowAt"))) },
    { id: "warning-left-out", gives: warningLeftOut },
    { id: "hour-not-carried", gives: uncarried },
    { id: "hundred-minutes", gives: hundredMinutes },
    { id: "sign-lost", gives: signLost },
  ],
  words: {
    en: {
      title: "Minutes left",
      stems: [
        (say) => [`${childOf(say)}: cuff up at ${say.about("upAt")}, skin cut at ${say.about("cutAt")}. It is now ${say.about("nowAt")}.`, sheet(say)],
        (say) => [`“How long have I got?” asks the surgeon at ${say.about("nowAt")}. On the board for ${childOf(say)} stand: cuff up ${say.about("upAt")}, skin ${say.about("cutAt")}.`, sheet(say)],
        (say) => [sheet(say), `For ${childOf(say)} the cuff went up at ${say.about("upAt")} and the skin was cut at ${say.about("cutAt")}. The clock shows ${say.about("nowAt")}.`],
      ],
      question: "How many minutes does the sheet leave, and at what time must the alarm ring? If none are left, say so.",
      givens: { limitMin: (say) => `Limit, sheet of ${say.about("hospital")} hospital`, warningMin: (say) => `Alarm before the limit, sheet of ${say.about("hospital")} hospital` },
      asks: { leftMin: "Minutes left", alarmHour: "Alarm rings at, hour", alarmMinute: "Alarm rings at, minutes past" },
      says: { none: "No minutes are left", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "counted-from-the-cut": { name: "counted from the skin cut", because: (say) => [`The limb has been without flow since ${say.about("upAt")}, not since ${say.about("cutAt")}. The sheet counts from inflation.`] },
        "counted-from-now": { name: "counted from now", because: (say) => [`The count began at ${say.about("upAt")}. ${measure(usedMin(say), "min")} of the ${say.of("limitMin")} are used already.`] },
        "warning-left-out": { name: "alarm at the limit", because: (say) => [`At ${limitAt(say)} the limit is reached. The alarm must ring ${say.of("warningMin")} before, so that somebody can act.`] },
        "hour-not-carried": { name: "hour not carried", because: (say) => [`No clock shows more than 59 minutes. Sixty of them make an hour: ${alarmAt(say)}.`] },
        "hundred-minutes": { name: "a hundred minutes in the hour", because: (say) => [`Clock times are not decimals. From ${say.about("upAt")} to ${say.about("nowAt")} it is ${measure(usedMin(say), "min")}.`] },
        "sign-lost": { name: "sign lost", because: (say) => [`${measure(usedMin(say), "min")} are used and the limit is ${say.of("limitMin")}. Those minutes are over the limit, not left.`] },
      },
      working: (say) => [
        `Used: ${say.about("upAt")} to ${say.about("nowAt")}, ${measure(usedMin(say), "min")}`,
        `Left: ${say.bare("limitMin")} − ${usedMin(say)} = ${measure(left(say), "min")}`,
        isOver(say) ? "Nothing is left: say so now, and let the cuff down by the local card." : `Limit at ${limitAt(say)}; ${say.bare("warningMin")} minutes before: ${alarmAt(say)}`,
      ],
      right: (say) => isOver(say) ? [`${measure(usedMin(say), "min")} are used of ${say.of("limitMin")}. None are left: say it aloud, now.`] : [`${measure(left(say), "min")} by this sheet, alarm at ${alarmAt(say)}. No minute before the limit is harmless; the limit only says when to stop.`],
      off: (say) => [`Count from inflation at ${say.about("upAt")}: ${measure(usedMin(say), "min")} are used of ${say.of("limitMin")}. ${isOver(say) ? "None are left." : `The limit falls at ${limitAt(say)}, and the alarm rings ${say.of("warningMin")} before it.`}`],
      inverse: () => [],
      turns: (say) => [`By this sheet the last minute ends at ${limitAt(say)}. From then on the only answer is that none are left.`],
    },
  },
};
