import { requireShare } from "./share.ts";

export interface OneTest {
  readonly sensitivity: number;
  readonly specificity: number;
}

export interface JointRule {
  /** What counts as positive together: one of them is enough, or all must be. */
  readonly positiveIf: "any" | "all";
}

const product = (shares: readonly number[]): number => shares.reduce((whole, share) => whole * share, 1);

/**
 * Sensitivity and specificity of several tests read as one, if they err independently of each other in those with and in
 * those without the tear. Two examiners of one knee seldom do, so this is the best case.
 *
 * @param tests - Tests with `sensitivity` and `specificity`, each a share from 0 to 1 (included); at least one.
 * @param rule - `positiveIf`: "any" where one positive test is enough, "all" where all must be positive.
 * @returns Shares from 0 to 1.
 * @throws {RangeError} If there is no test or a share is outside its range.
 * @example jointAccuracy([{ sensitivity: 0.8, specificity: 0.9 }, { sensitivity: 0.7, specificity: 0.8 }], { positiveIf: "any" }) // => { sensitivity: 0.94, specificity: 0.72 }
 */
export const jointAccuracy = (tests: readonly OneTest[], { positiveIf }: JointRule): OneTest => {
  if (tests.length === 0) throw new RangeError("tests must hold at least one test, got 0");
  if (positiveIf !== "any" && positiveIf !== "all") throw new RangeError(`positiveIf must be any or all, got ${String(positiveIf)}`);
  for (const [index, { sensitivity, specificity }] of tests.entries()) {
    requireShare(`tests[${index}].sensitivity`, sensitivity);
    requireShare(`tests[${index}].specificity`, specificity);
  }
  const found = tests.map(({ sensitivity }) => sensitivity);
  const spared = tests.map(({ specificity }) => specificity);
  const oneOf = (shares: readonly number[]): number => 1 - product(shares.map((share) => 1 - share));
  return positiveIf === "any"
    ? { sensitivity: oneOf(found), specificity: product(spared) }
    : { sensitivity: product(found), specificity: oneOf(spared) };
};
