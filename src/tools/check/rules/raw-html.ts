import type { Finding } from "../finding.ts";
import type { Tag } from "../mdx-file.ts";
import type { FileRule } from "../rule.ts";
import { isHtml } from "./known-tags.ts";

/** What Markdown has instead: marks before and behind the text, and how to say it. */
const INSTEAD: Readonly<Record<string, { readonly before: string; readonly behind: string; readonly says: string }>> = {
  b: { before: "**", behind: "**", says: "two stars on each side" },
  strong: { before: "**", behind: "**", says: "two stars on each side" },
  i: { before: "*", behind: "*", says: "one star on each side" },
  em: { before: "*", behind: "*", says: "one star on each side" },
  code: { before: "`", behind: "`", says: "a backtick on each side" },
  h1: { before: "## ", behind: "", says: "a heading with ##" },
  h2: { before: "## ", behind: "", says: "a heading with ##" },
  h3: { before: "### ", behind: "", says: "a heading with ###" },
  h4: { before: "#### ", behind: "", says: "a heading with ####" },
  li: { before: "- ", behind: "", says: "a line that starts with a hyphen" },
  br: { before: "", behind: "", says: "an empty line between two paragraphs" },
  img: { before: "", behind: "", says: "a <Figure /> tag, which has a text beside the picture" },
  a: { before: "[", behind: "](address)", says: "[words](address)" },
};

const change = (text: string, tag: Tag): Finding["edits"] => {
  const how = INSTEAD[tag.name] ?? { before: "", behind: "" };
  const address = tag.attributes.find((attribute) => attribute.name === "href")?.value;
  const behind = tag.name === "a" ? `](${address ?? "address"})` : how.behind;
  if (tag.selfClosing) return [{ start: tag.start, end: tag.stop, text: "" }];
  const close = text.lastIndexOf("</", tag.stop - 1);
  return [{ start: tag.start, end: tag.end, text: how.before }, { start: close, end: tag.stop, text: behind }];
};

/** A module has Markdown and tags, no HTML: HTML escapes the styles, the print view and the other rules. */
export const rawHtml: FileRule = (file) =>
  file.tags
    .filter((tag) => isHtml(tag.name))
    .map((tag) => ({
      source: file,
      offset: tag.start,
      rule: "HTML",
      found: `<${tag.name}>`,
      expected: INSTEAD[tag.name]?.says ?? "Markdown, without HTML tags",
      edits: change(file.text, tag) ?? [],
    }));
