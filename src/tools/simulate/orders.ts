import type { Chance } from "../../engine/random/chance.ts";
import type { ObjectiveStanding } from "../../engine/record/learner-state.ts";
import { practiceSheet } from "../../engine/record/order.ts";
import { COURSE, SHEET_SIZE } from "./course.ts";

export interface Pick {
  readonly objective: string;
  readonly family: string;
}

export interface Sitting {
  readonly objectives: readonly ObjectiveStanding[];
  readonly todayDay: number;
  readonly chance: Chance;
}

/** A way to fill the sheet of a day from where the learner stands that morning. */
export interface Order {
  readonly name: string;
  readonly sheetOf: (sitting: Sitting) => readonly Pick[];
}

const BLOCK = 5;

const familiesOf = (objective: string): readonly string[] => COURSE.find(({ id }) => id === objective)?.families ?? [];

export const isSteady = ({ level }: ObjectiveStanding): boolean => level === "steady" || level === "due";

/** Below Steady, and not stopped on this very day. */
const isOpen = ({ level, isBack }: ObjectiveStanding): boolean => level !== "steady" && level !== "due" && (level !== "stop" || isBack);

/** True where no answer of today can make it Steady, because its two right answers are not two days old. */
const waits = ({ level, wouldChange }: ObjectiveStanding, todayDay: number): boolean =>
  level === "worked" && wouldChange.some(({ to, count, fromDay }) => to === "steady" && count === 1 && fromDay !== null && fromDay > todayDay);

const blocksOf = (open: readonly ObjectiveStanding[], chance: Chance): readonly Pick[] =>
  open.slice(0, SHEET_SIZE / BLOCK).flatMap(({ objective }) => Array.from({ length: BLOCK }, () => ({ objective, family: chance.pick(familiesOf(objective)) })));

const randomly = ({ objectives, chance }: Sitting): readonly Pick[] => {
  const open = objectives.filter(isOpen);
  return Array.from({ length: open.length === 0 ? 0 : SHEET_SIZE }, () => {
    const { objective } = chance.pick(open);
    return { objective, family: chance.pick(familiesOf(objective)) };
  });
};

/** The workbook's order first: the others are compared with it. */
export const ORDERS: readonly Order[] = [
  { name: "workbook", sheetOf: ({ objectives, chance }) => practiceSheet({ objectives, familiesOf, size: SHEET_SIZE, chance }) },
  { name: "blocks, each until Steady", sheetOf: ({ objectives, chance }) => blocksOf(objectives.filter(isOpen), chance) },
  {
    name: "blocks, moving on to wait",
    sheetOf: ({ objectives, todayDay, chance }) => blocksOf(objectives.filter((one) => isOpen(one) && !waits(one, todayDay)), chance),
  },
  { name: "random", sheetOf: randomly },
];
