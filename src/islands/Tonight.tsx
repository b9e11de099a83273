import type { LearnerState, ObjectiveStanding } from "../engine/record/learner-state.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { type CourseModule, objectivesOf } from "./course.ts";
import { numberFromStand } from "./draw-sheet.ts";
import { Level } from "./Level.tsx";
import { siteHref } from "./site-href.ts";

const words = recordWordsOf("en");
const MOST = 5;

const reasonOf = ({ level, returns }: ObjectiveStanding): string => (level === "stop" ? words.why.unsafe : `${words.why.back}: ${returns === null ? "" : words.reason[returns.reason]}`);

/** What comes first today, with its reason, and a sheet drawn from where the learner stands. */
export const Tonight = ({ state, modules }: { readonly state: LearnerState; readonly modules: readonly CourseModule[]; readonly todayDay: number }) => {
  const objectives = objectivesOf(modules);
  const textOf = (id: string): string => objectives.find((one) => one.id === id)?.text ?? id;
  const back = state.objectives.filter(({ isBack }) => isBack).toSorted((one, other) => Number(other.level === "stop") - Number(one.level === "stop") || (one.returns?.day ?? 0) - (other.returns?.day ?? 0)).slice(0, MOST);
  const go = (standings: readonly ObjectiveStanding[]): void => {
    const number = numberFromStand({ modules, standings });
    if (number !== null) window.location.assign(`${siteHref("/sheet/")}#${number}`);
  };
  return (
    <section className="tonight">
      <h2>{words.stand.tonight}</h2>
      {back.length === 0 ? <p>{words.stand.nothingBack}</p> : (
        <ul>{back.map((standing) => <li key={standing.objective}><Level level={standing.level} /><span><b>{textOf(standing.objective)}</b>: {reasonOf(standing)}</span></li>)}</ul>
      )}
      <div className="btns no-print">
        {back.length === 0 ? null : <button type="button" className="main" onClick={() => go(back)}>{words.stand.drawThese}</button>}
        <button type="button" className={back.length === 0 ? "main" : ""} onClick={() => go(state.objectives)}>{words.stand.draw}</button>
        <button type="button" className="quiet" onClick={() => window.print()}>{words.stand.print}</button>
      </div>
    </section>
  );
};
