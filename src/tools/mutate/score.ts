import { ENDLESS, type Result } from "./bench.ts";
import type { Change } from "./changes.ts";

/** One change in one file of a room. */
export interface Mutant {
  readonly room: string;
  /** Path from the project's root. */
  readonly path: string;
  readonly source: string;
  readonly change: Change;
}

export interface Tried extends Result {
  readonly mutant: Mutant;
}

const LONGEST = 70;
const short = (text: string): string => {
  const line = text.replace(/\s+/g, " ");
  return line.length > LONGEST ? `${line.slice(0, LONGEST)}…` : line;
};

/** Where a change stands and what it was: "src/engine/question/say.ts:31  a < b  became  ((a) <= (b))". */
export const described = ({ path, source, change: { start, end, text } }: Mutant): string =>
  `${path}:${source.slice(0, start).split("\n").length}  ${short(source.slice(start, end))}  became  ${short(text)}`;

/** Share of the changes that were noticed, in per cent; changes that do not even load are left out. */
export const scoreOf = (tried: readonly Tried[]): number => {
  const counted = tried.filter(({ outcome }) => outcome !== "broken");
  return counted.length === 0 ? 100 : (100 * counted.filter(({ outcome }) => outcome === "killed").length) / counted.length;
};

/** The line of one room. */
export const roomLine = (room: string, tried: readonly Tried[]): string => {
  const count = (outcome: string): number => tried.filter((one) => one.outcome === outcome).length;
  const endless = tried.filter(({ why }) => why === ENDLESS).length;
  return `${room.padEnd(10)} ${scoreOf(tried).toFixed(1).padStart(5)} %   ${count("killed")} noticed (${endless} of them by running for ever), ${count("survived")} not, ${count("broken")} did not load`;
};
