import type { Finding } from "../finding.ts";
import { anyOf, nearest } from "../nearest.ts";
import { type FileRule, LEAVE_OUT } from "../rule.ts";
import { TAGS } from "../tags.ts";

/** A tag that this site gives, whatever its capitals. */
export const isOurTag = (name: string): boolean =>
  Object.keys(TAGS).some((tag) => tag.toLowerCase() === name.toLowerCase());

/** True for names in small letters that are no misspelt tag of ours: HTML. */
export const isHtml = (name: string): boolean => name === "" || (/^[a-z]/.test(name) && !isOurTag(name));

/** A tag is one of the list that authors may use. */
export const knownTags: FileRule = (file) =>
  file.tags
    .filter((tag) => TAGS[tag.name] === undefined && !isHtml(tag.name))
    .map((tag): Finding => {
      const meant = nearest(tag.name, Object.keys(TAGS));
      const head = { source: file, offset: tag.start, rule: "unknown tag", found: `<${tag.name}>` };
      if (meant === null) return { ...head, expected: `one of the tags ${anyOf(Object.keys(TAGS))}`, write: LEAVE_OUT };
      const open = { start: tag.start + 1, end: tag.start + 1 + tag.name.length, text: meant };
      const close = { start: tag.stop - 1 - tag.name.length, end: tag.stop - 1, text: meant };
      return { ...head, expected: `a known tag; the nearest is <${meant}>`, edits: tag.selfClosing ? [open] : [open, close] };
    });
