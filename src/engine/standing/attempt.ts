/** The seven levels. `due` is steady with the date come; `stop` stands beside the order and overrides it. */
export const LEVELS = ["unseen", "read", "helped", "worked", "steady", "due", "stop"] as const;
export type Level = (typeof LEVELS)[number];

/** Levels that a summary can carry; `due` follows from the date. */
export type CarriedLevel = Exclude<Level, "due">;

/** What a step counts as: `right` is a draw never answered before, right without help; `helped` is right in any other way. */
export type AttemptKind = "read" | "right" | "helped" | "rounding" | "wrong" | "unsafe" | "carried";

/** One step on one objective, in the order of the log. */
export interface Attempt {
  /** Id of the event. */
  readonly id: string;
  /** The learner's day, never less than that of the step before. */
  readonly day: number;
  readonly kind: AttemptKind;
  /** The first answer to its draw. */
  readonly isFirstTry: boolean;
  /** Chance of a right answer without knowing, 0 to 1. */
  readonly guess: number;
  /** What a carry code says, where the kind is `carried`. */
  readonly carried?: { readonly level: CarriedLevel; readonly returnDay: number | null };
}
