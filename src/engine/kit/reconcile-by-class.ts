import { requireOneCount } from "../quantity/require.ts";

/** Counts of one class of things at the end of a case. */
export interface ClassCount {
  readonly opening: number;
  readonly added: number;
  readonly handedOff: number;
  readonly present: number;
  /** Of those present, how many are not whole: a tip broken, a part gone. */
  readonly notWhole: number;
}

export interface Reconciliation {
  /** Present minus expected in each class; negative where something is missing. */
  readonly differences: Readonly<Record<string, number>>;
  /** Classes with something that is not whole. */
  readonly notWhole: readonly string[];
  /** True only where every class agrees and everything is whole. */
  readonly agrees: boolean;
}

const requireClass = (name: string, counts: ClassCount): void => {
  const { opening, added, handedOff, present, notWhole } = counts;
  for (const [key, count] of Object.entries({ opening, added, handedOff, present, notWhole })) requireOneCount(`${name}.${key}`, count);
  if (handedOff > opening + added) {
    throw new RangeError(`${name}.handedOff must be at most opening + added (${opening + added}), got ${handedOff}`);
  }
  if (notWhole > present) throw new RangeError(`${name}.notWhole must be at most present (${present}), got ${notWhole}`);
};

/**
 * Closing count against what must be there, class by class: opening + added − handed off. Classes are never set off
 * against each other, for a swab too many does not bring back a needle.
 *
 * @param classes - Counts by class: `opening`, `added`, `handedOff` (at most opening + added), `present`, `notWhole` (at most
 * present); whole numbers, 0 included.
 * @returns Difference of each class (negative where something is missing), the classes with something not whole, and
 * whether all agrees.
 * @throws {RangeError} If a count is negative, not whole, or more than there can be.
 * @example reconcileByClass({ needles: { opening: 4, added: 2, handedOff: 1, present: 4, notWhole: 0 } }) // => { differences: { needles: -1 }, notWhole: [], agrees: false }
 */
export const reconcileByClass = (classes: Readonly<Record<string, ClassCount>>): Reconciliation => {
  const named = Object.entries(classes);
  for (const [name, counts] of named) requireClass(name, counts);
  const differences = named.map(([name, { opening, added, handedOff, present }]): [string, number] => [
    name,
    present + handedOff - opening - added,
  ]);
  const notWhole = named.filter(([, counts]) => counts.notWhole > 0).map(([name]) => name);
  const agrees = notWhole.length === 0 && differences.every(([, difference]) => difference === 0);
  return { differences: Object.fromEntries(differences), notWhole, agrees };
};
