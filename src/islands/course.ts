import type { CourseView } from "../engine/record/attempts.ts";
import { readCarryCode } from "../engine/record/carry-code.ts";
import { CARRY_PLANS } from "../facts/editions.ts";

export type Role = "resident" | "nurse" | "director";

export interface CourseObjective {
  readonly id: string;
  readonly module: string;
  readonly text: string;
  readonly families: readonly string[];
  /** True where one of its questions has an unsafe side. */
  readonly isSafety: boolean;
}

/** A question of several steps, and the objectives that must be Worked before it is offered. */
export interface CourseChain {
  readonly family: string;
  readonly needs: readonly string[];
}

/** A module as the pages of the record need it. */
export interface CourseModule {
  readonly code: string;
  readonly title: string;
  readonly path: string;
  /** Roles for which it is core. */
  readonly core: readonly Role[];
  readonly objectives: readonly CourseObjective[];
  readonly chains: readonly CourseChain[];
}

/** All objectives in the order of the course. */
export const objectivesOf = (modules: readonly CourseModule[]): readonly CourseObjective[] => modules.flatMap(({ objectives }) => objectives);

/** The course as the record is read against it; carry codes of every edition are understood. */
export const courseView = (modules: readonly CourseModule[]): CourseView => ({
  objectives: objectivesOf(modules),
  readCarry: (code) => {
    const read = readCarryCode(code, CARRY_PLANS);
    return "fault" in read ? null : read.summary;
  },
});
