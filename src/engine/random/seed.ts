/** A seed as given: a whole number from 0 to 4294967295, or 32 hexadecimal digits. */
export type Seed = number | string;

const GREATEST = 2 ** 32 - 1;

/** The one text form of a seed, as items and records keep it. Throws a RangeError for anything else. */
export const seedText = (seed: Seed): string => {
  if (typeof seed === "number" && Number.isInteger(seed) && seed >= 0 && seed <= GREATEST) return String(seed);
  if (typeof seed === "string" && /^[0-9a-f]{32}$/i.test(seed)) return seed.toLowerCase();
  if (typeof seed === "string" && /^(?:0|[1-9]\d{0,9})$/.test(seed) && Number(seed) <= GREATEST) return seed;
  throw new RangeError(`seed must be a whole number from 0 to ${GREATEST} or 32 hexadecimal digits, got ${String(seed)}`);
};
