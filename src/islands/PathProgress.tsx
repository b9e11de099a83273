import { useMemo } from "react";
import { learnerState } from "../engine/record/learner-state.ts";
import { type CourseModule, courseView } from "./course.ts";
import { Level } from "./Level.tsx";
import { today } from "./new-event.ts";
import { useRecord } from "./use-record.ts";

/** How far the modules of a path stand in the record of this device: for each, its objectives by level. Nothing is shown before there is a record. */
export const PathProgress = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const record = useRecord();
  const todayDay = today();
  const state = useMemo(() => (record === null ? null : learnerState(record.reading.lines, { ...courseView(modules), todayDay })), [record, modules, todayDay]);
  if (record === null || state === null || record.reading.lines.length === 0) return null;
  const begun = modules.map((module) => ({ module, own: state.objectives.filter((one) => module.objectives.some(({ id }) => id === one.objective)) }));
  return (
    <table className="plain path-progress">
      <caption>Where you stand, by this device’s record</caption>
      <thead><tr><th scope="col">Module</th><th scope="col">Its objectives</th></tr></thead>
      <tbody>
        {begun.map(({ module, own }) => (
          <tr key={module.code}>
            <th scope="row"><a href={module.path}>{module.code} {module.title}</a></th>
            <td>{[...new Set(own.map(({ level }) => level))].map((level) => <span key={level} className="at-level"><Level level={level} /> {own.filter((one) => one.level === level).length}</span>)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
