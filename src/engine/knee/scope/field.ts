import type { Step } from "./formula.ts";
import type { Line, Program } from "./program.ts";

/** A place in the frame of the scope: lateral, front and up, in mm. */
export type Place = readonly [number, number, number];

/** What lies nearest to a point: how far it is (negative inside), and which solid it belongs to. */
export interface Nearest {
  readonly distanceMm: number;
  readonly id: number;
}

/** A program with the numbers of one setting put in. */
export interface Field {
  readonly nearest: (place: Place) => Nearest;
  /** Values of the further formulas at a place. */
  readonly extras: (place: Place) => readonly number[];
  /** All registers that do not hang on the point, by their number; what the shader is given. */
  readonly fixed: (register: number) => number;
}

/** Steps as whole numbers, so that a run through them stays fast. */
const CODES: readonly Step[] = ["number", "setting", "x", "y", "z", "add", "sub", "mul", "div", "min", "max", "pow", "atan", "abs", "sqrt", "sin", "cos", "exp", "pick"];
const WORDS_PER_LINE = 6;

/** Lines as a row of whole numbers: step, target, and up to four sources. */
const packed = (lines: readonly Line[]): Int32Array =>
  Int32Array.from(lines.flatMap(({ step, to, from }) => [CODES.indexOf(step), to, from[0] ?? 0, from[1] ?? 0, from[2] ?? 0, from[3] ?? 0]));

const at = (list: Float64Array | Int32Array, index: number): number => list[index] as number;

/** What a step gives; constants, settings and places are in their registers before a run starts. */
const result = (code: number, first: number, second: number): number => {
  switch (code) {
    case 5: return first + second;
    case 6: return first - second;
    case 7: return first * second;
    case 8: return first / second;
    case 9: return Math.min(first, second);
    case 10: return Math.max(first, second);
    case 11: return first ** second;
    case 12: return Math.atan2(first, second);
    case 13: return Math.abs(first);
    case 14: return Math.sqrt(first);
    case 15: return Math.sin(first);
    case 16: return Math.cos(first);
    default: return Math.exp(first);
  }
};

const PICK = 18;
const FIRST_COMPUTED = 5;

/** Runs packed lines over the registers. */
const run = (lines: Int32Array, registers: Float64Array): void => {
  for (let word = 0; word < lines.length; word += WORDS_PER_LINE) {
    const code = at(lines, word);
    if (code < FIRST_COMPUTED) continue;
    const first = at(registers, at(lines, word + 2));
    const second = at(registers, at(lines, word + 3));
    registers[at(lines, word + 1)] = code === PICK ? at(registers, at(lines, word + (first < second ? 4 : 5))) : result(code, first, second);
  }
};

/** Far beyond every part of a knee, in mm. */
const FAR_MM = 1000;

/**
 * A program with the numbers of one setting.
 *
 * @param program - From `programOf`.
 * @param numbers - The numbers that its formulas call settings, in their order.
 */
export const fieldOf = (program: Program, numbers: readonly number[]): Field => {
  const registers = new Float64Array(program.registers);
  for (const { step, to, value } of program.once) {
    if (step === "number") registers[to] = value;
    if (step === "setting") registers[to] = numbers[value] ?? Number.NaN;
  }
  run(packed(program.once), registers);
  const axes = program.always.filter(({ step }) => step === "x" || step === "y" || step === "z").map(({ step, to }) => [to, ["x", "y", "z"].indexOf(step)] as const);
  const always = packed(program.always.filter(({ step }) => CODES.indexOf(step) >= FIRST_COMPUTED));
  const blocks = program.blocks.map((block) => ({ ...block, packed: packed(block.lines) }));
  const stand = (place: Place): void => {
    for (const [to, axis] of axes) registers[to] = place[axis] ?? Number.NaN;
    run(always, registers);
  };
  return {
    nearest: (place) => {
      stand(place);
      let distanceMm = FAR_MM;
      let id = -1;
      for (const block of blocks) {
        if (block.bound >= 0 && at(registers, block.bound) >= distanceMm) continue;
        run(block.packed, registers);
        const one = at(registers, block.distance);
        if (one < distanceMm) [distanceMm, id] = [one, block.id];
      }
      return { distanceMm, id };
    },
    extras: (place) => {
      stand(place);
      return program.extras.map((register) => at(registers, register));
    },
    fixed: (register) => at(registers, register),
  };
};
