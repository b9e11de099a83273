import en from "../../content/words/en-record.json" with { type: "json" };

/** Interface sentences of the record and of sheets; apart from the others, so that a question card need not carry them. */
export type RecordWords = typeof en;

const LANGUAGES: Readonly<Record<string, RecordWords>> = { en };

/** The sentences of a language; English where the language has none yet. */
export const recordWordsOf = (language: string): RecordWords => LANGUAGES[language] ?? en;
