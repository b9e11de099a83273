import { useCallback, useEffect, useRef, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import type { Line } from "../engine/record/chain.ts";
import type { Sheet } from "../engine/record/sheet-number.ts";
import { type Graded, gradeHere } from "./grading.ts";
import { answeredEvent, leftEvent } from "./new-event.ts";
import { draftPlace, forgetDraft } from "./store/draft.ts";
import { type Kept, keepEvent, readRecord } from "./store/record.ts";
import { drawSheet, gradedBefore } from "./sheet-items.ts";

export type SlotState = "answered" | "left" | "open" | "unopened";

export interface SheetState {
  /** `loading`, `missing` where a question is not in this edition, `offline` where it could not be fetched, or `ready`. */
  readonly phase: "loading" | "missing" | "offline" | "ready";
  readonly items: readonly Item[];
  readonly graded: ReadonlyMap<string, Graded>;
  readonly at: number;
  readonly isDone: boolean;
  readonly problems: readonly AskVerdict[];
  readonly isOffline: boolean;
  readonly kept: Kept | null;
  /** The record before any of this sheet was answered. */
  readonly linesBefore: readonly Line[];
  readonly slots: readonly SlotState[];
  readonly go: (at: number) => void;
  readonly finish: () => void;
  readonly answer: (response: Response) => Promise<void>;
  readonly leave: () => Promise<void>;
}

interface Loaded {
  readonly phase: SheetState["phase"];
  readonly items: readonly Item[];
  readonly linesBefore: readonly Line[];
}

const NOTHING: Loaded = { phase: "loading", items: [], linesBefore: [] };

const nextOpen = (items: readonly Item[], graded: ReadonlyMap<string, Graded>, from: number): number => {
  const order = items.map((_, index) => (from + index) % items.length);
  return order.find((index) => !graded.has(items[index]?.seed ?? "")) ?? -1;
};

/** Draws a sheet and takes up what the record already holds of it. */
const useLoaded = (sheet: Sheet, taken: (graded: ReadonlyMap<string, Graded>, items: readonly Item[]) => void): Loaded => {
  const [loaded, setLoaded] = useState(NOTHING);
  useEffect(() => {
    let isGone = false;
    const load = async (): Promise<void> => {
      const [items, { reading }] = await Promise.all([drawSheet(sheet), readRecord()]);
      const events = reading.lines.map(({ event }) => event).filter((event) => event.sheet === sheet.number);
      const graded = items === null ? new Map<string, Graded>() : await gradedBefore(items, events);
      if (isGone) return;
      setLoaded({ phase: items === null ? "missing" : "ready", items: items ?? [], linesBefore: reading.lines.filter(({ event }) => event.sheet !== sheet.number) });
      taken(graded, items ?? []);
    };
    load().catch(() => {
      if (!isGone) setLoaded({ ...NOTHING, phase: "offline" });
    });
    return () => {
      isGone = true;
    };
  }, [sheet, taken]);
  return loaded;
};

interface Places {
  readonly graded: ReadonlyMap<string, Graded>;
  /** Places that were opened. */
  readonly seen: ReadonlySet<number>;
  /** Place of the question that is open; -1 on the page of the result. */
  readonly openAt: number;
}

/** How each question of the sheet stands; one that was opened and not answered counts as left. */
const slotsOf = (items: readonly Item[], { graded, seen, openAt }: Places): readonly SlotState[] =>
  items.map(({ seed }, index) => {
    if (graded.has(seed)) return "answered";
    if (index === openAt) return "open";
    return seen.has(index) ? "left" : "unopened";
  });

/** The state of a sheet that is being worked on: every answer is in the record before the page moves on. */
export const useSheet = (sheet: Sheet): SheetState => {
  const [graded, setGraded] = useState<ReadonlyMap<string, Graded>>(new Map());
  const [seen, setSeen] = useState<ReadonlySet<number>>(new Set([0]));
  const [at, setAt] = useState(0);
  const [isDone, setDone] = useState(false);
  const [problems, setProblems] = useState<readonly AskVerdict[]>([]);
  const [isOffline, setOffline] = useState(false);
  const [kept, setKept] = useState<Kept | null>(null);
  const busy = useRef(false);
  const go = useCallback((to: number): void => {
    setAt(to);
    setSeen((before) => new Set([...before, to]));
    setProblems([]);
    setDone(false);
  }, []);
  const taken = useCallback((before: ReadonlyMap<string, Graded>, items: readonly Item[]): void => {
    setGraded(before);
    const first = nextOpen(items, before, 0);
    if (first < 0 && items.length > 0) setDone(true);
    else go(Math.max(0, first));
  }, [go]);
  const { phase, items, linesBefore } = useLoaded(sheet, taken);
  const item = items[at];

  const answer = async (response: Response): Promise<void> => {
    if (item === undefined || graded.has(item.seed) || busy.current) return;
    busy.current = true;
    const next = await gradeHere(item, response).catch(() => null);
    setOffline(next === null);
    if (next !== null && next.verdict.verdict === "not-recognised") setProblems(next.verdict.parts.filter((part) => part.verdict === "not-recognised"));
    else if (next !== null) {
      setKept(await keepEvent(answeredEvent(item, next, { tries: 1, hasHint: false, sheet: sheet.number })));
      forgetDraft(draftPlace(item));
      setProblems([]);
      setGraded(new Map([...graded, [item.seed, next]]));
    }
    busy.current = false;
  };
  const leave = async (): Promise<void> => {
    if (item === undefined) return;
    setKept(await keepEvent(leftEvent(item, sheet.number)));
    const next = items.findIndex((one, index) => index > at && !graded.has(one.seed));
    if (next >= 0) go(next);
    else setDone(true);
  };
  const slots = slotsOf(items, { graded, seen, openAt: isDone ? -1 : at });
  return { phase, items, graded, at, isDone, problems, isOffline, kept, linesBefore, slots, go, finish: () => setDone(true), answer, leave };
};
