/** SHA-256, written out from FIPS PUB 180-4 (NIST 2015), because secure-context hashing is absent on plain http. */

import { utf8Of } from "./utf8.ts";

const fractionBits = (value: number): number => ((value - Math.floor(value)) * 2 ** 32) >>> 0;

const firstPrimes = (count: number): readonly number[] => {
  const primes: number[] = [];
  for (let candidate = 2; primes.length < count; candidate += 1) {
    if (primes.every((prime) => candidate % prime !== 0)) primes.push(candidate);
  }
  return primes;
};

const PRIMES = firstPrimes(64);
const ROUND_CONSTANTS = Uint32Array.from(PRIMES, (prime) => fractionBits(Math.cbrt(prime)));
const INITIAL = Uint32Array.from(PRIMES.slice(0, 8), (prime) => fractionBits(Math.sqrt(prime)));
const schedule = new Uint32Array(64);
const state = new Uint32Array(8);

/** A word with its bits moved to the right, those that fall out coming in at the left. */
export const turn = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

const at = (words: Uint32Array, index: number): number => words[index] as number;

/** The longest text that fills one block together with its end mark and its length. */
const MOST_SHORT = 55;

const loadBlock = (block: DataView, offset: number): void => {
  for (let i = 0; i < 16; i += 1) schedule[i] = block.getUint32(offset + 4 * i);
};

/** Loads a short text of ASCII signs as the one block that it is, without any bytes in between; false for every other text. */
const loadShort = (text: string): boolean => {
  if (text.length > MOST_SHORT) return false;
  schedule.fill(0, 0, 16);
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    if (code > 0x7f) return false;
    schedule[i >> 2] = at(schedule, i >> 2) | (code << (24 - 8 * (i & 3)));
  }
  const end = text.length >> 2;
  schedule[end] = at(schedule, end) | (0x80 << (24 - 8 * (text.length & 3)));
  schedule[15] = text.length * 8;
  return true;
};

const stretch = (): void => {
  for (let i = 16; i < 64; i += 1) {
    const near = at(schedule, i - 2);
    const far = at(schedule, i - 15);
    const small0 = turn(far, 7) ^ turn(far, 18) ^ (far >>> 3);
    const small1 = turn(near, 17) ^ turn(near, 19) ^ (near >>> 10);
    schedule[i] = at(schedule, i - 16) + small0 + at(schedule, i - 7) + small1;
  }
};

/** Takes the block that was loaded into the state. */
const compress = (): void => {
  stretch();
  let a = at(state, 0);
  let b = at(state, 1);
  let c = at(state, 2);
  let d = at(state, 3);
  let e = at(state, 4);
  let f = at(state, 5);
  let g = at(state, 6);
  let h = at(state, 7);
  for (let i = 0; i < 64; i += 1) {
    const big1 = turn(e, 6) ^ turn(e, 11) ^ turn(e, 25);
    const first = (h + big1 + ((e & f) ^ (~e & g)) + at(ROUND_CONSTANTS, i) + at(schedule, i)) | 0;
    const big0 = turn(a, 2) ^ turn(a, 13) ^ turn(a, 22);
    const second = (big0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + second) | 0;
  }
  state[0] = at(state, 0) + a;
  state[1] = at(state, 1) + b;
  state[2] = at(state, 2) + c;
  state[3] = at(state, 3) + d;
  state[4] = at(state, 4) + e;
  state[5] = at(state, 5) + f;
  state[6] = at(state, 6) + g;
  state[7] = at(state, 7) + h;
};

/** Bytes filled up to whole blocks of 64, with their length in bits at the end; SHA-1 has the same rule. */
export const padded = (bytes: ArrayLike<number>): DataView => {
  const blocks = new Uint8Array(((bytes.length + 8) >> 6) * 64 + 64);
  blocks.set(bytes);
  blocks[bytes.length] = 0x80;
  const view = new DataView(blocks.buffer);
  view.setUint32(blocks.length - 8, Math.floor(bytes.length / 2 ** 29));
  view.setUint32(blocks.length - 4, (bytes.length * 8) >>> 0);
  return view;
};

/** The same words without a copy: the next hash writes over them, so they are read at once. */
export const digest = (message: string | Uint8Array): Uint32Array => {
  state.set(INITIAL);
  if (typeof message === "string" && loadShort(message)) {
    compress();
    return state;
  }
  const view = padded(typeof message === "string" ? utf8Of(message) : message);
  for (let offset = 0; offset < view.byteLength; offset += 64) {
    loadBlock(view, offset);
    compress();
  }
  return state;
};

/** The eight 32-bit words of the hash of a text (UTF-8) or of bytes, to be kept. */
export const sha256Words = (message: string | Uint8Array): Uint32Array => digest(message).slice();

/** The hash as 64 hexadecimal digits. */
export const sha256Hex = (message: string | Uint8Array): string =>
  Array.from(sha256Words(message), (word) => word.toString(16).padStart(8, "0")).join("");
