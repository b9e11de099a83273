import { compare, type Decimal, decimal, divide, multiply, toNumber, toText, trimmed } from "../quantity/decimal.ts";
import { parseQuantity } from "../quantity/parse.ts";
import { exactOf, isInSpan, type Rounding, roundTo, type Span } from "../quantity/round.ts";
import { siblings, UNITS } from "../quantity/units.ts";
import { CONVERSION_PLACES } from "../quantity/tolerance.ts";
import { slipOf } from "./diagnose.ts";
import type { SumRules } from "./family.ts";
import { type AskSpec, type Draw, isSays, type Solution } from "./family-head.ts";
import { type Marked, OTHER_KIND } from "./kind-rules.ts";
import type { Response, SumResponse } from "./response.ts";
import { solutionOf, spansOf } from "./solve.ts";
import { type AskVerdict, firstOf, type VerdictCode } from "./verdict.ts";

const ROUNDINGS: readonly Rounding[] = ["nearest", "down", "up"];
const MOST_POWER = 3;
const COARSER = 10;
const ZERO: Decimal = { units: 0n, places: 0 };

/** Text of one ask out of a response, or null where that part was left out. */
const textFor = (response: SumResponse, ask: AskSpec, only: boolean): string | null => {
  if ("text" in response) return only ? response.text : null;
  return "texts" in response ? (response.texts[ask.id] ?? null) : null;
};

const readAsk = (response: SumResponse, ask: AskSpec, only: boolean): AskVerdict | Decimal => {
  const text = textFor(response, ask, only);
  if (text === null) return { ask: ask.id, verdict: "not-recognised", reason: "part-missing" };
  const reading = parseQuantity(text, ask.unit);
  if ("value" in reading) return reading.value;
  const { reason, found } = reading;
  return { ask: ask.id, verdict: "not-recognised", reason, ...(found === undefined ? {} : { found }) };
};

/** Beyond the accepted span against the safe side: above it where less is safe, below it where more is safe. */
const isUnsafe = (value: Decimal, ask: AskSpec, span: Span): boolean => {
  if (ask.safeSide === "down") return compare(value, decimal(span.to)) > 0;
  return ask.safeSide === "up" && compare(value, decimal(span.from)) < 0;
};

const isPowerOfTen = (value: Decimal, span: Span): boolean => {
  // Around 0 every small number would be a power of ten of the answer.
  if (isInSpan(ZERO, span)) return false;
  for (let power = 1; power <= MOST_POWER; power += 1) {
    const smaller: Decimal = { units: value.units, places: value.places + power };
    const larger: Decimal = { units: value.units * 10n ** BigInt(power), places: value.places };
    if (isInSpan(smaller, span) || isInSpan(larger, span)) return true;
  }
  return false;
};

/** True where the value, read in another unit of its kind, is the answer. */
const isOtherUnit = (value: Decimal, ask: AskSpec, span: Span): boolean =>
  siblings(ask.unit).some((unit) => {
    const inBase = multiply(value, decimal(UNITS[unit].size));
    return isInSpan(divide(inBase, decimal(UNITS[ask.unit].size), CONVERSION_PLACES), span);
  });

/** True where the value is the exact answer rounded in another direction or one place too coarsely. Nobody rounds a count to tens, or a value away to nothing. */
const isOtherRounding = (value: Decimal, exact: Decimal, { unit, roundTo: step }: AskSpec): boolean => {
  const coarse = step < 1 && step * COARSER > 1 ? 1 : step * COARSER;
  const isCounted = unit === "pieces" && step >= 1;
  const coarser = isCounted || value.units === 0n ? [] : [decimal(String(Number(coarse.toPrecision(1))))];
  const steps = [decimal(String(step)), ...coarser];
  return steps.some((one) => ROUNDINGS.some((rounding) => compare(value, roundTo(exact, one, rounding)) === 0));
};

