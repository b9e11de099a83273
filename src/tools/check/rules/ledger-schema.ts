import { ledgerTopicSchema, LEDGER_STATES, revisionSchema } from "../../../schemas/ledger.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

/** What a field is and how it is written, for a message. */
const HELP: DataFile["help"] = {
  entries: ["a list of entries", '"entries": []'],
  topic: ["the name of the file without its ending", '"topic": "zone-width"'],
  title: ["a title as text", '"title": "Width of the zone"'],
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

const MORE_FIELDS: readonly string[] = ["flags", "set", "conflicts", "from", "to", "readIn", "note", "formula", "replacedBy", "mean", "sd", "median", "events", "total"];

/** A number as the paper prints it: a decimal comma becomes a point, a unit behind it goes. */
const asDecimal = (part: unknown): string => String(part).trim().replace("−", "-").replace(/^(-?\d+),(\d+)/, "$1.$2").replace(/^(-?\d+(?:\.\d+)?)\s.*$/, "$1");

const mendedValue = (written: unknown): string | null => {
  const bag = typeof written === "object" && written !== null ? written : { value: written };
  const parts = Object.entries(bag).map(([key, part]) => [key, asDecimal(part)] as const);
  if (!revisionSchema.shape.value.safeParse(Object.fromEntries(parts)).success) return null;
  return `{ ${parts.map(([key, part]) => `"${key}": "${part}"`).join(", ")} }`;
};

const fromList = (written: unknown, names: readonly string[]): string | null => {
  const meant = nearest(String(written), names);
  return meant === null ? null : `"${meant}"`;
};

const asKey = (written: unknown): string | null => {
  const key = String(written).trim().toLowerCase().replace(/[ _]+/g, "-");
  return /^[a-z0-9]+(-[a-z0-9]+)*\.[a-z0-9]+(-[a-z0-9]+)*$/.test(key) ? `"${key}"` : null;
};

const REPAIRS: Readonly<Record<string, (written: unknown) => string | null>> = {
  value: mendedValue,
  key: asKey,
  state: (written) => fromList(written, LEDGER_STATES),
  sex: (written) => fromList(written, ["boys", "girls", "both", "not stated"]),
  n: (written) => (/^[1-9]\d*$/.test(String(written)) ? String(written) : null),
  adult: (written) => (/^(true|false)$/.test(String(written)) ? String(written) : null),
};

const LEDGER_FILE: DataFile = {
  rule: "ledger",
  schema: ledgerTopicSchema,
  help: HELP,
  alsoFields: MORE_FIELDS,
  whole: "a ledger entry",
  repair: (field, written) => REPAIRS[field]?.(written) ?? null,
};

/** Every ledger file holds to its schema. */
export const ledgerSchema: CourseRule = (course) => course.ledger.flatMap((file) => schemaFindings(file, LEDGER_FILE));
