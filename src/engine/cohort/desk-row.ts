import { listSheet, isSpokenRight } from "../record/list-sheet.ts";
import { dayOf, type TeachingList } from "../record/list-form.ts";
import { calendarDay } from "../record/day.ts";
import type { SheetEdition } from "../record/sheet-number.ts";
import type { Paper } from "./paper.ts";
import { type MarkedSheet, type Marker, markSheet } from "./mark-sheet.ts";
import { readRule, type RuleReading } from "./pass-rule.ts";
import type { Person, Taken } from "./returns.ts";

/** What the desk found about one attempt. */
export interface DeskSheet extends MarkedSheet {
  readonly taken: Taken;
  readonly rule: RuleReading;
  /** The rule read by the corrected marks; the same reading where no mark changes. */
  readonly correctedRule: RuleReading;
  /** Edition of the site that graded for the learner, where it is not the desk's. */
  readonly otherEdition: string | null;
  readonly isChanged: boolean;
  readonly isLate: boolean;
}

export type RowState = "as-graded" | "graded-again" | "changed" | "spoken-wrong" | "code-only";

/** One learner on the returns desk. The last attempt decides. */
export interface DeskRow {
  readonly learner: string;
  readonly state: RowState;
  readonly sheets: readonly DeskSheet[];
  readonly person: Person;
  readonly result: "passes" | "not-yet" | "unknown";
  /** By the corrected marks. */
  readonly correctedResult: "passes" | "not-yet" | "unknown";
}

export interface Desk {
  readonly list: TeachingList;
  readonly editions: readonly SheetEdition[];
  readonly marker: Marker;
  /** Edition of the site at the desk. */
  readonly edition: string;
}

const mustOf = ({ list, editions }: Desk): readonly string[] => {
  const families = editions.find(({ edition }) => edition === list.edition)?.families ?? [];
  return list.rule.must.map((place) => families[place]?.id ?? "");
};

const sheetAt = (taken: Taken, desk: Desk): DeskSheet | null => {
  const { learner, spoken, at, edition } = taken.from.handIn;
  const { list } = desk;
  const sheet = listSheet(list, { learner, attempt: taken.sheet.attempt, spoken: list.spoken === null ? null : spoken }, desk.editions);
  if ("fault" in sheet) return null;
  const marked = markSheet(taken, sheet, desk.marker);
  const must = mustOf(desk);
  const rule = readRule(list.rule, must, { sheet, paper: marked.paper });
  const correctedRule = marked.corrected === null ? rule : readRule(list.rule, must, { sheet, paper: marked.corrected });
  const handedIn = calendarDay(at, "0") ?? 0;
  return { ...marked, taken, rule, correctedRule, otherEdition: edition === desk.edition ? null : edition, isChanged: taken.from.isChanged, isLate: handedIn > (dayOf(list.dueOn) ?? 0) };
};

const stateOf = (sheets: readonly DeskSheet[]): RowState => {
  if (sheets.length === 0) return "code-only";
  if (sheets.some(({ isChanged }) => isChanged)) return "changed";
  return sheets.some(({ claimedOtherwise, unmarked, corrected }) => claimedOtherwise.length + unmarked.length > 0 || corrected !== null) ? "graded-again" : "as-graded";
};

const resultOf = (sheets: readonly DeskSheet[], pick: "rule" | "correctedRule", takesChanged = false): DeskRow["result"] => {
  const last = sheets.at(-1);
  if (last === undefined || (last.isChanged && !takesChanged) || last.unmarked.length > 0) return "unknown";
  return last[pick].passes ? "passes" : "not-yet";
};

/** Draws every sheet of a learner again and marks it again. A sheet whose read-aloud word does not fit is not counted: its questions are not those of the list. */
export const deskRow = (person: Person, desk: Desk): DeskRow => {
  const fits = (taken: Taken): boolean => isSpokenRight(desk.list, taken.from.handIn.spoken);
  const sheets = person.taken.filter(fits).flatMap((taken) => sheetAt(taken, desk) ?? []);
  const isWrong = person.taken.some((taken) => !fits(taken));
  const state = isWrong ? "spoken-wrong" : stateOf(sheets);
  return { learner: person.learner, state, sheets, person, result: isWrong ? "unknown" : resultOf(sheets, "rule"), correctedResult: isWrong ? "unknown" : resultOf(sheets, "correctedRule") };
};

export interface CountChoice {
  /** Learners whose changed hand-in the director counts all the same. */
  readonly alsoCounted: ReadonlySet<string>;
  /** True where the corrected marks are counted instead of those of the list's edition. */
  readonly byCorrection: boolean;
}

/** The papers that count, first attempts first within each learner. What was changed after it was made counts only where the director says so. */
export const papersOf = (rows: readonly DeskRow[], { alsoCounted, byCorrection }: CountChoice): readonly Paper[] =>
  rows.flatMap(({ learner, sheets }) => sheets.filter(({ isChanged }) => !isChanged || alsoCounted.has(learner)).map(({ paper, corrected }) => (byCorrection ? (corrected ?? paper) : paper)));

/** What the rule says by the director's choices: of a changed hand-in nothing, until it is counted. */
export const resultBy = ({ learner, sheets, state, result, correctedResult }: DeskRow, { alsoCounted, byCorrection }: CountChoice): DeskRow["result"] => {
  if (state === "changed" && alsoCounted.has(learner)) return resultOf(sheets, byCorrection ? "correctedRule" : "rule", true);
  return byCorrection ? correctedResult : result;
};
