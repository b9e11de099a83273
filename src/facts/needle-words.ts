import en from "../../content/words/en-needle.json" with { type: "json" };

/** Labels of the needle instrument on its own page; what a question about a needle shows as well stands with the words of the questions. */
export type NeedleWords = typeof en;

const LANGUAGES: Readonly<Record<string, NeedleWords>> = { en };

/** The words of the instrument in a language; English where the language has none yet. */
export const needleWordsOf = (language: string): NeedleWords => LANGUAGES[language] ?? en;
