import { createInterface } from "node:readline";

/** Asks one thing and gives the answer as it was typed. */
export type Ask = (question: Question) => Promise<string>;

export interface Question {
  /** Name of the flag that answers it without asking: `--title="…"`. */
  readonly name: string;
  readonly text: string;
  /** The sentence to print where an answer will not do; null where it will. */
  readonly fault: (answer: string) => string | null;
}

/** An answer that will not do, where nobody is there to be asked again. */
export class WrongAnswer extends Error {}

/** True where a person sits in front of the terminal and can be asked again. */
const isPerson = (): boolean => process.stdin.isTTY === true;

/**
 * Takes answers from the flags, and asks for the rest on the terminal or reads them line by line from the standard
 * input. A person who gives a wrong answer is told why and asked again; from a flag or a file it ends the tool.
 */
export const asking = (flags: Readonly<Record<string, string | undefined>>): { readonly ask: Ask; readonly close: () => void } => {
  const reader = createInterface({ input: process.stdin, terminal: false });
  const lines = reader[Symbol.asyncIterator]();
  const nextLine = async (name: string): Promise<string> => {
    const { done, value } = await lines.next();
    if (done === true) throw new WrongAnswer(`The answers ended before --${name} was answered.`);
    if (!isPerson()) process.stdout.write(`${value}\n\n`);
    return value.trim();
  };
  const ask: Ask = async ({ name, text, fault }) => {
    const given = flags[name];
    if (given === undefined) process.stdout.write(`${text}\n  > `);
    const answer = given?.trim() ?? (await nextLine(name));
    const sentence = fault(answer);
    if (sentence === null) return answer;
    if (given !== undefined || !isPerson()) throw new WrongAnswer(sentence);
    process.stdout.write(`  ${sentence}\n`);
    return ask({ name, text, fault });
  };
  return { ask, close: () => reader.close() };
};

/** Runs a tool that asks: a wrong answer is printed as one sentence, without a trace, and nothing is written. */
export const runAsking = async (work: () => Promise<string>): Promise<void> => {
  try {
    console.log(await work());
  } catch (error) {
    if (!(error instanceof WrongAnswer)) throw error;
    console.error(`${error.message} Nothing was written.`);
    process.exitCode = 1;
  }
};
