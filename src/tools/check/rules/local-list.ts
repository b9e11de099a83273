import { COUNT_CLASSES, idOfThing, STREAMS } from "../../../engine/kit/local-list.ts";
import { LOCAL_COUNTED, LOCAL_LIMITS, LOCAL_SHAPES, LOCAL_WASTE, localCountsSchema, localLimitsSchema, localPackSchema, localWasteSchema } from "../../../schemas/local.ts";
import type { Finding } from "../finding.ts";
import type { JsonFile } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const RULE = "local list";

const oneOf = (words: readonly string[]) => (written: unknown): string | null => {
  const meant = nearest(String(written), words);
  return meant === null ? null : `"${meant}"`;
};
const asNumber = (written: unknown): string | null => (/^\s*\d+\s*$/.test(String(written)) ? String(Number(written)) : null);
const ordered = (written: unknown): string | null => (Array.isArray(written) && written.length === 2 && written.every((one) => Number.isInteger(one)) ? JSON.stringify([...written].sort((first, second) => Number(first) - Number(second))).replace(",", ", ") : null);

const REPAIRS: Readonly<Record<string, (written: unknown) => string | null>> = {
  class: oneOf(COUNT_CLASSES), shape: oneOf(LOCAL_SHAPES), to: oneOf(STREAMS), limit: oneOf(Object.keys(LOCAL_LIMITS)),
  pieces: asNumber, comesIn: asNumber, value: asNumber, handedOffAtMost: asNumber, opened: ordered, added: ordered,
};

const HELP: DataFile["help"] = {
  hospital: ["the name of the hospital", '"hospital": "Saltmere"'],
  list: ["the name of the pack", '"list": "Small scope, single use"'],
  things: ["nine lines or more, one for each thing", '"things": [{ "thing": "hook probe", "more": "hook probes", "pieces": 1, "class": "tips", "shape": "probe", "stock": "SM-2104" }]'],
  thing: ["the generic name of the thing", '"thing": "hook probe"'],
  more: ["the name when there are several", '"more": "hook probes"'],
  pieces: ["how many lie in the pack, 1 to 5, as a number", '"pieces": 2'],
  class: [COUNT_CLASSES.join(", "), '"class": "instruments"'],
  shape: [LOCAL_SHAPES.join(", "), '"shape": "box"'],
  stock: ["your stock number, as text", '"stock": "SM-2104"'],
  size: ["the size that belongs in the pack", '"size": "small"'],
  otherSize: ["the size that is kept beside it", '"otherSize": "large"'],
  keep: ["true for what is kept until the count is closed", '"keep": true'],
  classes: [`one line for each of ${LOCAL_COUNTED.join(", ")}`, '"classes": []'],
  comesIn: ["how many come in one packet, as a number", '"comesIn": 5'],
  opened: ["least and greatest number opened", '"opened": [5, 15]'],
  added: ["least and greatest number added", '"added": [0, 10]'],
  handedOffAtMost: ["a whole number up to 10", '"handedOffAtMost": 5'],
  capsAndLids: ['"counted" or "not counted"', '"capsAndLids": "counted"'],
  goes: ["one line for each thing", '"goes": [{ "thing": "needle", "to": "sharps" }]'],
  to: [STREAMS.join(", "), '"to": "clinical"'],
  limits: ["one line for each limit", '"limits": []'],
  limit: [Object.keys(LOCAL_LIMITS).join(", "), '"limit": "cuff-time"'],
  says: ["what the limit is, in words", '"says": "Longest time under cuff pressure"'],
  value: ["a number", '"value": 75'],
  unit: ["a unit that the questions know", '"unit": "min"'],
  sheet: ["the sheet on which it stands", '"sheet": "SM-OR 12"'],
};

const data = (schema: DataFile["schema"], whole: string): DataFile => ({ rule: RULE, schema, help: HELP, whole, repair: (field, written) => REPAIRS[field]?.(written) ?? null });
const FILES: Readonly<Record<string, DataFile>> = {
  pack: data(localPackSchema, "a line of the pack"),
  counts: data(localCountsSchema, "a line of what is counted"),
  waste: data(localWasteSchema, "a line of the waste map"),
  limits: data(localLimitsSchema, "a line of the limits"),
};

type Row = Readonly<Record<string, unknown>>;
const LISTS: Readonly<Record<string, readonly [list: string, names: readonly string[]]>> = { pack: ["things", ["thing", "stock"]], counts: ["classes", ["class"]], waste: ["goes", ["thing"]], limits: ["limits", ["limit"]] };

const nameOf = (file: JsonFile): string => file.file.split("/").at(-1)?.replace(/\.json$/, "") ?? "";
const rowsOf = (file: JsonFile): readonly Row[] => {
  const rows = (file.value as Row | undefined)?.[LISTS[nameOf(file)]?.[0] ?? ""];
  return Array.isArray(rows) ? (rows as Row[]) : [];
};

interface Place {
  readonly file: JsonFile;
  readonly at: number;
  readonly field: string;
}

const at = ({ file, at: row, field }: Place): { readonly start: number; readonly end: number } => file.located().spanOf([LISTS[nameOf(file)]?.[0] ?? "", row, field]);
const finding = (place: Place, said: Pick<Finding, "found" | "expected" | "write">): Finding => ({ source: place.file, offset: at(place).start, rule: RULE, ...said });
const same = (field: string, value: unknown): string => (field === "thing" ? idOfThing(String(value)) : String(value));

