import { existsSync, readFileSync } from "node:fs";
import type { SourceText } from "./finding.ts";
import { type Located, locate } from "./located.ts";

/** A JSON file; `value` is undefined where it cannot be read. Places are looked up only when asked for. */
export interface JsonFile extends SourceText {
  readonly value: unknown;
  readonly missing: boolean;
  readonly located: () => Located;
}

export const readJson = (path: string, shown: string): JsonFile => {
  const missing = !existsSync(path);
  return jsonFile({ file: shown, text: missing ? "" : readFileSync(path, "utf8") }, missing);
};

/** A JSON file from its text. */
export const jsonFile = (source: SourceText, missing = false): JsonFile => {
  let located: Located | null = null;
  const find = (): Located => {
    located ??= locate(source.text);
    return located;
  };
  try {
    return { ...source, missing, value: JSON.parse(source.text) as unknown, located: find };
  } catch {
    return { ...source, missing, value: undefined, located: find };
  }
};

type Bag = Readonly<Record<string, unknown>>;

/** A revision of a ledger entry, as far as it can be read. */
export interface RevisionRecord {
  readonly revision: number;
  readonly state: string;
  readonly value: Readonly<Record<string, string>>;
  readonly source: string;
  readonly formula: string;
  readonly parents: readonly string[];
  readonly replacedBy: number | null;
}

/** A ledger entry, as far as it can be read: a faulty entry must not hide the faults of others. */
export interface LedgerRecord {
  readonly file: JsonFile;
  /** Place in the file's list. */
  readonly index: number;
  readonly key: string;
  readonly unit: string;
  readonly method: string;
  readonly adult: boolean;
  readonly ages: { readonly from: number; readonly to: number } | null;
  readonly revisions: readonly RevisionRecord[];
}

const bag = (value: unknown): Bag => (typeof value === "object" && value !== null ? (value as Bag) : {});
const text = (value: unknown): string => (typeof value === "string" ? value : "");
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const isText = (value: unknown): value is string => typeof value === "string";

const revisionOf = (raw: unknown): RevisionRecord => {
  const from = bag(raw);
  const value = Object.entries(bag(from["value"])).filter((pair): pair is [string, string] => isText(pair[1]));
  return {
    revision: Number(from["revision"]),
    state: text(from["state"]),
    value: Object.fromEntries(value),
    source: text(from["source"]),
    formula: text(from["formula"]),
    parents: list(from["parents"]).filter(isText),
    replacedBy: typeof from["replacedBy"] === "number" ? from["replacedBy"] : null,
  };
};

/** Entries of one ledger file. */
export const recordsIn = (file: JsonFile): readonly LedgerRecord[] =>
  list(bag(file.value)["entries"]).map((raw, index) => {
    const from = bag(raw);
    const population = bag(from["population"]);
    const ages = bag(population["ages"]);
    const known = typeof ages["from"] === "number" && typeof ages["to"] === "number";
    return {
      file,
      index,
      key: text(from["key"]),
      unit: text(from["unit"]),
      method: text(from["method"]),
      adult: population["adult"] === true,
      ages: known ? { from: Number(ages["from"]), to: Number(ages["to"]) } : null,
      revisions: list(from["revisions"]).map(revisionOf),
    };
  });

/** The newest revision of an entry. */
export const newestOf = (record: LedgerRecord): RevisionRecord | undefined => record.revisions.at(-1);

/** The entry that "key" or "key@2" names, and whether that revision exists. */
export const recordNamed = (
  records: readonly LedgerRecord[],
  name: string,
): { readonly record?: LedgerRecord; readonly revision?: RevisionRecord } => {
  const [key, pin] = name.split("@");
  const record = records.find((each) => each.key === key);
  if (record === undefined) return {};
  const revision = pin === undefined ? newestOf(record) : record.revisions.find((each) => String(each.revision) === pin);
  return revision === undefined ? { record } : { record, revision };
};
