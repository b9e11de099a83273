import type { Line } from "./chain.ts";
import type { RecordEvent } from "./event.ts";
import { mergeLogs } from "./merge.ts";

const isOff = ({ kind, verdict, slip }: RecordEvent): boolean => kind === "answered" && verdict !== "right" && verdict !== "not-recognised" && (verdict === "unsafe-side" || slip !== undefined);

/** Two answers that show the same habit: the same slip of the same question. */
const habitOf = ({ family, slip = "" }: RecordEvent): string => `${family} ${slip}`;

/**
 * Answers worth talking about: unsafe ones first, then those with a named slip, the newest first, each slip of a
 * question once. So that the first lines of a card are those that matter most, whatever room it has.
 */
export const vivaPicks = (lines: readonly Line[], most: number): readonly RecordEvent[] => {
  const newest = mergeLogs(lines).map(({ event }) => event).filter(isOff).toReversed();
  const once = newest.filter((event, at) => newest.findIndex((other) => habitOf(other) === habitOf(event)) === at);
  const isUnsafe = (event: RecordEvent): boolean => event.verdict === "unsafe-side";
  return [...once.filter(isUnsafe), ...once.filter((event) => !isUnsafe(event))].slice(0, most);
};
