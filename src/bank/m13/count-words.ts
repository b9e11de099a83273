import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";

/** What the families of counts, waste and records have in common: invented children and hospitals. */

const CHILDREN = [["Asta", "9"], ["Bram", "11"], ["Cosima", "8"], ["Anton", "13"], ["Sunniva", "15"], ["Piet", "10"], ["Linnea", "12"], ["Emre", "14"], ["Yusra", "16"], ["Finn", "7"]] as const;
export const HOSPITALS = ["Saltmere", "Northmoor", "Thornbeck"] as const;

/** A child and a hospital of the demo. */
export const drawPlace = (chance: Chance): Readonly<Record<string, string>> => {
  const [child, age] = chance.pick(CHILDREN);
  return { child, age, hospital: chance.pick(HOSPITALS), side: chance.pick(["left", "right"]) };
};

/** "Sunniva, 15" */
export const childOf = (say: Say): string => `${say.about("child")}, ${say.about("age")}`;

/** A whole number written out with a true minus sign. */
export const signed = (value: number): string => (value > 0 ? `+${value}` : String(value).replace("-", "−"));
