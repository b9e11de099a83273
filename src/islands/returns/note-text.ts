import type { DeskRow, DeskSheet } from "../../engine/cohort/desk-row.ts";
import type { Difference } from "../../engine/cohort/mark-sheet.ts";
import type { Refused } from "../../engine/cohort/returns.ts";
import { VERDICTS, type VerdictCode } from "../../engine/question/verdict.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { SITE } from "../../facts/site.ts";
import { filled, wordsOf } from "../../facts/words.ts";
import { slotsText } from "../lists/list-text.ts";

/** What the desk found about somebody, as sentences; every one of them from the words of the language. */

const words = listWordsOf("en").desk;
const verdicts = wordsOf("en").verdicts;

const verdictName = (code: string): string => verdicts[VERDICTS.find((one): one is VerdictCode => one === code) ?? "not-recognised"];
const changeText = ({ slot, from, to }: Difference): string => filled(words.note.change, { at: String(slot + 1), from: verdictName(from), to: verdictName(to) });
const listed = (differences: readonly Difference[]): string => differences.map(changeText).join("; ");

const differenceNotes = ({ claimedOtherwise, otherEdition }: DeskSheet): readonly string[] => {
  const notes: string[] = [];
  if (otherEdition !== null) notes.push(filled(words.note.olderEdition, { edition: otherEdition, own: SITE.edition }));
  if (claimedOtherwise.length > 0) notes.push(filled(otherEdition === null ? words.note.claimed : words.note.otherwise, { list: otherEdition === null ? slotsText(claimedOtherwise.map(({ slot }) => slot)) : listed(claimedOtherwise) }));
  return notes;
};

const sheetNotes = (sheet: DeskSheet, isOnly: boolean): readonly string[] => {
  const { paper, rule, unmarked, changedByCorrection, isLate } = sheet;
  const score = { at: String(paper.attempt), right: String(rule.right), all: String(rule.questions) };
  const unsafe = paper.marks.filter((mark) => mark.unsafe).map(({ slot }) => slot);
  return [
    filled(isOnly && paper.attempt === 1 && !sheet.isChanged ? words.note.well : words.note.attempt, score),
    ...(isLate ? [words.note.late] : []),
    ...(unsafe.length > 0 ? [filled(words.note.unsafe, { list: slotsText(unsafe) })] : []),
    ...differenceNotes(sheet),
    ...(unmarked.length > 0 ? [filled(words.note.unmarked, { list: slotsText(unmarked) })] : []),
    ...(changedByCorrection.length > 0 ? [filled(words.note.corrected, { list: listed(changedByCorrection) })] : []),
  ];
};

const resultNote = ({ result, correctedResult, sheets }: DeskRow): readonly string[] => {
  if (!sheets.some(({ corrected }) => corrected !== null)) return [];
  return [result === correctedResult ? words.note.correctedSame : filled(words.note.correctedResult, { from: words.results[result], to: words.results[correctedResult] })];
};

const copiesNote = ({ person }: DeskRow): readonly string[] => {
  const copies = person.received.reduce((sum, { names }) => sum + names.length - 1, 0);
  if (copies === 0) return [];
  return [copies === 1 ? words.note.copyOne : filled(words.note.copies, { n: String(copies) })];
};

/** Everything that was found about one learner, in order. */
export const notesOf = (row: DeskRow, isSupervised: boolean): readonly string[] => {
  const { person, sheets, state } = row;
  return [
    ...(state === "spoken-wrong" ? [words.note.spoken] : []),
    ...(state === "changed" ? [words.note.changed] : []),
    ...sheets.flatMap((sheet) => sheetNotes(sheet, sheets.length === 1)),
    ...(isSupervised && sheets.length > 0 && state !== "spoken-wrong" ? [words.note.spokenRight] : []),
    ...resultNote(row),
    ...copiesNote(row),
    ...(state !== "changed" && person.received.some(({ isChanged }) => isChanged) ? [words.note.changedToo] : []),
    ...(person.conflicts.length > 0 ? [filled(words.note.conflict, { list: person.conflicts.join(", ") })] : []),
    ...person.codes.map(({ attempt, right, unsafe }) => filled(words.note.code, { at: String(attempt), right: String(right), unsafe: String(unsafe) })),
  ];
};

/** Why something was not counted, and what to do. */
export const refusedText = ({ fault, missing }: Refused): string => filled(words.refused[fault], { n: String(missing) });
