/** Beyond this the continued fraction is used: the sum 1/2 + … would lose the digits of a small tail. */
const SERIES_UP_TO = 3;
/** Enough steps for full precision from `SERIES_UP_TO` outwards. */
const FRACTION_STEPS = 120;

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

const middle = (z: number): number => {
  let term = z;
  let sum = z;
  for (let odd = 3, before = 0; sum !== before; odd += 2) {
    before = sum;
    term *= (z * z) / odd;
    sum += term;
  }
  return 0.5 + density(z) * sum;
};

const upperTail = (z: number): number => {
  let fraction = z;
  for (let step = FRACTION_STEPS; step >= 1; step -= 1) fraction = z + step / fraction;
  return density(z) / fraction;
};

/**
 * Share of a standard normal population below z, to about 15 digits. Near the middle the series 1/2 + φ(z)(z + z³/3 +
 * z⁵/(3·5) + …) (Marsaglia 2004, Evaluating the normal distribution, J Stat Softw 11(4), 10.18637/jss.v011.i04);
 * in the tails Laplace's continued fraction (Abramowitz and Stegun 1964, 26.2.14).
 */
export const normalShare = (z: number): number => {
  if (z < -SERIES_UP_TO) return upperTail(-z);
  return z > SERIES_UP_TO ? 1 - upperTail(z) : middle(z);
};
