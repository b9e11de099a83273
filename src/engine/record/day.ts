/** Moments and calendar days by whole-number arithmetic, because the engine has no clock and no calendar of its own. */

const MOMENT = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)(?:\.(\d{1,3}))?Z$/;
const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const MS_PER_MINUTE = 60_000;
const MS_PER_DAY = 86_400_000;

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const monthDays = (year: number, month: number): number => (MONTH_DAYS[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0);

/** Days from 1 January of the year 0 to 1 January of a year, by the Gregorian rule of leap years. */
const daysBefore = (year: number): number => 365 * year + Math.floor((year + 3) / 4) - Math.floor((year + 99) / 100) + Math.floor((year + 399) / 400);
const FIRST_DAY = daysBefore(1970);

const dayNumber = (year: number, month: number, day: number): number | null => {
  if (day < 1 || day > monthDays(year, month)) return null;
  let days = daysBefore(year) - FIRST_DAY + day - 1;
  for (let earlier = 1; earlier < month; earlier += 1) days += monthDays(year, earlier);
  return days;
};

/** Milliseconds from the start of 1970 (UTC) to a moment of an event; null where no calendar has that moment. */
export const momentMs = (at: string): number | null => {
  const found = MOMENT.exec(at);
  if (found === null) return null;
  const [, year, month, day, hour, minute, second, part = "0"] = found;
  const days = dayNumber(Number(year), Number(month), Number(day));
  if (days === null || Number(hour) > 23 || Number(minute) > 59 || Number(second) > 60) return null;
  return days * MS_PER_DAY + ((Number(hour) * 60 + Number(minute)) * 60 + Number(second)) * 1000 + Number(part.padEnd(3, "0"));
};

/** The learner's calendar day at a moment, as days from 1 January 1970, by the offset that the event holds; null where there is no such moment. */
export const calendarDay = (at: string, offsetMin: string): number | null => {
  const ms = momentMs(at);
  return ms === null ? null : Math.floor((ms + Number(offsetMin) * MS_PER_MINUTE) / MS_PER_DAY);
};
