import { type ReactNode, useEffect, useMemo, useRef } from "react";
import { learnerState, type ObjectiveStanding } from "../engine/record/learner-state.ts";
import { leftAfterEntry } from "../engine/record/order.ts";
import type { Sheet } from "../engine/record/sheet-number.ts";
import { cautionText } from "../facts/cautions.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { filled, wordsOf } from "../facts/words.ts";
import { type CourseModule, courseView, objectivesOf } from "./course.ts";
import { Glyph } from "./Glyph.tsx";
import { Level } from "./Level.tsx";
import { today } from "./new-event.ts";
import { ResultTable } from "./ResultTable.tsx";
import { returnText } from "./StandRow.tsx";
import { siteHref } from "./site-href.ts";
import { tallyOf } from "./tally-of.ts";
import type { SheetState } from "./use-sheet.ts";
import { useRecord } from "./use-record.ts";
import { verdictText } from "./verdict-text.ts";
import { Valued } from "./Valued.tsx";

const words = recordWordsOf("en").sheet;
const cardWords = wordsOf("en").card;

interface ResultProps {
  readonly sheet: Sheet;
  readonly state: SheetState;
  readonly modules: readonly CourseModule[];
  /** What can be done next. */
  readonly next: ReactNode;
  /** What a teaching list says of the sheet. */
  readonly children?: ReactNode;
}

const headline = (state: SheetState): string => {
  const verdicts = state.items.map(({ seed }) => state.graded.get(seed)?.verdict.verdict);
  const right = verdicts.filter((verdict) => verdict === "right").length;
  const unsafe = verdicts.filter((verdict) => verdict === "unsafe-side").length;
  const gaps = { right: right === 0 ? words.noneRight : String(right), unsafe: String(unsafe), count: right === 0 ? words.noneRight : String(right), all: String(verdicts.length) };
  if (unsafe > 0) return filled(unsafe === 1 ? words.resultUnsafeOne : words.resultUnsafe, gaps);
  return filled(right === verdicts.length ? words.resultAll : words.resultSome, gaps);
};

/** Verdicts of the questions that were answered. */
const givenIn = ({ items, graded }: SheetState): Parameters<typeof tallyOf>[0] =>
  items.flatMap(({ seed, unsafe }) => {
    const verdict = graded.get(seed)?.verdict.verdict;
    return verdict === undefined ? [] : [{ verdict, isUnsafeKind: unsafe }];
  });

const Strip = ({ state }: { readonly state: SheetState }) => (
  <>
    <ol className="strip">
      {state.items.map((item, index) => {
        const verdict = state.graded.get(item.seed)?.verdict.verdict;
        return <li key={item.seed} className={verdict === undefined ? "steel" : verdict}><Glyph id={verdict === undefined ? "v-left" : `v-${verdict}`} /><span className="vh">{verdict === undefined ? words.left : verdictText(item.unsafe, verdict)}: </span><span className="n">{index + 1}</span></li>;
      })}
    </ol>
    <ul className="tally">
      {tallyOf(givenIn(state)).map(({ verdict, text, count }) => <li key={text} className={verdict}><Glyph id={`v-${verdict}`} />{text} <b>{count}</b></li>)}
    </ul>
  </>
);

const Unsafe = ({ state }: { readonly state: SheetState }) => (
  <>
    {state.items.map((item, index) => {
      const graded = state.graded.get(item.seed);
      if (graded?.verdict.verdict !== "unsafe-side") return null;
      return (
        <section key={item.seed} className="unsafe-block">
          <h3><Glyph id="v-unsafe-side" />{filled(words.unsafeTitle, { at: String(index + 1), title: item.title })}</h3>
          {graded.explanation.slipName === undefined ? null : <p><b>{filled(cardWords.slip, { name: graded.explanation.slipName })}</b></p>}
          {graded.explanation.happened.map((text) => <p key={text}><Valued text={text} /></p>)}
          <p className="caution stop" data-caution="C10"><span className="id">C10</span> {cautionText("C10")}</p>
          <div className="btns no-print"><button type="button" className="main" onClick={() => state.go(index)}>{words.see}</button></div>
        </section>
      );
    })}
  </>
);

