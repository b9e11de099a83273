import type { ComponentType, ReactNode } from "react";
import type { Item } from "../engine/question/item.ts";
import { cautionText } from "../facts/cautions.ts";
import { filled, wordsOf, type Words } from "../facts/words.ts";
import { Answered } from "./Answered.tsx";
import { Asked } from "./Asked.tsx";
import type { AskedPart } from "./asked-part.ts";
import { KeptLine } from "./KeptLine.tsx";
import { useCard } from "./use-card.ts";
import type { DraftHere } from "./use-draft.ts";

export interface Cite {
  readonly text: string;
  readonly path: string;
  /** Ledger entry with its revision, by which a draw names it. */
  readonly entry: string;
}

export interface CardProps {
  readonly item: Item;
  /** Names the place of this question on the site, so that the visit remembers it. */
  readonly place: string;
  /** How many of its kind the author asks for here. */
  readonly count: number;
  readonly cites: readonly Cite[];
  /** The picture of the first question, as it was built into the page. */
  readonly children?: ReactNode;
  /** The part that is answered in the map of the knee, where the page brings it. */
  readonly mapPart?: ComponentType<AskedPart<Item>>;
}

/** Cautions that stand under a question; C8 is in its figure and C10 in its verdict. */
const standing = (item: Item): readonly string[] => item.cautions.filter((id) => id !== "C8" && id !== "C10");

/** Works that this draw takes numbers from, each once. */
const citesOf = (item: Item, cites: readonly Cite[]): readonly Cite[] => {
  const own = cites.filter((cite) => item.sources.some(({ entry }) => entry === cite.entry));
  return own.filter(({ text }, index) => own.findIndex((one) => one.text === text) === index);
};

/** What kind of answer is asked for; of a sum, how many numbers. */
const kindText = (item: Item, { kinds, sums }: Words): string => {
  const many = item.kind === "sum" ? (sums as Readonly<Record<string, string>>)[item.asks.length] : undefined;
  return many ?? kinds[item.kind];
};

/** Whose numbers these are, and the cautions that go with them. */
export const Origins = ({ item, cites, words }: { readonly item: Item; readonly cites: readonly Cite[]; readonly words: Words }) => (
  <div className="asksources">
    <p className="note">
      {cites.length === 0 ? null : <><b>{words.card.sources}:</b> {cites.map(({ text, path }, index) => <span key={path}>{index > 0 ? "; " : ""}<a href={path}>{text}</a></span>)}. </>}
      {item.givens.some(({ from }) => from === "local") ? words.card.local : words.card.caseOwn}
    </p>
    {standing(item).map((id) => <p className="caution" key={id} data-caution={id}><span className="id">{id}</span> {cautionText(id)}</p>)}
  </div>
);

/** A question that was begun before a reload is laid out anew, with what was typed in it. */
const keyOf = ({ seed }: Item, { draft }: DraftHere): string => (draft === null ? seed : `${seed} begun`);

/** One question: asked, answered, and asked again with other numbers. */
export const QuestionCard = ({ item: first, place, count, cites, children, mapPart }: CardProps) => {
  const { item, graded, problems, isOffline, round, kept, drafts, answer, askAnother, askAgain, headingRef, cardRef } = useCard(first, place);
  const words = wordsOf(item.language);
  return (
    <div ref={cardRef} tabIndex={-1} className="question-card">
      <p className="kind">
        <span>{kindText(item, words)}</span>
        {count > 1 ? <span>{filled(words.card.counting, { at: String(Math.min(round, count)), of: String(count) })}</span> : null}
      </p>
      {graded ? <Answered item={item} graded={graded} words={words} headingRef={headingRef} /> : <Asked key={keyOf(item, drafts)} item={item} built={item === first ? children : undefined} mapPart={mapPart} words={words} problems={problems} trouble={isOffline ? words.card.offline : ""} draft={drafts.draft} onDraft={(response) => drafts.keep(item, response)} onAnswer={(response) => void answer(response)} />}
      {graded ? (
        <div className="btns">
          <button type="button" className="main" onClick={() => void askAnother()}>{words.card.another}</button>
          {graded.verdict.verdict === "right" ? null : <button type="button" className="quiet" onClick={askAgain}>{words.card.again}</button>}
        </div>
      ) : null}
      {graded && kept ? <KeptLine kept={kept} words={words} /> : null}
      <Origins item={item} cites={citesOf(item, cites)} words={words} />
    </div>
  );
};
