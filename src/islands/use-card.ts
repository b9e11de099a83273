import { type RefObject, useCallback, useEffect, useRef, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import { drawHere, type Graded, gradeHere } from "./grading.ts";
import { newSeed } from "./new-seed.ts";
import type { Kept } from "./store/record.ts";
import { forgetDraft, recallDraft } from "./store/draft.ts";
import { forget, recall, remember, type Remembered } from "./store/place.ts";
import { type DraftHere, useDraft } from "./use-draft.ts";

export interface Card {
  readonly item: Item;
  readonly graded: Graded | null;
  readonly problems: readonly AskVerdict[];
  /** True where the part that grades could not be fetched. */
  readonly isOffline: boolean;
  /** How many questions have been asked at this place, this one included. */
  readonly round: number;
  /** Where the last answer is kept; null before there is one. */
  readonly kept: Kept | null;
  readonly drafts: DraftHere;
  readonly answer: (response: Response) => Promise<void>;
  readonly askAnother: () => Promise<void>;
  readonly askAgain: () => void;
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
  readonly cardRef: RefObject<HTMLDivElement | null>;
}

type NoteAnswer = typeof import("./note-answer.ts").noteAnswer;
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

/** Adds answers to the record, with the number of the try; says where the last one is kept. */
const useKeeper = () => {
  const [kept, setKept] = useState<Kept | null>(null);
  const tries = useRef(0);
  const note = useCallback(async (item: Item, graded: Graded, noteAnswer: NoteAnswer): Promise<void> => {
    tries.current += 1;
    setKept(await noteAnswer(item, graded, { tries: tries.current, hasHint: false }));
  }, []);
  /** Begins to count again, after so many tries. */
  const begin = useCallback((after: number): void => {
    tries.current = after;
  }, []);
  return { kept, note, begin, unsay: () => setKept(null) };
};

interface Recalled {
  readonly first: Item;
  readonly place: string;
  readonly show: (asked: Item, response: Response) => Promise<Graded | null>;
  readonly resume: (asked: Item, draft: Response) => void;
  readonly begin: (after: number) => void;
}

const isOf = ({ family, version }: Item, kept: Remembered | null): kept is Remembered => kept !== null && kept.family === family && kept.version === version;

/** What this visit answered here before, or typed and did not check, comes back once the page is alive. */
const useRecall = ({ first, place, show, resume, begin }: Recalled): void => {
  useEffect(() => {
    const [answered, typed] = [recall(place), recallDraft(place)];
    if (isOf(first, answered)) {
      begin(1);
      drawHere(answered.family, answered.seed, first.language).then((asked) => show(asked, answered.response)).catch(() => forget(place));
    } else if (isOf(first, typed)) {
      const asked = typed.seed === first.seed ? Promise.resolve(first) : drawHere(typed.family, typed.seed, first.language);
      asked.then((item) => resume(item, typed.response)).catch(() => forgetDraft(place));
    }
  }, [first, place, show, resume, begin]);
};

/** The question that is shown and what came of its answer; an answer that was read is remembered for this visit. */
const useShown = (first: Item, place: string) => {
  const [item, setItem] = useState(first);
  const [graded, setGraded] = useState<Graded | null>(null);
  const [problems, setProblems] = useState<readonly AskVerdict[]>([]);
  const [isOffline, setOffline] = useState(false);
  const drafts = useDraft(place);
  const { begin, end } = drafts;
  const show = useCallback(async (asked: Item, response: Response): Promise<Graded | null> => {
    const next = await gradeHere(asked, response).catch(() => null);
    setOffline(next === null);
    if (next === null) return null;
    const isRead = next.verdict.verdict !== "not-recognised";
    setProblems(isRead ? [] : next.verdict.parts.filter((part) => part.verdict === "not-recognised"));
    if (!isRead) return null;
    remember(place, asked, response);
    end();
    setItem(asked);
    setGraded(next);
    return next;
  }, [place, end]);
  const resume = useCallback((asked: Item, typed: Response): void => {
    setItem(asked);
    begin(typed);
  }, [begin]);
  return { shown: { item, graded, problems, isOffline, drafts }, show, resume, setItem, setGraded, setOffline };
};

/** State of one question card: the question, its answer, and what this visit remembers of both. */
export const useCard = (first: Item, place: string): Card => {
  const { shown, show, resume, setItem, setGraded, setOffline } = useShown(first, place);
  const { item, graded } = shown;
  const [round, setRound] = useState(1);
  const { kept, note, begin, unsay } = useKeeper();
  const { headingRef, cardRef, wanted } = useFocus(graded, item);
  useRecall({ first, place, show, resume, begin });

  const leave = (): void => {
    forget(place);
    wanted.current = "question";
    setGraded(null);
    unsay();
  };
  return {
    ...shown, round, kept, headingRef, cardRef,
    answer: async (response) => {
      wanted.current = "verdict";
      // What keeps the answer is fetched before the verdict is shown, so that none is seen and lost.
      const keeper = await import("./note-answer.ts").catch(() => null);
      setOffline(keeper === null);
      const next = keeper === null ? null : await show(item, response);
      if (keeper !== null && next !== null) await note(item, next, keeper.noteAnswer);
    },
    askAnother: async () => {
      const next = await drawHere(item.family, newSeed(), item.language);
      setItem(next);
      setRound((count) => count + 1);
      begin(0);
      leave();
    },
    askAgain: leave,
  };
};
