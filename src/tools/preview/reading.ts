import type { Course } from "../check/course.ts";
import { factsOf } from "../check/matter.ts";
import type { MdxFile } from "../check/mdx-file.ts";

export const READERS = ["resident", "nurse", "director"] as const;
export type Reader = (typeof READERS)[number];

/** What a reader meets in one module, or in the part of it that a path names. */
export interface Reading {
  readonly code: string;
  readonly title: string;
  readonly minutes: number;
  readonly sections: readonly string[];
  readonly words: number;
  readonly wordsInSentence: number;
  /** Questions in place; a path may ask fewer. */
  readonly asks: readonly string[];
  readonly pauses: number;
  readonly isReviewed: boolean;
  /** Modules that it needs and that this reader has not met before it. */
  readonly unmet: readonly string[];
}

export interface ReadPath {
  readonly title: string;
  readonly who: string;
  readonly sittings: readonly { readonly name: string; readonly readings: readonly Reading[]; readonly pages: readonly string[] }[];
}

type Bag = Readonly<Record<string, unknown>>;
const bag = (value: unknown): Bag => (typeof value === "object" && value !== null ? (value as Bag) : {});
const list = (value: unknown): readonly Bag[] => (Array.isArray(value) ? value.map(bag) : []);
const texts = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);

const proseOf = (file: MdxFile): string => file.prose.slice(file.bodyStart).replace(/[#*_>|-]+/g, " ");
const countWords = (text: string): number => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu)?.length ?? 0;
const sentencesIn = (text: string): readonly string[] => text.split(/[.?!]+\s|\n\s*\n/).filter((part) => countWords(part) > 0);
const shownText = (file: MdxFile, { start, stop }: { readonly start: number; readonly stop: number }): string => file.text.slice(start, stop).replace(/^#+\s*/, "").trim();

const readingOf = (file: MdxFile, met: ReadonlySet<string>, families: readonly string[] | null): Reading => {
  const matter = bag(file.matter?.located.value);
  const facts = factsOf(file);
  const prose = proseOf(file);
  const asked = file.tags.filter(({ name }) => name === "Ask").flatMap(({ attributes }) => attributes.find(({ name }) => name === "family")?.value ?? []);
  return {
    code: facts.code,
    title: String(matter["title"] ?? file.slug),
    minutes: Number(matter["minutes"] ?? 0),
    sections: file.headings.filter(({ depth }) => depth === 2).map((heading) => shownText(file, heading)),
    words: countWords(prose),
    wordsInSentence: countWords(prose) / Math.max(1, sentencesIn(prose).length),
    asks: families ?? asked,
    pauses: file.tags.filter(({ name }) => name === "Pause").length,
    isReviewed: facts.reviewed,
    unmet: facts.needs.filter((need) => !met.has(need)),
  };
};

/** The paths of one kind of reader, sitting by sitting, as that reader meets them. */
export const readAs = (course: Course, reader: Reader): readonly ReadPath[] => {
  const byCode = new Map(course.files.filter(({ kind }) => kind === "module").map((file) => [factsOf(file).code, file]));
  const own = list(course.paths.value).filter(({ id, fullFor }) => fullFor === reader || String(id).startsWith(`${reader}-`));
  return own.map((path) => {
    const met = new Set<string>();
    const sittings = list(path["sittings"]).map((sitting) => {
      const steps = list(sitting["steps"]);
      const readings = steps.flatMap((step) => {
        const file = byCode.get(String(step["module"]));
        if (file === undefined) return [];
        const reading = readingOf(file, met, step["families"] === undefined ? null : texts(step["families"]));
        met.add(reading.code);
        return [reading];
      });
      return { name: String(sitting["name"] ?? ""), readings, pages: steps.flatMap((step) => (step["page"] === undefined ? [] : [`${String(step["text"])} (${String(step["page"])})`])) };
    });
    return { title: String(path["title"] ?? ""), who: String(path["who"] ?? ""), sittings };
  });
};

/** Nurses read between two cases. */
const MOST_WORDS: Readonly<Record<Reader, number>> = { resident: 20, nurse: 16, director: 20 };

/** What would stop this reader, one sentence each. */
export const stumblesIn = (paths: readonly ReadPath[], reader: Reader): readonly string[] =>
  paths.flatMap(({ title, sittings }) => sittings.flatMap(({ name, readings, pages }) => [
    ...(readings.length + pages.length === 0 ? [`${title}, ${name}: nothing to do`] : []),
    ...readings.flatMap(({ code, unmet, asks, wordsInSentence }) => [
      ...(unmet.length === 0 ? [] : [`${title}, ${name}: ${code} builds on ${unmet.join(", ")}, which comes later or not at all`]),
      ...(asks.length === 0 ? [`${title}, ${name}: ${code} asks nothing`] : []),
      ...(wordsInSentence > MOST_WORDS[reader] ? [`${title}, ${name}: sentences of ${code} have ${wordsInSentence.toFixed(1)} words on average, more than ${MOST_WORDS[reader]}`] : []),
    ]),
  ]));

/** Codes of the modules on these paths whose page has to say that no clinician has read it. */
export const unreviewedIn = (paths: readonly ReadPath[]): readonly string[] =>
  [...new Set(paths.flatMap(({ sittings }) => sittings.flatMap(({ readings }) => readings.filter(({ isReviewed }) => !isReviewed).map(({ code }) => code))))].sort();
