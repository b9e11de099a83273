import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { accountOf } from "../../src/engine/cohort/account.ts";
import { COHORT_CSV, cohortCsv } from "../../src/engine/cohort/cohort-csv.ts";
import { cohortText, isPaper, readCohort } from "../../src/engine/cohort/cohort-file.ts";
import { csvText, textIn } from "../../src/engine/cohort/csv.ts";
import type { Mark, Paper } from "../../src/engine/cohort/paper.ts";
import { statementsOf, type StatementSettings } from "../../src/engine/cohort/xapi.ts";
import { sha1Hex } from "../../src/engine/random/sha1.ts";
import { nameUuid } from "../../src/engine/record/name-uuid.ts";
import { cohortSchema, paperSchema } from "../../src/schemas/cohort.ts";
import { readCsv } from "../support/csv-reader.ts";
import { howMany } from "../support/how-many.ts";
import { markOf, paperOf } from "../support/papers.ts";
import { statementSchema } from "../support/xapi-schema.ts";

const SEED = 20261130;
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("a table for spreadsheets", () => {
  it("is written as the OWASP page on CSV injection shows it", () => {
    // OWASP Foundation, CSV Injection: its two examples, in single cells.
    expect(csvText([['=1+2";=1+2']], ",")).toBe('\ufeff"\'=1+2"";=1+2"\r\n');
    expect(csvText([["=1+2'\" ;,=1+2"]], ",")).toBe('\ufeff"\'=1+2\'"" ;,=1+2"\r\n');
  });

  it("makes a text inert that begins like a formula, also in wide letters and behind what nobody sees", () => {
    const signs = ["=", "+", "-", "@", "\uff1d", "\uff0b", "\uff0d", "\uff20", "\u2212"];
    const texts = ["\t1", "\r1", "\n1"].concat(signs.flatMap((sign) => [`${sign}1+1`, ` ${sign}1`, `\u00a0${sign}1`, `\u200b${sign}1`, `\ufeff${sign}1`, `\u0000${sign}1`]));
    const [cells = []] = readCsv(csvText([texts], ","), ",");
    expect(cells.filter((cell) => !cell.startsWith("'"))).toEqual([]);
    expect(cells.map(textIn)).toEqual(texts);
  });

  it("leaves its own numbers alone, with the decimal mark that goes with the separator", () => {
    expect(csvText([[-3.5, 0.1 + 0.2, 0, -0, 1e-9, 12]], ",")).toBe('\ufeff"-3.5","0.3","0","0","0","12"\r\n');
    expect(csvText([[-3.5, 12, null, "x"]], ";")).toBe('\ufeff"-3,5";"12";"";"x"\r\n');
    expect(() => csvText([[Number.NaN]], ",")).toThrow("value must be a finite number, got NaN");
  });

  const sign = fc.constantFrom("=", "+", "-", "@", "\t", "\r", "\n", '"', "'", ",", ";", "\uff1d", "\uff20", "|", "cmd", " ", "\u200b", "\ud800", "a", "1", ".");
  const cell = fc.oneof(fc.string({ unit: "binary", maxLength: 12 }), fc.array(sign, { maxLength: 8 }).map((parts) => parts.join("")));

  it(`comes back whole and holds nothing that computes, whatever is written into 10 000 cells (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.array(fc.array(cell, { minLength: 4, maxLength: 4 }), { minLength: 5, maxLength: 5 }), fc.constantFrom(",", ";"), (rows, separator) => {
      const back = readCsv(csvText(rows, separator as "," | ";"), separator);
      expect(back.map((row) => row.map(textIn))).toEqual(rows.map((row) => row.map((text) => text.toWellFormed())));
      expect(back.flat().filter((text) => /^[\s\p{Cc}\p{Cf}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(text) || /^[\t\r\n]/.test(text))).toEqual([]);
    }), { seed: SEED, numRuns: howMany(500, 500) });
  });
});

const paper = paperOf("heron-41", [
  markOf({ slot: 1, family: "greatest-depth", module: "M10", objective: "m10-greatest", seed: "00000000000000000000000000000007", verdict: "unsafe-side", slip: "width-twice" }),
  markOf({ slot: 2, family: "window", module: "M10", objective: "m10-window", seed: "8", score: 1 }),
  markOf({ slot: 3, family: "window", seed: "9", verdict: "not-recognised", score: 0 }),
], { place: "Hythe Vale", list: "7F3K" });

describe("the table of a cohort", () => {
  it("has a line for each answer and the cautions below", () => {
    const rows = readCsv(cohortCsv([paper], { notes: ["C12 read as study", "=C6"], separator: ";" }), ";");
    expect(rows[0]?.slice(0, 8)).toEqual(["form", "list", "learner", "account", "place", "attempt", "handed in", "question"]);
    expect(rows[1]).toEqual([COHORT_CSV, "7F3K", "heron-41", accountOf("7F3K", "heron-41"), "Hythe Vale", "1", "2026-11-20T10:00:00Z", "2", "1", "M10", "m10-greatest", "greatest-depth", "1", "unsafe-side", "0", "width-twice", "yes"]);
    expect(rows.slice(4)).toEqual([["note", "C12 read as study"], ["note", "'=C6"]]);
  });

  it("keeps a learner code inert that was typed as a formula", () => {
    const rows = readCsv(cohortCsv([paperOf("=HYPERLINK(\"x\")", [markOf()], { place: "@SUM(1)" })], { notes: [], separator: "," }), ",");
    expect([rows[1]?.[2], rows[1]?.[4]]).toEqual(["'=HYPERLINK(\"x\")", "'@SUM(1)"]);
  });
});

const saved = (papers: readonly Paper[]): string => cohortText({ edition: "0.1.0", madeAt: "2026-11-30T10:00:00Z", notes: ["C12"], papers });
const text = fc.string({ maxLength: 20 });
const papers: fc.Arbitrary<readonly Paper[]> = fc.array(fc.record({
  learner: text, place: fc.option(text), list: text, attempt: fc.nat(9), handedInAt: text,
  marks: fc.array(fc.record({ slot: fc.nat(99), family: text, version: fc.nat(9), module: text, objective: text, seed: text, verdict: fc.constantFrom("right", "unsafe-side", "rounding"), score: fc.integer({ min: 0, max: 100 }).map((part) => part / 100), slip: fc.option(text), unsafe: fc.boolean(), try: fc.nat(9) }), { maxLength: 5 }),
}), { maxLength: 6 });

describe("the file of a cohort", () => {
  it(`comes back as it was written, and keeps the published form (seed ${SEED})`, () => {
    fc.assert(fc.property(papers, (all) => {
      const written = saved(all);
      expect(readCohort(written)).toEqual({ fault: null, papers: all, aside: [], edition: "0.1.0" });
      expect(cohortSchema.safeParse(JSON.parse(written)).success).toBe(true);
    }), { seed: SEED, numRuns: howMany(300, 30) });
  });

  it("is the same text for the same papers, whatever the order of their fields", () => {
    const turned = Object.fromEntries(Object.entries(paper).reverse()) as unknown as Paper;
    expect(saved([turned])).toBe(saved([paper]));
  });

  it("says what is wrong with another file, and never throws", () => {
    const faultOf = (written: string) => readCohort(written).fault;
    expect(["", "{", "null", "[]", "7", '{"papers":[]}', '{"form":"x","papers":[]}', '{"form":"small-knee-workbook/cohort/2","papers":[]}'].map(faultOf)).toEqual(["no-json", "no-json", "other-file", "other-file", "other-file", "other-file", "other-file", "other-form"]);
    expect(faultOf(`{"form":"small-knee-workbook/cohort/1","papers":[${Array(5001).fill("1").join()}]}`)).toBe("too-many");
    expect(faultOf(" ".repeat(60_000_001))).toBe("too-long");
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (any) => readCohort(any).fault !== null), { seed: SEED, numRuns: howMany(500, 50) });
  });

  it("takes as many papers as it may, and an edition only where it is a text", () => {
    expect(readCohort(`{"form":"small-knee-workbook/cohort/1","papers":[${Array(5000).fill("1").join()}]}`)).toMatchObject({ fault: null, papers: [], edition: "" });
    for (const edition of ['"0.1.0"', "7", `"${"x".repeat(201)}"`]) expect(readCohort(`{"form":"small-knee-workbook/cohort/1","edition":${edition},"papers":[]}`)).toMatchObject({ edition: edition === '"0.1.0"' ? "0.1.0" : "" });
  });

  it("refuses a file that names more than a course has, since no page could show it", () => {
    const named = (count: number, of: (at: number) => Partial<Mark>): string => {
      const marks = Array.from({ length: count }, (_, at) => markOf({ slot: at, ...of(at) }));
      return saved(Array.from({ length: Math.ceil(count / 500) }, (_, at) => paperOf(`l${at}`, marks.slice(500 * at, 500 * at + 500))));
    };
    expect([600, 601].map((count) => readCohort(named(count, (at) => ({ objective: `o${at}` }))).fault)).toEqual([null, "too-many-names"]);
    expect([600, 601].map((count) => readCohort(named(count, (at) => ({ family: `f${at}` }))).fault)).toEqual([null, "too-many-names"]);
    expect([3000, 3001].map((count) => readCohort(named(count, (at) => ({ slip: `s${at}` }))).fault)).toEqual([null, "too-many-names"]);
    expect(readCohort(saved(Array.from({ length: 601 }, (_, at) => paperOf("a", [], { list: `l${at}` })))).fault).toBe("too-many-names");
  });

  it("sets a damaged paper aside by its place and keeps the others", () => {
    const broken = saved([paper, paper]).replace('"score":0', '"score":7');
    expect(readCohort(broken)).toMatchObject({ fault: null, papers: [paper], aside: [1] });
  });

  it(`is guarded as its schema says, whole and damaged (seed ${SEED})`, () => {
    const swaps = [null, 7, -1, 1.5, "x".repeat(201), true, [], {}, { length: 1 }];
    const damaged = [...Object.keys(paper).flatMap((key) => swaps.map((value) => ({ ...paper, [key]: value }))),
      ...Object.keys(markOf()).flatMap((key) => swaps.map((value) => ({ ...paper, marks: [{ ...markOf(), [key]: value }] }))), { ...paper, more: 1 }, { ...paper, marks: [{ ...markOf(), more: 1 }] }];
    expect(damaged.filter((value) => isPaper(value) !== paperSchema.safeParse(value).success)).toEqual([]);
    expect(damaged.filter(isPaper).length).toBeLessThan(damaged.length / 2);
    fc.assert(fc.property(fc.anything({ maxDepth: 3 }), (value) => isPaper(value) === paperSchema.safeParse(value).success), { seed: SEED, numRuns: 300 });
  });
});

describe("names made by a hash", () => {
  it("are those of the standard", () => {
    // FIPS 180-4, examples; RFC 9562, appendix A.4: version 5 of www.example.com among domain names.
    expect(sha1Hex(utf8("abc"))).toBe("a9993e364706816aba3e25717850c26c9cd0d89d");
    expect(sha1Hex(utf8(""))).toBe("da39a3ee5e6b4b0d3255bfef95601890afd80709");
    expect(nameUuid("6ba7b810-9dad-11d1-80b4-00c04fd430c8", "www.example.com")).toBe("2ed6657d-e927-568b-95e1-2665a8aea6a2");
  });

  it("come from a hash that agrees with the platform's at every length around a block", () => {
    const texts = [...Array.from({ length: 130 }, (_, length) => "k".repeat(length)), "Knie – 7,2 mm", "🦵".repeat(40)];
    expect(texts.filter((one) => sha1Hex(utf8(one)) !== createHash("sha1").update(one).digest("hex"))).toEqual([]);
  });
});

describe("statements of the Experience API", () => {
  const settings: StatementSettings = {
    home: "https://knee.example.org/course/", platform: "Small Knee Workbook 0.1.0", language: "en-GB", note: "Read as study.",
    detailOf: ({ family }) => (family === "window" ? { title: "Window, or none", accepted: { from: "12", to: "14.4" } } : null),
  };
  const statements = statementsOf([paper], settings);

  it("have the shape of version 1.0.3", () => {
    // xAPI 1.0.3, part two, 2.2 and 2.4, as a schema of our own that refuses every other property.
    expect(statements.map((statement) => statementSchema.safeParse(statement).error?.message ?? "")).toEqual(["", "", ""]);
    expect(JSON.stringify(statements)).not.toMatch(/null|\{\}|\[\]/);
    expect(statements[1]).toMatchObject({ verb: { id: "http://adlnet.gov/expapi/verbs/answered" }, object: { definition: { interactionType: "numeric", correctResponsesPattern: ["12[:]14.4"] } }, result: { success: true, score: { scaled: 1 } }, timestamp: "2026-11-20T10:00:00Z" });
    expect(statements[0]).toMatchObject({ object: { definition: { interactionType: "other" } }, result: { success: false, extensions: { "https://knee.example.org/course/xapi/slip": "width-twice" } } });
  });

  it("say that a list was completed, and never that it was passed", () => {
    expect(statements[2]).toMatchObject({ verb: { id: "http://adlnet.gov/expapi/verbs/completed" }, result: { completion: true, extensions: { "https://knee.example.org/course/xapi/answered": 2, "https://knee.example.org/course/xapi/unsafe-side": 1 } }, context: { extensions: { "https://knee.example.org/course/xapi/note": "Read as study." } } });
    expect(JSON.stringify(statements)).not.toMatch(/passed|failed|mastered/);
  });

  it("name nobody: the account is a hash of list and code", () => {
    expect(JSON.stringify(statements)).not.toContain("heron-41");
    expect(new Set(statements.map(({ actor }) => JSON.stringify(actor)))).toEqual(new Set([JSON.stringify({ objectType: "Agent", account: { homePage: settings.home, name: accountOf("7F3K", "heron-41") } })]));
    expect(accountOf("7F3K", "heron-41")).not.toBe(accountOf("7F3L", "heron-41"));
  });

  it("have the same ids whenever they are made, and another where the mark is another", () => {
    expect(statementsOf([paper], settings)).toEqual(statements);
    const regraded = statementsOf([{ ...paper, marks: paper.marks.map((mark) => ({ ...mark, verdict: "right" as const })) }], settings);
    expect(regraded[0]?.id).not.toBe(statements[0]?.id);
    expect(new Set(statements.map(({ id }) => id)).size).toBe(3);
    expect(new Set(statements.map(({ context }) => (context as { registration: string }).registration)).size).toBe(1);
  });

  it("carry the share of a score, and refuse what is none", () => {
    const scored = (score: number) => statementsOf([{ ...paper, marks: [markOf({ verdict: "safe-side", score })] }], settings);
    expect(scored(0.25)[0]).toMatchObject({ result: { success: false, completion: true, score: { scaled: 0.25 } }, timestamp: "2026-11-20T10:00:00Z" });
    expect(scored(0.25)[1]).toMatchObject({ timestamp: "2026-11-20T10:00:00Z" });
    for (const score of [-0.1, 1.1, Number.NaN]) expect(() => scored(score)).toThrow(`score must be at least 0 and at most 1, got ${score}`);
  });

  it("leave out a moment that is none, and refuse a home that is none", () => {
    for (const statement of statementsOf([{ ...paper, handedInAt: "yesterday" }], settings)) expect(statement).not.toHaveProperty("timestamp");
    expect(() => statementsOf([paper], { ...settings, home: "knee" })).toThrow("home must be an address that ends in a stroke, got knee");
  });

  it(`keep the shape whatever a code or list is called (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 20 }), fc.string({ unit: "binary", minLength: 1, maxLength: 20 }), (learner, list) => {
      expect(statementsOf([{ ...paper, learner, list }], settings).filter((statement) => !statementSchema.safeParse(statement).success)).toEqual([]);
    }), { seed: SEED, numRuns: howMany(200, 20) });
  });
});
