import { padded, turn } from "./sha256.ts";

/** SHA-1, written out from FIPS PUB 180-4 (NIST 2015). It protects nothing any more; names of version 5 are made by it. */

const INITIAL = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0] as const;
const CONSTANTS = [0x5a827999, 0x6ed9eba1, 0x8f1bbcdc, 0xca62c1d6] as const;
const TURN_1 = 31;
const TURN_5 = 27;
const TURN_30 = 2;

type Five = [number, number, number, number, number];

const mixed = (round: number, [, b, c, d]: Five): number => {
  if (round < 20) return (b & c) ^ (~b & d);
  if (round >= 40 && round < 60) return (b & c) ^ (b & d) ^ (c & d);
  return b ^ c ^ d;
};

const scheduleOf = (block: DataView, offset: number): readonly number[] => {
  const words = Array.from({ length: 16 }, (_, index) => block.getUint32(offset + 4 * index));
  const at = (index: number): number => words[index] ?? 0;
  for (let i = 16; i < 80; i += 1) words.push(turn(at(i - 3) ^ at(i - 8) ^ at(i - 14) ^ at(i - 16), TURN_1));
  return words;
};

const compressed = (state: Five, words: readonly number[]): Five => {
  let five: Five = [...state];
  for (const [round, word] of words.entries()) {
    const [a, b, c, d, e] = five;
    const first = (turn(a, TURN_5) + mixed(round, five) + e + word + (CONSTANTS[Math.floor(round / 20)] ?? 0)) | 0;
    five = [first, a, turn(b, TURN_30), c, d];
  }
  return five.map((word, index) => (word + (state[index] ?? 0)) | 0) as Five;
};

/** The hash of bytes as 40 hexadecimal digits. */
export const sha1Hex = (bytes: Uint8Array): string => {
  const view = padded(bytes);
  let state: Five = [...INITIAL];
  for (let offset = 0; offset < view.byteLength; offset += 64) state = compressed(state, scheduleOf(view, offset));
  return state.map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
};
