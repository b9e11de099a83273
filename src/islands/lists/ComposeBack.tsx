import { useId } from "react";
import { ROUTES } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { DayField } from "./ComposeSheet.tsx";
import type { Draft } from "./draft.ts";

const words = listWordsOf("en").compose;
const MOST_BACK_TO = 160;

/** How hand-ins come back, where to, and how long they are kept. */
export const ComposeBack = ({ draft, onChange }: { readonly draft: Draft; readonly onChange: (change: Partial<Draft>) => void }) => {
  const id = useId();
  return (
    <>
      <h2>{words.back}</h2>
      <fieldset className="choices">
        <legend className="vh">{words.back}</legend>
        {ROUTES.map((route) => <label className="choice" key={route}><input type="checkbox" checked={draft.back.includes(route)} onChange={(event) => onChange({ back: ROUTES.filter((one) => (one === route ? event.currentTarget.checked : draft.back.includes(one))) })} /><span className="t">{words.way[route]}</span></label>)}
      </fieldset>
      <div className="lined">
        <label htmlFor={id}>{words.backTo}</label>
        <input id={id} type="text" maxLength={MOST_BACK_TO} value={draft.backTo} onChange={(event) => onChange({ backTo: event.currentTarget.value })} />
      </div>
      <DayField label={words.keep} value={draft.keepUntil} hint={words.keepHint} onChange={(keepUntil) => onChange({ keepUntil })} />
    </>
  );
};
