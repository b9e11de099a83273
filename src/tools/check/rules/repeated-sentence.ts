import type { Finding } from "../finding.ts";
import type { MdxFile } from "../mdx-file.ts";
import { type CourseRule, quoted } from "../rule.ts";
import { FILLER } from "../syntax.ts";

/** Shorter ones may meet by chance. */
const LEAST_WORDS = 8;
/** What is done in an emergency is said in the same words everywhere. */
const SAME_EVERYWHERE = /local emergency card/;
const SENTENCE = /(?:[^.?!\n]|\n(?!\s*\n))+[.?!]/g;

interface Sentence {
  readonly file: MdxFile;
  readonly start: number;
  readonly end: number;
  readonly words: string;
}

const sentencesIn = (file: MdxFile): readonly Sentence[] =>
  [...file.prose.matchAll(SENTENCE)].flatMap(({ 0: text, index }) => {
    const words = text.replaceAll(FILLER, " ").toLowerCase().match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu) ?? [];
    if (words.length < LEAST_WORDS || SAME_EVERYWHERE.test(text)) return [];
    return [{ file, start: index + text.length - text.trimStart().length, end: index + text.length, words: words.join(" ") }];
  });

/** A sentence of eight words or more stands once in the course: whoever reads it a second time reads on less carefully. */
export const repeatedSentence: CourseRule = ({ files }) => {
  const all = files.filter(({ kind }) => kind === "module").flatMap(sentencesIn);
  const first = new Map<string, Sentence>();
  return all.flatMap((one): readonly Finding[] => {
    const before = first.get(one.words);
    if (before === undefined) first.set(one.words, one);
    if (before === undefined) return [];
    return [{
      source: one.file,
      offset: one.start,
      rule: "repeated sentence",
      level: "warning",
      found: `"${quoted(one.file.text.slice(one.start, one.end))}", which stands in ${before.file.slug} too`,
      expected: "each sentence once; say it otherwise here, or leave it out",
      edits: [{ start: one.file.text[one.start - 1] === " " ? one.start - 1 : one.start, end: one.end, text: "" }],
    }];
  });
};
