import { useMemo } from "react";
import { type LearnerState, learnerState } from "../engine/record/learner-state.ts";
import type { Level as LevelId } from "../engine/standing/attempt.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { type CourseModule, courseView } from "./course.ts";
import { Level } from "./Level.tsx";
import { today } from "./new-event.ts";
import type { KeptRecord } from "./store/record.ts";
import { RecordBox } from "./RecordBox.tsx";
import { RecordFindings } from "./RecordFindings.tsx";
import { StandRow } from "./StandRow.tsx";
import { Tonight } from "./Tonight.tsx";
import { useRecord } from "./use-record.ts";

const words = recordWordsOf("en");

const TALLY_ORDER = ["stop", "due", "unseen", "read", "helped", "worked", "steady"] as const satisfies readonly LevelId[];

/** How many objectives stand at each level; a level that nobody stands at is left out. */
const Tally = ({ state }: { readonly state: LearnerState }) => (
  <ul className="tally" aria-label={words.stand.tally}>
    {TALLY_ORDER.map((level) => ({ level, count: state.objectives.filter((one) => one.level === level).length })).filter(({ count }) => count > 0).map(({ level, count }) => (
      <li key={level}><Level level={level} /> <b>{count}</b></li>
    ))}
  </ul>
);

const Modules = ({ modules, state, record, todayDay }: { readonly modules: readonly CourseModule[]; readonly state: LearnerState; readonly record: KeptRecord; readonly todayDay: number }) => (
  <>
    {modules.map((module) => (
      <section key={module.code} className="stand-module">
        <h3><span className="ref">{module.code}</span> <a href={module.path}>{module.title}</a></h3>
        {module.objectives.map((objective) => {
          const standing = state.objectives.find((one) => one.objective === objective.id);
          return standing === undefined ? null : <StandRow key={objective.id} objective={objective} standing={standing} lines={record.reading.lines} todayDay={todayDay} />;
        })}
      </section>
    ))}
  </>
);

/** Where the learner stands on every objective, with reasons, what comes back, and the record itself. */
export const StandDesk = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const record = useRecord();
  const todayDay = today();
  const state = useMemo(() => (record === null ? null : learnerState(record.reading.lines, { ...courseView(modules), todayDay })), [record, modules, todayDay]);
  if (record === null || state === null) return <p role="status" className="needs-script">{words.stand.opening}</p>;
  return (
    <>
      <Tally state={state} />
      <RecordFindings record={record} state={state} />
      {record.reading.lines.length === 0 ? <p className="lead">{words.stand.empty}</p> : null}
      <Tonight state={state} modules={modules} todayDay={todayDay} />
      <Modules modules={modules} state={state} record={record} todayDay={todayDay} />
      <RecordBox record={record} state={state} todayDay={todayDay} />
    </>
  );
};