const codeFor = (value: Decimal, ask: AskSpec, { span, exact, unsafe }: { span: Span; exact: number; unsafe: boolean }): VerdictCode => {
  if (isInSpan(value, span)) return "right";
  if (unsafe && isUnsafe(value, ask, span)) return "unsafe-side";
  if (value.units !== 0n && (isPowerOfTen(value, span) || isOtherUnit(value, ask, span))) return "unit-or-power";
  return isOtherRounding(value, exactOf(exact), ask) ? "rounding" : "safe-side";
};

const saysVerdict = (response: SumResponse, solution: Solution): VerdictCode =>
  "says" in response && isSays(solution) && response.says === solution.says ? "right" : "safe-side";

interface Read {
  readonly parts: readonly AskVerdict[];
  readonly values: Readonly<Record<string, Decimal>>;
}

const markParts = (family: SumRules, response: SumResponse, solution: Solution): Read => {
  const spans = spansOf(family, solution);
  const values: Record<string, Decimal> = {};
  const parts = family.asks.map((ask): AskVerdict => {
    const value = readAsk(response, ask, family.asks.length === 1);
    if ("ask" in value) return value;
    values[ask.id] = value;
    const shown = { ask: ask.id, value: toText(trimmed(value)) };
    const span = spans[ask.id];
    if (isSays(solution) || span === undefined) return { ...shown, verdict: family.unsafe ? "unsafe-side" : "safe-side" };
    return { ...shown, verdict: codeFor(value, ask, { span, exact: solution[ask.id] as number, unsafe: family.unsafe }) };
  });
  return { parts, values };
};

const scoreOf = (parts: readonly AskVerdict[]): number =>
  parts.length === 0 ? 0 : parts.filter((part) => part.verdict === "right").length / parts.length;

/** An overall verdict is right only where every part is; otherwise the first of the others in the stated order. */
const overall = (parts: readonly AskVerdict[]): VerdictCode => {
  const codes = parts.map((part) => part.verdict);
  const wrong = codes.filter((code) => code !== "right");
  return wrong.length === 0 ? "right" : firstOf(wrong);
};

/** True where the family itself says that these values could hurt somebody. */
const isHarmful = ({ family, draw, values }: { family: SumRules; draw: Draw; values: Read["values"] }, typed: VerdictCode): boolean => {
  if (!family.unsafe || !family.isUnsafe || typed === "right" || typed === "not-recognised") return false;
  const numbers = Object.fromEntries(Object.entries(values).map(([id, value]) => [id, toNumber(value)]));
  return Object.keys(numbers).length > 0 && family.isUnsafe(draw, numbers);
};

const without = (reason: Marked["reason"]): Pick<Marked, "reason"> | object => (reason ? { reason } : {});

/** Marks one response to a sum: every ask by itself, the whole by the first verdict in the stated order. */
export const markSum = (family: SumRules, draw: Draw, response: Response): Marked => {
  if (response.kind !== "sum") return OTHER_KIND;
  const solution = solutionOf(family, draw);
  const base = { accepted: spansOf(family, solution), ...(isSays(solution) ? { acceptedSays: solution.says } : {}) };
  const { parts, values } = "says" in response ? { parts: [], values: {} } : markParts(family, response, solution);
  const typed = "says" in response ? saysVerdict(response, solution) : overall(parts);
  const verdict = isHarmful({ family, draw, values }, typed) ? "unsafe-side" : typed;
  const score = "says" in response && verdict === "right" ? 1 : scoreOf(parts);
  if (verdict === "right") return { ...base, verdict, score, parts };
  const reason = parts.find((part) => part.verdict === "not-recognised")?.reason;
  if (verdict === "not-recognised") return { ...base, verdict, score: 0, parts, ...without(reason) };
  const slip = slipOf({ family, draw, response, values });
  return { ...base, verdict, score, parts, ...(slip === undefined ? {} : { slip }) };
};
