import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { answerTo, draw, grade, slipsOf } from "../../bank/index.ts";
import { type DeskRow, deskRow } from "../../engine/cohort/desk-row.ts";
import type { Marker } from "../../engine/cohort/mark-sheet.ts";
import { type Arrival, gatherReturns, readArrival } from "../../engine/cohort/returns.ts";
import type { HandIn } from "../../engine/record/hand-in-form.ts";
import { handInFile } from "../../engine/record/hand-in-text.ts";
import { listId, MOST_QUESTIONS, questionCount, type TeachingList } from "../../engine/record/list-form.ts";
import { listSheet, lockOf } from "../../engine/record/list-sheet.ts";
import type { SheetItem } from "../../engine/record/sheet-number.ts";
import { EDITIONS, NEWEST } from "../../facts/editions.ts";

/** The returns desk with 125, 250 and 500 hand-ins of 60 questions, every learner with numbers of their own: time to read and mark, and what stays in memory. */

const SIZES: readonly number[] = [125, 250, 500];
const GOAL_S = 5;
const MS_PER_S = 1000;
const BYTES_PER_MB = 1_000_000;

/** Sixty families from all over the bank, one question of each. */
const every = NEWEST.families.length / MOST_QUESTIONS;
const PICKS = Array.from({ length: MOST_QUESTIONS }, (_, index) => [Math.floor(index * every), 1] as const);
const LIST: TeachingList = {
  form: "list/1", title: "Bench", edition: NEWEST.edition, lock: lockOf(PICKS, NEWEST), picks: PICKS, sheet: "own", attempts: 1,
  opensOn: "2026-11-16", dueOn: "2026-12-04", keepUntil: "2027-12-31", rule: { rightPercent: 80, must: [], noUnsafe: true }, back: ["file"], backTo: "", spoken: null, nonce: "0123456789abcdef",
};

const AT = "2026-11-24T21:31:00Z";
const itemOf = ({ family, version, seed }: SheetItem) => draw(family, seed, { version });
const marker: Marker = { draw: itemOf, grade, gradeNewest: () => null };

const handInOf = (learner: string): HandIn => {
  const sheet = listSheet(LIST, { learner, attempt: 1, spoken: null }, EDITIONS);
  const items = "fault" in sheet ? [] : sheet.items.map(itemOf);
  const answers = items.map((item, slot) => {
    const response = slot % 3 === 0 ? (slipsOf(item)[0]?.response ?? answerTo(item)) : answerTo(item);
    const { verdict, slip = null } = grade(item, response);
    return { slot, at: AT, response, verdict, slip, local: item.local ?? null };
  });
  return { form: "hand-in/1", list: listId(LIST), edition: "0.1.0", learner, place: null, spoken: null, at: AT, sheets: [{ attempt: 1, answers }] };
};

const rowsOf = (arrivals: readonly Arrival[]): readonly DeskRow[] => {
  const desk = { list: LIST, editions: EDITIONS, marker, edition: "0.1.0" };
  const { people } = gatherReturns(arrivals.flatMap(readArrival), { id: listId(LIST), attempts: LIST.attempts, questions: questionCount(LIST) });
  return people.map((person) => deskRow(person, desk));
};

const heapMb = (): number => {
  setFlagsFromString("--expose-gc");
  (runInNewContext("gc") as () => void)();
  return process.memoryUsage().heapUsed / BYTES_PER_MB;
};

/** Times the desk and prints a line for each size. */
export const benchReturns = (): void => {
  const arrivals = Array.from({ length: SIZES.at(-1) ?? 0 }, (_, index): Arrival => ({ name: `${index}.json`, text: handInFile(handInOf(`learner-${index}`)) }));
  for (const size of SIZES) {
    const before = heapMb();
    const start = process.hrtime.bigint();
    const rows = rowsOf(arrivals.slice(0, size));
    const seconds = Number(process.hrtime.bigint() - start) / 1e6 / MS_PER_S;
    const held = heapMb() - before;
    const marks = rows.reduce((sum, { sheets }) => sum + (sheets[0]?.paper.marks.length ?? 0), 0);
    console.log(`${String(size).padStart(4)} hand-ins, ${marks} marks: ${seconds.toFixed(2)} s, ${held.toFixed(1)} MB held (${((held * 1000) / size).toFixed(0)} kB each)`);
    if (size === SIZES.at(-1) && seconds > GOAL_S) console.log(`more than the ${GOAL_S} s that are the goal`);
  }
};
