import type { Item } from "../engine/question/item.ts";
import type { Graded } from "./grading.ts";
import { type AnswerContext, answeredEvent } from "./new-event.ts";
import { type Kept, keepEvent } from "./store/record.ts";

/** Adds one graded answer to the record. Its own file, so that a page fetches it only once somebody answers. */
export const noteAnswer = (item: Item, graded: Graded, context: AnswerContext): Promise<Kept> => keepEvent(answeredEvent(item, graded, context));
