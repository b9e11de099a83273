import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { newestOf, recordNamed } from "../json-file.ts";
import type { MdxFile, Tag } from "../mdx-file.ts";
import type { Attribute } from "../opening-tag.ts";
import type { FileRule } from "../rule.ts";

const rule = "attribute";
const MOST_QUESTIONS = 12;
/** A scope that looks farther back than sideways is none of the trade. */
const MOST_VIEW_DEG = 90;
const MOST_SEED = 4_294_967_295;

/** What a value must be, and a right one near the written one; null where nothing is wrong. */
type ValueRule = (value: string) => { readonly expected: string; readonly text: string } | null;

const wholeFrom = (least: number, most: number): ValueRule => (value) => {
  const number = Number(value);
  if (Number.isInteger(number) && number >= least && number <= most) return null;
  const near = Number.isFinite(number) ? Math.min(most, Math.max(least, Math.round(number))) : least;
  return { expected: `a whole number from ${least} to ${most}`, text: `{${near}}` };
};

const above0: ValueRule = (value) => (Number(value) > 0 ? null : { expected: "a number above 0", text: `{${Math.abs(Number(value)) || 4}}` });

const decimal: ValueRule = (value) => {
  if (/^-?\d+(\.\d+)?$/.test(value)) return null;
  const digits = /-?\d+(?:[.,]\d+)?/.exec(value.replace("−", "-"))?.[0].replace(",", ".");
  return { expected: "a number with a point before its decimals, without a unit", text: `"${digits ?? "9"}"` };
};

const sex: ValueRule = (value) => (value === "boys" || value === "girls" ? null : { expected: '"boys" or "girls"', text: /^g|f/i.test(value) ? '"girls"' : '"boys"' });

/** Values that must be more than of the right type. */
const VALUES: Readonly<Record<string, Readonly<Record<string, ValueRule>>>> = {
  Ours: { value: decimal },
  Ask: { n: wholeFrom(1, MOST_QUESTIONS), seed: wholeFrom(0, MOST_SEED) },
  Figure: { entry: above0, margin: above0, need: above0, depth: above0, sex, view: wholeFrom(0, MOST_VIEW_DEG), field: above0, distance: above0, scope: above0, bore: above0 },
};

const isRead = ({ form, value }: Attribute): boolean => form === "text" || (form === "expression" && /^-?\d+(\.\d+)?$/.test(value));

const wrongValues = (file: MdxFile, tag: Tag): readonly Finding[] =>
  tag.attributes.flatMap((attribute): readonly Finding[] => {
    const fault = isRead(attribute) ? VALUES[tag.name]?.[attribute.name]?.(attribute.value) : null;
    // A number in quotes is named by the rule of types.
    const isTyped = tag.name === "Ours" || attribute.name === "sex" || attribute.form === "expression";
    if (fault == null || !isTyped) return [];
    const edits = [{ start: attribute.start, end: attribute.end, text: `${attribute.name}=${fault.text}` }];
    return [{ source: file, offset: attribute.start, rule, found: `${attribute.name} of ${attribute.value || "nothing"}`, expected: fault.expected, edits }];
  });

const twice = (file: MdxFile, tag: Tag): readonly Finding[] =>
  tag.attributes.flatMap((attribute, index): readonly Finding[] => {
    const first = tag.attributes.findIndex(({ name }) => name === attribute.name);
    if (first === index || attribute.form === "spread") return [];
    const start = file.text.slice(0, attribute.start).trimEnd().length;
    return [{ source: file, offset: attribute.start, rule, found: `${attribute.name} twice in <${tag.name}>`, expected: "each attribute once", edits: [{ start, end: attribute.end, text: "" }] }];
  });

/** The part of a value that a tag asks for is one that the entry has, and its revision is the newest. */
const wrongPart = (file: MdxFile, tag: Tag, course: Course): readonly Finding[] => {
  const of = tag.attributes.find(({ name }) => name === "of");
  const part = tag.attributes.find(({ name }) => name === "part");
  const { record, revision } = recordNamed(course.records, of?.value ?? "");
  if (of === undefined || record === undefined || revision === undefined) return [];
  const newest = newestOf(record)?.revision ?? revision.revision;
  const old: readonly Finding[] = revision.revision === newest ? [] : [{
    source: file, offset: of.start, rule: "older revision", found: `"${of.value}"`,
    expected: `"${record.key}", which shows the newest revision, ${newest}`,
    edits: [{ start: of.start, end: of.end, text: `of="${record.key}"` }],
  }];
  const wanted: readonly string[] = part?.value === "both" ? ["mean", "sd"] : [part?.value ?? ""];
  const has = Object.keys(revision.value);
  if (part === undefined || !["mean", "sd", "both"].includes(part.value) || wanted.every((each) => has.includes(each))) return old;
  const start = file.text.slice(0, part.start).trimEnd().length;
  const expected = has.length === 0 ? "no part: no value was found, and the tag says so" : `no part: the entry has ${has.join(" and ")}`;
  return [...old, { source: file, offset: part.start, rule, found: `part="${part.value}" of "${of.value}"`, expected, edits: [{ start, end: part.end, text: "" }] }];
};

/** Values of attributes are possible, stand once, and name a part that is there. */
export const tagValues: FileRule = (file, course) =>
  file.tags.flatMap((tag) => [...wrongValues(file, tag), ...twice(file, tag), ...(tag.name === "Num" ? wrongPart(file, tag, course) : [])]);
