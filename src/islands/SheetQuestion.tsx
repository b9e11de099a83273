import { useCallback, useEffect, useRef, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { filled, wordsOf } from "../facts/words.ts";
import { Answered } from "./Answered.tsx";
import { Asked } from "./Asked.tsx";
import type { Graded } from "./grading.ts";
import { KeptLine } from "./KeptLine.tsx";
import { readEvent } from "./new-event.ts";
import { Origins } from "./QuestionCard.tsx";
import { draftPlace, recallDraft, rememberDraft } from "./store/draft.ts";
import { keepEvent } from "./store/record.ts";
import { SheetExample } from "./SheetExample.tsx";
import { siteHref } from "./site-href.ts";
import type { SheetState } from "./use-sheet.ts";

const words = recordWordsOf("en").sheet;
const card = wordsOf("en");

interface QuestionProps {
  readonly state: SheetState;
  readonly item: Item;
  readonly done: Graded | undefined;
}

/** What can be done next: on to the next open question, to the result, or leave this one. */
const Next = ({ state: { items, at, graded, go, finish, leave }, done }: QuestionProps) => {
  const next = items.findIndex((one, index) => index > at && !graded.has(one.seed));
  if (!done) return <div className="btns"><button type="button" className="quiet" onClick={() => void leave()}>{words.leave}</button></div>;
  const isAll = items.every(({ seed }) => graded.has(seed));
  return (
    <div className="btns">
      {next < 0 ? null : <button type="button" className="main" onClick={() => go(next)}>{words.next}</button>}
      <button type="button" className={next < 0 ? "main" : "quiet"} onClick={finish}>{isAll || next < 0 ? words.toResult : words.finish}</button>
    </div>
  );
};

/** Moves the focus to the verdict after an answer, and to the question after a step. */
const useFocusOn = (done: Graded | undefined, at: number) => {
  const heading = useRef<HTMLHeadingElement>(null);
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (done) heading.current?.focus();
    else if (at > 0) box.current?.focus();
  }, [done, at]);
  return { heading, box };
};

const Question = ({ state, item, done }: QuestionProps) => {
  const { items, at, problems, isOffline, kept, answer } = state;
  const { heading, box } = useFocusOn(done, at);
  const [draft] = useState(() => recallDraft(draftPlace(item))?.response);
  const keepDraft = useCallback((response: Response): void => rememberDraft(draftPlace(item), item, response), [item]);
  const source = item.sources[0];
  return (
    <div ref={box} tabIndex={-1} className="question-card ask">
      <p className="kind"><span>{filled(words.counting, { at: String(at + 1), of: String(items.length) })}</span><span>{card.kinds[item.kind]}</span></p>
      {done ? <Answered item={item} graded={done} words={card} headingRef={heading} /> : <Asked key={item.seed} item={item} words={card} problems={problems} trouble={isOffline ? card.card.offline : ""} draft={draft} onDraft={keepDraft} onAnswer={(response) => void answer(response)} />}
      <Next state={state} item={item} done={done} />
      {done && kept ? <KeptLine kept={kept} words={card} /> : null}
      <Origins item={item} cites={source === undefined ? [] : [{ text: words.sources, path: siteHref(`/practice/${item.family}/`), entry: source.entry }]} words={card} />
    </div>
  );
};

/** The question that is open on a sheet, with a worked example in front of an objective that was never met. */
export const SheetQuestion = ({ state, newSeeds }: { readonly state: SheetState; readonly newSeeds: ReadonlySet<string> }) => {
  const [read, setRead] = useState<ReadonlySet<string>>(new Set());
  const item = state.items[state.at];
  if (item === undefined) return null;
  const done = state.graded.get(item.seed);
  const hasRead = (): void => {
    setRead((before) => new Set([...before, item.seed]));
    for (const objective of item.objectives) void keepEvent(readEvent({ objective }));
  };
  if (!done && newSeeds.has(item.seed) && !read.has(item.seed)) return <SheetExample key={item.seed} item={item} onDone={hasRead} />;
  return <Question key={item.seed} state={state} item={item} done={done} />;
};
