import { sha256Words } from "../random/sha256.ts";
import { attemptsOf } from "./attempts.ts";
import { canonicalJson } from "./canonical.ts";
import type { Line } from "./chain.ts";
import type { LearnerState, ObjectiveStanding } from "./learner-state.ts";
import { mergeLogs } from "./merge.ts";
import { levelOf, type StudyLevel } from "./study-level.ts";

/** What a sitting of a path asks: a whole module, or the questions of it that are named. */
export interface StudyPart {
  readonly module: string;
  readonly families?: readonly string[];
}

/** How far one part of a path was studied. */
export interface PartStudy {
  /** The objectives behind it: all of the module, or those that its questions serve. */
  readonly objectives: readonly ObjectiveStanding[];
  /** Named questions that were never right at the first try and without a hint. A carry code says nothing of single questions, so it takes none off. */
  readonly lacking: readonly string[];
  readonly isDone: boolean;
}

export interface PathStudy {
  readonly parts: readonly PartStudy[];
  /** The lowest of its parts: `open` while one is not done. */
  readonly level: StudyLevel;
}

/** How many versions of one path a code can tell apart. */
export const PATH_VERSIONS = 1024;

/** Named questions that were right once at the first try, without a hint. */
const rightOnce = (lines: readonly Line[], named: readonly string[]): ReadonlySet<string> => {
  const { byObjective } = attemptsOf(mergeLogs(lines), { objectives: named.map((family) => ({ id: family, module: "", families: [family] })) });
  return new Set(named.filter((family) => byObjective.get(family)?.some(({ kind }) => kind === "right")));
};

interface Course {
  readonly objectives: readonly { readonly id: string; readonly families: readonly string[] }[];
}

/**
 * How far a path was studied, by the rule that whole modules have: every objective behind it at least Worked, no unsafe
 * answer open there. Where a part names its questions, each of them was right once as well.
 */
export const pathStudy = (parts: readonly StudyPart[], { state, lines, course }: { readonly state: LearnerState; readonly lines: readonly Line[]; readonly course: Course }): PathStudy => {
  const right = rightOnce(lines, [...new Set(parts.flatMap(({ families = [] }) => families))]);
  const studied = parts.map(({ module, families }): PartStudy => {
    const served = new Set(course.objectives.filter((one) => one.families.some((family) => families?.includes(family))).map(({ id }) => id));
    const objectives = state.objectives.filter((one) => (families === undefined ? one.module === module : served.has(one.objective)));
    const lacking = (families ?? []).filter((family) => !right.has(family));
    return { objectives, lacking, isDone: lacking.length === 0 && levelOf(objectives) !== "open" };
  });
  const isWhole = studied.every(({ isDone }) => isDone);
  return { parts: studied, level: isWhole ? levelOf(studied.flatMap(({ objectives }) => objectives)) : "open" };
};

/** A number for what the parts of a path are, whatever their order: a code tells by it that a path has changed since. */
export const pathVersion = (parts: readonly StudyPart[]): number => {
  const texts = parts.map(({ module, families }) => canonicalJson(families === undefined ? [module] : [module, [...families].sort()])).sort();
  const [first = 0] = sha256Words(canonicalJson(["study path", ...texts]));
  return first % PATH_VERSIONS;
};
