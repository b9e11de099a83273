const counted = (step: number): number => {
  const text = String(step);
  return text.includes(".") ? text.length - text.indexOf(".") - 1 : 0;
};

/** Steps asked for lately: a family has a handful, and every draw asks for them again. */
const KNOWN = new Map<number, number>();
const MOST_KNOWN = 1024;

/** Number of decimals that a grid step shows: 0.5 has one. */
export const placesOf = (step: number): number => {
  if (Number.isInteger(step)) return 0;
  const before = KNOWN.get(step);
  if (before !== undefined) return before;
  if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
  const places = counted(step);
  KNOWN.set(step, places);
  return places;
};
