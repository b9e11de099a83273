import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";

/** What the families of the time after the operation have in common. */

const CHILDREN = [["Asta", "9"], ["Bram", "11"], ["Cosima", "10"], ["Anton", "13"], ["Sunniva", "15"], ["Piet", "12"], ["Linnea", "12"], ["Emre", "14"], ["Yusra", "16"], ["Finn", "13"]] as const;
export const HOSPITALS = ["Saltmere", "Northmoor", "Thornbeck"] as const;

/** A child, a hospital and a side of the demo. */
export const drawCase = (chance: Chance): Readonly<Record<string, string>> => {
  const [child, age] = chance.pick(CHILDREN);
  return { child, age, hospital: chance.pick(HOSPITALS), side: chance.pick(["left", "right"]) };
};

/** "Sunniva, 15" */
export const childOf = (say: Say): string => `${say.about("child")}, ${say.about("age")}`;

/** A given that the draw holds. */
export const given = (givens: Givens, key: string): number => givens[key] as number;

/** One number of the answer. */
export const answerOf = (say: Say, id: string): number => (say.answer as Readonly<Record<string, number>>)[id] ?? 0;

export const SUM_SAYS = { none: "There is none", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" } as const;
