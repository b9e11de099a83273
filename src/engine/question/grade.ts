import { drawBehind, slipBehind, workingBehind } from "./behind.ts";
import type { Family } from "./family.ts";
import type { Item } from "./item.ts";
import type { Marked } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import type { Verdict } from "./verdict.ts";

/** A verdict while it is put together. */
type Open = { -readonly [Key in keyof Verdict]: Verdict[Key] };

const UNSAFE_CAUTION = "C10";
const NOTHING: Verdict["accepted"] = {};

interface Graded {
  readonly family: Family;
  readonly item: Item;
  readonly response: Response;
  readonly marked: Marked;
}

/** The slip of a response that is an answer and not right: the one that gives the whole of it before one that shows in a part. */
const slipIn = ({ family, item, response, marked }: Graded): string | undefined => {
  if (marked.verdict === "right" || marked.verdict === "not-recognised") return undefined;
  if (rulesOf(family).marksWholeSlips) return marked.slip;
  return slipBehind(family, item, response) ?? marked.slip;
};

/** Grades one response to a question of any kind. Never throws for what a learner typed. */
export const gradeItem = (family: Family, item: Item, response: Response): Verdict => {
  const marked = rulesOf(family).mark(family, drawBehind(family, item), response);
  const { verdict, score, parts, accepted = NOTHING, reason, acceptedSays } = marked;
  const { cautions, sources } = item;
  const slip = slipIn({ family, item, response, marked });
  const graded: Open = {
    verdict,
    score,
    parts,
    accepted,
    working: workingBehind(family, item),
    cautions: verdict === "unsafe-side" ? [...cautions, UNSAFE_CAUTION] : cautions,
    sources,
  };
  if (reason !== undefined) graded.reason = reason;
  if (acceptedSays !== undefined) graded.acceptedSays = acceptedSays;
  if (slip !== undefined) graded.slip = slip;
  return graded;
};
