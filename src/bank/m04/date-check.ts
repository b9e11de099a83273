import { daysInMonth } from "../../engine/kit/days-in-month.ts";
import { usablePacks } from "../../engine/kit/usable-packs.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { HOSPITALS } from "../m01/common.ts";

const MONTHS = ["JAN", "FEB", "MAR", "APR", "MAY", "JUN", "JUL", "AUG", "SEP", "OCT", "NOV", "DEC"] as const;
const PACKS = ["a", "b", "c", "d", "e", "f", "g"] as const;

interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const two = (value: number): string => String(value).padStart(2, "0");
const iso = ({ year, month, day }: Day): string => `${year}-${two(month)}-${two(day)}`;
const monthName = (month: number): string => MONTHS[month - 1] ?? "";

/** Ways in which a day is printed on a pack; the last three print a whole month. */
const PRINTS: Readonly<Record<string, (day: Day) => string>> = {
  iso,
  slashed: ({ year, month, day }) => `${two(day)}/${two(month)}/${year}`,
  named: ({ year, month, day }) => `${two(day)} ${monthName(month)} ${year}`,
  month: ({ year, month }) => `${year}-${two(month)}`,
  "slashed-month": ({ year, month }) => `${two(month)}/${year}`,
  "named-month": ({ year, month }) => `${monthName(month)} ${year}`,
};

/** A pack of each kind that the draw may put on the shelf, by what is wrong or right with it. */
const KINDS: Readonly<Record<string, (list: Day, chance: Chance) => string>> = {
  "past-day": (list, chance) => PRINTS[chance.pick(["iso", "named"])]?.(list.day > 1 ? { ...list, day: list.day - 1 } : { ...list, month: list.month - 1, day: daysInMonth(list.year, list.month - 1) }) ?? "",
  "past-month": (list, chance) => PRINTS[chance.pick(["month", "slashed-month", "named-month"])]?.({ ...list, month: list.month - 1 }) ?? "",
  // Read day first it is in date; read month first it is over; nobody can tell which was meant.
  swappable: (list) => `${two(list.month - 1)}/${two(list.month + 1)}/${list.year}`,
  "last-day": (list, chance) => PRINTS[chance.pick(["iso", "named"])]?.(list) ?? "",
  "this-month": (list, chance) => PRINTS[chance.pick(["month", "slashed-month", "named-month"])]?.(list) ?? "",
  "next-year": (list, chance) => PRINTS[chance.pick(["iso", "named", "month", "named-month"])]?.({ year: list.year + 1, month: 1 + chance.below(12), day: 1 + chance.below(28) }) ?? "",
  "last-year": (list, chance) => PRINTS[chance.pick(["iso", "named", "month", "named-month"])]?.({ year: list.year - 1, month: list.month + 1, day: 1 + chance.below(28) }) ?? "",
};

const kindOf = (draw: Pick<Draw, "about">, id: string): string => draw.about[`${id}-kind`] ?? "";
const packsOf = (draw: Draw) => (draw.shown ?? []).map((id) => ({ id, expires: draw.about[id] ?? "" }));
const faultsOf = (draw: Draw): readonly string[] => {
  const { expired, unread } = usablePacks(packsOf(draw), { day: draw.about["day"] ?? "" });
  return [...expired, ...unread].sort();
};
const ofKind = (draw: Draw, kind: string): readonly string[] => (draw.shown ?? []).filter((id) => kindOf(draw, id) === kind);
const passing = (draw: Draw, kind: string): readonly string[] | null => {
  const passed = ofKind(draw, kind);
  return passed.length === 0 ? null : faultsOf(draw).filter((id) => !passed.includes(id));
};
const flagging = (draw: Draw, kind: string): readonly string[] | null => {
  const flagged = ofKind(draw, kind);
  return flagged.length === 0 ? null : [...faultsOf(draw), ...flagged].sort();
};
const longDay = (say: Say): string => {
  const [year = "", month = "", day = ""] = say.about("day").split("-");
  const name = monthName(Number(month));
  return `${Number(day)} ${name.charAt(0)}${name.slice(1).toLowerCase()} ${year}`;
};

