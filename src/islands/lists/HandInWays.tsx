import { completionCode, shortList } from "../../engine/record/completion-code.ts";
import { handInBlock, handInFile, handInParts } from "../../engine/record/hand-in-text.ts";
import type { Route, TeachingList } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { saveFile } from "../save-file.ts";
import { Square } from "../Square.tsx";
import { CopyText } from "./CopyText.tsx";
import type { MadeHandIn, ShownAttempt } from "./make-hand-in.ts";

const words = listWordsOf("en").handIn;

const countOf = ({ answers }: ShownAttempt, wanted: string): number => answers.filter(({ graded }) => graded.verdict.verdict === wanted).length;

const AsFile = ({ made: { handIn } }: { readonly made: MadeHandIn }) => (
  <section className="no-print">
    <h4>{words.file}</h4>
    <p>{words.fileText}</p>
    <div className="btns"><button type="button" className="main" onClick={() => saveFile(handInFile(handIn), `hand-in-${handIn.learner}.json`, "application/json")}>{words.saveFile}</button></div>
  </section>
);

const AsBlock = ({ made: { handIn } }: { readonly made: MadeHandIn }) => (
  <section className="no-print">
    <h4>{words.block}</h4>
    <CopyText label={words.blockText} text={handInBlock(handIn)} rows={8} copy={words.copy} />
  </section>
);

const AsSquares = ({ made: { handIn } }: { readonly made: MadeHandIn }) => {
  const parts = handInParts(handIn);
  return (
    <section className="squares">
      <h4>{words.squares}</h4>
      <p>{parts.length === 1 ? words.squaresOne : filled(words.squaresText, { count: String(parts.length) })}</p>
      <p className="print-only">{handIn.learner}</p>
      <ul>{parts.map((text, index) => <li key={text}><Square text={text} name={filled(words.square, { at: String(index + 1), of: String(parts.length) })} /><span aria-hidden="true">{index + 1} / {parts.length}</span></li>)}</ul>
      <div className="btns no-print"><button type="button" onClick={() => window.print()}>{words.print}</button></div>
    </section>
  );
};

const AsCode = ({ made: { handIn, attempts } }: { readonly made: MadeHandIn }) => (
  <section>
    <h4>{words.code}</h4>
    <p>{words.codeText}</p>
    <ul className="ruled">
      {attempts.map((attempt) => {
        const [right, unsafe] = [countOf(attempt, "right"), countOf(attempt, "unsafe-side")];
        const code = completionCode({ list: shortList(handIn.list), attempt: attempt.attempt, right, unsafe }, handIn.learner);
        return <li key={attempt.attempt}><b className="typed-code">{handIn.learner} {code}</b> {filled(words.codeUnsafe, { at: String(attempt.attempt), right: String(right), unsafe: String(unsafe) })}</li>;
      })}
    </ul>
  </section>
);

const WAYS: Readonly<Record<Route, typeof AsFile>> = { file: AsFile, block: AsBlock, square: AsSquares, code: AsCode };

/** The ways that the list allows a hand-in to go. Each is made here and pressed by the learner; nothing goes by itself. */
export const HandInWays = ({ list, made }: { readonly list: TeachingList; readonly made: MadeHandIn }) => (
  <>
    {list.back.map((route) => {
      const Way = WAYS[route];
      return <Way key={route} made={made} />;
    })}
  </>
);
