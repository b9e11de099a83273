import { acceptedGrid, askedGrid } from "../quantity/round.ts";
import { compareTyped, isTypedIn, type Typed } from "../quantity/typed.ts";
import type { SumRules } from "./family.ts";
import { type AskSpec, type Draw, isSays, type Solution } from "./family-head.ts";
import type { SumResponse } from "./response.ts";
import { type OfDraw, perDraw } from "./per-draw.ts";
import { slipAt } from "./solve.ts";

interface Diagnosis {
  readonly family: SumRules;
  readonly draw: Draw;
  readonly response: SumResponse;
  readonly values: Readonly<Record<string, Typed>>;
}

type Closeness = "typed" | "within" | null;

/** How near a typed value is to what a slip gives: the very digits asked for, or between exact and rounded. */
const closeness = (value: Typed | undefined, { roundTo, rounding }: AskSpec, gives: number): Closeness => {
  if (value === undefined) return null;
  if (compareTyped(value, askedGrid(gives, roundTo, rounding)) === 0) return "typed";
  return isTypedIn(value, acceptedGrid(gives, roundTo, rounding)) ? "within" : null;
};

const matches = (gives: Solution, { family, response, values }: Diagnosis, wanted: "typed" | "within"): boolean => {
  if ("says" in response) return isSays(gives) && gives.says === response.says;
  if (isSays(gives)) return false;
  return family.asks.every((ask) => {
    const near = closeness(values[ask.id], ask, gives[ask.id] as number);
    return near === "typed" || (wanted === "within" && near === "within");
  });
};

interface Applying {
  readonly id: string;
  readonly gives: Solution;
}

/** The slips that apply to a draw, with what each gives; none of it hangs on the answer. */
export const applyingTo: OfDraw<SumRules, readonly Applying[]> = perDraw((family, draw) => {
  const slips: Applying[] = [];
  for (const slip of family.slips) {
    const gives = slipAt(family, slip, draw);
    if (gives !== null) slips.push({ id: slip.id, gives });
  }
  return slips;
});

/** The slip whose formula gives the learner's answer on this draw: exact digits win over a value in its span. */
export const slipOf = (diagnosis: Diagnosis): string | undefined => {
  const applying = applyingTo(diagnosis.family, diagnosis.draw);
  const typed = applying.find(({ gives }) => matches(gives, diagnosis, "typed"));
  return (typed ?? applying.find(({ gives }) => matches(gives, diagnosis, "within")))?.id;
};
