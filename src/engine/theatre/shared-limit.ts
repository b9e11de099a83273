import { requireNumber, requireOneNotNegative, requireOnePositive, requirePositive } from "../quantity/require.ts";
import { percentToMgPerMl } from "./percent-to-mg-per-ml.ts";

/** A local anaesthetic with the limit of the sheet that a question prints. */
export interface Agent {
  readonly percent: number;
  readonly limitMgPerKg: number;
}

export interface GivenAgent extends Agent {
  readonly volumeMl: number;
}

export interface AgentsOfOneChild {
  readonly weightKg: number;
  /** What has been given already, by whomever. */
  readonly given: readonly GivenAgent[];
  readonly next: Agent;
}

export interface SharedLimit {
  /** Share of the one limit that is used up; more than 1 where it was passed. */
  readonly usedShare: number;
  /** What the rest allows of the next agent; 0 where nothing is left. */
  readonly leftMl: number;
}

/** Volume of an agent that takes up the whole limit by itself. */
const wholeMl = (place: string, { percent, limitMgPerKg }: Agent, weightKg: number): number => {
  requireNumber(`${place}.percent`, percent, { least: 0, greatest: 100, greatestIncluded: true });
  requireOnePositive(`${place}.limitMgPerKg`, limitMgPerKg);
  return (weightKg * limitMgPerKg) / percentToMgPerMl({ percent });
};

/**
 * What is left of a second local anaesthetic once others were given: the agents share one child, so their shares of
 * their own limits add up to at most 1 (common practice, no source). A cautious floor and no leave to mix: labels advise
 * against it. Unrounded, a volume is rounded down.
 *
 * @param weightKg - Body weight, in kg; greater than 0.
 * @param given - Agents given so far: `volumeMl`, in mL, 0 included; `percent`, strength in per cent, greater than 0, at most
 * 100 (included); `limitMgPerKg`, its own limit in mg/kg, greater than 0.
 * @param next - The agent asked about: `percent` and `limitMgPerKg`, in the same ranges.
 * @returns Share of the limit that is used, and the volume left in mL.
 * @throws {RangeError} If a value is outside its range.
 * @example sharedLimit({ weightKg: 20, given: [{ volumeMl: 6, percent: 1, limitMgPerKg: 4 }], next: { percent: 0.25, limitMgPerKg: 2 } }) // => { usedShare: 0.75, leftMl: 4 }
 */
export const sharedLimit = ({ weightKg, given, next }: AgentsOfOneChild): SharedLimit => {
  requirePositive({ weightKg });
  const usedShare = given.reduce((used, agent, index) => {
    requireOneNotNegative(`given[${index}].volumeMl`, agent.volumeMl);
    return used + agent.volumeMl / wholeMl(`given[${index}]`, agent, weightKg);
  }, 0);
  return { usedShare, leftMl: Math.max(0, 1 - usedShare) * wholeMl("next", next, weightKg) };
};
