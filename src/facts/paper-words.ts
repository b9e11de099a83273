import en from "../../content/words/en-papers.json" with { type: "json" };

/** Sentences of the papers that are made in the browser from a record. */
export type PaperWords = typeof en;

const LANGUAGES: Readonly<Record<string, PaperWords>> = { en };

/** The sentences of a language; English where the language has none yet. */
export const paperWordsOf = (language: string): PaperWords => LANGUAGES[language] ?? en;
