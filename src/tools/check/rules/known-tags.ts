import type { Edit, Finding } from "../finding.ts";
import type { Tag } from "../mdx-file.ts";
import { anyOf, nearest } from "../nearest.ts";
import type { FileRule } from "../rule.ts";
import { TAGS } from "../tags.ts";

/** A tag that this site gives, whatever its capitals. */
export const isOurTag = (name: string): boolean =>
  Object.keys(TAGS).some((tag) => tag.toLowerCase() === name.toLowerCase());

/** True for names in small letters that are no misspelt tag of ours: HTML. */
export const isHtml = (name: string): boolean => name === "" || (/^[a-z]/.test(name) && !isOurTag(name));

/** Takes a tag out and leaves what stands in it. */
const without = (tag: Tag): readonly Edit[] => {
  const open = { start: tag.start, end: tag.selfClosing ? tag.stop : tag.end, text: "" };
  return tag.selfClosing ? [open] : [open, { start: tag.stop - `</${tag.name}>`.length, end: tag.stop, text: "" }];
};

/** The tag that is meant: the nearest, or the one that the written name begins with or is the beginning of. */
const meantBy = (name: string): string | null => {
  const names = Object.keys(TAGS);
  const own = name.toLowerCase();
  return nearest(name, names) ?? names.find((tag) => own.startsWith(tag.toLowerCase()) || (own.length > 2 && tag.toLowerCase().startsWith(own))) ?? null;
};

/** A tag is one of the list that authors may use. */
export const knownTags: FileRule = (file) =>
  file.tags
    .filter((tag) => TAGS[tag.name] === undefined && !isHtml(tag.name))
    .map((tag): Finding => {
      const meant = meantBy(tag.name);
      const head = { source: file, offset: tag.start, rule: "unknown tag", found: `<${tag.name}>` };
      if (meant === null) return { ...head, expected: `one of the tags ${anyOf(Object.keys(TAGS))}; the words around it stay`, edits: without(tag) };
      const open = { start: tag.start + 1, end: tag.start + 1 + tag.name.length, text: meant };
      const close = { start: tag.stop - 1 - tag.name.length, end: tag.stop - 1, text: meant };
      return { ...head, expected: `a known tag; the nearest is <${meant}>`, edits: tag.selfClosing ? [open] : [open, close] };
    });
