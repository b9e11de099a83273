import en from "../../content/words/en.json" with { type: "json" };

/** Interface sentences of one language. A second language is a second file of the same shape. */
export type Words = typeof en;

const LANGUAGES: Readonly<Record<string, Words>> = { en };

/** The interface sentences of a language; English where the language has none yet. */
export const wordsOf = (language: string): Words => LANGUAGES[language] ?? en;

/** A sentence with its gaps filled: `filled("at {depth}", { depth: "7" })` gives "at 7". A gap without a value stays visible. */
export const filled = (sentence: string, gaps: Readonly<Record<string, string>>): string =>
  sentence.replace(/\{(\w+)\}/g, (gap, name: string) => gaps[name] ?? gap);
