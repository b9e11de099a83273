import type { Chance } from "../random/chance.ts";
import type { ObjectiveStanding } from "./learner-state.ts";

/** Why a question stands on a practice sheet. */
export type Why = "unsafe" | "back" | "begun" | "new";

export interface PracticePick {
  readonly objective: string;
  readonly module: string;
  readonly family: string;
  readonly why: Why;
  /** True before the first question of an objective never met: a worked example stands in front of it. */
  readonly hasExampleFirst: boolean;
}

export interface PracticeOptions {
  readonly objectives: readonly ObjectiveStanding[];
  readonly familiesOf: (objective: string) => readonly string[];
  /** Most questions on the sheet. */
  readonly size: number;
  readonly chance: Chance;
}

const DRAWS_TO_SETTLE = 2;
const WHY_ORDER: readonly Why[] = ["unsafe", "back", "begun", "new"];

/**
 * The same things, with no two neighbours of one group wherever that can be had; apart from that, in the order given.
 * Mixed practice of this kind was better than blocks in mathematics: 72 % against 38 % right after two weeks (Rohrer,
 * Dedrick and Burgess 2014, 10.3758/s13423-014-0588-3).
 */
export const interleaved = <T>(things: readonly T[], groupOf: (thing: T) => string): readonly T[] => {
  const waiting = [...things];
  const order: T[] = [];
  while (waiting.length > 0) {
    const last = order.at(-1);
    const counts = new Map<string, number>();
    for (const thing of waiting) counts.set(groupOf(thing), (counts.get(groupOf(thing)) ?? 0) + 1);
    const isOther = (thing: T): boolean => last === undefined || groupOf(thing) !== groupOf(last);
    // A group that fills more than half of what would be left has to come now, or its own would meet at the end.
    const most = Math.ceil((waiting.length - 1) / 2);
    const pressing = waiting.findIndex((thing) => isOther(thing) && (counts.get(groupOf(thing)) ?? 0) > most);
    const next = pressing >= 0 ? pressing : waiting.findIndex(isOther);
    order.push(...waiting.splice(Math.max(0, next), 1));
  }
  return order;
};

/** Why an objective is asked now; null where it is not: steady and not yet back, or stopped today. */
const whyNow = ({ level, isBack }: ObjectiveStanding): Why | null => {
  if (level === "stop") return isBack ? "unsafe" : null;
  if (isBack) return "back";
  if (level === "steady") return null;
  return level === "unseen" ? "new" : "begun";
};

const byNeed = (one: Need, other: Need): number => {
  const place = WHY_ORDER.indexOf(one.why) - WHY_ORDER.indexOf(other.why);
  if (place !== 0 || one.why === "new") return place;
  const [here, there] = [one.standing, other.standing];
  if (one.why === "begun") return here.known - there.known;
  return (here.returns?.day ?? 0) - (there.returns?.day ?? 0) || here.known - there.known;
};

interface Need {
  readonly standing: ObjectiveStanding;
  readonly why: Why;
  readonly families: readonly string[];
}

const pickOf = ({ standing, why, families }: Need, round: number): PracticePick => ({
  objective: standing.objective,
  module: standing.module,
  family: families[round % families.length] ?? "",
  why,
  hasExampleFirst: standing.level === "unseen" && round === 0,
});

/**
 * The questions of a practice sheet: first what an unsafe answer left open (two draws, so that it can be settled in one
 * day), then what has come back, longest over its date first, then what was begun, least known first, then what is new in
 * the order of the course. Where room is left, what is below Steady comes a second time with another family. Neighbours
 * come from different modules wherever that can be had.
 */
export const practiceSheet = ({ objectives, familiesOf, size, chance }: PracticeOptions): readonly PracticePick[] => {
  const needs = objectives.flatMap((standing): Need[] => {
    const why = whyNow(standing);
    const families = familiesOf(standing.objective);
    return why === null || families.length === 0 ? [] : [{ standing, why, families: chance.shuffled(families) }];
  }).sort(byNeed);
  const first = needs.flatMap((need) => Array.from({ length: need.why === "unsafe" ? DRAWS_TO_SETTLE : 1 }, (_, round) => pickOf(need, round)));
  const second = needs.filter(({ why, standing }) => why !== "unsafe" && standing.level !== "due").map((need) => pickOf(need, 1));
  return interleaved([...first, ...second].slice(0, size), ({ module }) => module);
};

/** What the entry sheet leaves to learn: all but what was right there; an objective with an unsafe side always stays. */
export const leftAfterEntry = <T extends { readonly id: string; readonly families: readonly string[] }>(
  objectives: readonly T[],
  entry: { readonly rightFamilies: readonly string[]; readonly safety: readonly string[] },
): readonly T[] => objectives.filter(({ id, families }) => entry.safety.includes(id) || !families.some((family) => entry.rightFamilies.includes(family)));