/** 04b: which packs may not be used on the day of the list. */
export const dateCheck: TrayFamily = {
  kind: "tray",
  id: "date-check",
  code: "04b",
  module: "M04",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m04-check"],
  reads: [],
  sources: [],
  cautions: ["C5", "C7"],
  givens: [],
  draw: (chance) => {
    const month = 3 + chance.below(8);
    const list: Day = { year: 2027 + chance.below(4), month, day: 2 + chance.below(26) };
    const kinds = chance.shuffled(Object.keys(KINDS)).slice(0, 5 + chance.below(2));
    const shown = PACKS.slice(0, kinds.length);
    const about = Object.fromEntries(shown.flatMap((id, at) => {
      const kind = kinds[at] ?? "";
      return [[id, KINDS[kind]?.(list, chance) ?? ""], [`${id}-kind`, kind]];
    }));
    return { givens: {}, about: { ...about, day: iso(list), hospital: chance.pick(HOSPITALS) }, shown };
  },
  faults: faultsOf,
  critical: faultsOf,
  slips: [
    { id: "swapped-date-guessed", gives: (draw) => passing(draw, "swappable") },
    { id: "yesterday-passed", gives: (draw) => passing(draw, "past-day") },
    { id: "past-month-passed", gives: (draw) => passing(draw, "past-month") },
    { id: "year-not-read", gives: (draw) => passing(draw, "last-year") },
    { id: "last-day-put-aside", gives: (draw) => flagging(draw, "last-day") },
    { id: "month-ends-on-its-first", gives: (draw) => flagging(draw, "this-month") },
  ],
  words: {
    en: {
      title: "In date on the day",
      stems: [
        (say) => [`The list at ${say.about("hospital")} is on ${longDay(say)}. These packs were laid out the evening before; their use-by dates are printed as each maker likes.`],
        (say) => [`${longDay(say)}, ${say.about("hospital")}. You read the use-by date of every pack before it is opened.`],
        (say) => [`Dates are written in many ways and mean one day each. The list is on ${longDay(say)} at ${say.about("hospital")}; a pack may be used on its last day.`],
      ],
      question: "Which packs may not be used on that day? A date that can be read in two ways is put aside; a month means its last day.",
      givens: {},
      thing: (say, id) => `Pack ${id.toUpperCase()}, use by ${say.about(id)}`,
      nothing: "All may be used",
      slips: {
        "swapped-date-guessed": { name: "a swappable date guessed", because: () => ["Day and month can be exchanged in that date, and one of the readings is over. What cannot be read for sure is put aside."] },
        "yesterday-passed": { name: "passed a day too late", because: () => ["Its last day is over. A use-by date has no day of grace."] },
        "past-month-passed": { name: "a past month passed", because: () => ["That month is over. Its last day was the last on which the pack could be used."] },
        "year-not-read": { name: "year not read", because: () => ["Day and month lie ahead, but the year is gone. Read the year first."] },
        "last-day-put-aside": { name: "put aside on its last day", because: () => ["A pack may be used on the day that is printed. Put aside too early, it becomes waste and a pack is missing."] },
        "month-ends-on-its-first": { name: "month ended on its first day", because: () => ["Where only a month is printed, its last day counts. The pack is in date until then."] },
      },
      working: (say) => [`The day of the list is ${say.about("day")}, written year, month, day.`, "Turn each date into year, month, day; a month alone means its last day. What is earlier than the list, or can be read in two ways, is put aside.", "Use-by date as in ISO 15223-1:2021."],
      right: () => ["Every date read for sure, and nothing guessed. Of those that may be used, take first the one that ends first."],
      off: () => ["Write every date as year, month, day and compare from the left. If a date can be read in two ways, it is not a date yet."],
      moves: () => ["A day later on the list, and a pack that ends today is out. A month later, so is every pack with this month on it."],
    },
  },
};
