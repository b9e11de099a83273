import { daysInMonth } from "../../engine/kit/days-in-month.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerOf, childOf, drawCase, given } from "./later-words.ts";

const DAYS_PER_WEEK = 7;
const WEEKS_PER_MONTH = 4;
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;
const pieces = { unit: "pieces", step: 1 } as const;
const DAY = { key: "startDayPieces", least: 1, greatest: 31, ...pieces };
const MONTH = { key: "startMonthPieces", least: 1, greatest: 12, ...pieces };
const YEAR = { key: "startYearPieces", least: 2026, greatest: 2031, ...pieces };
const WEEKS = { key: "weeksPieces", least: 2, greatest: 26, ...pieces };
const PLANS = [2, 4, 6, 8, 12, 16, 24, 26] as const;

interface Day {
  readonly dayPieces: number;
  readonly monthPieces: number;
}

/** What the days of the months before add to the day of the week, January first; January and February count with the year before. */
const MONTH_SHIFTS = [0, 3, 2, 5, 0, 3, 5, 1, 4, 6, 2, 4] as const;
const [SUNDAY, SATURDAY] = [0, 6];
const weekday = (day: number, month: number, year: number): number => {
  const counted = month < 3 ? year - 1 : year;
  return (counted + Math.floor(counted / 4) - Math.floor(counted / 100) + Math.floor(counted / 400) + (MONTH_SHIFTS[month - 1] ?? 0) + day) % DAYS_PER_WEEK;
};
/** A planned operation is on a working day: from a weekend it goes to the Friday before, at the start of a month to the Monday after. */
const onWorkingDay = (day: number, month: number, year: number): number => {
  const at = weekday(day, month, year);
  if (at === SATURDAY) return day > 1 ? day - 1 : day + 2;
  if (at === SUNDAY) return day > 2 ? day - 2 : day + 1;
  return day;
};

/** The date some days after another: months are walked through one by one, so that February is what it is in that year. */
const daysAfter = (givens: Givens, days: number): Day => {
  let day = given(givens, DAY.key) + days;
  let month = given(givens, MONTH.key);
  let year = given(givens, YEAR.key);
  for (let length = daysInMonth(year, month); length > 0 && day > length; length = daysInMonth(year, month)) {
    day -= length;
    month = (month % MONTHS.length) + 1;
    if (month === 1) year += 1;
  }
  return { dayPieces: day, monthPieces: month };
};

const visit = (givens: Givens): Day => daysAfter(givens, given(givens, WEEKS.key) * DAYS_PER_WEEK);

/** The same day of the month, as many months later as four weeks fit into the plan. */
const asMonths = (givens: Givens): Day | null => {
  const months = given(givens, WEEKS.key) / WEEKS_PER_MONTH;
  if (!Number.isInteger(months)) return null;
  return { dayPieces: given(givens, DAY.key), monthPieces: ((given(givens, MONTH.key) - 1 + months) % MONTHS.length) + 1 };
};

const dateText = (day: number, month: number): string => `${day} ${MONTHS[month - 1] ?? ""}`;
const startOf = (say: Say): string => `${dateText(say.value(DAY.key), say.value(MONTH.key))} ${say.bare(YEAR.key)}`;
const visitOf = (say: Say): string => dateText(answerOf(say, "dayPieces"), answerOf(say, "monthPieces"));
const daysOf = (say: Say): number => say.value(WEEKS.key) * DAYS_PER_WEEK;
const left = (say: Say): number => daysInMonth(say.value(YEAR.key), say.value(MONTH.key)) - say.value(DAY.key);

const walk = (say: Say): string => {
  const start = `From ${startOf(say)} to the end of that month: ${left(say) === 1 ? "1 day" : `${left(say)} days`}`;
  return left(say) >= daysOf(say) ? `${start}, so the visit is in the same month` : `${start}; the rest runs through the months that follow`;
};

/** 14a: the date of a visit, from a plan in weeks. */
export const visitDates: SumFamily = {
  kind: "sum",
  id: "visit-dates",
  code: "14a",
  module: "M14",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m14-dates"],
  reads: [],
  sources: [],
  cautions: ["C2", "C16"],
  givens: [DAY, MONTH, YEAR, WEEKS],
  asks: [
    { id: "dayPieces", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "monthPieces", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const startYearPieces = chance.onGrid(YEAR);
    const startMonthPieces = chance.onGrid(MONTH);
    const startDayPieces = onWorkingDay(chance.onGrid({ ...DAY, greatest: daysInMonth(startYearPieces, startMonthPieces) }), startMonthPieces, startYearPieces);
    return { givens: { startDayPieces, startMonthPieces, startYearPieces, weeksPieces: chance.pick(PLANS) }, about: drawCase(chance), origins: { weeksPieces: { from: "local" } } };
  },
  solve: (givens) => ({ ...visit(givens) }),
  slips: [
    { id: "month-as-four-weeks", gives: ({ givens }) => { const day = asMonths(givens); return day === null ? null : { ...day }; } },
    { id: "first-day-counted", gives: ({ givens }) => ({ ...daysAfter(givens, given(givens, WEEKS.key) * DAYS_PER_WEEK - 1) }) },
    { id: "a-week-too-many", gives: ({ givens }) => ({ ...daysAfter(givens, (given(givens, WEEKS.key) + 1) * DAYS_PER_WEEK) }) },
  ],
  words: {
    en: {
      title: "The date of the next visit",
      stems: [
        (say) => [`The operation of ${childOf(say)}, was on ${startOf(say)}. The plan of the hospital counts in weeks, the calendar in days.`],
        (say) => [`At ${say.about("hospital")} the visits are booked before the family goes home. The operation of ${childOf(say)}, was on ${startOf(say)}.`],
        (say) => [`The mother of ${say.about("child")} wants to know the date, not the number of weeks. The knee was repaired on ${startOf(say)}.`],
      ],
      question: "On which day of which month is the visit? Give the day and the number of the month; the day of the operation is day 0.",
      givens: { startDayPieces: "Operation: day of the month", startMonthPieces: "Operation: number of the month", startYearPieces: "Operation: year", weeksPieces: "Weeks after the operation, this hospital’s plan" },
      asks: { dayPieces: "Day", monthPieces: "Month" },
      says: { none: "There is no such date", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "month-as-four-weeks": { name: "a month taken for four weeks", because: (say) => [`${say.bare("weeksPieces")} weeks are ${daysOf(say)} days. Only February of most years has four weeks; all other months are longer, and the error grows with each.`] },
        "first-day-counted": { name: "the first day counted", because: () => ["The day of the operation is day 0. One week later is the same day of the week."] },
        "a-week-too-many": { name: "a week too many", because: () => ["The first week ends seven days after the operation. Whoever begins to count only when it is over arrives a week late."] },
      },
      working: (say) => [`${say.bare("weeksPieces")} × 7 = ${daysOf(say)} days`, walk(say), `${visitOf(say)}, the same day of the week as the operation`],
      right: (say) => [`${visitOf(say)}. Weeks keep the day of the week, months do not.`],
      off: (say) => [`Turn weeks into days, ${daysOf(say)} of them, then walk through the months with their own lengths to ${visitOf(say)}.`],
      inverse: () => [],
      turns: () => ["A check without a calendar: the visit falls on the same day of the week as the operation."],
    },
  },
};
