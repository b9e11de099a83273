import en from "../../content/words/en-offline.json" with { type: "json" };

/** Sentences about keeping the course on a device. */
export type OfflineWords = typeof en;

const LANGUAGES: Readonly<Record<string, OfflineWords>> = { en };

/** The sentences of a language; English where the language has none yet. */
export const offlineWordsOf = (language: string): OfflineWords => LANGUAGES[language] ?? en;
