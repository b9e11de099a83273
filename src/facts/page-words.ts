import en from "../../content/words/en-pages.json" with { type: "json" };

/** Sentences of the pages around the questions; apart from the others, so that no island carries them. */
export type PageWords = typeof en;

const LANGUAGES: Readonly<Record<string, PageWords>> = { en };

/** The page sentences of a language; English where the language has none yet. */
export const pageWordsOf = (language: string): PageWords => LANGUAGES[language] ?? en;
