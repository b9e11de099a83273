import { useMemo } from "react";
import type { TeachingList } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { recordWordsOf } from "../../facts/record-words.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { SheetQuestion } from "../SheetQuestion.tsx";
import { SheetRail } from "../SheetRail.tsx";
import { SheetResult } from "../SheetResult.tsx";
import { useNew } from "../SheetRun.tsx";
import { useSheet } from "../use-sheet.ts";
import { ListRule } from "./ListRule.tsx";
import { type Learner, sheetFor } from "./sitting.ts";

const words = listWordsOf("en").work;
const sheetWords = recordWordsOf("en").sheet;

interface WorkProps {
  readonly list: TeachingList;
  readonly learner: Learner;
  readonly attempt: number;
  readonly modules: readonly CourseModule[];
  readonly onHandIn: () => void;
  readonly onNext: () => void;
  /** For a computer that several people use: gives the list back to whoever comes next. */
  readonly onLeave: () => void;
}

/** One attempt at a list: its questions one by one, and what came of them. */
export const ListWork = ({ list, learner, attempt, modules, onHandIn, onNext, onLeave }: WorkProps) => {
  const sheet = useMemo(() => sheetFor(list, learner, attempt), [list, learner, attempt]);
  const state = useSheet(sheet);
  const newSeeds = useNew(state, modules);
  const { phase, isDone } = state;
  const handIn = <button type="button" className={isDone ? "main" : "quiet"} onClick={onHandIn}>{words.toHandIn}</button>;
  const again = attempt < list.attempts ? <button type="button" onClick={onNext}>{filled(words.again, { at: String(attempt + 1) })}</button> : null;
  const leave = <button type="button" className="quiet" onClick={onLeave}>{words.leave}</button>;
  return (
    <div className="sheet-run">
      <dl className="facts sheet-facts">
        <div><dt>{words.sheet}</dt><dd>{filled(words.attempt, { at: String(attempt), all: String(list.attempts) })}</dd></div>
        <div><dt>{words.learner}</dt><dd className="ref">{learner.learner}</dd></div>
        <div><dt>{sheetWords.questions}</dt><dd>{sheet.items.length}</dd></div>
      </dl>
      {phase === "ready" ? null : <p role="status">{sheetWords[phase]}</p>}
      {phase === "ready" && isDone ? <SheetResult sheet={sheet} state={state} modules={modules} next={<>{handIn}{again}{leave}</>}><ListRule list={list} sheet={sheet} state={state} /></SheetResult> : null}
      {phase === "ready" && !isDone ? (
        <div className="sheet-grid">
          <h2 className="vh">{state.items[state.at]?.title}</h2>
          <SheetQuestion state={state} newSeeds={newSeeds} />
          <div><SheetRail state={state} /><div className="btns no-print">{handIn}{leave}</div></div>
        </div>
      ) : null}
    </div>
  );
};
