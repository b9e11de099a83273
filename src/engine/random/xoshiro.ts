/** xoshiro128** and splitmix32, public-domain generators of Blackman and Vigna, in 32-bit whole numbers. */

export type NextUint32 = () => number;

const rotateLeft = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** A generator from four state words, not all zero. */
export const xoshiro128 = (state: ArrayLike<number>): NextUint32 => {
  let a = (state[0] as number) | 0;
  let b = (state[1] as number) | 0;
  let c = (state[2] as number) | 0;
  let d = (state[3] as number) | 0;
  if ((a | b | c | d) === 0) throw new RangeError("state must not be all zero, got 0, 0, 0, 0");
  return () => {
    const result = Math.imul(rotateLeft(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotateLeft(d, 11);
    return result;
  };
};

/** splitmix32: one seed word into a stream of state words. */
export const splitmix32 = (seed: number): NextUint32 => {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let word = state ^ (state >>> 16);
    word = Math.imul(word, 0x21f0aaad);
    word ^= word >>> 15;
    word = Math.imul(word, 0x735a2d97);
    return (word ^ (word >>> 15)) >>> 0;
  };
};
