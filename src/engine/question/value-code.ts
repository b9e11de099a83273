import { decimal, divide, multiply } from "../quantity/decimal.ts";
import { type GridSpan, gridOf, type Rounding, roundGrid } from "../quantity/round.ts";
import { CONVERSION_PLACES, ROOT_TOLERANCE } from "../quantity/tolerance.ts";
import { compareTyped, isNothing, isTypedIn, type Typed, typedValue } from "../quantity/typed.ts";
import { roughRatio, siblings, type UnitId, UNITS } from "../quantity/units.ts";
import type { AskSpec } from "./family-head.ts";
import type { VerdictCode } from "./verdict.ts";

const ROUNDINGS: readonly Rounding[] = ["nearest", "down", "up"];
const MOST_POWER = 3;
const COARSER = 10;

const isCounted = ({ unit, roundTo: step }: AskSpec): boolean => unit === "pieces" && step >= 1;

/** Beyond the accepted span against the safe side: above it where less is safe, below it where more is safe. */
const isUnsafe = (value: Typed, { safeSide }: AskSpec, span: GridSpan): boolean => {
  if (safeSide === "down") return compareTyped(value, span.to) > 0;
  return safeSide === "up" && compareTyped(value, span.from) < 0;
};

const isZeroIn = ({ from, to }: GridSpan): boolean => from <= 0 && to >= 0;

const isPowerOfTen = (value: Typed, span: GridSpan): boolean => {
  for (let power = 1; power <= MOST_POWER; power += 1) {
    if (value.grid === null) {
      const { units, places } = value.exact();
      if (isTypedIn(typedValue({ units, places: places + power }), span) || isTypedIn(typedValue({ units: units * 10n ** BigInt(power), places }), span)) return true;
      continue;
    }
    const times = 10 ** power;
    const isSmaller = value.grid >= span.from * times && value.grid <= span.to * times;
    if (isSmaller || (value.grid * times >= span.from && value.grid * times <= span.to)) return true;
  }
  return false;
};

/** False where the value in another unit lies so far from the span that no exact division could bring it back. */
const mayBe = (grid: number, { from, to }: GridSpan): boolean => {
  const slack = 1 + Math.abs(grid) * ROOT_TOLERANCE;
  return grid >= from - slack && grid <= to + slack;
};

const isInUnit = (value: Typed, { ask, unit, span }: { ask: AskSpec; unit: UnitId; span: GridSpan }): boolean => {
  if (value.grid !== null && !mayBe(value.grid * roughRatio(unit, ask.unit), span)) return false;
  const inBase = multiply(value.exact(), decimal(UNITS[unit].size));
  return isTypedIn(typedValue(divide(inBase, decimal(UNITS[ask.unit].size), CONVERSION_PLACES)), span);
};

/** True where the value, read in another unit of its kind, is the answer. */
const isOtherUnit = (value: Typed, ask: AskSpec, span: GridSpan): boolean =>
  siblings(ask.unit).some((unit) => isInUnit(value, { ask, unit, span }));

/** Steps that an answer may have been rounded to by mistake. Nobody rounds a count to tens, or a value away to nothing. */
const otherSteps = (ask: AskSpec, isZero: boolean): readonly number[] => {
  const { roundTo: step } = ask;
  if (isZero || isCounted(ask)) return [step];
  const coarse = step < 1 && step * COARSER > 1 ? 1 : step * COARSER;
  return [step, Number(coarse.toPrecision(1))];
};

/** True where the value is the exact answer rounded in another direction or one place too coarsely. */
const isOtherRounding = (value: Typed, exact: number, ask: AskSpec): boolean =>
  otherSteps(ask, isNothing(value)).some((step) => {
    const unit = gridOf(step);
    return ROUNDINGS.some((rounding) => compareTyped(value, roundGrid(exact, unit, rounding)) === 0);
  });

/** True where the value is the answer but for its unit or the place of its point. A count is ten times itself only to the piece: 15 is no power of ten of 2. */
const isUnitOrPower = (value: Typed, ask: AskSpec, { span, exact }: { span: GridSpan; exact: number }): boolean => {
  // Around 0 every small number would be a power of ten of the answer, and of any other unit.
  if (isNothing(value) || isZeroIn(span)) return false;
  const whole = isCounted(ask) ? roundGrid(gridOf(exact), gridOf(ask.roundTo), ask.rounding) : null;
  return isPowerOfTen(value, whole === null ? span : { from: whole, to: whole }) || isOtherUnit(value, ask, span);
};

/** What one typed value is: right, against the safe side, off by a unit or a power of ten, rounded otherwise, or merely off. */
export const codeOf = (value: Typed, ask: AskSpec, { span, exact, unsafe }: { span: GridSpan; exact: number; unsafe: boolean }): VerdictCode => {
  if (isTypedIn(value, span)) return "right";
  if (unsafe && isUnsafe(value, ask, span)) return "unsafe-side";
  if (isUnitOrPower(value, ask, { span, exact })) return "unit-or-power";
  return isOtherRounding(value, gridOf(exact), ask) ? "rounding" : "safe-side";
};
