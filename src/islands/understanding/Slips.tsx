import { memo, useState } from "react";
import type { SlipCount } from "../../engine/cohort/slip-counts.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { filled } from "../../facts/words.ts";
import { Glyph } from "../Glyph.tsx";
import { Bar } from "./Bar.tsx";
import type { Names } from "./names.ts";
import { ofText } from "./say.ts";

const { slips: words, asTable } = cohortWordsOf("en");
const FIRST_SHOWN = 12;

interface SlipsProps {
  readonly slips: readonly SlipCount[];
  readonly names: Names;
  readonly all: number;
}

const Row = ({ count, names, all }: { readonly count: SlipCount; readonly names: Names; readonly all: number }) => (
  <li>
    <p className={count.unsafe ? "stop" : ""}>{count.unsafe ? <><Glyph id="v-unsafe-side" /> </> : null}<b>{names.slip(count.family, count.slip)}</b></p>
    <p className="steel">{names.family(count.family)}</p>
    <p className="of"><Bar count={count.learners} all={all} unsafe={count.unsafe} text={filled(words.bar, { count: String(count.learners), all: String(all) })} /><b className="v">{count.learners}</b></p>
  </li>
);

const Table = ({ slips, names }: Omit<SlipsProps, "all">) => (
  <details className="more">
    <summary>{asTable}</summary>
    <table className="plain result-table cohort">
      <thead><tr>{[words.slip, words.question, words.learners, words.side].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>{slips.map(({ family, slip, learners, met, unsafe }) => (
        <tr key={`${family} ${slip}`}>
          <th scope="row" data-head={words.slip}>{names.slip(family, slip)}</th>
          <td data-head={words.question}>{names.family(family)}</td>
          <td data-head={words.learners} className="v">{ofText(learners, met)}</td>
          <td data-head={words.side}>{unsafe ? words.yes : words.no}</td>
        </tr>
      ))}</tbody>
    </table>
  </details>
);

/** Slips as bars, unsafe ones first, and the same as a table. */
export const Slips = memo(({ slips, names, all }: SlipsProps) => {
  const [isWhole, setWhole] = useState(false);
  const shown = isWhole ? slips : slips.slice(0, FIRST_SHOWN);
  if (slips.length === 0) return <section><h3 id="slips">{words.title}</h3><p>{words.none}</p></section>;
  return (
    <section>
      <h3 id="slips">{words.title}</h3>
      <p className="note">{words.lead}</p>
      <ul className="slip-plot">{shown.map((count) => <Row key={`${count.family} ${count.slip}`} count={count} names={names} all={all} />)}</ul>
      {shown.length < slips.length ? <div className="btns no-print"><button type="button" onClick={() => setWhole(true)}>{filled(words.rest, { count: String(slips.length - shown.length) })}</button></div> : null}
      <Table slips={slips} names={names} />
    </section>
  );
});
