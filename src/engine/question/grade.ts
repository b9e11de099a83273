import { type Behind, behind, slipGiving, workingOf } from "./behind.ts";
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

/** The slip of a response that is an answer and not right: the one that gives the whole of it before one that shows in a part. */
const slipIn = (known: Behind, response: Response, marked: Marked): string | undefined => {
  if (marked.verdict === "right" || marked.verdict === "not-recognised") return undefined;
  if (rulesOf(known.family).marksWholeSlips) return marked.slip;
  return slipGiving(known, response) ?? marked.slip;
};

/** Grades one response to a question of any kind. Never throws for what a learner typed. */
export const gradeItem = (family: Family, item: Item, response: Response): Verdict => {
  const known = behind(family, item);
  const marked = rulesOf(family).mark(family, known.draw, response);
  const { verdict, score, parts, accepted = NOTHING, reason, acceptedSays } = marked;
  const { cautions, sources } = item;
  const slip = slipIn(known, response, marked);
  const graded: Open = {
    verdict,
    score,
    parts,
    accepted,
    working: workingOf(known),
    cautions: verdict === "unsafe-side" ? [...cautions, UNSAFE_CAUTION] : cautions,
    sources,
  };
  if (reason !== undefined) graded.reason = reason;
  if (acceptedSays !== undefined) graded.acceptedSays = acceptedSays;
  if (slip !== undefined) graded.slip = slip;
  return graded;
};
