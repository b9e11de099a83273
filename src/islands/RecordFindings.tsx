import { SET_BACK_WORDS } from "../engine/record/words.ts";
import type { LearnerState } from "../engine/record/learner-state.ts";
import { filled } from "../facts/words.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import type { KeptRecord } from "./store/record.ts";

const words = recordWordsOf("en").box;
const MOST_SHOWN = 20;

/** What the record's own check has to say: trouble of the device, damaged lines, a clock that was set back. Nothing is left out quietly. */
export const RecordFindings = ({ record, state }: { readonly record: KeptRecord; readonly state: LearnerState }) => {
  const { findings } = record.reading;
  const sentences = [
    ...(record.trouble === null ? [] : [words[record.trouble]]),
    ...(state.setBackBy.length === 0 ? [] : [SET_BACK_WORDS.en]),
    ...(state.unplaced.length === 0 ? [] : [state.unplaced.length === 1 ? words.unplacedOne : filled(words.unplaced, { count: String(state.unplaced.length) })]),
  ];
  if (sentences.length === 0 && findings.length === 0) return null;
  return (
    <section className="findings" role="status">
      <h3>{words.findings}</h3>
      {sentences.map((sentence) => <p key={sentence}>{sentence}</p>)}
      {findings.slice(0, MOST_SHOWN).map(({ line, fault, sentence, isAside, text }) => (
        <div key={`${line} ${fault}`}>
          <p>{sentence}</p>
          {isAside ? <details className="more"><summary>{words.aside}</summary><pre>{text.slice(0, 2000)}</pre></details> : null}
        </div>
      ))}
      {findings.length > MOST_SHOWN ? <p>{`… ${findings.length - MOST_SHOWN}`}</p> : null}
    </section>
  );
};
