import { compareOnGrid, sumOnGrid } from "../quantity/grid.ts";
import { requireNotNegative, requirePositive } from "../quantity/require.ts";

/** Liquid that went somewhere without being measured, as the least and the most that it may be. */
export interface VolumeEstimate {
  readonly fromMl: number;
  readonly toMl: number;
}

export interface FluidAccount {
  readonly inMl: number;
  readonly collectedMl: number;
  /** Floor, drapes, dressings and so on; `null` where nobody measured or estimated. */
  readonly estimates: readonly (VolumeEstimate | null)[];
  readonly weightKg: number;
}

/** What may still be in the child, at least and at most. */
export interface UnaccountedFluid {
  readonly leastMl: number;
  readonly greatestMl: number;
  readonly leastMlPerKg: number;
  readonly greatestMlPerKg: number;
}

const requireEstimate = ({ fromMl, toMl }: VolumeEstimate, place: number): void => {
  const name = `estimates[${place}]`;
  requireNotNegative({ [`${name}.fromMl`]: fromMl, [`${name}.toMl`]: toMl });
  if (toMl < fromMl) throw new RangeError(`${name}.toMl must be at least fromMl (${fromMl}), got ${toMl}`);
};

const requireAccount = ({ inMl, collectedMl, estimates, weightKg }: FluidAccount): void => {
  requirePositive({ weightKg });
  requireNotNegative({ inMl, collectedMl });
  estimates.forEach((estimate, place) => {
    if (estimate !== null) requireEstimate(estimate, place);
  });
  const leastOutMl = sumOnGrid(collectedMl, ...estimates.map((estimate) => estimate?.fromMl ?? 0));
  if (compareOnGrid(leastOutMl, inMl) > 0) {
    throw new RangeError(`collectedMl + fromMl of the estimates must be at most inMl (${inMl}), got ${leastOutMl}`);
  }
};

/**
 * Range of the irrigation fluid that nobody can account for: in − collected − what went elsewhere, each estimate taken at
 * both of its ends. What was not measured is neither nothing nor everything: it may be any part of the rest, so it takes
 * the lower end to 0 and leaves the upper end alone. The upper end is the one to hold against a limit.
 *
 * @param inMl - Given in, in mL; 0 included.
 * @param collectedMl - Measured in suction and bags, in mL; 0 included.
 * @param estimates - For each other place `fromMl` to `toMl`, in mL, 0 included, or `null` where it was not measured.
 * @param weightKg - Body weight, in kg; greater than 0.
 * @returns Least and greatest unaccounted volume in mL and in mL/kg; the least is not below 0.
 * @throws {RangeError} If a value is outside its range, an estimate ends before it begins, or more came out than went in.
 * @example fluidBalance({ inMl: 6000, collectedMl: 5100, estimates: [{ fromMl: 200, toMl: 500 }], weightKg: 25 }) // => { leastMl: 400, greatestMl: 700, leastMlPerKg: 16, greatestMlPerKg: 28 }
 */
export const fluidBalance = (account: FluidAccount): UnaccountedFluid => {
  requireAccount(account);
  const { inMl, collectedMl, estimates, weightKg } = account;
  const known = estimates.filter((estimate) => estimate !== null);
  const greatestMl = sumOnGrid(inMl, -collectedMl, ...known.map(({ fromMl }) => -fromMl));
  const atMostOutMl = sumOnGrid(inMl, -collectedMl, ...known.map(({ toMl }) => -toMl));
  const leastMl = known.length < estimates.length ? 0 : Math.max(0, atMostOutMl);
  return { leastMl, greatestMl, leastMlPerKg: leastMl / weightKg, greatestMlPerKg: greatestMl / weightKg };
};
