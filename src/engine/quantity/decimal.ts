/** An exact decimal number: `units` divided by ten to the power `places`. Records and grading use it, never doubles. */
export interface Decimal {
  readonly units: bigint;
  readonly places: number;
}

const POWERS: readonly bigint[] = Array.from({ length: 40 }, (_, places) => 10n ** BigInt(places));
const power = (places: number): bigint => POWERS[places] ?? 10n ** BigInt(places);

const align = (first: Decimal, second: Decimal): readonly [bigint, bigint, number] => {
  const places = Math.max(first.places, second.places);
  return [first.units * power(places - first.places), second.units * power(places - second.places), places];
};

/** Texts read lately: the same few steps and spans are read again and again while grading. */
const KNOWN = new Map<string, Decimal>();
const MOST_KNOWN = 4096;

const readDecimal = (text: string): Decimal => {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(text);
  if (!match) throw new RangeError(`text must be a plain decimal number, got ${text}`);
  const fraction = match[3] ?? "";
  const units = BigInt(`${match[2] ?? ""}${fraction}`);
  return { units: match[1] === "-" ? -units : units, places: fraction.length };
};

/** Reads plain decimal text ("-12.50") that our own code wrote; learners' text goes through the parser. */
export const decimal = (text: string): Decimal => {
  const before = KNOWN.get(text);
  if (before) return before;
  const value = readDecimal(text);
  if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
  KNOWN.set(text, value);
  return value;
};

/** The decimal nearest to a double at a number of places; doubles come only from our own formulas. */
export const decimalOf = (value: number, places: number): Decimal => decimal(value.toFixed(places));

/** -1, 0 or 1 as the first is less than, equal to or greater than the second. */
export const compare = (first: Decimal, second: Decimal): -1 | 0 | 1 => {
  const [a, b] = align(first, second);
  if (a === b) return 0;
  return a < b ? -1 : 1;
};

export const multiply = (first: Decimal, second: Decimal): Decimal => ({
  units: first.units * second.units,
  places: first.places + second.places,
});

/** First divided by second, rounded half away from zero to a number of places. */
export const divide = (first: Decimal, second: Decimal, places: number): Decimal => {
  if (second.units === 0n) throw new RangeError("second must not be 0, got 0");
  const numerator = first.units * power(second.places + places + 1);
  const tenfold = numerator / (second.units * power(first.places));
  const half = tenfold < 0n ? -5n : 5n;
  return { units: (tenfold + half) / 10n, places };
};

/** Plain text with all its places: 5.20 stays "5.20". */
export const toText = ({ units, places }: Decimal): string => {
  const sign = units < 0n ? "-" : "";
  const digits = (units < 0n ? -units : units).toString().padStart(places + 1, "0");
  if (places === 0) return `${sign}${digits}`;
  return `${sign}${digits.slice(0, -places)}.${digits.slice(-places)}`;
};

/** The same number without trailing zeros after the point. */
export const trimmed = (value: Decimal): Decimal => {
  let { units, places } = value;
  while (places > 0 && units % 10n === 0n) {
    units /= 10n;
    places -= 1;
  }
  return { units, places };
};

/** As a double, for formulas and pictures. */
export const toNumber = (value: Decimal): number => Number(toText(value));
