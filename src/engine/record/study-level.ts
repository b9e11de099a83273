import type { ObjectiveStanding } from "./learner-state.ts";

/** How far a module or a path was studied: `worked` where every objective is at least Worked, `steady` where every one is Steady; `open` before that, or while an unsafe answer is open. */
export const STUDY_LEVELS = ["open", "worked", "steady"] as const;
export type StudyLevel = (typeof STUDY_LEVELS)[number];

/** True for an objective that is at least Worked, with no unsafe answer open. */
export const isStudied = ({ level }: Pick<ObjectiveStanding, "level">): boolean => level === "worked" || level === "steady" || level === "due";

/** The level that objectives have together; `open` where there are none. */
export const levelOf = (own: readonly Pick<ObjectiveStanding, "level">[]): StudyLevel => {
  if (own.length === 0) return "open";
  if (own.every(({ level }) => level === "steady" || level === "due")) return "steady";
  return own.every(isStudied) ? "worked" : "open";
};
