import { memo, useState } from "react";
import type { ObjectiveFigures } from "../../engine/cohort/by-objective.ts";
import type { LearnerRow, ObjectiveCell } from "../../engine/cohort/learner-objectives.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import { Glyph } from "../Glyph.tsx";
import type { Names } from "./names.ts";
import { ofText } from "./say.ts";

const { matrix: words } = cohortWordsOf("en");

const SHAPES: Readonly<Record<ObjectiveCell["state"], readonly [glyph: string, tone: string]>> = {
  right: ["v-right", "act"],
  off: ["v-safe-side", "near"],
  unsafe: ["v-unsafe-side", "stop"],
};

const STATES = ["unsafe", "off", "right"] as const;

const Key = () => (
  <p className="matrix-key">
    {STATES.map((state) => <span key={state} className={SHAPES[state][1]}><Glyph id={SHAPES[state][0]} /> {words[state]}</span>)}
    <span className="steel"><b aria-hidden="true">·</b> {words.notAsked}</span>
  </p>
);

const Cell = ({ at, cell }: { readonly at: number; readonly cell: ObjectiveCell | undefined }) => {
  if (cell === undefined) return <td data-head={at} className="steel"><span aria-hidden="true">·</span><span className="vh">{words.notAsked}</span></td>;
  const [glyph, tone] = SHAPES[cell.state];
  return (
    <td data-head={at} className={tone}>
      <Glyph id={glyph} /><span className="vh">{words[cell.state]}</span>
      {cell.answers > 1 ? <span className="part"><span aria-hidden="true">{cell.right}/{cell.answers}</span><span className="vh">, {ofText(cell.right, cell.answers)}</span></span> : null}
    </td>
  );
};

interface MatrixProps {
  readonly rows: readonly LearnerRow[];
  readonly objectives: readonly ObjectiveFigures[];
  readonly names: Names;
  readonly onChoose: (learner: string) => void;
}

/** Most columns that stand beside each other; with more, each row becomes lines of numbered shapes. */
const MOST_COLUMNS = 24;

/** Rows that stand there at once; a cohort of hundreds would keep the page from answering. */
const MOST_ROWS = 60;

/** Learners by objectives in shapes; every shape has its word for whoever does not see it. */
export const Matrix = memo(({ rows, objectives, names, onChoose }: MatrixProps) => {
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? rows : rows.slice(0, MOST_ROWS);
  return (
    <section>
      <h3 id="learners">{words.title}</h3>
      <p className="note">{words.lead}</p>
      <Key />
      <table className={objectives.length > MOST_COLUMNS ? "matrix lines" : "matrix"}>
        <thead><tr><th scope="col">{words.learner}</th>{objectives.map(({ objective }, index) => <th key={objective} scope="col" className="n">{index + 1}<span className="vh"> {names.objective(objective)}</span></th>)}</tr></thead>
        <tbody>
          {shown.map(({ learner, cells }) => (
            <tr key={learner}>
              <th scope="row"><button type="button" className="name-button" onClick={() => onChoose(learner)}>{learner}</button></th>
              {objectives.map(({ objective }, index) => <Cell key={objective} at={index + 1} cell={cells.find((cell) => cell.objective === objective)} />)}
            </tr>
          ))}
        </tbody>
        <tfoot><tr><th scope="row">{words.foot}</th>{objectives.map(({ objective, allRight }, index) => <td key={objective} data-head={index + 1} className="n">{allRight}</td>)}</tr></tfoot>
      </table>
      {shown.length < rows.length ? <div className="btns no-print"><button type="button" onClick={() => setWhole(true)}>{filled(words.rest, { count: String(rows.length - shown.length) })}</button></div> : null}
    </section>
  );
});
