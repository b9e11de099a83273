import { useId } from "react";
import type { DeskRow } from "../../engine/cohort/desk-row.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";

const words = listWordsOf("en").desk;

interface CorrectionProps {
  readonly rows: readonly DeskRow[];
  readonly byCorrection: boolean;
  readonly onChoose: (byCorrection: boolean) => void;
}

/** Where questions were corrected since the list was made: who changes, and the choice of which marks count. Nothing changes by itself. */
export const Corrections = ({ rows, byCorrection, onChoose }: CorrectionProps) => {
  const name = useId();
  const touched = rows.filter(({ sheets }) => sheets.some(({ corrected }) => corrected !== null));
  if (touched.length === 0) return null;
  const changed = touched.filter(({ result, correctedResult }) => result !== correctedResult).map(({ learner }) => learner);
  return (
    <section className="findings">
      <h3>{words.correction}</h3>
      <p>{filled(words.correctionText, { n: String(touched.length), who: changed.length === 0 ? words.nobody : changed.join(", ") })}</p>
      <fieldset className="choices">
        <legend className="vh">{words.correction}</legend>
        <label className="choice"><input type="radio" name={name} checked={!byCorrection} onChange={() => onChoose(false)} /><span className="t">{words.byList}</span></label>
        <label className="choice"><input type="radio" name={name} checked={byCorrection} onChange={() => onChoose(true)} /><span className="t">{words.byCorrection}</span></label>
      </fieldset>
    </section>
  );
};
