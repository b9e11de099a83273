import type { ReactNode } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import type { Words } from "../facts/words.ts";

/** What the part of a card that takes an answer is given, whatever the kind. */
export interface AskedPart<I extends Item> {
  readonly item: I;
  readonly words: Words;
  /** Parts of the last try that could not be read. */
  readonly problems: readonly AskVerdict[];
  readonly onAnswer: (response: Response) => void;
  /** What was typed here before a reload and not checked: the part begins with it. */
  readonly draft?: Response | null | undefined;
  /** Is told whatever is typed, ticked or moved, so that a reload does not lose it. */
  readonly onDraft?: ((response: Response) => void) | undefined;
  /** Ids of the question and of the line that says what could not be read. */
  readonly questionId: string;
  readonly problemId: string;
  /** The picture of the question, for a part that is answered in it. */
  readonly picture?: ReactNode;
}

/** Ids that describe a field: the question, and the problem where there is one. */
export const describedBy = ({ problems, questionId, problemId }: Pick<AskedPart<Item>, "problems" | "questionId" | "problemId">): string =>
  problems.length > 0 ? `${questionId} ${problemId}` : questionId;

/** True where this field was the one that could not be read. */
export const isInvalid = (problems: readonly AskVerdict[], ask: string): true | undefined => problems.some((problem) => problem.ask === ask) || undefined;
