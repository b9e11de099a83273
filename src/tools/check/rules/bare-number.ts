import { unitNamed } from "../../../engine/quantity/units.ts";
import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { newestOf } from "../json-file.ts";
import { type FileRule, quoted } from "../rule.ts";
import { numbersIn, type WrittenNumber } from "../number-words.ts";

const rule = "number beside a unit";

/** Digits without the zeros that change nothing: 17.0 is 17. */
const bare = (text: string): string => (text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text);
const same = (first: string | undefined, second: string): boolean => first !== undefined && bare(first) === bare(second);

interface Match {
  readonly key: string;
  readonly part: string;
}

const matchesOf = (course: Course, unit: string, fits: (value: Readonly<Record<string, string>>) => string | null): readonly Match[] =>
  course.records.flatMap((record) => {
    const part = record.unit === unit ? fits(newestOf(record)?.value ?? {}) : null;
    return part === null ? [] : [{ key: record.key, part }];
  });

/** Entries whose value is one number: their mean, their spread, or the value itself. */
const singleMatches = (course: Course, unit: string, number: string): readonly Match[] =>
  matchesOf(course, unit, (value) => {
    if (same(value["mean"], number)) return ' part="mean"';
    if (same(value["sd"], number)) return ' part="sd"';
    return same(value["value"], number) || same(value["median"], number) ? "" : null;
  });

/** Entries whose value is this pair: mean and spread, or from and to. */
const pairMatches = (course: Course, unit: string, { join, numbers }: WrittenNumber): readonly Match[] => {
  const [first = "", second = ""] = numbers;
  return matchesOf(course, unit, (value) => {
    if (join === "plusMinus") return same(value["mean"], first) && same(value["sd"], second) ? ' part="both"' : null;
    return same(value["from"], first) && same(value["to"], second) ? "" : null;
  });
};

const numTag = ({ key, part }: Match): string => `<Num of="${key}"${part} />`;

interface Advice {
  readonly text: string;
  readonly candidates: readonly string[];
}

const adviceForOne = (course: Course, unit: string, number: string): Advice => {
  const matches = singleMatches(course, unit, number);
  const [only] = matches;
  const candidates = matches.map(({ key }) => key);
  if (only !== undefined && matches.length === 1) return { text: numTag(only), candidates };
  return { text: `<Ours value="${number}" unit="${unit}" />`, candidates };
};

const JOINS: Readonly<Record<WrittenNumber["join"], string>> = { "": "", range: " to ", plusMinus: " ± ", and: " and " };

const adviceFor = (course: Course, written: WrittenNumber): Advice => {
  const unit = unitNamed(written.unit) ?? written.unit;
  const pairs = written.numbers.length === 2 ? pairMatches(course, unit, written) : [];
  const [pair] = pairs;
  if (pair !== undefined && pairs.length === 1) return { text: numTag(pair), candidates: [pair.key] };
  const each = written.numbers.map((number) => adviceForOne(course, unit, number));
  return { text: each.map(({ text }) => text).join(JOINS[written.join]), candidates: each.flatMap(({ candidates }) => candidates) };
};

const expectation = (written: WrittenNumber, { text, candidates }: Advice): string => {
  const unknown = unitNamed(written.unit) === null ? `; "${written.unit}" is not yet a unit of src/engine/quantity/units.ts` : "";
  const comma = written.comma ? "; a point, not a comma, before the decimals" : "";
  const names = [...new Set(candidates)];
  if (text.includes("<Num") || names.length === 0) {
    const tag = text.includes("<Num") ? "the ledger's tag, which carries source and caution, or <Ours> where it is a number of the invented case" : "a tag: <Num> for a published value, <Ours> for a number of the invented case";
    return `${tag}${comma}${unknown}`;
  }
  return `a tag; the ledger has this value as ${names.slice(0, 4).join(", ")}: <Num> if one of them is meant, <Ours> for the invented case${comma}${unknown}`;
};

/** Every number beside a unit stands in a tag, so that its source, its caution and its space come with it. */
export const bareNumber: FileRule = (file, course) =>
  numbersIn(file.prose).map((written): Finding => {
    const advice = adviceFor(course, written);
    return {
      source: file,
      offset: written.start,
      rule,
      found: quoted(file.text.slice(written.start, written.end)),
      expected: expectation(written, advice),
      edits: [{ start: written.start, end: written.end, text: advice.text }],
    };
  });
