import { useId } from "react";
import { MOST_ATTEMPTS } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { CountField } from "./CountField.tsx";
import type { Draft } from "./draft.ts";

const words = listWordsOf("en").compose;
const MOST_TITLE = 80;

type SheetProps = { readonly draft: Draft; readonly onChange: (change: Partial<Draft>) => void };

export const DayField = ({ label, value, hint, onChange }: { readonly label: string; readonly value: string; readonly hint?: string; readonly onChange: (day: string) => void }) => {
  const id = useId();
  return (
    <div className="lined">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="date" value={value} required aria-describedby={hint === undefined ? undefined : `${id}h`} onChange={(event) => onChange(event.currentTarget.value)} />
      {hint === undefined ? null : <p className="hint" id={`${id}h`}>{hint}</p>}
    </div>
  );
};

/** Which sheet, how often, from when to when, and what the list is called. */
export const ComposeSheet = ({ draft, onChange }: SheetProps) => {
  const id = useId();
  return (
    <>
      <h2>{words.which}</h2>
      <fieldset className="choices">
        <legend className="vh">{words.which}</legend>
        {(["own", "same"] as const).map((sheet) => <label className="choice" key={sheet}><input type="radio" name={`${id}s`} checked={draft.sheet === sheet} onChange={() => onChange({ sheet })} /><span className="t">{words[sheet]}</span></label>)}
        <label className="choice"><input type="checkbox" checked={draft.isSupervised} onChange={(event) => onChange({ isSupervised: event.currentTarget.checked })} /><span className="t">{words.supervised}</span></label>
      </fieldset>
      <div className="lined">
        <label htmlFor={`${id}t`}>{words.name}</label>
        <input id={`${id}t`} type="text" maxLength={MOST_TITLE} value={draft.title} aria-describedby={`${id}th`} onChange={(event) => onChange({ title: event.currentTarget.value })} />
        <p className="hint" id={`${id}th`}>{words.nameHint}</p>
      </div>
      <div className="pair">
        <DayField label={words.opens} value={draft.opensOn} onChange={(opensOn) => onChange({ opensOn })} />
        <DayField label={words.due} value={draft.dueOn} onChange={(dueOn) => onChange({ dueOn })} />
        <CountField label={words.attempts} most={MOST_ATTEMPTS} value={draft.attempts} onChange={(attempts) => onChange({ attempts })} />
      </div>
    </>
  );
};
