import type { Say } from "../../engine/question/say.ts";

/** Invented children of the needle questions. */
export const CHILDREN = ["Ivo", "Teodor", "Rasmus", "Jarek", "Silvan", "Anouk", "Liesel", "Marit", "Tamsin", "Oriel"] as const;
export const AGES = ["8", "9", "10", "11", "12", "13", "14", "15", "16"] as const;
export const SIDES = ["left", "right"] as const;

/** "Marit, 12": where the name ends its part of the sentence. */
export const childOf = (say: Say): string => `${say.about("child")}, ${say.about("age")}`;

/** "Marit (12)": in the middle of a sentence. */
export const childIn = (say: Say): string => `${say.about("child")} (${say.about("age")})`;

/** The three answers that are not a number, for questions about a line in a drawing. */
export const DRAWING_SAYS = {
  none: "No such value on this line",
  "cannot-be-told": "Cannot be told from this",
  "ask-locally": "Ask locally",
} as const;
