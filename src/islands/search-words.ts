/** Words of a question that say nothing about what is sought. */
const IDLE: ReadonlySet<string> = new Set("a an and are as at be by can do does for from how i if in into is it its may me much many must my need of on or our should that the their there this to was we what when where which who why will with you your long often mean work use get".split(" "));

/** Names of one thing, as the glossary lists them. */
export type Names = readonly string[];

const wordsIn = (text: string): readonly string[] => text.toLowerCase().replace(/[^\p{L}\p{N}-]+/gu, " ").trim().split(" ").filter((word) => word !== "");

/** What stands between quotes where the whole question does: whoever quotes wants these words in this order. */
export const phraseIn = (typed: string): string | null => /^\s*["“”](.+)["“”]\s*$/.exec(typed)?.[1]?.trim() ?? null;

/** True where one of the words found goes on from what was typed: whoever types a beginning finds the word. */
export const goesOn = (typed: string, found: readonly string[]): boolean => found.flatMap(wordsIn).flatMap((word) => [word, ...word.split("-")]).some((word) => word.startsWith(typed));

/** What was typed, without the words that every question has; all of it where nothing else is left. */
export const tellingWords = (typed: string): string => {
  const all = wordsIn(typed);
  const telling = all.filter((word) => !IDLE.has(word));
  return (telling.length > 0 ? telling : all).join(" ");
};

const holds = (text: string, name: string): boolean => ` ${text} `.includes(` ${wordsIn(name).join(" ")} `);

/** The question itself, and once more with each other name of a thing in it: who types "tourniquet" finds the cuff. At most eight. */
export const wordings = (typed: string, glossary: readonly Names[]): readonly string[] => {
  const asked = tellingWords(typed);
  const others = glossary.flatMap((names) => {
    const own = names.filter((name) => holds(asked, name)).toSorted((first, second) => second.length - first.length)[0];
    if (own === undefined) return [];
    const written = wordsIn(own).join(" ");
    return names.filter((name) => name !== own).map((name) => ` ${asked} `.replace(` ${written} `, ` ${wordsIn(name).join(" ")} `).trim());
  });
  return [...new Set([asked, ...others])].slice(0, 8);
};
