export const MINUTES_PER_HOUR = 60;
export const MINUTES_PER_DAY = 1440;

const COLON_AT = 2;
const LENGTH = 5;
const TEN = 10;
const ZERO_CODE = "0".charCodeAt(0);
const HOURS = 24;

/** Two digits of a text as a number; NaN where one of them is no digit. */
const twoDigits = (text: string, at: number): number => {
  const [tens, ones] = [text.charCodeAt(at) - ZERO_CODE, text.charCodeAt(at + 1) - ZERO_CODE];
  return tens >= 0 && tens < TEN && ones >= 0 && ones < TEN ? tens * TEN + ones : Number.NaN;
};

/** Minutes since midnight of a 24-hour clock time; a RangeError names the parameter where it is not one. */
export const minuteOfDay = (name: string, clock: unknown): number => {
  if (typeof clock === "string" && clock.length === LENGTH && clock[COLON_AT] === ":") {
    const [hour, minute] = [twoDigits(clock, 0), twoDigits(clock, COLON_AT + 1)];
    if (hour < HOURS && minute < MINUTES_PER_HOUR) return hour * MINUTES_PER_HOUR + minute;
  }
  throw new RangeError(`${name} must be a time from 00:00 to 23:59, got ${String(clock)}`);
};
