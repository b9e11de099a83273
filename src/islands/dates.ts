const MS_PER_DAY = 86_400_000;

const shown = (day: number, options: Intl.DateTimeFormatOptions): string => new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", ...options }).format(new Date(day * MS_PER_DAY));

/** A calendar day, counted from 1970, as a learner reads it: "27 Nov"; with the year where it is not this one. */
export const dayText = (day: number, todayDay: number): string => {
  const isFar = Math.abs(day - todayDay) > 300;
  return shown(day, isFar ? { day: "numeric", month: "short", year: "numeric" } : { day: "numeric", month: "short" });
};

/** The day and time of an event by the clock that it was made under: "24 Nov, 23:10". */
export const momentText = (at: string, offsetMin: string): string => {
  const local = new Date(Date.parse(at) + Number(offsetMin) * 60_000);
  return new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" }).format(local);
};

/** A calendar day with its year, as it stands on a paper that is kept: "27 November 2026". */
export const fullDayText = (day: number): string => shown(day, { day: "numeric", month: "long", year: "numeric" });
