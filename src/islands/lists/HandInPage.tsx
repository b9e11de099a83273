import { useEffect, useRef, useState } from "react";
import { handInFile } from "../../engine/record/hand-in-text.ts";
import type { TeachingList } from "../../engine/record/list-form.ts";
import { cautionText } from "../../facts/cautions.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { momentText } from "../dates.ts";
import { Glyph } from "../Glyph.tsx";
import { saidIn } from "../ResultTable.tsx";
import { useRecord } from "../use-record.ts";
import { Valued } from "../Valued.tsx";
import { verdictText } from "../verdict-text.ts";
import { HandInWays } from "./HandInWays.tsx";
import { orText } from "./list-text.ts";
import { type MadeHandIn, makeHandIn, type ShownAnswer, type ShownAttempt } from "./make-hand-in.ts";
import type { Learner } from "./sitting.ts";

const words = listWordsOf("en").handIn;

const Row = ({ answer: { slot, item, graded, at, offsetMin } }: { readonly answer: ShownAnswer }) => {
  const { verdict } = graded.verdict;
  return (
    <tr>
      <td data-head={words.no} className="n">{slot + 1}</td>
      <th scope="row" data-head={words.asked}>{item.title}</th>
      <td data-head={words.said} className="own"><Valued text={saidIn(item, graded)} /></td>
      <td data-head={words.verdict}><Glyph id={`v-${verdict}`} /> {verdictText(item.unsafe, verdict)}</td>
      <td data-head={words.when}>{momentText(at, offsetMin)}</td>
    </tr>
  );
};

const Attempt = ({ attempt: { attempt, questions, answers } }: { readonly attempt: ShownAttempt }) => (
  <>
    <h3>{filled(words.answers, { at: String(attempt), count: String(answers.length), all: String(questions) })}</h3>
    <table className="plain result-table">
      <thead><tr>{[words.no, words.asked, words.said, words.verdict, words.when].map((head) => <th key={head} scope="col">{head}</th>)}</tr></thead>
      <tbody>{answers.map((answer) => <Row key={answer.slot} answer={answer} />)}</tbody>
    </table>
  </>
);

const Whole = ({ list, made }: { readonly list: TeachingList; readonly made: MadeHandIn }) => {
  const { handIn, attempts } = made;
  return (
    <>
      <dl className="facts sheet-facts">
        <div><dt>{words.learner}</dt><dd>{handIn.learner}</dd></div>
        <div><dt>{words.place}</dt><dd>{handIn.place ?? words.noPlace}</dd></div>
        {handIn.spoken === null ? null : <div><dt>{words.spoken}</dt><dd>{handIn.spoken}</dd></div>}
        <div><dt>{words.edition}</dt><dd>{handIn.edition}</dd></div>
        <div><dt>{words.list}</dt><dd className="ref">{handIn.list}</dd></div>
        <div><dt>{words.at}</dt><dd>{momentText(handIn.at, attempts.at(-1)?.answers.at(-1)?.offsetMin ?? "0")}</dd></div>
      </dl>
      {attempts.map((attempt) => <Attempt key={attempt.attempt} attempt={attempt} />)}
      <p className="note">{words.verdictNote}</p>
      <details className="more"><summary>{words.raw}</summary><pre className="raw">{handInFile(handIn)}</pre></details>
      <p className="caution" data-caution="C12"><span className="id">C12</span> {cautionText("C12")}</p>
      <h3>{words.ways}</h3>
      <p>{filled(words.notAsked, { ways: orText(list.back.map((route) => words.way[route])) })}</p>
      <HandInWays list={list} made={made} />
    </>
  );
};

interface PageProps {
  readonly list: TeachingList;
  readonly learner: Learner;
  readonly onBack: () => void;
}

/** Everything that a hand-in holds, before it goes; and the ways for it to go. */
export const HandInPage = ({ list, learner, onBack }: PageProps) => {
  const record = useRecord();
  const heading = useRef<HTMLHeadingElement>(null);
  const [made, setMade] = useState<MadeHandIn | null>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    if (record !== null) makeHandIn(list, learner, record.reading.lines).then(setMade, () => setMade(null));
  }, [record, list, learner]);
  return (
    <div className="hand-in">
      <h2 tabIndex={-1} ref={heading} className="headline">{words.title}</h2>
      <p>{words.lead}</p>
      {made === null ? <p role="status">{words.nothing}</p> : <Whole list={list} made={made} />}
      <div className="btns no-print"><button type="button" className="quiet" onClick={onBack}>{words.back}</button></div>
    </div>
  );
};
