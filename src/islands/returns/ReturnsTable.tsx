import { memo } from "react";
import { type DeskRow, resultBy } from "../../engine/cohort/desk-row.ts";
import type { Refused, Returns } from "../../engine/cohort/returns.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { Glyph } from "../Glyph.tsx";
import { notesOf, refusedText } from "./note-text.ts";

const words = listWordsOf("en").desk;
const HEADS = [words.learner, words.attempt, words.route, words.state, words.found, words.result] as const;

interface TableProps {
  readonly rows: readonly DeskRow[];
  readonly returns: Returns;
  readonly isSupervised: boolean;
  readonly byCorrection: boolean;
  readonly alsoCounted: ReadonlySet<string>;
  readonly onCount: (learner: string, isCounted: boolean) => void;
}

const isUnsafe = ({ sheets }: DeskRow): boolean => sheets.at(-1)?.paper.marks.some(({ unsafe }) => unsafe) ?? false;

/** The glyph and the word of a row: an unsafe slip is said before all else that was read well. */
const State = ({ row }: { readonly row: DeskRow }) => {
  const id = row.state === "as-graded" && isUnsafe(row) ? "unsafe" : row.state;
  const glyph = { unsafe: "v-unsafe-side", "as-graded": "v-right", "graded-again": "d-again", changed: "d-changed", "spoken-wrong": "d-changed", "code-only": "d-code" }[id];
  return <span className={`state ${id === "unsafe" ? "unsafe-side" : id}`}><Glyph id={glyph} /> {words.states[id]}</span>;
};

type RowProps = Omit<TableProps, "rows" | "returns"> & { readonly row: DeskRow };

/** Drawn once and kept: while hundreds are marked, only the rows that are new cost anything. */
const Row = memo(({ row, isSupervised, byCorrection, alsoCounted, onCount }: RowProps) => {
  const { learner, person, sheets, state } = row;
  const routes = [...new Set([...person.received.flatMap(({ routes: own }) => own), ...(person.codes.length > 0 ? (["code"] as const) : [])])];
  const attempts = [...new Set([...sheets.map(({ paper }) => paper.attempt), ...person.codes.map(({ attempt }) => attempt)])];
  const isCounted = alsoCounted.has(learner);
  const place = person.received.at(-1)?.handIn.place ?? null;
  return (
    <tr className={state}>
      <th scope="row" data-head={HEADS[0]}>{learner}{place === null ? null : <span className="at-place">{place}</span>}</th>
      <td data-head={HEADS[1]}>{attempts.join(", ")}</td>
      <td data-head={HEADS[2]}>{routes.map((route) => words.routes[route]).join(", ")}</td>
      <td data-head={HEADS[3]}><State row={row} /></td>
      <td data-head={HEADS[4]}>
        {notesOf(row, isSupervised).map((note) => <span className="note-of" key={note}>{note} </span>)}
        {state === "changed" ? <button type="button" className="quiet no-print" onClick={() => onCount(learner, !isCounted)}>{isCounted ? words.countNot : words.countIt}</button> : null}
      </td>
      <td data-head={HEADS[5]}><b>{words.results[resultBy(row, { alsoCounted, byCorrection })]}</b></td>
    </tr>
  );
});

const RefusedRow = ({ refused, hasOther }: { readonly refused: Refused; readonly hasOther: boolean }) => (
  <tr className="refused">
    <th scope="row" data-head={HEADS[0]}>{refused.learner ?? words.unknownLearner}</th>
    <td data-head={HEADS[1]} />
    <td data-head={HEADS[2]}>{refused.route === null ? "" : words.routes[refused.route]}</td>
    <td data-head={HEADS[3]}><span className="state refused"><Glyph id="d-torn" /> {words.states.refused}</span></td>
    <td data-head={HEADS[4]}><span className="note-of">{refusedText(refused)} </span>{hasOther ? <span className="note-of">{words.otherCame} </span> : null}<span className="note-of">{filled(words.from, { name: refused.name })}</span></td>
    <td data-head={HEADS[5]}><b>{words.results.unknown}</b></td>
  </tr>
);

const byUnsafe = (one: DeskRow, other: DeskRow): number => Number(isUnsafe(other)) - Number(isUnsafe(one)) || (one.learner < other.learner ? -1 : 1);

/** Everybody who handed in, unsafe first, and everything that could not be counted, with what was found. */
export const ReturnsTable = ({ rows, returns, ...rest }: TableProps) => {
  // Two files may fail in the same way; their place among all tells them apart.
  const refused = returns.refused.map((one, index) => ({ one, key: `${index} ${one.name}` }));
  const learners = new Set(rows.map(({ learner }) => learner));
  return (
    <table className="plain result-table returns-table">
      <thead><tr>{HEADS.map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>
        {rows.toSorted(byUnsafe).map((row) => <Row key={row.learner} row={row} {...rest} />)}
        {refused.map(({ one, key }) => <RefusedRow key={key} refused={one} hasOther={one.learner !== null && learners.has(one.learner)} />)}
      </tbody>
    </table>
  );
};
