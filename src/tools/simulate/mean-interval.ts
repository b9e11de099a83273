/** A mean of learners with its 95 % interval. */
export interface MeanInterval {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** Normal deviate of a two-sided 95 % interval. */
const DEVIATE = 1.96;

/**
 * Mean ± 1.96 × s / √n, s with n − 1: a mean of many independent learners is nearly normal, whatever one learner's
 * number looks like (central limit theorem). For a difference, hand in one difference for each learner.
 */
export const meanInterval = (values: readonly number[]): MeanInterval => {
  if (values.length < 2) throw new RangeError(`values must hold at least 2 numbers, got ${values.length}`);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  const half = DEVIATE * Math.sqrt(variance / values.length);
  return { mean, low: mean - half, high: mean + half };
};

/** True where the interval of a difference leaves room for none. */
export const holdsZero = ({ low, high }: MeanInterval): boolean => low <= 0 && high >= 0;
