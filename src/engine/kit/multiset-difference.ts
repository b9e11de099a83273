/** A thing and how many of it. */
export interface Counted {
  readonly item: string;
  readonly count: number;
}

export interface MultisetDifference {
  readonly missing: readonly Counted[];
  readonly extra: readonly Counted[];
}

const tally = (name: string, items: readonly string[]): ReadonlyMap<string, number> => {
  const counts = new Map<string, number>();
  for (const [index, item] of items.entries()) {
    if (typeof item !== "string") throw new RangeError(`${name}[${index}] must be a name, got ${String(item)}`);
    counts.set(item, (counts.get(item) ?? 0) + 1);
  }
  return counts;
};

const moreIn = (counts: ReadonlyMap<string, number>, others: ReadonlyMap<string, number>): readonly Counted[] =>
  [...counts].map(([item, count]) => ({ item, count: count - (others.get(item) ?? 0) })).filter(({ count }) => count > 0);

/**
 * What two lists of things do not have in common, each thing as often as it stands there: two needles of one name are two
 * needles. A missing one never pays for an extra one of another name.
 *
 * @param expected - Names that should be there, each as often as it should.
 * @param found - Names that are there, each as often as it is.
 * @returns What is missing and what is extra, with counts, in the order of the lists.
 * @throws {RangeError} If an entry is no text.
 * @example multisetDifference(["needle", "needle", "clamp"], ["needle", "blade"]) // => { missing: [{ item: "needle", count: 1 }, { item: "clamp", count: 1 }], extra: [{ item: "blade", count: 1 }] }
 */
export const multisetDifference = (expected: readonly string[], found: readonly string[]): MultisetDifference => {
  const wanted = tally("expected", expected);
  const there = tally("found", found);
  return { missing: moreIn(wanted, there), extra: moreIn(there, wanted) };
};
