import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sha256Hex } from "../../src/engine/random/sha256.ts";
import { canonicalJson } from "../../src/engine/record/canonical.ts";
import { lineAfter, lineOf, lineText, logText, readLog, readLogText } from "../../src/engine/record/chain.ts";
import { calendarDay, momentMs } from "../../src/engine/record/day.ts";
import { isEvent } from "../../src/engine/record/event.ts";
import { bareEvent, chainOf } from "../support/events.ts";
import { howMany } from "../support/how-many.ts";

const SEED = 20261125;

describe("canonical JSON", () => {
  it("writes the example of RFC 8785, section 3.2.2, byte for byte", () => {
    // Rundgren, Jordan and Erdtman 2020, JSON Canonicalization Scheme, RFC 8785, 10.17487/RFC8785; the hash worked once in another language.
    const text = String.raw`{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","literals":[null,true,false]}`;
    const canonical = canonicalJson(JSON.parse(text));
    expect(canonical).toBe(String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`);
    expect(sha256Hex(canonical)).toBe("2d5e01a318d0f0879ab568c4be289c8b1f64ef8921a53c6277d5e069978baacb");
  });

  it("orders keys by UTF-16 units, as RFC 8785, section 3.2.3, does", () => {
    const keys = ["\u20ac", "\r", "\ufb33", "1", "\u{1f600}", "\u0080", "\u00f6"];
    const canonical = canonicalJson(Object.fromEntries(keys.map((key) => [key, ""])));
    expect(canonical).toBe(`{${["\r", "1", "\u0080", "\u00f6", "\u20ac", "\u{1f600}", "\ufb33"].map((key) => `${JSON.stringify(key)}:""`).join(",")}}`);
  });

  it(`does not depend on the order of keys, and reads back as the same value (seed ${SEED})`, () => {
    const shuffled = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(shuffled);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(Object.entries(value).reverse().map(([key, entry]) => [key, shuffled(entry)]));
    };
    fc.assert(fc.property(fc.jsonValue(), (value) => {
      const plain = JSON.parse(JSON.stringify(value)) as unknown;
      expect(canonicalJson(shuffled(plain))).toBe(canonicalJson(plain));
      expect(JSON.parse(canonicalJson(plain))).toEqual(plain);
    }), { seed: SEED, numRuns: 300 });
  });

  it("refuses what JSON cannot hold", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, () => 1, "\ud800", { a: { "\udc00": 1 } }]) expect(() => canonicalJson(value)).toThrow(RangeError);
  });
});

describe("the chain of a log", () => {
  const lines = chainOf([1, 2, 3, 4, 5].map((number) => bareEvent(number)));
  const texts = lines.map(lineText);

  it("names the line before in each line, and reads back whole", () => {
    expect(lines.map(({ event }) => event.prev)).toEqual(["", ...lines.slice(0, -1).map(({ hash }) => hash)]);
    expect(lines.every(({ event }) => isEvent(event))).toBe(true);
    expect(readLog(texts)).toEqual({ lines, findings: [], firstDamaged: null });
    expect(readLog([])).toEqual({ lines: [], findings: [], firstDamaged: null });
  });

  it(`finds every change of one character, in the line where it is (seed ${SEED})`, () => {
    fc.assert(fc.property(fc.nat(4), fc.nat(2000), fc.constantFrom("0", "a", "Z", "}", "é", " "), (which, at, sign) => {
      const text = texts[which] ?? "";
      const place = at % text.length;
      fc.pre(text[place] !== sign);
      const changed = `${text.slice(0, place)}${sign}${text.slice(place + 1)}`;
      const reading = readLog(texts.with(which, changed));
      // A sign in the hash of a line also cuts the line after it off.
      expect(reading.firstDamaged).toBe(which + 1);
      expect(reading.lines).toEqual(lines.toSpliced(which, 1));
      const [finding] = reading.findings;
      expect([finding?.isAside, finding?.text]).toEqual([true, changed]);
      expect(finding?.sentence).toContain(`Line ${which + 1} `);
    }), { seed: SEED, numRuns: howMany(400, 40) });
  });

  it("keeps the lines after a missing one and says where the gap is", () => {
    const reading = readLog(texts.toSpliced(2, 1));
    expect(reading.lines).toEqual(lines.toSpliced(2, 1));
    expect(reading.findings.map(({ line, fault, isAside }) => ({ line, fault, isAside }))).toEqual([{ line: 3, fault: "gap", isAside: false }]);
    expect(reading.firstDamaged).toBe(3);
  });

  it("reads the whole lines before a line that was cut off in the middle", () => {
    const reading = readLog([...texts.slice(0, 4), (texts[4] ?? "").slice(0, 150)]);
    expect(reading.lines).toEqual(lines.slice(0, 4));
    expect(reading.findings.map(({ line, fault }) => ({ line, fault }))).toEqual([{ line: 5, fault: "unreadable" }]);
  });

  it("sets a line of a newer edition aside without calling it damaged, and keeps what follows it", () => {
    const newer = { ...lines[4]?.event, kind: "spoken", mood: "calm", prev: lines[4]?.hash };
    const hash = sha256Hex(canonicalJson(newer));
    const after = lineOf({ ...bareEvent(7), prev: hash });
    const reading = readLog([...texts, `${hash} ${canonicalJson(newer)}`, lineText(after)]);
    expect(reading.findings.map(({ line, fault, isAside }) => ({ line, fault, isAside }))).toEqual([{ line: 6, fault: "newer", isAside: true }]);
    expect(reading.firstDamaged).toBeNull();
    expect(reading.lines).toEqual([...lines, after]);
  });

  it("counts a line once that stands twice, and passes over empty lines", () => {
    expect(readLog([...texts, "", ...texts, "  "])).toEqual({ lines, findings: [], firstDamaged: null });
  });

  it("keeps an answer whatever was pasted into it", () => {
    const line = lineAfter(null, bareEvent(1, { response: { kind: "sum", text: "\ud83d 12 \u0000 \r\n \u2028" } }));
    expect(readLogText(logText([line]))).toEqual({ lines: [line], findings: [], firstDamaged: null });
  });

  it("reads a file back whatever a mail or an editor made of its line ends", () => {
    const file = logText(lines);
    for (const text of [file, file.replaceAll("\n", "\r\n"), file.trimEnd(), `\ufeff${file}`]) expect(readLogText(text).lines).toEqual(lines);
    expect(readLogText("")).toEqual({ lines: [], findings: [], firstDamaged: null });
    expect(readLogText("a letter\nfrom someone").findings.map(({ fault, line }) => [fault, line])).toEqual([["unreadable", 1], ["unreadable", 2]]);
  });
});

describe("the learner's day", () => {
  it("agrees with the calendar of the language for every day of four centuries", () => {
    // ECMA-262, Date.UTC: the proleptic Gregorian calendar.
    for (let day = -135_140; day < 160_000; day += 1) {
      const at = new Date(day * 86_400_000 + 43_200_000).toISOString();
      if (momentMs(at) !== day * 86_400_000 + 43_200_000) expect(at).toBe("counted right");
    }
    expect(calendarDay("2027-02-03T10:15:00Z", "0")).toBe(Date.UTC(2027, 1, 3) / 86_400_000);
  });

  it("turns at the learner's own midnight, by the offset that the event holds", () => {
    const noon = calendarDay("2027-02-03T12:00:00Z", "0") ?? 0;
    expect(calendarDay("2027-02-03T22:59:59.999Z", "60")).toBe(noon);
    expect(calendarDay("2027-02-03T23:00:00Z", "60")).toBe(noon + 1);
    expect(calendarDay("2027-02-03T02:00:00Z", "-180")).toBe(noon - 1);
  });

  it("knows no moment that a calendar does not have", () => {
    for (const at of ["2027-02-29T10:00:00Z", "2027-13-01T10:00:00Z", "2027-04-31T10:00:00Z", "2027-04-00T10:00:00Z", "2027-04-01T24:00:00Z", "yesterday"]) expect(momentMs(at)).toBeNull();
    expect(momentMs("2028-02-29T10:00:00Z")).not.toBeNull();
  });
});
