import { type KeyboardEvent, useLayoutEffect, useRef, useState } from "react";
import type { OrderItem } from "../engine/question/item.ts";
import { filled } from "../facts/words.ts";
import type { AskedPart } from "./asked-part.ts";

/** The cards with one of them moved to another place. */
const moved = (cards: readonly string[], from: number, to: number): string[] => {
  const next = [...cards];
  const [card] = next.splice(from, 1);
  if (card !== undefined) next.splice(to, 0, card);
  return next;
};

/** Cards to be put in order: arrows, a number key, or dragging; every move is said aloud. */
export const AskedOrder = ({ item, words, draft, onDraft, onAnswer, questionId }: AskedPart<OrderItem>) => {
  const [cards, setCards] = useState<readonly string[]>(() => (draft?.kind === "order" ? draft.cards : item.cards.map(({ id }) => id)));
  const [said, setSaid] = useState("");
  const [lifted, setLifted] = useState<number | null>(null);
  const list = useRef<HTMLOListElement>(null);
  const follow = useRef<{ readonly to: number; readonly keep: string } | null>(null);
  // The focus follows the card at once: a frame later it would be taken from whatever the next key had reached.
  useLayoutEffect(() => {
    if (follow.current === null) return;
    list.current?.querySelectorAll<HTMLElement>("li")[follow.current.to]?.querySelector<HTMLElement>(follow.current.keep)?.focus();
    follow.current = null;
  });
  const places = item.cards.map((_, place) => place);
  const textOf = (id: string): string => item.cards.find((card) => card.id === id)?.text ?? id;

  const move = (from: number, to: number, keep = "button:not(:disabled)"): void => {
    if (to < 0 || to >= cards.length || to === from) return;
    follow.current = { to, keep };
    const next = moved(cards, from, to);
    setCards(next);
    onDraft?.({ kind: "order", cards: next });
    setSaid(filled(words.parts.moved, { card: textOf(cards[from] ?? ""), at: String(to + 1) }));
  };
  const onKeyDown = (event: KeyboardEvent, at: number): void => {
    const steps: Readonly<Record<string, number>> = { ArrowUp: at - 1, ArrowDown: at + 1 };
    const place = /^[1-9]$/.test(event.key) ? Number(event.key) - 1 : steps[event.key];
    if (place === undefined) return;
    event.preventDefault();
    move(at, Math.min(place, cards.length - 1));
  };
  const drop = (to: number): void => {
    if (lifted !== null) move(lifted, to);
    setLifted(null);
  };

  return (
    <div className="ordering">
      <p className="hint needs-script">{words.parts.orderHint}</p>
      <ol className="order" ref={list} aria-describedby={questionId}>
        {cards.map((id, at) => (
          <li key={id} draggable className={lifted === at ? "moved" : ""} onDragStart={() => setLifted(at)} onDragOver={(event) => event.preventDefault()} onDrop={() => drop(at)} onDragEnd={() => setLifted(null)}>
            <span className="pos">
              <span>{at + 1}</span>
              <select className="place needs-script" value={at} aria-label={filled(words.parts.placeOf, { card: textOf(id) })} onChange={(event) => move(at, Number(event.currentTarget.value), "select")}>{places.map((place) => <option key={place} value={place}>{place + 1}</option>)}</select>
            </span>
            <span>{textOf(id)}</span>
            <span className="ud needs-script">
              <button type="button" disabled={at === 0} aria-label={`${words.parts.up}: ${textOf(id)}`} onClick={() => move(at, at - 1)} onKeyDown={(event) => onKeyDown(event, at)}>↑</button>
              <button type="button" disabled={at === cards.length - 1} aria-label={`${words.parts.down}: ${textOf(id)}`} onClick={() => move(at, at + 1)} onKeyDown={(event) => onKeyDown(event, at)}>↓</button>
            </span>
          </li>
        ))}
      </ol>
      <p className="vh" role="status">{said}</p>
      <div className="btns needs-script"><button type="button" className="main" onClick={() => onAnswer({ kind: "order", cards })}>{words.parts.keepOrder}</button></div>
    </div>
  );
};
