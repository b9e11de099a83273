import { memo } from "react";
import { type CompletionRow, completionRows } from "../../engine/cohort/completion.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import { cautionText } from "../../facts/cautions.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { dayOfMoment } from "./say.ts";

const { completion: words } = cohortWordsOf("en");

/** The list's number stands in each row only where there are several lists. */
const Row = ({ row: { learner, place, list, attempts, firstAt, lastAt, answered, unsafeInLast }, isOneList }: { readonly row: CompletionRow; readonly isOneList: boolean }) => (
  <tr>
    <th scope="row" data-head={words.learner}>{learner}</th>
    <td data-head={words.place}>{place ?? words.noPlace}</td>
    {isOneList ? null : <td data-head={words.list} className="v">{list}</td>}
    <td data-head={words.attempts} className="v">{attempts}</td>
    <td data-head={words.first} className="v">{dayOfMoment(firstAt)}</td>
    <td data-head={words.last} className="v">{dayOfMoment(lastAt)}</td>
    <td data-head={words.answered} className="v">{answered}</td>
    <td data-head={words.unsafe} className="v">{unsafeInLast}</td>
  </tr>
);

/** Who worked through what and when; a page to sign, and no more than that. */
export const Completion = memo(({ papers, about, onPrint }: { readonly papers: readonly Paper[]; readonly about?: string | undefined; readonly onPrint: () => void }) => {
  const rows = completionRows(papers);
  const lists = [...new Set(rows.map(({ list }) => list))];
  const isOneList = lists.length === 1;
  const heads = [words.learner, words.place, ...(isOneList ? [] : [words.list]), words.attempts, words.first, words.last, words.answered, words.unsafe];
  return (
    <section>
      <div className="completion">
        <h3 id="completion">{words.title}</h3>
        {isOneList ? <p className="l">{words.list} {about === undefined ? null : <b>{about} </b>}<span className="v">{lists[0]}</span></p> : null}
        <p className="note">{words.lead}</p>
        <table className="plain result-table cohort">
          <thead><tr>{heads.map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
          <tbody>{rows.map((row) => <Row key={`${row.list} ${row.learner}`} row={row} isOneList={isOneList} />)}</tbody>
        </table>
        <p className="signed">{words.signed}</p>
        {["C6", "C12"].map((id) => <p key={id} className="caution" data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}
      </div>
      <div className="btns no-print"><button type="button" onClick={onPrint}>{words.print}</button></div>
    </section>
  );
});