interface Moved {
  readonly before: readonly ObjectiveStanding[];
  readonly after: readonly ObjectiveStanding[];
  readonly textOf: (id: string) => string;
  readonly todayDay: number;
}

const MovedLevels = ({ before, after, textOf }: Moved) => {
  const moved = after.filter(({ objective, level }) => before.find((one) => one.objective === objective)?.level !== level);
  if (moved.length === 0) return <p>{words.none}</p>;
  return <ul className="moved-levels">{moved.map(({ objective, level }) => <li key={objective}><span>{textOf(objective)}</span><span><Level level={before.find((one) => one.objective === objective)?.level ?? "unseen"} /> {words.to} <Level level={level} /></span></li>)}</ul>;
};

const ComesBack = ({ after, textOf, todayDay, on }: Moved & { readonly on: ReadonlySet<string> }) => {
  const dated = after.filter(({ objective, returns }) => on.has(objective) && returns !== null).toSorted((one, other) => (one.returns?.day ?? 0) - (other.returns?.day ?? 0));
  if (dated.length === 0) return <p>{words.backNone}</p>;
  return <ul className="moved-levels">{dated.map((standing) => <li key={standing.objective}><span>{textOf(standing.objective)}</span><span className="when">{returnText(standing, todayDay)}</span></li>)}</ul>;
};

const EntryKnown = ({ state, modules }: { readonly state: SheetState; readonly modules: readonly CourseModule[] }) => {
  const objectives = objectivesOf(modules);
  const rightFamilies = state.items.filter(({ seed }) => state.graded.get(seed)?.verdict.verdict === "right").map(({ family }) => family);
  const rest = new Set(leftAfterEntry(objectives, { rightFamilies, safety: objectives.filter(({ isSafety }) => isSafety).map(({ id }) => id) }).map(({ id }) => id));
  const known = objectives.filter(({ id }) => !rest.has(id));
  return known.length === 0 ? null : <p>{filled(words.entryKnown, { list: known.map(({ text }) => text).join("; ") })}</p>;
};

/** What came of a sheet: unsafe first, then levels and dates, then every question. No mark is given. */
export const SheetResult = ({ sheet, state, modules, next, children }: ResultProps) => {
  const record = useRecord();
  const heading = useRef<HTMLHeadingElement>(null);
  const todayDay = today();
  useEffect(() => heading.current?.focus(), []);
  const moved = useMemo((): Moved | null => {
    if (record === null) return null;
    const course = { ...courseView(modules), todayDay };
    const objectives = objectivesOf(modules);
    return { before: learnerState(state.linesBefore, course).objectives, after: learnerState(record.reading.lines, course).objectives, textOf: (id) => objectives.find((one) => one.id === id)?.text ?? id, todayDay };
  }, [record, state.linesBefore, modules, todayDay]);
  const on = new Set(state.items.flatMap(({ objectives }) => objectives));
  const cautions = ["C3", "C4", "C5", "C14", "C15"].filter((id) => state.items.some((item) => item.cautions.includes(id)));
  return (
    <>
      <h2 tabIndex={-1} ref={heading} className="headline">{headline(state)}</h2>
      <Strip state={state} />
      <Unsafe state={state} />
      {children}
      <p className="note">{words.noMark}</p>
      {sheet.kind === "entry" ? <EntryKnown state={state} modules={modules} /> : null}
      <h3>{words.moved}</h3>
      {moved === null ? null : <MovedLevels {...moved} />}
      <h3>{words.backTitle}</h3>
      {moved === null ? null : <ComesBack {...moved} on={on} />}
      <h3>{words.all}</h3>
      <ResultTable state={state} />
      <div className="cautions-row">{["C12", ...cautions].map((id) => <p className="caution" key={id} data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}</div>
      <div className="btns no-print">{next}<a className="btn" href={siteHref("/stand/")}>{words.standLink}</a><button type="button" className="quiet" onClick={() => window.print()}>{recordWordsOf("en").stand.print}</button></div>
    </>
  );
};
