import { requireNumber } from "../quantity/require.ts";

const NONE_TO_ONE = { least: 0, leastIncluded: true, greatest: 1, greatestIncluded: true };
const ABOVE_NONE_TO_ONE = { least: 0, greatest: 1, greatestIncluded: true };

/** Checks that one number is a share, from 0 to 1. */
export const requireShare = (name: string, value: unknown): void => requireNumber(name, value, NONE_TO_ONE);

/** Checks that every named number is a share from 0 to 1, both included. */
export const requireShares = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireShare(name, values[name]);
};

/** Checks that every named number is a share above 0; 1 included. */
export const requireSharesAboveZero = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireNumber(name, values[name], ABOVE_NONE_TO_ONE);
};

/** Part over whole, or `null` where there is no whole. */
export const shareOf = (part: number, whole: number): number | null => (whole === 0 ? null : part / whole);
