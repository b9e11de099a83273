const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Days of a month (1 to 12) in the Gregorian calendar; 0 for a month that does not exist. */
export const daysInMonth = (year: number, month: number): number =>
  month === 2 && isLeap(year) ? 29 : (DAYS[month - 1] ?? 0);
