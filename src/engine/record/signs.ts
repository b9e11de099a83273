import { DASHES } from "./dashes.ts";
import type { CodeFault } from "./words.ts";

/**
 * The signs that a code is typed in, and the check of a typed code. 32 signs: digits and letters without I, L, O and U,
 * which are mistaken for 1, 0 and V. The check is a pure system in the manner of ISO/IEC 7064 (2003), with the signs as
 * digits of base 32 and the prime 1021 as modulus; it is not one of the standard's own systems. Because 1021 is prime and
 * divides no difference of two signs (at most 31), nor 32 − 1, nor 32² − 1, every single wrong sign and every swap of two
 * signs that stand side by side or one apart is refused. Of other errors about one in a thousand passes.
 */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const BASE = 32;
const MODULUS = 1021;
const CHECK_SIGNS = 2;
const MOST_SIGNS = 60;
const MOST_TYPED = 240;
/** The remainder that a whole code leaves: one for each purpose, so that no code is taken for one of the other kind. */
const REMAINDER = { sheet: 1, carry: 2, list: 3, completion: 4, card: 5, study: 6 } as const;
export type CodePurpose = keyof typeof REMAINDER;

/** Values of typed signs, or what is wrong with them. */
export type TypedSigns = { readonly values: readonly number[] } | { readonly fault: CodeFault };

/** Signs of the shortest whole code of each purpose, with its check: what has fewer lacks some, whatever its check says. */
const LEAST: Readonly<Record<CodePurpose, number>> = { sheet: 8, carry: 6, list: 15, completion: 12, card: 6, study: 15 };
const PURPOSES: readonly CodePurpose[] = ["sheet", "carry", "list", "completion", "card", "study"];
const SPACE = new RegExp(`[\\s${DASHES}-]`, "g");

const remainder = (values: readonly number[]): number => values.reduce((sum, value) => (sum * BASE + value) % MODULUS, 0);

/** The two check values that bring the remainder to that of the purpose. */
const checkOf = (values: readonly number[], purpose: CodePurpose): readonly number[] => {
  const open = remainder([...values, 0, 0]);
  const check = (REMAINDER[purpose] - open + MODULUS) % MODULUS;
  return [Math.floor(check / BASE), check % BASE];
};

const signOf = (value: number): string => SIGNS[value] ?? "";

/** Signs in groups joined by hyphens, with the check behind them. Throws a RangeError for more than 60 signs. */
export const withCheck = (values: readonly number[], { purpose, groupOf }: { readonly purpose: CodePurpose; readonly groupOf: number }): string => {
  if (values.length + CHECK_SIGNS > MOST_SIGNS) throw new RangeError(`code must have at most ${MOST_SIGNS} signs, got ${values.length + CHECK_SIGNS}`);
  const text = [...values, ...checkOf(values, purpose)].map(signOf).join("");
  return (text.match(new RegExp(`.{1,${groupOf}}`, "g")) ?? []).join("-");
};

/** What was typed, without its check. Spaces, hyphens and small letters do not matter; O is read as 0, I and L as 1. */
export const readSigns = (typed: string, purpose: CodePurpose): TypedSigns => {
  if (typed.length > MOST_TYPED) return { fault: "length" };
  const bare = typed.replace(SPACE, "").toUpperCase().replace(/O/g, "0").replace(/[IL]/g, "1");
  if (bare === "") return { fault: "empty" };
  const values = [...bare].map((sign) => SIGNS.indexOf(sign));
  if (values.includes(-1)) return { fault: "foreign-sign" };
  if (values.length > MOST_SIGNS) return { fault: "length" };
  const left = remainder(values);
  const kind = PURPOSES.find((one) => REMAINDER[one] === left && values.length >= LEAST[one]);
  if (kind === purpose) return { values: values.slice(0, -CHECK_SIGNS) };
  if (kind !== undefined) return { fault: "other-kind" };
  return { fault: values.length < LEAST[purpose] ? "short" : "check" };
};

/** Whole numbers, each below its own count, as signs: one number in mixed base, first field in front, padded to a fixed length. */
export const packed = (fields: readonly (readonly [value: number, count: number])[]): readonly number[] => {
  let whole = 0n;
  let size = 1n;
  for (const [value, count] of fields) {
    if (!Number.isSafeInteger(value) || value < 0 || value >= count) throw new RangeError(`value must be a whole number from 0 to below ${count}, got ${value}`);
    whole = whole * BigInt(count) + BigInt(value);
    size *= BigInt(count);
  }
  const values: number[] = [];
  for (let room = size - 1n; room > 0n; room /= 32n) {
    values.unshift(Number(whole % 32n));
    whole /= 32n;
  }
  return values;
};

/** The fields of signs that `packed` made; null where the length does not fit or the signs name no such fields. */
export const unpacked = (values: readonly number[], counts: readonly number[]): readonly number[] | null => {
  let room = counts.reduce((size, count) => size * BigInt(count), 1n);
  let whole = values.reduce((sum, value) => sum * 32n + BigInt(value), 0n);
  if (whole >= room) return null;
  let signs = 0;
  for (room -= 1n; room > 0n; room /= 32n) signs += 1;
  if (signs !== values.length) return null;
  const fields: number[] = [];
  for (const count of [...counts].reverse()) {
    fields.unshift(Number(whole % BigInt(count)));
    whole /= BigInt(count);
  }
  return fields;
};
