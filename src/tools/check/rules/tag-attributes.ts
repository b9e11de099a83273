import type { Edit, Finding } from "../finding.ts";
import type { MdxFile, Tag } from "../mdx-file.ts";
import { anyOf, nearest } from "../nearest.ts";
import type { Attribute } from "../opening-tag.ts";
import type { FileRule } from "../rule.ts";
import { type AttributeSpec, type AttributeType, sampleOf, TAGS, type TagSpec } from "../tags.ts";

const rule = "attribute";
const NUMBER = /^-?\d+(\.\d+)?$/;
const TEXT = /^(["'`])([^"'`]*)\1$/;
const LIST = /^\[\s*(?:(?:"[^"]*"|'[^']*'|-?\d+(?:\.\d+)?|true|false)\s*,?\s*)*\]$/;

/** The type of an attribute as it is written; null for a piece of program. */
const typeOf = ({ form, value }: Attribute): AttributeType | null => {
  if (form === "text") return "text";
  if (form === "none" || value === "true" || value === "false") return "flag";
  if (NUMBER.test(value)) return "number";
  if (TEXT.test(value)) return "text";
  return LIST.test(value) ? "list" : null;
};

const SAYS: Readonly<Record<AttributeType, string>> = {
  text: "a text in straight quotes",
  number: "a number in braces",
  flag: "the name alone, or {true}",
  list: "a list in braces",
};

/** The same value written as another type, or the sample where it cannot be. */
const rewritten = ({ value, form }: Attribute, spec: AttributeSpec): string => {
  const bare = value.replace(TEXT, "$2");
  if (spec.type === "text") return form !== "none" && /^[\w.@ %/-]+$/.test(bare) ? `"${bare}"` : spec.sample;
  if (spec.type === "number") return NUMBER.test(bare) ? `{${bare}}` : spec.sample;
  return spec.sample;
};

const spanOf = (attribute: Attribute, text: string): Edit => ({ start: attribute.start, end: attribute.end, text });

const withSpace = (file: MdxFile, attribute: Attribute): Edit => ({
  start: attribute.start - (/\s/.test(file.text[attribute.start - 1] ?? "") ? 1 : 0),
  end: attribute.end,
  text: "",
});

const unknownAttribute = (file: MdxFile, tag: Tag, attribute: Attribute): Finding => {
  const known = Object.keys(TAGS[tag.name]?.attributes ?? {});
  const meant = attribute.form === "spread" ? null : nearest(attribute.name, known);
  const head = { source: file, offset: attribute.start, rule, found: `${attribute.name} in <${tag.name}>` };
  if (meant !== null) {
    const text = file.text.slice(attribute.start + attribute.name.length, attribute.end);
    return { ...head, expected: `a known attribute; the nearest is "${meant}"`, edits: [spanOf(attribute, meant + text)] };
  }
  if (attribute.form === "spread") return { ...head, expected: "attributes one by one, each with its name", edits: [withSpace(file, attribute)] };
  const expected = known.length === 0 ? `no attribute in <${tag.name}>` : `only the attributes ${anyOf(known)}`;
  return { ...head, expected, edits: [withSpace(file, attribute)] };
};

const wrongWord = (file: MdxFile, attribute: Attribute, spec: AttributeSpec): readonly Finding[] => {
  const value = attribute.value.replace(TEXT, "$2");
  if (spec.oneOf === undefined || spec.oneOf.includes(value)) return [];
  const meant = nearest(value, spec.oneOf) ?? spec.oneOf[0] ?? value;
  const edits = [spanOf(attribute, `${attribute.name}="${meant}"`)];
  return [{ source: file, offset: attribute.start, rule, found: `${attribute.name}="${value}"`, expected: anyOf(spec.oneOf), edits }];
};

const wrongType = (file: MdxFile, attribute: Attribute, spec: AttributeSpec): Finding => ({
  source: file,
  offset: attribute.start,
  rule,
  found: file.text.slice(attribute.start, attribute.end),
  expected: `for "${attribute.name}" ${SAYS[spec.type]}`,
  edits: [spanOf(attribute, `${attribute.name}=${rewritten(attribute, spec)}`)],
});

const program = (file: MdxFile, attribute: Attribute): Finding => ({
  source: file,
  offset: attribute.start,
  rule,
  found: file.text.slice(attribute.start, attribute.end),
  expected: "a text in quotes, or in braces a number, true, false or a list",
  edits: [spanOf(attribute, `${attribute.name}="${attribute.value.replace(/[^\w. -]/g, "")}"`)],
});

const faultsOf = (file: MdxFile, tag: Tag, attribute: Attribute): readonly Finding[] => {
  const tagSpec: TagSpec | undefined = TAGS[tag.name];
  const spec = tagSpec?.attributes[attribute.name];
  if (spec !== undefined && attribute.form !== "spread") {
    return typeOf(attribute) === spec.type ? wrongWord(file, attribute, spec) : [wrongType(file, attribute, spec)];
  }
  if (attribute.form === "spread" || tagSpec?.open !== true) return [unknownAttribute(file, tag, attribute)];
  return typeOf(attribute) === null ? [program(file, attribute)] : [];
};

const missing = (file: MdxFile, tag: Tag): readonly Finding[] => {
  const spec = TAGS[tag.name];
  const written = tag.attributes.map((attribute) => attribute.name);
  const meant = tag.attributes.flatMap(({ name }) => (spec?.attributes[name] === undefined ? (nearest(name, Object.keys(spec?.attributes ?? {})) ?? []) : []));
  const at = tag.start + 1 + tag.name.length;
  return Object.entries(spec?.attributes ?? {})
    .filter(([name, each]) => each.required && !written.includes(name) && !meant.includes(name))
    .map(([name, each]) => ({
      source: file,
      offset: tag.start,
      rule,
      found: `<${tag.name}> without "${name}"`,
      expected: sampleOf(tag.name),
      edits: [{ start: at, end: at, text: ` ${name}=${each.sample}` }],
    }));
};

/** Attributes are known, complete and of the right type. */
export const tagAttributes: FileRule = (file) =>
  file.tags
    .filter((tag) => TAGS[tag.name] !== undefined)
    .flatMap((tag) => [...missing(file, tag), ...tag.attributes.flatMap((attribute) => faultsOf(file, tag, attribute))]);
