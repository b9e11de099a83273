import type { ObjectiveStanding } from "../engine/record/learner-state.ts";
import { practiceSheet } from "../engine/record/order.ts";
import { NONCES, sheetNumberText } from "../engine/record/sheet-number.ts";
import { chanceFrom } from "../engine/random/chance.ts";
import { sha256Words } from "../engine/random/sha256.ts";
import { xoshiro128 } from "../engine/random/xoshiro.ts";
import { NEWEST, planFor } from "../facts/editions.ts";
import { type CourseModule, objectivesOf, type Role } from "./course.ts";
import { newSeed } from "./new-seed.ts";

export const SHEET_SIZE = 10;

const newNonce = (): number => Number.parseInt(newSeed().slice(0, 8), 16) % NONCES;

/** Families that the newest edition lists, in the words of a sheet number. */
const placeOf = (family: string): number => NEWEST.families.findIndex(({ id }) => id === family);

const numberFor = (families: readonly string[]): string | null => {
  const picks = families.map(placeOf).filter((place) => place >= 0);
  return picks.length === 0 ? null : sheetNumberText({ edition: NEWEST.edition, plan: 0, nonce: newNonce(), picks });
};

export interface StandChoice {
  readonly modules: readonly CourseModule[];
  readonly standings: readonly ObjectiveStanding[];
}

const WORKED = new Set(["worked", "steady", "due"]);

/** Questions of several steps whose parts are not all Worked yet; they wait. */
const waitingChains = ({ modules, standings }: StandChoice): ReadonlySet<string> => {
  const worked = new Set(standings.filter(({ level }) => WORKED.has(level)).map(({ objective }) => objective));
  return new Set(modules.flatMap(({ chains }) => chains).filter(({ needs }) => !needs.every((id) => worked.has(id))).map(({ family }) => family));
};

/** The number of a sheet from where the learner stands; null where nothing asks for practice. */
export const numberFromStand = ({ modules, standings }: StandChoice): string | null => {
  const objectives = objectivesOf(modules);
  const waiting = waitingChains({ modules, standings });
  const familiesOf = (id: string): readonly string[] => (objectives.find((one) => one.id === id)?.families ?? []).filter((family) => placeOf(family) >= 0 && !waiting.has(family));
  const known = standings.filter(({ objective }) => objectives.some(({ id }) => id === objective));
  const picks = practiceSheet({ objectives: known, familiesOf, size: SHEET_SIZE, chance: chanceFrom(xoshiro128(sha256Words(newSeed()))) });
  return numberFor(picks.map(({ family }) => family));
};

/** The number of a sheet of these families, at most ten of them, each once before any comes twice. */
export const numberFromFamilies = (families: readonly string[]): string | null => {
  const chance = chanceFrom(xoshiro128(sha256Words(newSeed())));
  const listed = families.filter((family) => placeOf(family) >= 0);
  const round = chance.shuffled(listed);
  const filledUp = listed.length === 0 ? [] : Array.from({ length: Math.max(3, Math.min(SHEET_SIZE, listed.length)) }, (_, index) => round[index % round.length] ?? "");
  return numberFor(filledUp);
};

/** The number of a new sheet by a plan of the newest edition; null where the role has none. */
export const numberFromPlan = (kind: "entry" | "mixed", role: Role): string | null => {
  const plan = planFor(kind, role);
  return plan === null ? null : sheetNumberText({ edition: NEWEST.edition, plan, nonce: newNonce(), picks: [] });
};
