import { type Interval, wilson } from "../evidence/wilson.ts";
import { LEAST_PERSONS } from "./figure.ts";
import { firstMarks, firstPapers, groupedBy, isRight, isUnsafe } from "./first-marks.ts";
import type { Paper } from "./paper.ts";

/** Learners of one hospital, by whether their first attempt had an answer on the unsafe side. */
export interface PlaceFigures {
  readonly place: string;
  readonly learners: number;
  /** Learners without an unsafe answer. */
  readonly withoutUnsafe: number;
  readonly interval: Interval;
  readonly answers: number;
  readonly right: number;
}

/** The hospitals side by side, or why not: with one small group shown or left out, its people can be worked out from the rest. */
export type PlaceComparison =
  | { readonly refused: null; readonly places: readonly PlaceFigures[] }
  | { readonly refused: "no-places" | "one-place" | "places-unknown"; readonly places: readonly [] }
  | { readonly refused: "under-five"; readonly places: readonly []; readonly small: number; readonly all: number };

const figuresOf = (place: string, papers: readonly Paper[]): PlaceFigures => {
  const marks = papers.map(firstMarks);
  const people = [...groupedBy(papers, ({ learner }) => learner).values()];
  const withoutUnsafe = people.filter((own) => own.every((paper) => !firstMarks(paper).some(isUnsafe))).length;
  return {
    place,
    learners: people.length,
    withoutUnsafe,
    interval: wilson({ events: withoutUnsafe, total: people.length }),
    answers: marks.flat().length,
    right: marks.flat().filter(isRight).length,
  };
};

const learnersIn = (papers: readonly Paper[]): number => new Set(papers.map(({ learner }) => learner)).size;

/** One key for what people type as the name of one hospital: "saltmarsh " is Saltmarsh. */
const placeKey = (place: string | null): string => (place ?? "").trim().replace(/\s+/g, " ").toLowerCase();
/** Of several spellings the first in order, which has its capitals; so the order of arrival does not matter. */
const nameOf = (papers: readonly Paper[]): string => papers.map(({ place }) => (place ?? "").trim().replace(/\s+/g, " ")).toSorted()[0] ?? "";

/** First attempts by hospital, in the order of their names. */
export const comparePlaces = (papers: readonly Paper[]): PlaceComparison => {
  const first = firstPapers(papers);
  const known = first.filter(({ place }) => place !== null);
  if (known.length === 0) return { refused: "no-places", places: [] };
  // A few without a place are a small group too.
  if (known.length < first.length && learnersIn(first.filter(({ place }) => place === null)) < LEAST_PERSONS) return { refused: "places-unknown", places: [] };
  const groups = [...groupedBy(known, ({ place }) => placeKey(place))];
  if (groups.length < 2) return { refused: "one-place", places: [] };
  const small = groups.filter(([, papersOf]) => learnersIn(papersOf) < LEAST_PERSONS).length;
  if (small > 0) return { refused: "under-five", places: [], small, all: groups.length };
  return { refused: null, places: groups.map(([, papersOf]) => figuresOf(nameOf(papersOf), papersOf)).toSorted((one, other) => (one.place < other.place ? -1 : 1)) };
};
