export const MINUTES_PER_HOUR = 60;
export const MINUTES_PER_DAY = 1440;

const CLOCK = /^([01]\d|2[0-3]):([0-5]\d)$/;

/** Minutes since midnight of a 24-hour clock time; a RangeError names the parameter where it is not one. */
export const minuteOfDay = (name: string, clock: unknown): number => {
  const match = typeof clock === "string" ? CLOCK.exec(clock) : null;
  if (!match) throw new RangeError(`${name} must be a time from 00:00 to 23:59, got ${String(clock)}`);
  return Number(match[1]) * MINUTES_PER_HOUR + Number(match[2]);
};
