import { MOST_COUNTED } from "../engine/kit/local-list.ts";
import { cardWordsOf } from "../facts/card-words.ts";
import { cautionText } from "../facts/cautions.ts";
import { LOCAL_TABLES } from "../facts/local-list.ts";
import { DRILL_GRAPH, SET_UP_GRAPH } from "../facts/step-graphs.ts";
import { type Review, reviewText } from "./review-text.ts";
import { trolleyCard, type TrolleyCard } from "./trolley-card.ts";

/** Modules whose teaching the card prints. */
export const CARD_MODULES: readonly string[] = ["M04", "M13"];

/** The review that a card can claim: the one that is due first, and none where one of its modules has none. */
export const reviewOfAll = (reviews: readonly Review[]): Review => {
  const done = reviews.flatMap((review) => (review.state === "reviewed" ? [review] : []));
  const [first] = done.toSorted((one, other) => one.due.localeCompare(other.due));
  return first === undefined || done.length < reviews.length ? { state: "none" } : first;
};

/** The card of this hospital's list, with the review that its modules have. */
export const ourCard = (reviews: readonly Review[]): TrolleyCard => {
  const notes = [...["C5", "C7", "C2"].map((id) => ({ id, text: cautionText(id) })), { id: "C13", text: reviewText(reviewOfAll(reviews)) }, { id: "C1", text: cautionText("C1") }];
  return trolleyCard({ tables: LOCAL_TABLES, setUp: SET_UP_GRAPH, drill: DRILL_GRAPH, words: cardWordsOf("en"), notes });
};

export type Paper = keyof typeof MOST_COUNTED;

/** Lines to count and the most that a paper holds, where they are too many; null where the card fits. */
export const tooLongFor = (card: TrolleyCard, paper: Paper): { readonly rows: string; readonly most: string } | null =>
  card.counts.length <= MOST_COUNTED[paper] ? null : { rows: String(card.counts.length), most: String(MOST_COUNTED[paper]) };
