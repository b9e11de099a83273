import { expiry } from "./expiry.ts";

export interface DatedPack {
  readonly id: string;
  readonly expires: string;
}

export interface UsablePacks {
  /** Packs that may be used, first to use first; the order given where dates are the same. */
  readonly usable: readonly string[];
  readonly expired: readonly string[];
  /** Packs whose date cannot be read for sure: put aside and asked about, never used. */
  readonly unread: readonly string[];
}

/** Days as numbers that sort by time. */
const dayNumber = (day: string): number => Number(day.replaceAll("-", ""));

const DAY = /^(\d{4})-\d{2}-\d{2}$/;

/**
 * Which packs may still be used on a day, and in which order: the one that expires first is used first. A pack may be
 * used on its last day. What cannot be read for sure is never passed.
 *
 * @param packs - Packs with a name each and their printed dates, in any form that `expiry` reads.
 * @param list - `day`: day of the list as YYYY-MM-DD.
 * @returns Names of the packs that may be used in order, of the expired, and of those whose date cannot be read for sure.
 * @throws {RangeError} If the day is not a day, or a printed date is no text.
 * @example usablePacks([{ id: "a", expires: "03/2027" }, { id: "b", expires: "2027-03-30" }], { day: "2027-03-30" }) // => { usable: ["b", "a"], expired: [], unread: [] }
 */
export const usablePacks = (packs: readonly DatedPack[], { day }: { readonly day: string }): UsablePacks => {
  const thisYear = typeof day === "string" ? Number(DAY.exec(day)?.[1] ?? Number.NaN) : Number.NaN;
  if (Number.isNaN(thisYear) || !("lastDay" in expiry(day, { thisYear }))) {
    throw new RangeError(`day must be a day written as YYYY-MM-DD, got ${String(day)}`);
  }
  for (const [index, { expires }] of packs.entries()) {
    if (typeof expires !== "string") throw new RangeError(`packs[${index}].expires must be a printed date, got ${String(expires)}`);
  }
  const read = packs.map(({ id, expires }) => ({ id, date: expiry(expires, { thisYear }) }));
  const dated = read.flatMap(({ id, date }) => ("lastDay" in date ? [{ id, lastDay: date.lastDay }] : []));
  const usable = dated.filter(({ lastDay }) => lastDay >= day).sort((one, other) => dayNumber(one.lastDay) - dayNumber(other.lastDay));
  return {
    usable: usable.map(({ id }) => id),
    expired: dated.filter(({ lastDay }) => lastDay < day).map(({ id }) => id),
    unread: read.filter(({ date }) => "refused" in date).map(({ id }) => id),
  };
};
