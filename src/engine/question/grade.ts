import { behind } from "./behind.ts";
import type { Family } from "./family.ts";
import type { Item } from "./item.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import type { Verdict } from "./verdict.ts";

/** One text for a response, to tell whether two would look the same on paper. */
export const signature = (response: Response): string => JSON.stringify(response);

/** Grades one response to a question of any kind. Never throws for what a learner typed. */
export const gradeItem = (family: Family, item: Item, response: Response): Verdict => {
  const rules = rulesOf(family);
  const { draw, slips, working } = behind(family, item);
  const { slip: shown, accepted = {}, ...marked } = rules.mark(family, draw, response);
  const isCounted = marked.verdict !== "right" && marked.verdict !== "not-recognised";
  const exact = isCounted ? slips().find((slip) => signature(slip.response) === signature(response))?.id : undefined;
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
