/** Guards of the public functions: a RangeError names the parameter, the rule and what came. */

interface Range {
  /** Least allowed value; excluded unless `leastIncluded`. */
  readonly least?: number;
  readonly leastIncluded?: boolean;
  /** Greatest allowed value; excluded unless `greatestIncluded`. */
  readonly greatest?: number;
  readonly greatestIncluded?: boolean;
}

const ruleOf = ({ least, leastIncluded, greatest, greatestIncluded }: Range): string => {
  const parts: string[] = [];
  if (least !== undefined) parts.push(leastIncluded ? `at least ${least}` : `greater than ${least}`);
  if (greatest !== undefined) parts.push(greatestIncluded ? `at most ${greatest}` : `less than ${greatest}`);
  return parts.length === 0 ? "a finite number" : parts.join(" and ");
};

const isInside = (value: number, range: Range): boolean => {
  const { least, leastIncluded, greatest, greatestIncluded } = range;
  if (least !== undefined && !(leastIncluded ? value >= least : value > least)) return false;
  return greatest === undefined || (greatestIncluded ? value <= greatest : value < greatest);
};

/** Checks that a number is finite and inside a range; the range is open at both ends unless said. */
export const requireNumber = (name: string, value: unknown, range: Range = {}): void => {
  if (typeof value !== "number" || !Number.isFinite(value) || !isInside(value, range)) {
    throw new RangeError(`${name} must be ${ruleOf(range)}, got ${String(value)}`);
  }
};

const ABOVE_NONE: Range = { least: 0 };
const NONE_OR_MORE: Range = { least: 0, leastIncluded: true };

/** Checks that one number is finite and greater than 0. */
export const requireOnePositive = (name: string, value: unknown): void => requireNumber(name, value, ABOVE_NONE);

/** Checks that one number is finite and 0 or greater. */
export const requireOneNotNegative = (name: string, value: unknown): void => requireNumber(name, value, NONE_OR_MORE);

/** Checks that one number is a whole number, 0 included. */
export const requireOneCount = (name: string, value: unknown): void => {
  requireNumber(name, value, NONE_OR_MORE);
  if (!Number.isSafeInteger(value)) throw new RangeError(`${name} must be a whole number, got ${String(value)}`);
};

/** Checks that every named number is finite and greater than 0. */
export const requirePositive = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireNumber(name, values[name], ABOVE_NONE);
};

/** Checks that every named number is finite and 0 or greater. */
export const requireNotNegative = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireNumber(name, values[name], NONE_OR_MORE);
};

/** Checks that every named number is finite; any sign is allowed. */
export const requireFinite = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireNumber(name, values[name]);
};

/** Checks that every named number is a whole number, 0 included. */
export const requireCount = (values: Readonly<Record<string, unknown>>): void => {
  for (const name of Object.keys(values)) requireOneCount(name, values[name]);
};
