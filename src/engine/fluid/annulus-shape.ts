/** From here on the closed form loses no digits; below it the two terms nearly cancel. */
const LEAST_FOR_CLOSED_FORM = 2;

/**
 * Flow through a concentric annulus as a share of the same tube left open: (1 − k⁴) − (1 − k²)² ÷ ln(1/k), with
 * k = inner ÷ outer diameter (Bird, Stewart, Lightfoot, Transport Phenomena, section 2.4). For narrow gaps, with
 * x = 2 ln(1/k), the same is 2 exp(−x) Σ j/(j+1) · x^(2j+1)/(2j+1)!, j from 1: all terms positive, nothing cancels.
 */
export const annulusShape = (innerMm: number, gapMm: number): number => {
  const logRatio = Math.log1p((2 * gapMm) / innerMm);
  const x = 2 * logRatio;
  if (x > LEAST_FOR_CLOSED_FORM) return -Math.expm1(-2 * x) - Math.expm1(-x) ** 2 / logRatio;
  let power = x;
  let sum = 0;
  let before = -1;
  for (let j = 1; sum !== before; j += 1) {
    power *= (x * x) / (2 * j * (2 * j + 1));
    before = sum;
    sum += (power * j) / (j + 1);
  }
  return 2 * Math.exp(-x) * sum;
};
