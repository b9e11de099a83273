/** Why a figure is not given. A figure that is not defined or not to be had is said with its reason, and never shown as 0. */
export const REFUSALS = [
  "nobody",
  "under-five",
  "under-thirty",
  "no-fixed-form",
  "one-item",
  "totals-alike",
  "item-alike",
  "rest-alike",
  "reliability-below-0",
  "no-judges",
  "one-judge",
  "items-not-judged",
] as const;
export type Refusal = (typeof REFUSALS)[number];

/** A number, or the reason why there is none. */
export type Figure = { readonly value: number; readonly refused: null } | { readonly value: null; readonly refused: Refusal };

export const given = (value: number): Figure => ({ value, refused: null });

export const refused = (reason: Refusal): Figure => ({ value: null, refused: reason });

/** A number as it came, or the reason that explains why it is null. */
export const givenOr = (value: number | null, reason: Refusal): Figure => (value === null ? refused(reason) : given(value));

/** Fewest persons of whom shares are shown: below it a share tells who they are (common practice, no source). */
export const LEAST_PERSONS = 5;

/** Fewest persons for figures of items and sheets (common practice, no source); the error of a correlation is then about 0.19. */
export const LEAST_FOR_ITEMS = 30;
