import { requireNumber } from "../quantity/require.ts";

/** Checks that every named number is a share from 0 to 1, both included. */
export const requireShares = (values: Readonly<Record<string, unknown>>): void => {
  for (const [name, value] of Object.entries(values)) {
    requireNumber(name, value, { least: 0, leastIncluded: true, greatest: 1, greatestIncluded: true });
  }
};

/** Checks that every named number is a share above 0; 1 included. */
export const requireSharesAboveZero = (values: Readonly<Record<string, unknown>>): void => {
  for (const [name, value] of Object.entries(values)) {
    requireNumber(name, value, { least: 0, greatest: 1, greatestIncluded: true });
  }
};

/** Part over whole, or `null` where there is no whole. */
export const shareOf = (part: number, whole: number): number | null => (whole === 0 ? null : part / whole);
