import { benchSums } from "./bench/sums.ts";
import { fail, wordsOf } from "./words.ts";

/** Times the work of a page and of the laws. Sums come first and in a program that holds nothing else yet: what else is loaded slows them by a quarter. */

const benchQuestions = async (): Promise<void> => {
  benchSums();
  const { benchFamilies, benchFigures } = await import("./bench/questions.ts");
  benchFamilies();
  benchFigures();
};

/** A part of its own that a word picks; without one, questions and figures are timed. */
const PARTS: Readonly<Record<string, () => Promise<void>>> = {
  scope: async () => (await import("./bench/scope.ts")).benchScope(),
  returns: async () => (await import("./bench/returns.ts")).benchReturns(),
};

const { words: [part] } = wordsOf({ name: "bench", does: "Times questions and figures. A word picks another part: scope (the view in a browser) or returns (a director's pile of hand-ins).", words: ["scope | returns"] });
if (part === undefined) await benchQuestions();
else await (PARTS[part] ?? (() => fail(`"${part}" is no part of this bench; write scope or returns, or no word for questions and figures.`)))();
