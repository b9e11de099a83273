import en from "../../content/words/en-cohort.json" with { type: "json" };

/** Interface sentences of what a programme reads in its papers; apart from the others, so that no learner's page carries them. */
export type CohortWords = typeof en;

const LANGUAGES: Readonly<Record<string, CohortWords>> = { en };

/** The sentences of a language; English where the language has none yet. */
export const cohortWordsOf = (language: string): CohortWords => LANGUAGES[language] ?? en;
