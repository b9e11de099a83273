import type { Span } from "../quantity/round.ts";
import type { Family } from "./family.ts";
import type { Draw } from "./family-head.ts";
import type { Item, ItemHead } from "./item.ts";
import type { Kind, Response, Says } from "./response.ts";
import type { Say } from "./say.ts";
import type { AskVerdict, Reason, Verdict, VerdictCode } from "./verdict.ts";

/** What marking one response gives, before slip, working and cautions are added. */
export interface Marked {
  readonly verdict: VerdictCode;
  readonly reason?: Reason;
  /** Share that was right, 0 to 1. */
  readonly score: number;
  readonly parts: readonly AskVerdict[];
  readonly accepted?: Readonly<Record<string, Span>>;
  readonly acceptedSays?: Says;
  /** A slip that shows in a part of the answer, where no slip gives the whole of it. */
  readonly slip?: string;
}

export interface SlipResponse {
  readonly id: string;
  readonly response: Response;
}

/** One part of an answer beside what is right, as text. */
export interface Compared {
  readonly ask: string;
  readonly label: string;
  readonly yours?: string;
  readonly answer: string;
  readonly accepted: string;
  /** The same one by one, where the answer is several things: steps of an order, finds on a tray. */
  readonly lines?: { readonly yours?: readonly string[]; readonly answer: readonly string[] };
}

/** An edge that an order broke: which step should have come first, why, and whose rule that is. */
export interface BrokenEdge {
  readonly first: string;
  readonly later: string;
  readonly reason?: string;
  readonly whose?: string;
  readonly isCritical: boolean;
}

/** The own part of an item: all that its kind adds to the head. */
export type OwnPart<I extends Item> = Omit<I, keyof ItemHead<Kind>>;

/** All that differs from kind to kind; everything else is done once for all kinds. */
export interface KindRules<F extends Family, I extends Item> {
  /** The draw behind an item, from what the page shows, so that grading needs no second source. */
  readonly drawOf: (item: I) => Draw;
  readonly answer: (family: F, draw: Draw) => Response;
  readonly slips: (family: F, draw: Draw) => readonly SlipResponse[];
  /** True where the answer and at least `leastSlips` slips apply and would all look different; told from the responses where a kind has no cheaper way. */
  readonly isTellingApart?: (family: F, draw: Draw, leastSlips: number) => boolean;
  readonly mark: (family: F, draw: Draw, response: Response) => Marked;
  readonly shown: (family: F, draw: Draw, say: Say) => OwnPart<I>;
  readonly compare: (family: F, item: I, asked: { readonly response: Response; readonly verdict: Verdict }) => readonly Compared[];
  /** Rules between steps that the response broke, those that can hurt somebody first. */
  readonly broken?: (family: F, item: I, response: Response) => readonly BrokenEdge[];
  /** True where `mark` itself finds the slip that gives the whole of a response. */
  readonly marksWholeSlips?: true;
  /** True where the question as shown would already be its answer. */
  readonly isGivenAway?: (family: F, draw: Draw) => boolean;
}

/** A response of another kind than the question. */
export const OTHER_KIND: Marked = { verdict: "not-recognised", reason: "other-kind", score: 0, parts: [] };

/** An answer of which a part is still open. */
export const missingPart = (ask: string): Marked => ({
  verdict: "not-recognised",
  reason: "part-missing",
  score: 0,
  parts: [{ ask, verdict: "not-recognised", reason: "part-missing" }],
});

/** The draw of an item whose own part adds nothing to be graded by. It is a copy: an item that is changed later does not change it. */
export const plainDraw = (item: Item): Draw => {
  const givens: Record<string, number> = {};
  for (const { key, text } of item.givens) givens[key] = Number(text);
  return { givens, about: { ...item.about } };
};

/** The verdict of an answer that is right in part: unsafe where a danger was passed, otherwise on the safe side. */
export const partly = (isUnsafe: boolean): VerdictCode => (isUnsafe ? "unsafe-side" : "safe-side");
