import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import type { PartProps } from "./ComposeStudy.tsx";
import { type Draft, familiesOf } from "./draft.ts";

const words = listWordsOf("en").compose;
const STEP_PERCENT = 5;
const PERCENTS: readonly number[] = Array.from({ length: 100 / STEP_PERCENT + 1 }, (_, index) => 100 - index * STEP_PERCENT);
const MUST: readonly (readonly [Draft["mustBy"], string])[] = [["unsafe", words.mustUnsafe], ["ticked", words.mustTicked], ["none", words.mustNone]];

/** The rule for passing as the sentence that learners read; its underlined words are what can be changed. */
export const ComposeRule = ({ draft, course, titles, onChange }: PartProps) => (
  <>
    <h2>{words.ruleTitle}</h2>
    <p className="rule-sentence">
      {words.ruleStart}{" "}
      <select aria-label={words.rulePercentName} value={draft.rightPercent} onChange={(event) => onChange({ rightPercent: Number(event.currentTarget.value) })}>{PERCENTS.map((percent) => <option key={percent} value={percent}>{filled(words.rulePercent, { percent: String(percent) })}</option>)}</select>
      {" "}{words.ruleOf}{" "}
      <select aria-label={words.ruleMustName} value={draft.mustBy} onChange={(event) => onChange({ mustBy: MUST.find(([id]) => id === event.currentTarget.value)?.[0] ?? "none" })}>{MUST.map(([id, text]) => <option key={id} value={id}>{text}</option>)}</select>
      {", "}{words.ruleAnd}{" "}
      <select aria-label={words.ruleUnsafeName} value={draft.noUnsafe ? "no" : "may"} onChange={(event) => onChange({ noUnsafe: event.currentTarget.value === "no" })}><option value="no">{words.unsafeNot}</option><option value="may">{words.unsafeMay}</option></select>.
    </p>
    <p className="hint">{words.ruleChange} {words.whyApart}</p>
    {draft.mustBy === "ticked" ? (
      <fieldset className="choices">
        <legend>{words.mustList}</legend>
        {familiesOf(draft, course).map((family) => (
          <label className="choice" key={family}>
            <input type="checkbox" checked={draft.ticked.has(family)} onChange={(event) => onChange({ ticked: new Set(event.currentTarget.checked ? [...draft.ticked, family] : [...draft.ticked].filter((one) => one !== family)) })} />
            <span className="t">{titles[family] ?? family}</span>
          </label>
        ))}
      </fieldset>
    ) : null}
  </>
);
