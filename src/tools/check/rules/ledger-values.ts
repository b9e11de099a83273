import type { Finding } from "../finding.ts";
import type { Span } from "../located.ts";
import type { LedgerRecord, RevisionRecord } from "../json-file.ts";
import type { CourseRule } from "../rule.ts";

interface Fault {
  readonly found: string;
  readonly expected: string;
  /** The value as it should be written. */
  readonly value?: Readonly<Record<string, string>>;
  /** Or another field, with the text that it should have. */
  readonly instead?: { readonly field: "unit" | "state"; readonly text: string };
}

const number = (value: RevisionRecord["value"], part: string): number | null => (value[part] === undefined ? null : Number(value[part]));

const isLess = (first: number | null, second: number | null): boolean => first !== null && second !== null && first < second;

const ends = ({ value }: RevisionRecord): readonly Fault[] => {
  const { from = "", to = "" } = value;
  if (!isLess(number(value, "to"), number(value, "from"))) return [];
  return [{ found: `from ${from} to ${to}`, expected: "the smaller end first", value: { ...value, from: to, to: from } }];
};

const middle = ({ value }: RevisionRecord): readonly Fault[] =>
  ["mean", "median"].flatMap((part): readonly Fault[] => {
    const outside = isLess(number(value, part), number(value, "from")) || isLess(number(value, "to"), number(value, part));
    if (!outside || isLess(number(value, "to"), number(value, "from"))) return [];
    const { from, to } = value;
    return [{
      found: `${part} ${value[part]} outside ${from} to ${to}`,
      expected: `a ${part} between the ends of its range; look at the paper again, and print the range alone until then`,
      value: { from: from ?? "", to: to ?? "" },
    }];
  });

const spread = ({ value }: RevisionRecord): readonly Fault[] => {
  const sd = number(value, "sd");
  if (sd === null || sd > 0) return [];
  return [{ found: `sd ${value["sd"]}`, expected: "a spread above 0; a paper prints it behind ±", value: { ...value, sd: (value["sd"] ?? "").replace("-", "") } }];
};

const events = ({ value }: RevisionRecord): readonly Fault[] => {
  const { events: some = "", total = "" } = value;
  if (!isLess(number(value, "total"), number(value, "events"))) return [];
  return [{ found: `${some} events among ${total}`, expected: "no more events than there were people or knees", value: { events: total, total: some } }];
};

const share = ({ value }: RevisionRecord, unit: string): readonly Fault[] =>
  unit !== "%" || !Object.entries(value).some(([part, text]) => part !== "sd" && Number(text) > 100)
    ? []
    : [{ found: `${Object.values(value).join(", ")} %`, expected: "a share of at most 100 %; a ratio has the unit times", instead: { field: "unit", text: "times" } }];

const known = ({ state, value }: RevisionRecord): readonly Fault[] => {
  const isEmpty = Object.keys(value).length === 0;
  if (state === "not-found" && !isEmpty) return [{ found: 'a value in state "not-found"', expected: "no value where none was found, or the state in which it was seen", instead: { field: "state", text: "read" } }];
  if (state !== "" && state !== "not-found" && isEmpty) return [{ found: `no value in state "${state}"`, expected: 'a value, or the state "not-found": a number that nobody found is said so', instead: { field: "state", text: "not-found" } }];
  return [];
};

const written = (value: Readonly<Record<string, string>>): string => `{ ${Object.entries(value).map(([part, text]) => `"${part}": "${text}"`).join(", ")} }`;

const findingOf = ({ file, index, key }: LedgerRecord, place: number, fault: Fault): Finding => {
  const entry = ["entries", index];
  const path = [...entry, "revisions", place];
  const spanOf = (): Span => {
    if (fault.instead?.field === "unit") return file.located().spanOf([...entry, "unit"]);
    return file.located().spanOf([...path, fault.instead === undefined ? "value" : "state"]);
  };
  const span = spanOf();
  const text = fault.instead === undefined ? written(fault.value ?? {}) : `"${fault.instead.text}"`;
  return { source: file, offset: span.start, rule: "ledger value", found: `"${key}": ${fault.found}`, expected: fault.expected, edits: [{ ...span, text }] };
};

/** A value of the ledger is possible: its ends in order, its mean between them, its spread above 0, its share at most all. */
export const ledgerValues: CourseRule = (course) =>
  course.records.flatMap((record) =>
    record.revisions.flatMap((revision, place) => {
      if (record.file.value === undefined) return [];
      const faults = [...ends(revision), ...middle(revision), ...spread(revision), ...events(revision), ...share(revision, record.unit), ...known(revision)];
      return faults.map((fault) => findingOf(record, place, fault));
    }),
  );
