import type { Block, Line, Program } from "../engine/knee/scope/program.ts";

/** Prints the formulas of the scene in the shading language of WebGL 2, so that picture and reckoning cannot differ. */

const SIGNS: Readonly<Record<string, string>> = { add: "+", sub: "-", mul: "*", div: "/" };
const AXES = ["x", "y", "z"];
const PLACES = ["x", "y", "z", "w"];

const literal = (value: number): string => {
  const text = String(Number(value.toPrecision(9)));
  return /[.e]/.test(text) ? text : `${text}.`;
};

/** Registers that the shader is given, in the order of its uniform; constants are printed in place. */
export const givenRegisters = (program: Program): readonly number[] => {
  const constants = new Set(program.once.filter(({ step }) => step === "number").map(({ to }) => to));
  return program.fixed.filter((register) => !constants.has(register));
};

/** A plain copy of a given number: some devices look the given one up anew, slowly, at every read. */
const copyOf = (uniform: string, register: number): string => `${uniform.toLowerCase()}${register}`;

/** The copies and the function that makes them, `NAME()`; a shader calls it before it asks for anything else. */
const copies = (program: Program, uniform: string): string => {
  const given = givenRegisters(program);
  if (given.length === 0) return `void copy${uniform}(){}`;
  const made = given.map((register, index) => `${copyOf(uniform, register)}=${uniform}[${index >> 2}].${PLACES[index % 4] ?? "x"};`);
  return `float ${given.map((register) => copyOf(uniform, register)).join(",")};\nvoid copy${uniform}(){${made.join("")}}`;
};

/** How a program is printed: the name of its uniform, and how a register reads. */
interface Press {
  readonly read: (register: number) => string;
}

const pressOf = (program: Program, uniform: string): Press => {
  const constants = new Map(program.once.filter(({ step }) => step === "number").map(({ to, value }) => [to, literal(value)]));
  const given = new Map(givenRegisters(program).map((register) => [register, copyOf(uniform, register)]));
  return { read: (register) => constants.get(register) ?? given.get(register) ?? `r${register}` };
};

const printed = ({ step, to, from }: Line, { read }: Press): string => {
  const [first = "", second = "", third = "", fourth = ""] = from.map(read);
  const sign = SIGNS[step];
  if (AXES.includes(step)) return `float r${to}=p.${step};`;
  if (sign !== undefined) return `float r${to}=${first}${sign}${second.startsWith("-") ? `(${second})` : second};`;
  if (step === "pick") return `float r${to}=${first}<${second}?${third}:${fourth};`;
  return `float r${to}=${step}(${from.map(read).join(",")});`;
};

const printedBlock = ({ id, bound, lines, distance }: Block, press: Press): string => {
  const body = `${lines.map((line) => printed(line, press)).join("\n")}\nif(${press.read(distance)}<d){d=${press.read(distance)};k=${id};}`;
  return bound < 0 ? `{${body}}` : `if(${press.read(bound)}<d){${body}}`;
};

/** Number of four-number rows that a uniform needs. */
export const uniformRows = (program: Program): number => Math.max(1, Math.ceil(givenRegisters(program).length / 4));

/** `float NAME(vec3 p)`: the distance, with the solid's number left in `solid`. */
export const distanceFunction = (program: Program, name: string, uniform: string): string => {
  const press = pressOf(program, uniform);
  return `uniform vec4 ${uniform}[${uniformRows(program)}];
${copies(program, uniform)}
int solid;
float ${name}(vec3 p){float d=1000.;int k=-1;
${program.always.map((line) => printed(line, press)).join("\n")}
${program.blocks.map((block) => printedBlock(block, press)).join("\n")}
solid=k;return d;}`;
};

/** `vec4 NAME(vec3 p)`: up to four further formulas. */
export const extrasFunction = (program: Program, name: string, uniform: string): string => {
  const press = pressOf(program, uniform);
  const four = Array.from({ length: 4 }, (_, index) => { const register = program.extras[index]; return register === undefined ? "0." : press.read(register); });
  return `uniform vec4 ${uniform}[${uniformRows(program)}];
${copies(program, uniform)}
vec4 ${name}(vec3 p){
${program.always.map((line) => printed(line, press)).join("\n")}
return vec4(${four.join(",")});}`;
};
