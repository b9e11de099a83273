import { MOST_QUESTIONS } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { CountField } from "./CountField.tsx";
import { type ComposeCourse, type Draft, draftQuestions, familiesOf } from "./draft.ts";
import type { Titles } from "./list-text.ts";

const words = listWordsOf("en").compose;
const MOST_EACH = 6;

export interface PartProps {
  readonly draft: Draft;
  readonly course: ComposeCourse;
  readonly titles: Titles;
  readonly onChange: (change: Partial<Draft>) => void;
}

const totalText = (count: number): string => {
  if (count === 0) return words.totalNone;
  return filled(count > MOST_QUESTIONS ? words.totalMost : words.total, { count: String(count), most: String(MOST_QUESTIONS) });
};

const withAll = (objectives: ReadonlySet<string>, ids: readonly string[], isIn: boolean): ReadonlySet<string> =>
  new Set(isIn ? [...objectives, ...ids] : [...objectives].filter((id) => !ids.includes(id)));

const ModuleChoice = ({ module, draft, onChange }: { readonly module: CourseModule } & Pick<PartProps, "draft" | "onChange">) => {
  const ids = module.objectives.map(({ id }) => id);
  const chosen = ids.filter((id) => draft.objectives.has(id)).length;
  const critical = module.objectives.filter(({ isSafety }) => isSafety).length;
  const set = (some: readonly string[], isIn: boolean): void => onChange({ families: null, objectives: withAll(draft.objectives, some, isIn) });
  return (
    <>
      <label className="choice">
        <input type="checkbox" checked={chosen === ids.length && chosen > 0} ref={(box) => { if (box) box.indeterminate = chosen > 0 && chosen < ids.length; }} onChange={(event) => set(ids, event.currentTarget.checked)} />
        <span className="ref">{module.code}</span>
        <span className="t">{module.title} <span className="more-of">{filled(words.objectives, { count: String(ids.length), critical: String(critical) })}</span></span>
      </label>
      {chosen === 0 ? null : (
        <details className="more">
          <summary>{words.single}</summary>
          <div>{module.objectives.map(({ id, text }) => <label className="choice" key={id}><input type="checkbox" checked={draft.objectives.has(id)} onChange={(event) => set([id], event.currentTarget.checked)} /><span className="t">{text}</span></label>)}</div>
        </details>
      )}
    </>
  );
};

/** What is studied: a ready-made list as it is, or modules and objectives; and how often each kind is asked. */
export const ComposeStudy = ({ draft, course, titles, onChange }: PartProps) => (
  <>
    <h2>{words.what}</h2>
    {draft.families === null ? <fieldset className="choices"><legend className="vh">{words.what}</legend>{course.modules.map((module) => <ModuleChoice key={module.code} module={module} draft={draft} onChange={onChange} />)}</fieldset> : <ul className="ruled">{familiesOf(draft, course).map((family) => <li key={family}>{titles[family] ?? family}</li>)}</ul>}
    <CountField label={words.each} most={MOST_EACH} value={draft.each} hint={words.eachHint} onChange={(each) => onChange({ each })} />
    <p className="total" role="status">{totalText(draftQuestions(draft, course))}</p>
  </>
);
