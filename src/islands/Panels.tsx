import { withUnit } from "../engine/quantity/format.ts";
import type { Explanation, Move } from "../engine/question/explain.ts";
import type { Verdict } from "../engine/question/verdict.ts";
import type { Words } from "../facts/words.ts";
import { Valued } from "./Valued.tsx";

const HALF = 36;
const MIDDLE = 50;

/** How far a step more moves the answer, as an arrow on a small rule. */
const MoveArrow = ({ change }: { readonly change: string }) => {
  const value = Number.parseFloat(change.replace("−", "-"));
  const tip = MIDDLE + Math.max(-2, Math.min(2, value)) * (HALF / 2);
  const back = value > 0 ? -5 : 5;
  return (
    <svg viewBox="0 0 100 14" preserveAspectRatio="xMinYMid meet" aria-hidden="true">
      <path className="ax" d={`M${MIDDLE - HALF} 7H${MIDDLE + HALF}M${MIDDLE - HALF} 3v8M${MIDDLE} 1v12M${MIDDLE + HALF} 3v8`} />
      {value === 0 ? null : <path className="dimstrong" d={`M${MIDDLE} 7H${tip}M${tip + back} 3L${tip} 7L${tip + back} 11`} />}
    </svg>
  );
};

const beforeComma = (label: string): string => label.split(",")[0] ?? label;

/** Label without what stands behind its comma, unless another row would then read the same. */
const short = (label: string, all: readonly Move[]): string =>
  all.filter((move) => beforeComma(move.label) === beforeComma(label)).length > 1 ? label : beforeComma(label);

const MoveRow = ({ move, all, words }: { readonly move: Move; readonly all: readonly Move[]; readonly words: Words }) => {
  const texts = [...new Set(Object.values(move.changes))];
  const last = texts.at(-1) ?? "0";
  // An arrow compares lengths with lengths; where the answer is of another kind, the number stands alone.
  const isSameUnit = last.endsWith(withUnit("", move.unit)) && move.unit === "mm";
  return (
    <div>
      <dt>{short(move.label, all)} <span className="v">{move.by}</span></dt>
      <dd className="v">{texts.join(` ${words.card.and} `)}</dd>
      {isSameUnit ? <MoveArrow change={last} /> : <span />}
    </div>
  );
};

interface PanelsProps {
  readonly explanation: Explanation;
  readonly verdict: Verdict;
  readonly words: Words;
}

/** Three panels, always three, always open: nothing that corrects a danger may be hidden. */
export const Panels = ({ explanation, verdict, words }: PanelsProps) => {
  const moves = explanation.moves.filter((move) => Object.keys(move.changes).length > 0);
  const isTwo = explanation.compare.length > 1;
  const inverse = explanation.inverse.length > 0 ? explanation.inverse : [verdict.verdict === "right" ? words.card.inverseRight : words.card.inverseNone];
  return (
    <div className="panels">
      <section>
        <h4>{words.card.happened}</h4>
        {explanation.happened.map((sentence) => <p key={sentence}><Valued text={sentence} /></p>)}
      </section>
      <section>
        <h4>{words.card.moves}</h4>
        {explanation.movesText.map((sentence) => <p key={sentence}><Valued text={sentence} /></p>)}
        {moves.length === 0 && explanation.movesText.length === 0 ? <p>{words.card.movesNone}</p> : null}
        {moves.length === 0 ? null : (
          <>
            <p>{isTwo ? words.card.movesLeadTwo : words.card.movesLead}</p>
            <dl className="moves">{moves.map((move) => <MoveRow key={move.key} move={move} all={moves} words={words} />)}</dl>
          </>
        )}
      </section>
      <section>
        <h4>{words.card.inverse}</h4>
        {inverse.map((sentence) => <p key={sentence}><Valued text={sentence} /></p>)}
      </section>
    </div>
  );
};
