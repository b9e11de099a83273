import { useEffect, useId, useMemo, useState } from "react";
import { MOST_QUESTIONS } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { PRESETS } from "../../facts/presets.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { today } from "../new-event.ts";
import { ComposeBack } from "./ComposeBack.tsx";
import { ComposeOut } from "./ComposeOut.tsx";
import { ComposeRule } from "./ComposeRule.tsx";
import { ComposeSheet } from "./ComposeSheet.tsx";
import { ComposeStudy } from "./ComposeStudy.tsx";
import { type Draft, draftOf, emptyDraft, makeList, type MadeList } from "./draft.ts";
import { keepDraft, keptDraft } from "./kept-draft.ts";
import type { Titles } from "./list-text.ts";

const words = listWordsOf("en").compose;

interface DeskProps {
  readonly modules: readonly CourseModule[];
  readonly titles: Titles;
  readonly unsafe: readonly string[];
}

const Start = ({ draft, onStart }: { readonly draft: Draft; readonly onStart: (draft: Draft) => void }) => {
  const id = useId();
  const begin = (value: string): void => {
    const preset = PRESETS.find(({ number }) => String(number) === value);
    onStart(preset === undefined ? emptyDraft(today()) : draftOf(preset, draft));
  };
  return (
    <div className="lined start">
      <label htmlFor={id}>{words.start}</label>
      <select id={id} value={draft.preset ?? ""} aria-describedby={`${id}h`} onChange={(event) => begin(event.currentTarget.value)}>
        <option value="">{words.blank}</option>
        {PRESETS.map(({ number, title }) => <option key={number} value={number}>{title}</option>)}
      </select>
      <p className="hint" id={`${id}h`}>{words.presetCode}</p>
    </div>
  );
};

/** The page on which a director puts a teaching list together. What is chosen stays in the tab until it is closed; what the page makes is a link. */
export const ComposeDesk = ({ modules, titles, unsafe }: DeskProps) => {
  const course = useMemo(() => ({ modules, unsafe: new Set(unsafe) }), [modules, unsafe]);
  const [draft, setDraft] = useState<Draft>(() => emptyDraft(0));
  const [made, setMade] = useState<MadeList | null>(null);
  const [said, setSaid] = useState("");
  // The page was built on another day; the days count from the one on which it is opened.
  useEffect(() => setDraft(keptDraft() ?? emptyDraft(today())), []);
  const take = (next: Draft): void => {
    setDraft(next);
    keepDraft(next);
    setMade(null);
    setSaid("");
  };
  const change = (some: Partial<Draft>): void => take({ ...draft, ...some });
  const make = (): void => {
    const next = makeList(draft, course, PRESETS);
    setMade("fault" in next ? null : next);
    setSaid("fault" in next ? filled(words.fault[next.fault], { most: String(MOST_QUESTIONS) }) : "");
  };
  return (
    <div className="compose needs-script">
      <form onSubmit={(event) => { event.preventDefault(); make(); }} noValidate>
        <Start draft={draft} onStart={take} />
        <ComposeStudy draft={draft} course={course} titles={titles} onChange={change} />
        <ComposeSheet draft={draft} onChange={change} />
        <ComposeRule draft={draft} course={course} titles={titles} onChange={change} />
        <ComposeBack draft={draft} onChange={change} />
        <p role="status" className="said">{said}</p>
        <div className="btns"><button type="submit" className="main">{words.make}</button></div>
      </form>
      {made === null ? <div /> : <ComposeOut key={made.list.nonce} made={made} />}
    </div>
  );
};
