import { useEffect, useId, useRef, useState } from "react";
import { dayOf, type TeachingList } from "../../engine/record/list-form.ts";
import { cautionText } from "../../facts/cautions.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { today } from "../new-event.ts";
import { ListFacts } from "./ListFacts.tsx";
import { dateText, type Titles } from "./list-text.ts";
import { type Learner, learnerFrom, type LearnerFault } from "./sitting.ts";

const words = listWordsOf("en").first;
/** C1 stands beside, in the margin. */
const CAUTIONS = ["C2", "C6", "C12"] as const;

interface FieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly problem: string;
  readonly value: string;
  readonly onType: (text: string) => void;
}

const Field = ({ label, hint, problem, value, onType }: FieldProps) => {
  const id = useId();
  return (
    <div className="lined">
      <label htmlFor={id}>{label}</label>
      <input id={id} type="text" value={value} autoComplete="off" autoCapitalize="off" spellCheck={false} aria-describedby={`${id}h ${id}p`} aria-invalid={problem === "" ? undefined : true} onChange={(event) => onType(event.currentTarget.value)} />
      {hint === undefined ? null : <p className="hint" id={`${id}h`}>{hint}</p>}
      <p className="problem" id={`${id}p`} role="status">{problem}</p>
    </div>
  );
};

interface FirstProps {
  readonly list: TeachingList;
  readonly titles: Titles;
  readonly onBegin: (learner: Learner) => void;
}

/** The first screen of a list: everything that holds for it, before anything is asked; then the learner code. */
export const ListFirst = ({ list, titles, onBegin }: FirstProps) => {
  const heading = useRef<HTMLHeadingElement>(null);
  const [typed, setTyped] = useState({ learner: "", place: "", spoken: "" });
  const [fault, setFault] = useState<LearnerFault | null>(null);
  useEffect(() => {
    // Whoever came by a link begins at the top; whoever pressed a button goes on from here.
    if (document.activeElement !== document.body) heading.current?.focus();
  }, []);
  const day = today();
  const isEarly = day < (dayOf(list.opensOn) ?? 0);
  const isLate = day > (dayOf(list.dueOn) ?? 0);
  const begin = (): void => {
    const learner = learnerFrom(list, typed);
    setFault("fault" in learner ? learner.fault : null);
    if (!("fault" in learner)) onBegin(learner);
  };
  const problem = (of: LearnerFault): string => (fault === of ? words[of] : "");
  return (
    <form className="list-first" onSubmit={(event) => { event.preventDefault(); begin(); }}>
      <p className="l">{words.list}</p>
      <h2 tabIndex={-1} ref={heading} className="headline">{list.title}</h2>
      <ListFacts list={list} titles={titles} />
      <h3>{words.cautions}</h3>
      <div className="cautions-row">{CAUTIONS.map((id) => <p className="caution" key={id} data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}</div>
      {isLate ? <p className="notice">{filled(words.overdue, { date: dateText(list.dueOn) })}</p> : null}
      {isEarly ? <p className="notice">{filled(words.notYet, { date: dateText(list.opensOn) })}</p> : (
        <>
          <Field label={words.learner} hint={words.learnerHint} problem={problem("learnerWrong")} value={typed.learner} onType={(learner) => setTyped({ ...typed, learner })} />
          <Field label={words.place} problem={problem("placeLong")} value={typed.place} onType={(place) => setTyped({ ...typed, place })} />
          {list.spoken === null ? null : <Field label={words.spoken} hint={words.spokenHint} problem={problem("spokenWrong")} value={typed.spoken} onType={(spoken) => setTyped({ ...typed, spoken })} />}
          <div className="btns"><button type="submit" className="main">{words.begin}</button></div>
        </>
      )}
    </form>
  );
};
