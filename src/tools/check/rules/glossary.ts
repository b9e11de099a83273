import { glossarySchema } from "../../../schemas/glossary.ts";
import type { Finding } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const RULE = "glossary";

const asId = (written: unknown): string | null => {
  const id = String(written).trim().toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");
  return id === "" ? null : JSON.stringify(id);
};

const asSentence = (written: unknown): string | null => {
  const text = String(written).trim();
  const upper = text.charAt(0).toUpperCase() + text.slice(1);
  return text === "" || typeof written !== "string" ? null : JSON.stringify(/\.$/.test(upper) ? upper : `${upper}.`);
};

const GLOSSARY_FILE: DataFile = {
  rule: RULE,
  schema: glossarySchema,
  whole: "a term",
  help: {
    term: ["the word itself, as text", '"term": "window"'],
    id: ["small letters, numbers and hyphens", '"id": "window"'],
    meaning: ["one or two sentences, with capital and full stop", '"meaning": "The depths on one line from the least to the greatest."'],
    british: ["the British word, as text", '"british": "theatre"'],
    american: ["the American word, as text", '"american": "operating room"'],
    also: ["a list of other words that people type; [] where there are none", '"also": []'],
  },
  repair: (field, written) => {
    if (field === "id") return asId(written);
    return field === "meaning" ? asSentence(written) : null;
  },
};

type Row = Readonly<Record<string, unknown>>;
const rowsIn = (file: JsonFile): readonly Row[] => (Array.isArray(file.value) ? (file.value as readonly Row[]) : []);

/** A word or an id that an earlier term has: a link would lead to the first, and the second would never be read. */
const twice = (file: JsonFile, field: "term" | "id"): readonly Finding[] => {
  const names = rowsIn(file).map((row) => String(row?.[field]).toLowerCase());
  return names.flatMap((name, index): readonly Finding[] =>
    names.indexOf(name) === index ? [] : [{ source: file, offset: file.located().spanOf([index, field]).start, rule: RULE, found: `the ${field} "${name}", for the second time`, expected: "each term once", write: LEAVE_OUT }],
  );
};

/** One trade word alone says nothing about how the other side of the Atlantic calls the thing. */
const alone = (file: JsonFile): readonly Finding[] =>
  rowsIn(file).flatMap((row, index): readonly Finding[] => {
    const has = (["british", "american"] as const).filter((side) => typeof row?.[side] === "string");
    const [only] = has;
    if (has.length !== 1 || only === undefined) return [];
    const missing = only === "british" ? "american" : "british";
    return [{ source: file, offset: file.located().spanOf([index, only]).start, rule: RULE, found: `the ${only} word alone`, expected: `the ${missing} word beside it, or neither`, write: `"${missing}": "…"` }];
  });

/** The glossary holds to its schema, has each term once, and gives both trade words or none. */
export const glossary: CourseRule = ({ glossary: file }) => [...schemaFindings(file, GLOSSARY_FILE), ...twice(file, "id"), ...twice(file, "term"), ...alone(file)];
