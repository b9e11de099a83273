import { behind, signature } from "./behind.ts";
import type { Family } from "./family.ts";
import type { Item } from "./item.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import type { Verdict } from "./verdict.ts";

/** Grades one response to a question of any kind. Never throws for what a learner typed. */
export const gradeItem = (family: Family, item: Item, response: Response): Verdict => {
  const rules = rulesOf(family);
  const { draw, slipBySignature, working } = behind(family, item);
  const { slip: shown, accepted = {}, ...marked } = rules.mark(family, draw, response);
  const isCounted = marked.verdict !== "right" && marked.verdict !== "not-recognised";
  const exact = isCounted ? slipBySignature().get(signature(response)) : undefined;
  const slip = isCounted ? (exact ?? shown) : undefined;
  return {
    ...marked,
    accepted,
    ...(slip === undefined ? {} : { slip }),
    working: working(),
    cautions: marked.verdict === "unsafe-side" ? [...item.cautions, "C10"] : item.cautions,
    sources: item.sources,
  };
};
