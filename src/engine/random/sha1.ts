import { padded, turn } from "./sha256.ts";

/** SHA-1, written out from FIPS PUB 180-4 (NIST 2015). It protects nothing any more; names of version 5 are made by it. */

const INITIAL = Int32Array.of(0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0);
const CONSTANTS = Int32Array.of(0x5a827999, 0x6ed9eba1, 0x8f1bbcdc, 0xca62c1d6);
const ROUNDS = 80;
const TURN_1 = 31;
const TURN_5 = 27;
const TURN_30 = 2;
const schedule = new Int32Array(ROUNDS);

const at = (words: Int32Array, index: number): number => words[index] as number;

const mixed = (part: number, b: number, { c, d }: { readonly c: number; readonly d: number }): number => {
  if (part === 0) return (b & c) ^ (~b & d);
  return part === 2 ? (b & c) ^ (b & d) ^ (c & d) : b ^ c ^ d;
};

const fillSchedule = (block: DataView, offset: number): void => {
  for (let i = 0; i < 16; i += 1) schedule[i] = block.getInt32(offset + 4 * i);
  for (let i = 16; i < ROUNDS; i += 1) schedule[i] = turn(at(schedule, i - 3) ^ at(schedule, i - 8) ^ at(schedule, i - 14) ^ at(schedule, i - 16), TURN_1);
};

const compress = (state: Int32Array): void => {
  let [a, b, c, d, e] = [at(state, 0), at(state, 1), at(state, 2), at(state, 3), at(state, 4)];
  for (let i = 0; i < ROUNDS; i += 1) {
    const part = (i / 20) | 0;
    const first = (turn(a, TURN_5) + mixed(part, b, { c, d }) + e + at(schedule, i) + at(CONSTANTS, part)) | 0;
    e = d;
    d = c;
    c = turn(b, TURN_30);
    b = a;
    a = first;
  }
  for (const [index, word] of [a, b, c, d, e].entries()) state[index] = at(state, index) + word;
};

/** The hash of bytes as 40 hexadecimal digits. */
export const sha1Hex = (bytes: Uint8Array): string => {
  const view = padded(bytes);
  const state = INITIAL.slice();
  for (let offset = 0; offset < view.byteLength; offset += 64) {
    fillSchedule(view, offset);
    compress(state);
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
};
