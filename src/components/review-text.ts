import { cautionNamed } from "../facts/cautions.ts";
import { filled } from "../facts/words.ts";

/** How far a module was reviewed, as its front matter says. */
export type Review = { readonly state: "none" } | { readonly state: "reviewed"; readonly by: string; readonly on: string; readonly due: string };

/** The text of C13 for a module: when it was reviewed and by whom, or that nobody has done so yet. */
export const reviewText = (review: Review): string => {
  const { text, unreviewed } = cautionNamed("C13");
  return review.state === "none" ? (unreviewed ?? text) : filled(text, { date: review.on, role: review.by, due: review.due });
};
