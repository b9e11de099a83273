import type { Finding } from "../finding.ts";
import type { Heading, MdxFile } from "../mdx-file.ts";
import { type FileRule, LEAVE_OUT, quoted } from "../rule.ts";

const textOf = (file: MdxFile, { start, stop }: Heading): string => file.text.slice(start, stop).replace(/^#+\s*/, "").replace(/[*_`]/g, "").trim();

const twice = (file: MdxFile): readonly Finding[] => {
  const seen = new Set<string>();
  return file.headings.flatMap((heading): readonly Finding[] => {
    const text = textOf(file, heading);
    const folded = text.toLowerCase();
    const isKnown = seen.has(folded);
    seen.add(folded);
    if (!isKnown || text === "") return [];
    return [{ source: file, offset: heading.start, rule: "heading", found: `${quoted(text)}, a second time`, expected: "headings that differ, since each is an address", edits: [{ start: heading.stop, end: heading.stop, text: ", continued" }] }];
  });
};

const empty = (file: MdxFile): readonly Finding[] =>
  file.headings.flatMap((heading, index): readonly Finding[] => {
    const next = file.headings[index + 1];
    const head = { source: file, offset: heading.start, rule: "heading", write: LEAVE_OUT };
    if (textOf(file, heading) === "") return [{ ...head, found: "a heading without words", expected: "words, or no heading" }];
    const between = file.text.slice(heading.stop, next?.start ?? file.text.length).trim();
    const isDeeper = next !== undefined && next.depth > heading.depth;
    return between !== "" || isDeeper ? [] : [{ ...head, found: `${quoted(textOf(file, heading))}, with nothing under it`, expected: "text under every heading" }];
  });

/** Headings have words, differ, and stand over something. */
export const headings: FileRule = (file) => [...twice(file), ...empty(file)];
