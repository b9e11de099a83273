import { ledgerTopicSchema, LEDGER_STATES } from "../../../schemas/ledger.ts";
import type { Finding } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT, quoted } from "../rule.ts";

const rule = "ledger";

const KEYS: readonly string[] = [
  "topic", "title", "entries", "key", "name", "definition", "population", "position", "method", "unit", "flags", "revisions",
  "who", "ages", "sex", "n", "adult", "from", "to", "revision", "state", "value", "source", "readIn", "note", "formula", "parents", "replacedBy", "mean", "sd", "median",
];

/** What a field is and how it is written, for a message. */
const HELP: Readonly<Record<string, readonly [string, string]>> = {
  topic: ["the name of the file without its ending", '"topic": "zone-width"'],
  title: ["a title as text", '"title": "Width of the zone"'],
  entries: ["a list of entries", '"entries": []'],
  key: ["small letters and hyphens with one point", '"key": "zone-width.8-10"'],
  name: ["a short name for a table row", '"name": "Zone width, 8–10 years"'],
  definition: ["from what to what, along which line", '"definition": "from the tendon to the bundle, along the junction"'],
  population: ["who was measured", '"population": { "who": "children", "ages": { "from": 8, "to": 10 }, "sex": "both", "n": 59, "adult": false }'],
  who: ["who was measured, as text", '"who": "children 8–10 years"'],
  ages: ["the ages in years, or null", '"ages": { "from": 8, "to": 10 }'],
  sex: ['"boys", "girls", "both" or "not stated"', '"sex": "both"'],
  n: ["a whole number, or null", '"n": 59'],
  adult: ["true or false, without quotes", '"adult": false'],
  position: ["the position of the knee, or \"not stated\"", '"position": "not stated"'],
  method: ["how it was measured", '"method": "MRI"'],
  unit: ["a unit as text, or \"\"", '"unit": "mm"'],
  revisions: ["a list with one revision or more", '"revisions": [{ "revision": 1, "state": "read", "value": { "value": "5" }, "source": "…", "readIn": "table 2" }]'],
  revision: ["a whole number from 1", '"revision": 1'],
  state: [LEDGER_STATES.join(", "), '"state": "read"'],
  value: ["decimal texts: mean and sd, value, from and to, mean with from and to, or median; null where nothing was found", '"value": { "mean": "15.8", "sd": "2.5" }'],
  source: ["a key of content/sources.json", '"source": "beck-2019"'],
  parents: ["ledger keys with their revision", '"parents": ["zone-width.8-10@1"]'],
};

const fieldOf = (path: readonly PropertyKey[]): string => String(path.findLast((step) => typeof step === "string" && HELP[step] !== undefined) ?? "entries");

const unknownKey = (file: JsonFile, path: readonly PropertyKey[], key: string): Finding => {
  const span = file.located().keySpanOf(path, key);
  const meant = nearest(key, KEYS);
  const head = { source: file, offset: span.start, rule, found: `the field "${key}"` };
  return meant === null
    ? { ...head, expected: "only the fields of a ledger entry", write: LEAVE_OUT }
    : { ...head, expected: `a known field; the nearest is "${meant}"`, edits: [{ ...span, text: `"${meant}"` }] };
};

const faultsIn = (file: JsonFile): readonly Finding[] => {
  if (file.value === undefined) {
    const [error] = file.located().errors;
    const expected = `JSON that can be read (${error?.message.split(" at line")[0]?.replace(/\.$/, "") ?? "a comma, quote or bracket is missing or too many"})`;
    return [{ source: file, offset: error?.start ?? 0, rule, found: "text that is no JSON", expected, write: '{ "topic": "…", "title": "…", "entries": [ … ] }' }];
  }
  const result = ledgerTopicSchema.safeParse(file.value);
  if (result.success) return [];
  return result.error.issues.flatMap((issue): readonly Finding[] => {
    if (issue.code === "unrecognized_keys") return issue.keys.map((key) => unknownKey(file, issue.path, key));
    const field = fieldOf(issue.path);
    const span = file.located().spanOf(issue.path);
    const [is, sample] = HELP[field] ?? ["", ""];
    return [{ source: file, offset: span.start, rule, found: `${field}: ${quoted(file.text.slice(span.start, span.end))}`, expected: is, write: sample }];
  });
};

/** Every ledger file holds to its schema. */
export const ledgerSchema: CourseRule = (course) => course.ledger.flatMap(faultsIn);
