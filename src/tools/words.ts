import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { nearest } from "./check/nearest.ts";

/** A flag of a tool: what it does, and a value to copy where it takes one. */
export interface Flag {
  readonly says: string;
  readonly value?: string;
}

/** What a tool does and which words it takes: printed for `--help`, and held against what was typed. */
export interface Tool {
  /** Name of the npm script. */
  readonly name: string;
  readonly does: string;
  /** Words without a flag, in their order, each as it is called in the help. */
  readonly words?: readonly string[];
  /** True where the last of the words may stand more than once. */
  readonly isOpen?: true;
  readonly flags?: Readonly<Record<string, Flag>>;
  readonly example?: string;
}

export interface Words {
  readonly words: readonly string[];
  readonly values: Readonly<Record<string, string>>;
  readonly has: (flag: string) => boolean;
}

type Read = Words | { readonly fault: string } | { readonly help: string };

const flagText = (name: string, { value }: Flag): string => `--${name}${value === undefined ? "" : `=${value}`}`;

const callOf = ({ name, words = [], flags = {} }: Tool): string => {
  const taken = [...words.map((word) => `[${word}]`), ...(Object.keys(flags).length > 0 ? ["[flags]"] : [])];
  return [`npm run ${name}`, ...(taken.length > 0 ? ["--", ...taken] : [])].join(" ");
};

/** What the tool does, how it is called, and each of its flags on a line. */
export const helpText = (tool: Tool): string => {
  const flags = Object.entries(tool.flags ?? {}).map(([name, flag]) => [flagText(name, flag), flag.says] as const);
  const width = Math.max(0, ...flags.map(([flag]) => flag.length));
  return [
    callOf(tool),
    tool.does,
    ...flags.map(([flag, says]) => `  ${flag.padEnd(width)}  ${says}`),
    ...(tool.example === undefined ? [] : [`For example: ${tool.example}`]),
  ].join("\n");
};

const unknownFlag = (tool: Tool, rawName: string): string => {
  const names = Object.keys(tool.flags ?? {});
  const meant = nearest(rawName.replace(/^-+/, ""), names);
  if (meant !== null) return `${rawName} is no flag of this tool; the nearest is ${flagText(meant, tool.flags?.[meant] ?? { says: "" })}.`;
  return names.length === 0 ? `${rawName}: this tool takes no flag.` : `${rawName} is no flag of this tool; it takes ${names.map((name) => flagText(name, tool.flags?.[name] ?? { says: "" })).join(", ")}.`;
};

type Token = NonNullable<ReturnType<typeof parseArgs>["tokens"]>[number];

/** What is wrong with a flag as it was typed; null where nothing is. */
const flagFault = (tool: Tool, token: Extract<Token, { kind: "option" }>): string | null => {
  const flag = tool.flags?.[token.name];
  if (flag === undefined) return unknownFlag(tool, token.rawName);
  if (flag.value !== undefined && (token.value ?? "") === "") return `--${token.name} needs a value, as in ${flagText(token.name, flag)}.`;
  return flag.value === undefined && token.value !== undefined ? `--${token.name} stands alone, without "${token.value}".` : null;
};

const extraFault = ({ words = [], isOpen }: Tool, typed: readonly string[]): string | null => {
  const extra = isOpen === true ? undefined : typed[words.length];
  return extra === undefined ? null : `"${extra}" is a word too many; this tool takes ${words.length === 0 ? "none" : `${words.length}: ${words.join(", ")}`}.`;
};

/** Reads the words of a command line; a word that the tool does not know is named with the nearest one. */
export const readWords = (tool: Tool, typed: readonly string[]): Read => {
  if (typed.includes("--help") || typed.includes("-h")) return { help: helpText(tool) };
  const options = Object.fromEntries(Object.entries(tool.flags ?? {}).map(([name, { value }]) => [name, { type: value === undefined ? ("boolean" as const) : ("string" as const) }]));
  const { tokens } = parseArgs({ args: [...typed], options, strict: false, allowPositionals: true, tokens: true });
  const flags = tokens.filter((token) => token.kind === "option");
  const words = tokens.filter((token) => token.kind === "positional").map(({ value }) => value);
  const fault = flags.map((token) => flagFault(tool, token)).find((each) => each !== null) ?? extraFault(tool, words);
  if (fault !== null) return { fault };
  const values = Object.fromEntries(flags.map(({ name, value }) => [name, value ?? ""]));
  return { words, values, has: (name) => name in values };
};

/** Ends the tool with a sentence and without a trace. */
export const fail = (sentence: string): never => {
  console.error(sentence);
  process.exit(1);
};

/** The words of this run: `--help` is answered, and a wrong word ends the tool before it does anything. */
export const wordsOf = (tool: Tool, typed: readonly string[] = process.argv.slice(2)): Words => {
  const read = readWords(tool, typed);
  if ("help" in read) {
    console.log(read.help);
    return process.exit(0);
  }
  return "fault" in read ? fail(`${read.fault} Nothing was done.\n\n${helpText(tool)}`) : read;
};

/** A whole number behind a flag, inside its bounds, or the number that stands where none was typed. */
export const wholeNumber = ({ values }: Words, flag: string, { least, most, otherwise }: { readonly least: number; readonly most: number; readonly otherwise: number }): number => {
  const typed = values[flag];
  const number = Number(typed ?? otherwise);
  return Number.isInteger(number) && number >= least && number <= most ? number : fail(`--${flag} must be a whole number from ${least} to ${most}, got ${typed}`);
};

/** A folder that was named, or the project's own where none was; a name that leads nowhere ends the tool. */
export const folderNamed = (typed: string | undefined, own: string): string => {
  const folder = resolve(typed ?? own);
  return existsSync(folder) ? folder : fail(`There is no folder ${typed}. Name a folder like content, or none for the project's own.`);
};
