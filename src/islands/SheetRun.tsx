import { useMemo } from "react";
import { learnerState } from "../engine/record/learner-state.ts";
import type { Sheet } from "../engine/record/sheet-number.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { type CourseModule, courseView } from "./course.ts";
import { today } from "./new-event.ts";
import { SheetQuestion } from "./SheetQuestion.tsx";
import { SheetRail } from "./SheetRail.tsx";
import { SheetResult } from "./SheetResult.tsx";
import { type SheetState, useSheet } from "./use-sheet.ts";

const words = recordWordsOf("en").sheet;

const NONE: ReadonlySet<string> = new Set();

interface RunProps {
  readonly sheet: Sheet;
  readonly modules: readonly CourseModule[];
  readonly onAnother: () => void;
}

/** Seeds of questions that a worked example goes in front of: the first of each objective that was never met. */
export const useNew = ({ items, linesBefore }: SheetState, modules: readonly CourseModule[]): ReadonlySet<string> =>
  useMemo(() => {
    const state = learnerState(linesBefore, { ...courseView(modules), todayDay: today() });
    const unseen = new Set(state.objectives.filter(({ level }) => level === "unseen").map(({ objective }) => objective));
    const first = items.filter((item, index) => {
      const objective = item.objectives.find((id) => unseen.has(id));
      return objective !== undefined && items.findIndex((one) => one.objectives.includes(objective)) === index;
    });
    return new Set(first.map(({ seed }) => seed));
  }, [items, linesBefore, modules]);

/** A sheet at work: one question at a time, the rail beside it, and the result at the end. */
export const SheetRun = ({ sheet, modules, onAnother }: RunProps) => {
  const state = useSheet(sheet);
  const unmet = useNew(state, modules);
  // A sheet that asks where somebody begins shows nothing beforehand.
  const newSeeds = sheet.kind === "entry" ? NONE : unmet;
  const { phase, isDone } = state;
  return (
    <div className="sheet-run">
      <dl className="facts sheet-facts">
        <div><dt>{words.number}</dt><dd className="ref">{sheet.number}</dd></div>
        <div><dt>{words.questions}</dt><dd>{sheet.items.length}</dd></div>
        <div><dt>{words.kind}</dt><dd>{words.kinds[sheet.kind]}</dd></div>
      </dl>
      {phase === "ready" ? null : <p role="status">{words[phase]}</p>}
      {phase === "ready" && isDone ? <SheetResult sheet={sheet} state={state} modules={modules} next={<button type="button" className="main" onClick={onAnother}>{words.another}</button>} /> : null}
      {phase === "ready" && !isDone ? (
        <div className="sheet-grid">
          <h2 className="vh">{state.items[state.at]?.title}</h2>
          <SheetQuestion state={state} newSeeds={newSeeds} />
          <SheetRail state={state} />
        </div>
      ) : null}
    </div>
  );
};
