/**
 * The learner's days counted so that they never run backwards. A clock that is set back gives a gap of 0 and counts on
 * from there, so a clock that was once years ahead does not stop the record until those years are over. A step of one
 * day back is a journey over a date line or a night at the border of two offsets: the later day stands.
 */
export interface DayCount {
  /** Calendar day that the count last stood on; null before the first. */
  readonly mark: number | null;
  /** Days by which the count is ahead of the calendar. */
  readonly aheadDays: number;
}

export const NO_DAYS: DayCount = { mark: null, aheadDays: 0 };

const MOST_DAYS_BACK = 1;

/** True where a calendar day is so far behind that the clock was set back. */
export const isSetBack = ({ mark }: DayCount, calendarDay: number): boolean => mark !== null && calendarDay < mark - MOST_DAYS_BACK;

/** The count after a calendar day; a moment that no calendar has leaves it as it was. */
export const countOn = (before: DayCount, calendarDay: number | null): DayCount => {
  if (calendarDay === null) return before;
  if (before.mark === null) return { mark: calendarDay, aheadDays: Math.max(0, -calendarDay) };
  if (isSetBack(before, calendarDay)) return { mark: calendarDay, aheadDays: before.aheadDays + before.mark - calendarDay };
  return { ...before, mark: Math.max(before.mark, calendarDay) };
};

/** The day of the count, from 0. */
export const countedDay = ({ mark, aheadDays }: DayCount): number => (mark ?? 0) + aheadDays;
