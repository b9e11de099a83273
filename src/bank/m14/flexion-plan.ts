import type { Draw } from "../../engine/question/family-head.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { rehabilitation } from "../../facts/rehabilitation.ts";
import { childOf, drawCase } from "./later-words.ts";

const DAYS_PER_WEEK = 7;
const DAY = { key: "dayPieces", unit: "pieces", least: 2, greatest: 62, step: 1 } as const;

interface Row {
  readonly lastWeek: number;
  readonly pin: string;
}
/** Two published protocols for adults; a hospital follows one of them. */
const TABLES = {
  book: [{ lastWeek: 2, pin: "flexion-book.weeks-1-2@1" }, { lastWeek: 4, pin: "flexion-book.weeks-3-4@1" }, { lastWeek: 6, pin: "flexion-book.weeks-5-6@1" }],
  trial: [{ lastWeek: 4, pin: "flexion-trial.weeks-1-4@1" }, { lastWeek: 6, pin: "flexion-trial.weeks-5-6@1" }, { lastWeek: 8, pin: "flexion-trial.weeks-7-8@1" }],
} as const satisfies Readonly<Record<string, readonly Row[]>>;
type TableId = keyof typeof TABLES;
const PINS = [...TABLES.book, ...TABLES.trial].map(({ pin }) => pin);
const WEEKS = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"] as const;
const BEYOND = "not-in-table";
const ARCS = ["90", "120", "135", BEYOND] as const;

const tableOf = (about: Draw["about"]): TableId => (about["table"] === "trial" ? "trial" : "book");
const otherOf = (table: TableId): TableId => (table === "book" ? "trial" : "book");
const bendOf = (pin: string): string => rehabilitation(pin).value.to ?? "";

/** Day 1 to 7 is week 1; the day of the operation is day 0. */
const weekOf = (day: number): number => Math.ceil(day / DAYS_PER_WEEK);
const arcIn = (table: TableId, week: number): string => {
  const row = TABLES[table].find(({ lastWeek }) => week <= lastWeek);
  return row ? bendOf(row.pin) : BEYOND;
};
const picks = (table: TableId, week: number): Readonly<Record<string, string>> => ({ week: String(week), arc: arcIn(table, week) });
const dayOf = (draw: Draw): number => draw.givens["dayPieces"] as number;
const truthIn = (draw: Draw): Readonly<Record<string, string>> => picks(tableOf(draw.about), weekOf(dayOf(draw)));

const weekBehind = (draw: Draw): Readonly<Record<string, string>> | null => {
  const week = Math.floor(dayOf(draw) / DAYS_PER_WEEK);
  return week === weekOf(dayOf(draw)) || week < 1 ? null : picks(tableOf(draw.about), week);
};
const otherTable = (draw: Draw): Readonly<Record<string, string>> | null => {
  const week = weekOf(dayOf(draw));
  const table = tableOf(draw.about);
  return arcIn(otherOf(table), week) === arcIn(table, week) ? null : picks(otherOf(table), week);
};
const lastRow = (draw: Draw): Readonly<Record<string, string>> | null => {
  const truth = truthIn(draw);
  const last = TABLES[tableOf(draw.about)].at(-1);
  const arc = last === undefined ? BEYOND : bendOf(last.pin);
  return truth["arc"] !== BEYOND || otherTable(draw)?.["arc"] === arc ? null : { ...truth, arc };
};

const rowsText = (table: TableId): string => TABLES[table].map(({ lastWeek, pin }, index, rows) => `weeks ${index === 0 ? 1 : (rows[index - 1]?.lastWeek ?? 0) + 1} to ${lastWeek} from 0 to ${bendOf(pin)}°`).join("; ");
const tableText = (say: Say): string => {
  const table = tableOf({ table: say.about("table") });
  return `The table at ${say.about("hospital")} allows in ${rowsText(table)}. Another hospital’s table, which lies beside it, says: ${rowsText(otherOf(table))}. Both were written for adults.`;
};
const truthOf = (say: Say): Readonly<Record<string, string>> => truthIn({ givens: { dayPieces: say.value("dayPieces") }, about: { table: say.about("table") } });
const arcText = (arc: string | undefined): string => (arc === BEYOND ? "no longer in the table" : `0 to ${arc}°`);

/** 14c: which bend is allowed on a given day. */
export const flexionPlan: NameFamily = {
  kind: "name",
  id: "flexion-plan",
  code: "14c",
  module: "M14",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m14-dates"],
  reads: PINS,
  sources: [{ source: "rehab-book", entry: "flexion-book.weeks-1-2@1" }, { source: "rehab-trial-2013", entry: "flexion-trial.weeks-1-4@1" }],
  cautions: ["C2", "C9", "C16"],
  givens: [DAY],
  attributes: [{ id: "week", options: WEEKS }, { id: "arc", options: ARCS }],
  draw: (chance) => ({ givens: { dayPieces: chance.onGrid(DAY) }, about: { ...drawCase(chance), table: chance.pick(Object.keys(TABLES)) } }),
  truth: truthIn,
  slips: [
    { id: "week-behind", gives: weekBehind },
    { id: "week-ahead", gives: (draw) => picks(tableOf(draw.about), weekOf(dayOf(draw)) + 1) },
    { id: "other-table", gives: otherTable },
    { id: "last-row-kept", gives: lastRow },
  ],
  words: {
    en: {
      title: "How far may the knee bend today?",
      stems: [
        (say) => [`${childOf(say)}, had a meniscus of the ${say.about("side")} knee repaired. ${tableText(say)}`],
        (say) => [`A physiotherapist asks about ${childOf(say)}, ${say.about("side")} knee, repaired. ${tableText(say)}`],
        (say) => [`Before the brace of ${childOf(say)}, is set again you look up the day. ${tableText(say)}`],
      ],
      question: "Which week is it, and which bend does this hospital’s table allow? The first seven days are week 1.",
      givens: { dayPieces: "Days since the operation" },
      attributes: { week: "Week", arc: "Bend allowed" },
      options: { ...Object.fromEntries(WEEKS.map((week) => [week, `Week ${week}`])), 90: "0 to 90°", 120: "0 to 120°", 135: "0 to 135°", [BEYOND]: "No longer in the table: ask" },
      slips: {
        "week-behind": { name: "full weeks counted", because: (say) => [`Day ${say.bare("dayPieces")} is in week ${truthOf(say)["week"]}: a week is named while it runs, not when it is over.`] },
        "week-ahead": { name: "a week too far", because: (say) => [`Day ${say.bare("dayPieces")} is still in week ${truthOf(say)["week"]}. A week ahead may mean a bend that the repair is not yet meant to bear.`] },
        "other-table": { name: "another hospital’s table", because: (say) => [`Protocols disagree. At ${say.about("hospital")} its own table counts, which says: ${arcText(truthOf(say)["arc"])}.`] },
        "last-row-kept": { name: "the last row kept for ever", because: () => ["The table has ended. What comes after it was not written, so it is asked."] },
      },
      working: (say) => [`${say.bare("dayPieces")} ÷ 7, up to the next whole: week ${truthOf(say)["week"]}`, `In this hospital’s table: ${arcText(truthOf(say)["arc"])}`],
      right: (say) => [`Week ${truthOf(say)["week"]}: ${arcText(truthOf(say)["arc"])}. The week first, then the row, in the table of this hospital.`],
      off: (say) => [`Name the week first, ${truthOf(say)["week"]}, then read its row in this hospital’s own table.`],
      moves: () => ["One day may change the row: the eighth day is the first of week 2."],
      turns: () => ["The other table would be right only in the hospital that wrote it."],
    },
  },
};
