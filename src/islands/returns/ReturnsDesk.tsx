import { lazy, Suspense, useCallback, useEffect, useMemo, useState } from "react";
import { type CountChoice, type DeskRow, papersOf, resultBy, type RowState } from "../../engine/cohort/desk-row.ts";
import type { Paper } from "../../engine/cohort/paper.ts";
import type { Returns } from "../../engine/cohort/returns.ts";
import { listId, type TeachingList } from "../../engine/record/list-form.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { SITE } from "../../facts/site.ts";
import { filled } from "../../facts/words.ts";
import type { CourseModule } from "../course.ts";
import { ListOpener } from "../lists/ListOpener.tsx";
import { dateText, mustOf, ruleText } from "../lists/list-text.ts";
import { useList } from "../lists/use-list.ts";
import { ClearDesk } from "./ClearDesk.tsx";
import { Corrections } from "./Corrections.tsx";
import { ReturnsIn } from "./ReturnsIn.tsx";
import { ReturnsTable } from "./ReturnsTable.tsx";
import { useDesk } from "./use-desk.ts";

const words = listWordsOf("en").desk;
const STATES: readonly RowState[] = ["as-graded", "graded-again", "changed", "spoken-wrong", "code-only"];

const Understanding = lazy(() => import("../understanding/Understanding.tsx").then((part) => ({ default: part.Understanding })));

/** What came, counted, in one sentence after the other. */
const countedText = (rows: readonly DeskRow[], { refused, copies }: Returns): string => {
  if (rows.length + refused.length === 0) return words.empty;
  const counts = [...STATES.map((state) => [state, rows.filter((row) => row.state === state).length] as const), ["refused", refused.length] as const, ["copies", copies] as const];
  const parts = counts.filter(([, count]) => count > 0).map(([id, count]) => filled(words.count[id], { n: String(count) }));
  return `${filled(words.counted, { all: String(rows.length + refused.length) })} ${parts.join(", ")}.`;
};

const RESULTS: readonly DeskRow["result"][] = ["passes", "not-yet", "unknown"];

/** How many the rule lets through, by the director's choices; who sent nothing that could be read is unknown. */
const ruledText = (rows: readonly DeskRow[], { refused }: Returns, choice: CountChoice): string => {
  const known = new Set(rows.map(({ learner }) => learner));
  const unread = refused.filter(({ learner }) => learner === null || !known.has(learner));
  const results = [...rows.map((row) => resultBy(row, choice)), ...unread.map(() => "unknown" as const)];
  const parts = RESULTS.map((result) => [result, results.filter((one) => one === result).length] as const).filter(([, count]) => count > 0);
  return `${words.byRuleLead} ${parts.map(([result, count]) => filled(words.byRule[result], { n: String(count) })).join(", ")}.`;
};

/** Asks before the page goes, while it holds what was read. */
const useWarning = (isHolding: boolean): void => {
  useEffect(() => {
    if (!isHolding) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener("beforeunload", warn);
    return () => window.removeEventListener("beforeunload", warn);
  }, [isHolding]);
};

/** The papers that count, once everybody is marked: figures over half a cohort would mislead. */
const usePapers = ({ rows, isDone, choice: { alsoCounted, byCorrection } }: { readonly rows: readonly DeskRow[]; readonly isDone: boolean; readonly choice: CountChoice }): readonly Paper[] => {
  const [papers, setPapers] = useState<readonly Paper[]>([]);
  useEffect(() => {
    if (isDone) setPapers(papersOf(rows, { alsoCounted, byCorrection }));
  }, [rows, isDone, alsoCounted, byCorrection]);
  return papers;
};

const OpenDesk = ({ list, modules }: { readonly list: TeachingList; readonly modules: readonly CourseModule[] }) => {
  const { returns, rows, done, all, take, clear } = useDesk(list);
  const [alsoCounted, setAlsoCounted] = useState<ReadonlySet<string>>(new Set());
  const [byCorrection, setByCorrection] = useState(false);
  const papers = usePapers({ rows, isDone: done === all, choice: { alsoCounted, byCorrection } });
  const must = useMemo(() => mustOf(list), [list]);
  const isHolding = all + returns.refused.length > 0;
  useWarning(isHolding);
  const count = useCallback((learner: string, isCounted: boolean): void => setAlsoCounted((before) => new Set(isCounted ? [...before, learner] : [...before].filter((one) => one !== learner))), []);
  return (
    <div className="desk">
      <dl className="facts sheet-facts">
        <div><dt>{words.list}</dt><dd>{list.title}</dd></div>
        <div><dt>{words.due}</dt><dd>{dateText(list.dueOn)}</dd></div>
        <div><dt>{words.keep}</dt><dd>{dateText(list.keepUntil)}</dd></div>
        <div><dt>{words.edition}</dt><dd>{SITE.edition}</dd></div>
      </dl>
      <p className="note">{ruleText(list.rule)}</p>
      <ReturnsIn done={done} all={all} counted={countedText(rows, returns)} onTake={take} />
      {isHolding ? (
        <>
          <h2>{words.came}</h2>
          {done === all ? <p className="note" role="status">{ruledText(rows, returns, { alsoCounted, byCorrection })}</p> : null}
          <ReturnsTable rows={rows} returns={returns} isSupervised={list.spoken !== null} byCorrection={byCorrection} alsoCounted={alsoCounted} onCount={count} />
          <Corrections rows={rows} byCorrection={byCorrection} onChoose={setByCorrection} />
          {papers.length === 0 ? <p className="note">{words.understandingNone}</p> : <Suspense fallback={null}><Understanding papers={papers} modules={modules} must={must} about={filled(list.spoken === null ? words.aboutAlone : words.aboutSupervised, { title: list.title })} /></Suspense>}
          <ClearDesk onClear={() => { clear(); setAlsoCounted(new Set()); setByCorrection(false); }} />
        </>
      ) : null}
      <p className="note no-print">{words.leave}</p>
    </div>
  );
};

/** The returns desk: the list first, then everything that came back for it. */
export const ReturnsDesk = ({ modules }: { readonly modules: readonly CourseModule[] }) => {
  const { opened, open } = useList();
  if (opened !== null && "list" in opened) return <OpenDesk key={listId(opened.list)} list={opened.list} modules={modules} />;
  return <><p>{words.openLead}</p><ListOpener said={opened?.said ?? ""} onOpen={open} /></>;
};
