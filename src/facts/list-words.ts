import en from "../../content/words/en-list.json" with { type: "json" };

/** Interface sentences of teaching lists, hand-ins and the returns desk; apart from the others, so that no other page carries them. */
export type ListWords = typeof en;

const LANGUAGES: Readonly<Record<string, ListWords>> = { en };

/** The sentences of a language; English where the language has none yet. */
export const listWordsOf = (language: string): ListWords => LANGUAGES[language] ?? en;
