/**
 * Formulas of the view through the scope, each written once: the engine reckons with them, and the picture's shader is
 * printed from them. A formula is a tree of steps over the place of a point, the numbers of a setting, and constants.
 */
export type Step =
  | "number" | "setting" | "x" | "y" | "z"
  | "add" | "sub" | "mul" | "div" | "min" | "max" | "pow" | "atan"
  | "abs" | "sqrt" | "sin" | "cos" | "exp"
  | "pick";

export interface Formula {
  readonly step: Step;
  readonly of: readonly Formula[];
  /** The constant, or the index of the setting. */
  readonly value: number;
}

/** A formula, or a constant in its place. */
export type Term = Formula | number;

const leaf = (step: Step, value: number): Formula => ({ step, of: [], value });
const asFormula = (term: Term): Formula => (typeof term === "number" ? leaf("number", term) : term);
const made = (step: Step, ...of: readonly Term[]): Formula => ({ step, of: of.map(asFormula), value: 0 });

/** The place of the point, in mm of the reference knee: lateral, front, up. */
export const X: Formula = leaf("x", 0);
export const Y: Formula = leaf("y", 0);
export const Z: Formula = leaf("z", 0);
/** A number of the setting, by its index. */
export const setting = (index: number): Formula => leaf("setting", index);

const folded = (step: Step, first: Term, rest: readonly Term[]): Formula => rest.reduce<Formula>((sum, term) => made(step, sum, term), asFormula(first));
export const add = (first: Term, ...rest: readonly Term[]): Formula => folded("add", first, rest);
export const mul = (first: Term, ...rest: readonly Term[]): Formula => folded("mul", first, rest);
export const min = (first: Term, ...rest: readonly Term[]): Formula => folded("min", first, rest);
export const max = (first: Term, ...rest: readonly Term[]): Formula => folded("max", first, rest);
export const sub = (first: Term, second: Term): Formula => made("sub", first, second);
export const div = (first: Term, second: Term): Formula => made("div", first, second);
export const pow = (first: Term, second: Term): Formula => made("pow", first, second);
/** Angle of (x, y) in radians, from −π to π; its first argument is y. */
export const atan = (y: Term, x: Term): Formula => made("atan", y, x);
export const abs = (term: Term): Formula => made("abs", term);
export const sqrt = (term: Term): Formula => made("sqrt", term);
export const sin = (term: Term): Formula => made("sin", term);
export const cos = (term: Term): Formula => made("cos", term);
export const exp = (term: Term): Formula => made("exp", term);

interface Choice {
  readonly when: Term;
  readonly isBelow: Term;
  readonly yes: Term;
  readonly no: Term;
}

/** One of two formulas, by whether a third lies below a fourth. */
export const pick = ({ when, isBelow, yes, no }: Choice): Formula => made("pick", when, isBelow, yes, no);

export const neg = (term: Term): Formula => sub(0, term);
export const square = (term: Term): Formula => mul(term, term);
export const clamp01 = (term: Term): Formula => min(max(term, 0), 1);
export const length2 = (x: Term, y: Term): Formula => sqrt(add(square(x), square(y)));
/** Part of the way from the first to the second. */
export const mix = (first: Term, second: Term, share: Term): Formula => add(first, mul(sub(second, first), share));

/** 0 up to the first edge, 1 from the second on, and smooth between them; the edges may stand in either order. */
export const smooth = (from: Term, to: Term, term: Term): Formula => {
  const share = clamp01(div(sub(term, from), sub(to, from)));
  return mul(share, share, sub(3, mul(2, share)));
};

/** The lesser of two, rounded where they meet over a width in mm. */
export const smoothMin = (first: Term, second: Term, widthMm: Term): Formula => {
  const near = div(max(sub(widthMm, abs(sub(first, second))), 0), widthMm);
  return sub(min(first, second), mul(near, near, widthMm, 0.25));
};

/** The greater of two, rounded where they meet over a width in mm. */
export const smoothMax = (first: Term, second: Term, widthMm: Term): Formula => neg(smoothMin(neg(first), neg(second), widthMm));
