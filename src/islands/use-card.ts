import { type RefObject, useCallback, useEffect, useRef, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import { drawHere, type Graded, gradeHere } from "./grading.ts";
import { newSeed } from "./new-seed.ts";
import { forget, recall, remember } from "./store.ts";

export interface Card {
  readonly item: Item;
  readonly graded: Graded | null;
  readonly problems: readonly AskVerdict[];
  /** True where the part that grades could not be fetched. */
  readonly isOffline: boolean;
  /** How many questions have been asked at this place, this one included. */
  readonly round: number;
  readonly answer: (response: Response) => Promise<void>;
  readonly askAnother: () => Promise<void>;
  readonly askAgain: () => void;
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
  readonly cardRef: RefObject<HTMLDivElement | null>;
}

type Focus = "verdict" | "question" | null;

/** Moves the focus to what has just changed: the verdict after an answer, the card after a new question. */
const useFocus = (graded: Graded | null, item: Item) => {
  const headingRef = useRef<HTMLHeadingElement>(null);
  const cardRef = useRef<HTMLDivElement>(null);
  const wanted = useRef<Focus>(null);
  useEffect(() => {
    if (wanted.current === "verdict" && graded) headingRef.current?.focus();
    if (wanted.current === "question" && !graded && item) cardRef.current?.focus();
    wanted.current = null;
  }, [graded, item]);
  return { headingRef, cardRef, wanted };
};

/** State of one question card: the question, its answer, and what this visit remembers of both. */
export const useCard = (first: Item, place: string): Card => {
  const [item, setItem] = useState(first);
  const [graded, setGraded] = useState<Graded | null>(null);
  const [problems, setProblems] = useState<readonly AskVerdict[]>([]);
  const [isOffline, setOffline] = useState(false);
  const [round, setRound] = useState(1);
  const { headingRef, cardRef, wanted } = useFocus(graded, item);

  const show = useCallback(async (asked: Item, response: Response): Promise<void> => {
    const next = await gradeHere(asked, response).catch(() => null);
    setOffline(next === null);
    if (next === null) return;
    const isRead = next.verdict.verdict !== "not-recognised";
    setProblems(isRead ? [] : next.verdict.parts.filter((part) => part.verdict === "not-recognised"));
    if (!isRead) return;
    remember(place, { family: asked.family, version: asked.version, seed: asked.seed, response });
    setItem(asked);
    setGraded(next);
  }, [place]);

  // What this visit answered here before comes back once the page is alive.
  useEffect(() => {
    const before = recall(place);
    if (!before || before.family !== first.family || before.version !== first.version) return;
    const { seed, response } = before;
    drawHere(before.family, seed, first.language).then((asked) => show(asked, response)).catch(() => forget(place));
  }, [first, place, show]);

  const leave = (): void => {
    forget(place);
    wanted.current = "question";
    setGraded(null);
  };
  return {
    item, graded, problems, isOffline, round, headingRef, cardRef,
    answer: (response) => {
      wanted.current = "verdict";
      return show(item, response);
    },
    askAnother: async () => {
      const next = await drawHere(item.family, newSeed(), item.language);
      setItem(next);
      setRound((count) => count + 1);
      leave();
    },
    askAgain: leave,
  };
};
