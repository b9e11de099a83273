import type { Line } from "./chain.ts";
import { momentMs } from "./day.ts";

/** Where a line stands: never before the line that it follows, even where the clock was set back between them. */
interface Place {
  readonly ms: number;
  readonly depth: number;
}

const START: Place = { ms: Number.NEGATIVE_INFINITY, depth: -1 };

const placeAfter = (before: Place, line: Line): Place => ({
  ms: Math.max(before.ms, momentMs(line.event.at) ?? Number.NEGATIVE_INFINITY),
  depth: before.depth + 1,
});

/** Walks up to the nearest line that has its place, then down again: a long log must not nest calls. */
const placesOf = (byHash: ReadonlyMap<string, Line>): ReadonlyMap<string, Place> => {
  const places = new Map<string, Place>();
  for (const start of byHash.values()) {
    const waiting: Line[] = [];
    let line: Line | undefined = start;
    while (line !== undefined && !places.has(line.hash)) {
      waiting.push(line);
      line = byHash.get(line.event.prev);
    }
    let before = line === undefined ? START : (places.get(line.hash) ?? START);
    for (const next of waiting.reverse()) {
      before = placeAfter(before, next);
      places.set(next.hash, before);
    }
  }
  return places;
};

const byText = (one: string, other: string): number => (one < other ? -1 : Number(one > other));

/**
 * Several logs as one: every line once, in an order that depends on the lines alone. So it does not matter which device
 * is merged into which, in what order, or how often. A line stands behind the one it follows; beyond that, by time.
 */
export const mergeLogs = (...logs: readonly (readonly Line[])[]): readonly Line[] => {
  const byHash = new Map(logs.flat().map((line) => [line.hash, line]));
  const places = placesOf(byHash);
  return [...byHash.values()].sort((one, other) => {
    const here = places.get(one.hash) ?? START;
    const there = places.get(other.hash) ?? START;
    if (here.ms !== there.ms) return here.ms < there.ms ? -1 : 1;
    return here.depth - there.depth || byText(one.hash, other.hash);
  });
};