/** A thing or a stock number that stands twice: a pair is one line with two pieces. */
const twice = (file: JsonFile): readonly Finding[] =>
  (LISTS[nameOf(file)]?.[1] ?? []).flatMap((field) => {
    const values = rowsOf(file).map((row) => same(field, row[field]));
    return values.flatMap((value, row): readonly Finding[] => {
      const first = values.indexOf(value);
      if (first === row || value === "undefined") return [];
      const expected = nameOf(file) === "pack" && field === "thing" ? "one line for one thing; a pair is one line with 2 pieces" : `each ${field} once`;
      return [finding({ file, at: row, field }, { found: `${field} ${JSON.stringify(rowsOf(file)[row]?.[field])}, which stands in line ${first + 1} of the list already`, expected, write: LEAVE_OUT })];
    });
  });

/** Things whose stream is not a matter of the place: what cuts goes to the sharps, a battery never does, single use means once, and a record needs its labels. */
const NEVER: readonly (readonly [things: readonly string[], isWrong: (to: unknown) => boolean, expected: string, right: string])[] = [
  [["needle", "blade", "stylet"], (to) => to !== "sharps", "sharps, wherever the hospital stands", "sharps"],
  [["battery"], (to) => to === "sharps", "any stream but sharps, for what is in that box is burned", "electronics"],
  [["scope"], (to) => to === "reprocess", "any stream but reprocess: single-use means once (C7)", "electronics"],
  [["label"], (to) => to !== "keep", "keep: without its label nobody can tell which implant is in the child", "keep"],
];

/** What a line that is missing may say: never a bag for a sharp or for a label. */
const usual = (thing: string): string => NEVER.find(([things]) => things.includes(thing))?.[3] ?? (thing === "probe" ? "reprocess" : "clinical");

const dangers = (file: JsonFile): readonly Finding[] =>
  nameOf(file) !== "waste" ? [] : rowsOf(file).flatMap((row, index) =>
    NEVER.filter(([things, isWrong]) => things.includes(String(row["thing"])) && isWrong(row["to"])).map(([, , expected, right]): Finding => ({ ...finding({ file, at: index, field: "to" }, { found: `${String(row["thing"])} to ${String(row["to"])}`, expected }), edits: [{ ...at({ file, at: index, field: "to" }), text: `"${right}"` }] })));

const missingWaste = (file: JsonFile): readonly Finding[] => {
  if (nameOf(file) !== "waste") return [];
  const there = rowsOf(file).map((row) => row["thing"]);
  return LOCAL_WASTE.filter((thing) => !there.includes(thing)).map((thing): Finding => ({ source: file, offset: file.located().spanOf(["goes"]).start, rule: RULE, found: `no line for "${thing}"`, expected: "one line for each thing that the question sorts", write: `{ "thing": "${thing}", "to": "${usual(thing)}" }` }));
};

/** A limit in another unit, or one that no question can ask about. */
const limits = (file: JsonFile): readonly Finding[] =>
  nameOf(file) !== "limits" ? [] : rowsOf(file).flatMap((row, index): readonly Finding[] => {
    const spec = LOCAL_LIMITS[String(row["limit"]) as keyof typeof LOCAL_LIMITS];
    const value = Number(row["value"]);
    if (spec === undefined || !Number.isFinite(value)) return [];
    if (row["unit"] !== spec.unit) return [finding({ file, at: index, field: "unit" }, { found: `unit ${JSON.stringify(row["unit"])}`, expected: `"${spec.unit}", in which the question asks`, write: `"unit": "${spec.unit}"` })];
    const isAsked = value >= spec.least && value <= spec.greatest && (value - spec.least) % spec.step === 0;
    return isAsked ? [] : [finding({ file, at: index, field: "value" }, { found: `${value} ${spec.unit}`, expected: `${spec.least} to ${spec.greatest} in steps of ${spec.step}, the values that the question can ask about`, write: `"value": ${Math.min(spec.greatest, Math.max(spec.least, Math.round(value / spec.step) * spec.step))}` })];
  });

/** A size without the other size, with which it could be exchanged. */
const sizes = (file: JsonFile): readonly Finding[] =>
  nameOf(file) !== "pack" ? [] : rowsOf(file).flatMap((row, index): readonly Finding[] =>
    (row["size"] === undefined) === (row["otherSize"] === undefined) ? [] : [finding({ file, at: index, field: "thing" }, { found: `one size alone for "${String(row["thing"])}"`, expected: "size and otherSize together, or neither", write: '"size": "small", "otherSize": "large"' })]);

const unknownFile = (file: JsonFile): readonly Finding[] =>
  nameOf(file) in FILES ? [] : [{ source: file, offset: 0, rule: RULE, found: `the file ${nameOf(file)}.json`, expected: `only ${Object.keys(FILES).map((name) => `${name}.json`).join(", ")}`, write: LEAVE_OUT }];

const sameHospital = (files: readonly JsonFile[]): readonly Finding[] => {
  const named = files.map((file) => ({ file, hospital: (file.value as Row | undefined)?.["hospital"] }));
  const first = named.find(({ file }) => nameOf(file) === "pack")?.hospital;
  return named.filter(({ hospital }) => typeof hospital === "string" && typeof first === "string" && hospital !== first).map(({ file, hospital }): Finding => ({ source: file, offset: file.located().spanOf(["hospital"]).start, rule: RULE, found: `hospital ${JSON.stringify(hospital)}`, expected: `${JSON.stringify(first)}, as in pack.json`, edits: [{ ...file.located().spanOf(["hospital"]), text: JSON.stringify(first) }] }));
};

/** The local list holds to its schema, names nothing twice, sends nothing where it would hurt, and asks only what the questions can ask. */
export const localList: CourseRule = ({ local }) => [
  ...local.flatMap((file) => {
    const known = FILES[nameOf(file)];
    return known === undefined ? unknownFile(file) : [...schemaFindings(file, known), ...[twice, dangers, missingWaste, limits, sizes].flatMap((rule) => rule(file))];
  }),
  ...sameHospital(local),
];
