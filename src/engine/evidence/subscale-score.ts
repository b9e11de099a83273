import { requireCount, requireNumber, requireOneCount, requirePositive } from "../quantity/require.ts";

export interface AnswerScale {
  /** Points of the worst answer; the best has 0. */
  readonly worstPoints: number;
}

/**
 * Score of one subscale on the scale from 0 (worst) to 100 (best) from the answers given: 100 − 100 × mean ÷ worst, as long as half of the
 * items are answered (scoring instructions of the KOOS for adults, 2012; the manual of the version for children was not seen).
 *
 * @param answers - One entry for each item: whole points from 0 (best) to the worst, or `null` where there is no answer; at
 * least one entry.
 * @param scale - `worstPoints`: points of the worst answer; whole number, greater than 0.
 * @returns Score from 0 to 100, or `null` where fewer than half of the items are answered.
 * @throws {RangeError} If there is no item or an answer is outside its range.
 * @example subscaleScore([0, 1, null, 3], { worstPoints: 4 }) // => 66.7
 */
export const subscaleScore = (answers: readonly (number | null)[], { worstPoints }: AnswerScale): number | null => {
  requireCount({ worstPoints });
  requirePositive({ worstPoints });
  if (answers.length === 0) throw new RangeError("answers must hold at least one item, got 0");
  let sum = 0;
  let given = 0;
  for (const [index, points] of answers.entries()) {
    if (points === null) continue;
    requireOneCount(`answers[${index}]`, points);
    requireNumber(`answers[${index}]`, points, { greatest: worstPoints, greatestIncluded: true });
    sum += points;
    given += 1;
  }
  return given * 2 < answers.length ? null : 100 - (100 * sum) / (given * worstPoints);
};
