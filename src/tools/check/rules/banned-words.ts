import type { Course } from "../course.ts";
import type { Edit, Finding, SourceText } from "../finding.ts";
import type { FileRule } from "../rule.ts";

/** Words that this site does not use, with what to write instead and why. */
const BANNED: readonly { readonly pattern: RegExp; readonly instead: string; readonly why: string }[] = [
  { pattern: /\bquizzes\b/gi, instead: "questions", why: "the site asks questions" },
  { pattern: /\bquiz\b/gi, instead: "question", why: "the site asks questions" },
  { pattern: /\bcompetent(?:ly)?\b/gi, instead: "steady on this objective", why: "no page declares a person able" },
  { pattern: /\bcertified\b/gi, instead: "completed", why: "no page declares a person able" },
  { pattern: /\bcleared\b/gi, instead: "completed", why: "no page declares a person able" },
  { pattern: /\bsafe\s+to\s+operate\b/gi, instead: "completed", why: "no page declares a person able" },
  { pattern: /\bsafe\s+zones?\b/gi, instead: "window", why: "no place in a knee is safe by its name" },
  { pattern: /\bclick(?:s|ed|ing)?\b/gi, instead: "choose", why: "not everyone has a mouse" },
  { pattern: /\bsubmit(?:s|ted|ting)?\b/gi, instead: "hand in", why: "a learner hands in" },
  { pattern: /\bincorrect(?:ly)?\b/gi, instead: "off", why: "a verdict says on which side, and by how much" },
];

const inText = (source: SourceText, prose: string, from = 0): readonly Finding[] =>
  BANNED.flatMap(({ pattern, instead, why }) =>
    [...prose.matchAll(pattern)].map(({ 0: word, index }): Finding => {
      const start = from + index;
      const capital = /^[A-Z]/.test(word);
      const edit: Edit = { start, end: start + word.length, text: capital ? instead.charAt(0).toUpperCase() + instead.slice(1) : instead };
      return { source, offset: start, rule: "banned word", found: word.replace(/\s+/g, " "), expected: `"${instead}" or another word, because ${why}`, edits: [edit] };
    }),
  );

/** Front matter and prose use none of the banned words. */
export const bannedWords: FileRule = (file) => [
  ...inText(file, file.matter?.text ?? "", file.matter?.start ?? 0),
  ...inText(file, file.prose),
];

/** Nor do the interface strings; keys of the file are not read. */
export const bannedInWords = (course: Course): readonly Finding[] =>
  course.words.flatMap((file) => inText(file, file.text.replace(/"[^"\n]*"\s*:/g, (key) => " ".repeat(key.length))));
