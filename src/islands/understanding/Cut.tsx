import { memo, useId, useMemo, useState } from "react";
import { ordinaryFamilies, type Standard, standardOf } from "../../engine/cohort/by-cut.ts";
import type { FixedForm } from "../../engine/cohort/fixed-form.ts";
import { type EstimateFault, readEstimates } from "../../engine/cohort/judge-estimates.ts";
import { numberText } from "../../engine/quantity/format.ts";
import { cohortWordsOf } from "../../facts/cohort-words.ts";
import { type Panel, PANELS } from "../../facts/panels.ts";
import { filled } from "../../facts/words.ts";
import type { Names } from "./names.ts";
import { figureText } from "./say.ts";

const words = cohortWordsOf("en").cut;
const MOST_FAULTS = 8;

interface CutProps {
  readonly form: FixedForm | null;
  readonly names: Names;
  /** Families that must be right, whatever else is. */
  readonly must: readonly string[];
}

const Faults = ({ faults }: { readonly faults: readonly EstimateFault[] }) => (
  <div role="status">
    {faults.length === 0 ? null : <ul className="faults">{faults.slice(0, MOST_FAULTS).map(({ line, fault, found }) => <li key={`${line} ${fault}`}>{filled(words.faults[fault], { line: String(line), found })}</li>)}</ul>}
  </div>
);

const Result = ({ standard: { cut, band } }: { readonly standard: Standard }) => {
  if (cut.cutPoints.value === null) return null;
  const gaps = {
    cut: figureText(cut.cutPoints, 1), items: String(cut.items), judges: String(cut.sums.length), least: numberText(Math.min(...cut.sums), 1), most: numberText(Math.max(...cut.sums), 1),
    spread: figureText(cut.spreadPoints, 2), error: figureText(cut.errorPoints, 2),
  };
  return (
    <>
      <p><b>{filled(words.result, gaps)}</b></p>
      {band === null ? null : <p>{filled(words.band, { low: numberText(band.low, 1), high: numberText(band.high, 1) })}</p>}
    </>
  );
};

const Learners = ({ standard: { learners, cut }, names, must }: { readonly standard: Standard } & Pick<CutProps, "names" | "must">) => (
  <table className="plain result-table cohort">
    <thead><tr>{[words.learner, words.points, words.place, words.must].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
    <tbody>{learners.map(({ learner, points, place, missed }) => (
      <tr key={learner}>
        <th scope="row" data-head={words.learner}>{learner}</th>
        <td data-head={words.points} className="v">{points} / {cut.items}</td>
        <td data-head={words.place}>{words[place]}</td>
        <td data-head={words.must}>{missed.length > 0 ? filled(words.notRight, { names: missed.map(names.family).join("; ") }) : (must.length > 0 && words.allRight) || words.noMust}</td>
      </tr>
    ))}</tbody>
  </table>
);

/** A kept panel's estimates as somebody would type them, for the questions of this sheet. */
const linesOf = ({ estimates }: Panel, families: readonly string[]): string => families.flatMap((family) => (estimates[family] === undefined ? [] : [`${family} ${estimates[family].join(" ")}`])).join("\n");

/** The judges' estimates as they are typed, and what follows from them on this sheet. */
const Judged = ({ form, names, must }: CutProps & { readonly form: FixedForm }) => {
  const [text, setText] = useState("");
  const id = useId();
  const families = useMemo(() => [...new Set(ordinaryFamilies(form, must))], [form, must]);
  const reading = useMemo(() => readEstimates(text, families), [text, families]);
  const standard = useMemo(() => standardOf(form, reading.faults.length === 0 ? reading.judged : [], must), [form, reading, must]);
  const open = families.filter((family) => !reading.judged.some((one) => one.family === family));
  return (
    <>
      <label className="estimates" htmlFor={id}>{words.label}</label>
      <textarea id={id} aria-describedby={`${id}-hint`} rows={6} value={text} spellCheck={false} onChange={(event) => setText(event.currentTarget.value)} />
      <p className="note" id={`${id}-hint`}>{words.hint}</p>
      {PANELS.length === 0 ? null : <div className="btns no-print">{PANELS.map((panel) => <button key={`${panel.on} ${panel.sheet}`} type="button" className="quiet" onClick={() => setText(linesOf(panel, families))}>{filled(words.take, { sheet: panel.sheet, on: panel.on })}</button>)}</div>}
      <details className="more"><summary>{words.names}</summary><p className="note">{families.map((family) => <span key={family} className="family-name"><b>{family}</b> {names.family(family)}<br /></span>)}</p></details>
      <Faults faults={reading.faults} />
      {standard.cut.cutPoints.value === null ? <p className="note">{words.wait}{text === "" || open.length === 0 ? null : ` ${filled(words.open, { names: open.join(", ") })}`}</p> : null}
      <Result standard={standard} />
      {standard.learners.length === 0 ? null : <Learners standard={standard} names={names} must={must} />}
    </>
  );
};

/** A cut score from judges where there is one sheet for it, and why not where there is none. */
export const Cut = memo(({ form, names, must }: CutProps) => (
  <section className="cut">
    <h3 id="cut-score">{words.title}</h3>
    <p className="note">{words.lead}</p>
    {form === null ? <p>{words.noForm}</p> : <Judged form={form} names={names} must={must} />}
  </section>
));
