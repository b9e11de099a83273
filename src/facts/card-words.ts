import en from "../../content/words/en-card.json" with { type: "json" };

/** Lines and labels of the trolley card. Steps and things go by the names of the graphs and of the local list; what has no line here is not printed. */
export interface CardWords extends Omit<typeof en, "steps" | "drill" | "things"> {
  readonly steps: Readonly<Record<string, string>>;
  readonly drill: Readonly<Record<string, string>>;
  readonly things: Readonly<Record<string, string>>;
}

const LANGUAGES: Readonly<Record<string, CardWords>> = { en };

/** The words of the card in a language; English where the language has none yet. */
export const cardWordsOf = (language: string): CardWords => LANGUAGES[language] ?? en;
