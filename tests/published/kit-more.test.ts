import fc from "fast-check";
import jstat from "jstat";
import { describe, expect, it } from "vitest";
import { daysInMonth } from "../../src/engine/kit/days-in-month.ts";
import { expiry } from "../../src/engine/kit/expiry.ts";
import { gs1CheckDigit } from "../../src/engine/kit/gs1-check-digit.ts";
import { gs1Elements } from "../../src/engine/kit/gs1-elements.ts";
import { multisetDifference } from "../../src/engine/kit/multiset-difference.ts";
import { reconcileByClass } from "../../src/engine/kit/reconcile-by-class.ts";
import { sparesNeeded } from "../../src/engine/kit/spares-needed.ts";
import { usablePacks } from "../../src/engine/kit/usable-packs.ts";
import { type Calculator, examplesOf, placesOf } from "../support/legal-calls.ts";

// The package has no names of its own for the plain loader of Node, which the runner of mutants uses.
const { jStat } = jstat;

const CALCULATORS: readonly Calculator[] = [
  { file: "kit/multiset-difference", run: multisetDifference, legal: [[], []] },
  { file: "kit/expiry", run: expiry, legal: ["2027-03", { thisYear: 2026 }] },
  { file: "kit/usable-packs", run: usablePacks, legal: [[], { day: "2026-03-02" }] },
  { file: "kit/gs1-elements", run: gs1Elements, legal: ["(10)A1"] },
  { file: "kit/spares-needed", run: sparesNeeded, legal: [{ cases: 6, failureShare: 0.02, level: 0.95 }] },
  {
    file: "kit/reconcile-by-class",
    run: reconcileByClass,
    legal: [{ needles: { opening: 4, added: 2, handedOff: 1, present: 5, notWhole: 0 } }],
  },
];

const SEED = 20_260_304;
const check = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T>): void => {
  fc.assert(property, { seed: SEED, numRuns: 300 });
};

describe("the last day of a printed date", () => {
  it.each([
    // A system that verifies medicines writes: 210331 and 210300 are the same expiry. ISO 15223-1:2021: a month means its end.
    ["210331", "2021-03-31"],
    ["210300", "2021-03-31"],
    ["2027-03", "2027-03-31"],
    ["03/2027", "2027-03-31"],
    ["2027-03-31", "2027-03-31"],
    ["31 MAR 2027", "2027-03-31"],
    ["1-feb-2028", "2028-02-01"],
    [" Mar 2027 ", "2027-03-31"],
    ["31/03/2027", "2027-03-31"],
    ["03/31/2027", "2027-03-31"],
    ["05.05.2027", "2027-05-05"],
    ["280200", "2028-02-29"],
    ["270200", "2027-02-28"],
  ])("of %s is %s", (text, lastDay) => {
    expect(expiry(text, { thisYear: 2026 })).toEqual({ lastDay });
  });

  it.each([
    ["04/05/2027", "ambiguous"],
    ["2027-02-29", "no-such-day"],
    ["2027-03-00", "no-such-day"],
    ["31 APR 2027", "no-such-day"],
    ["00 MAR 2027", "no-such-day"],
    ["13/2027", "no-such-day"],
    ["271301", "no-such-day"],
    ["13/14/2027", "no-such-day"],
    ["MRZ 2027", "no-such-day"],
    ["03/27", "not-a-date"],
    ["2027", "not-a-date"],
    ["2703001", "not-a-date"],
    ["", "not-a-date"],
  ])("is refused for %j: %s", (text, refused) => {
    expect(expiry(text, { thisYear: 2026 })).toEqual({ refused });
  });

  it("takes two digits of a year from 49 back to 50 ahead", () => {
    // GS1 General Specifications, century of a two-digit year; from memory.
    for (const thisYear of [1999, 2000, 2026, 2049, 2051, 2099]) {
      for (let ahead = -49; ahead <= 50; ahead += 1) {
        const year = thisYear + ahead;
        expect(expiry(`${String(year % 100).padStart(2, "0")}0615`, { thisYear })).toEqual({ lastDay: `${year}-06-15` });
      }
    }
  });

  it(`is the same day in every form, by the calendar of the language (seed ${SEED})`, () => {
    // Second method: Date in UTC, ECMA-262.
    const day = fc.integer({ min: Date.UTC(2000, 0, 1) / 86_400_000, max: Date.UTC(2070, 0, 1) / 86_400_000 });
    check(fc.property(day, (days) => {
      const iso = new Date(days * 86_400_000).toISOString().slice(0, 10);
      const [year = "", month = "", date = ""] = iso.split("-");
      const read = (text: string) => expiry(text, { thisYear: 2026 });
      expect(read(iso)).toEqual({ lastDay: iso });
      expect(read(`${year.slice(2)}${month}${date}`)).toEqual({ lastDay: iso });
      const end = new Date(Date.UTC(Number(year), Number(month), 0)).toISOString().slice(0, 10);
      expect(read(`${year}-${month}`)).toEqual({ lastDay: end });
      expect(read(`${year.slice(2)}${month}00`)).toEqual({ lastDay: end });
      expect(daysInMonth(Number(year), Number(month))).toBe(Number(end.slice(8)));
      const both = [read(`${date}/${month}/${year}`), read(`${month}/${date}/${year}`)];
      const tells = Number(date) > 12 || date === month;
      expect(both).toEqual(tells ? [{ lastDay: iso }, { lastDay: iso }] : [{ refused: "ambiguous" }, { refused: "ambiguous" }]);
    }));
  });
});

describe("packs on the day of the list", () => {
  const packs = [
    { id: "month", expires: "03/2027" },
    { id: "today", expires: "2027-03-02" },
    { id: "yesterday", expires: "1 MAR 2027" },
    { id: "swapped", expires: "04/03/2027" },
    { id: "barcode", expires: "270300" },
  ];

  it("are used on their last day, first to expire first, and never where the date is in doubt", () => {
    expect(usablePacks(packs, { day: "2027-03-02" })).toEqual({ usable: ["today", "month", "barcode"], expired: ["yesterday"], unread: ["swapped"] });
  });

  it("only fall away as the days go by", () => {
    let before = packs.length;
    for (let date = 1; date <= 31; date += 1) {
      const { usable, expired, unread } = usablePacks(packs, { day: `2027-03-${String(date).padStart(2, "0")}` });
      expect(usable.length).toBeLessThanOrEqual(before);
      expect(usable.length + expired.length + unread.length).toBe(packs.length);
      before = usable.length;
    }
    expect(usablePacks(packs, { day: "2027-04-01" }).usable).toEqual([]);
  });

  it.each(["2027-02-30", "2027-03", "270302"])("need a day, and %j is none", (day) => {
    expect(() => usablePacks(packs, { day })).toThrow(new RangeError(`day must be a day written as YYYY-MM-DD, got ${day}`));
  });

  it("need texts for dates", () => {
    expect(() => usablePacks([{ id: "a", expires: Number.NaN as unknown as string }], { day: "2027-03-02" })).toThrow("packs[0].expires must be a printed date, got NaN");
  });
});

/** FDA 2017, UDI formats by issuing agency, version 1.3: the sample string of GS1. */
const FDA = "(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234";
const FDA_ELEMENTS = [
  { ai: "01", value: "51022222233336" },
  { ai: "11", value: "141231" },
  { ai: "17", value: "150707" },
  { ai: "10", value: "A213B1" },
  { ai: "21", value: "1234" },
];

describe("a GS1 string", () => {
  it("of the agency's sample has its five elements, printed or stored", () => {
    expect(gs1Elements(FDA)).toEqual({ elements: FDA_ELEMENTS });
    expect(gs1Elements("01510222222333361114123117150707" + "10A213B1\u001d211234")).toEqual({ elements: FDA_ELEMENTS });
    // Lengths in the same document: 66 characters of values at most, 76 with the identifiers.
    const reading = gs1Elements(FDA.replace("A213B1", "A".repeat(20)).replace(/1234$/, "1".repeat(20)));
    const elements = "elements" in reading ? reading.elements : [];
    expect(elements.map(({ value }) => value).join("")).toHaveLength(66);
    expect(elements.map(({ ai, value }) => ai + value).join("")).toHaveLength(76);
  });

  it("reads the digits of the GS1 leaflet as a device identifier of fourteen", () => {
    // GS1 leaflets: 6291041500213 (GTIN-13) with its zero in front.
    expect(gs1Elements("(01)06291041500213")).toEqual({ elements: [{ ai: "01", value: "06291041500213" }] });
  });

  it.each([
    ["", "empty", 0],
    ["\u001d", "empty", 0],
    ["(01)51022222233337", "check-digit", 0],
    ["(01)5102222223333", "wrong-length", 0],
    ["(01)5102222223333X", "wrong-character", 0],
    ["(17)150732", "no-such-day", 0],
    ["(17)270229", "no-such-day", 0],
    ["(10)A(17)151301", "no-such-day", 5],
    ["(17)15O707", "wrong-character", 0],
    ["(10)", "wrong-length", 0],
    [`(10)${"A".repeat(21)}`, "wrong-length", 0],
    ["(10)A B", "wrong-character", 0],
    ["(10)A(10)B", "repeated", 5],
    ["(10)A(37)5", "unknown-identifier", 5],
    ["(99)A", "unknown-identifier", 0],
    ["(x)(10)A", "unknown-identifier", 0],
    ["1715070", "wrong-length", 0],
    ["17150707\u001d10A\u001d99B", "unknown-identifier", 13],
    ["10A\u001d", null, 0],
  ])("%j gives %s at %d", (text, error, at) => {
    const reading = gs1Elements(text);
    expect("error" in reading ? reading : { error: null, at: 0 }).toEqual({ error, at });
  });

  it("lets a missing separator show: the next element is read as part of the lot", () => {
    expect(gs1Elements("10A213B1211234")).toEqual({ elements: [{ ai: "10", value: "A213B1211234" }] });
  });

  it(`reads back what was written, in both forms and any order (seed ${SEED})`, () => {
    const key = fc.stringMatching(/^\d{13}$/).map((digits) => ({ ai: "01", value: `${digits}${gs1CheckDigit(digits)}` }));
    const date = fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 28 }));
    const dated = (ai: string) => date.map((parts) => ({ ai, value: parts.map((part) => String(part).padStart(2, "0")).join("") }));
    const free = (ai: string) => fc.stringMatching(/^[!"%&'*+,\-./0-9:;<=>?A-Z_a-z]{1,20}$/).map((value) => ({ ai, value }));
    const all = fc.tuple(key, dated("11"), dated("17"), free("10"), free("21"));
    const some = all.chain((elements) => fc.shuffledSubarray(elements, { minLength: 1 }));
    check(fc.property(some, (elements) => {
      const printed = elements.map(({ ai, value }) => `(${ai})${value}`).join("");
      const last = elements.length - 1;
      const stored = elements.map(({ ai, value }, index) => `${ai}${value}${index < last && (ai === "10" || ai === "21") ? "\u001d" : ""}`).join("");
      expect(gs1Elements(printed)).toEqual({ elements });
      expect(gs1Elements(stored)).toEqual({ elements });
      expect(gs1Elements(`\u001d${stored}`)).toEqual({ elements });
    }));
  });
});

describe("spare packs", () => {
  it(`are the fewest that reach the level by the binomial sum (seed ${SEED})`, () => {
    // Second method: jStat's binomial distribution, number of failures among cases + spares at most spares.
    const share = fc.integer({ min: 1, max: 400 }).map((thousandths) => thousandths / 1000);
    const level = fc.integer({ min: 50, max: 99 }).map((hundredths) => hundredths / 100);
    check(fc.property(fc.integer({ min: 1, max: 60 }), share, level, (cases, failureShare, wanted) => {
      const enough = (spares: number) => jStat.binomial.cdf(spares, cases + spares, failureShare);
      const { spares, shortShare } = sparesNeeded({ cases, failureShare, level: wanted });
      expect(enough(spares)).toBeGreaterThanOrEqual(wanted - 0.000000001);
      expect(shortShare).toBeCloseTo(1 - enough(spares), 9);
      if (spares > 0) expect(enough(spares - 1)).toBeLessThan(wanted + 0.000000001);
    }));
  });

  it("are never fewer for more cases, more failures or a higher level, and none where nothing fails", () => {
    const spares = (cases: number, failureShare: number, level: number) => sparesNeeded({ cases, failureShare, level }).spares;
    for (let step = 1; step < 30; step += 1) {
      expect(spares(step + 1, 0.05, 0.95)).toBeGreaterThanOrEqual(spares(step, 0.05, 0.95));
      expect(spares(12, (step + 1) / 100, 0.95)).toBeGreaterThanOrEqual(spares(12, step / 100, 0.95));
      expect(spares(12, 0.1, (step + 1) / 50)).toBeGreaterThanOrEqual(spares(12, 0.1, step / 50));
    }
    expect(sparesNeeded({ cases: 500, failureShare: 0, level: 0.999 })).toEqual({ spares: 0, shortShare: 0 });
    expect(sparesNeeded({ cases: 500, failureShare: 0.5, level: 0.999 }).spares).toBeGreaterThan(500);
  });
});

describe("what is missing and what is extra", () => {
  const list = fc.array(fc.constantFrom("needle", "clamp", "blade", "__proto__", "constructor"), { maxLength: 12 });
  const total = (counted: readonly { readonly count: number }[]) => counted.reduce((sum, { count }) => sum + count, 0);

  it(`balance the two lists, and change places with them (seed ${SEED})`, () => {
    check(fc.property(list, list, (expected, found) => {
      const { missing, extra } = multisetDifference(expected, found);
      expect(expected.length - total(missing)).toBe(found.length - total(extra));
      expect(multisetDifference(found, expected)).toEqual({ missing: extra, extra: missing });
      // Second method: strike out one by one.
      const left = [...found];
      const gone = expected.filter((item) => {
        const place = left.indexOf(item);
        if (place >= 0) left.splice(place, 1);
        return place < 0;
      });
      expect(missing.flatMap(({ item, count }) => Array.from({ length: count }, () => item)).sort()).toEqual([...gone].sort());
      expect(extra.flatMap(({ item, count }) => Array.from({ length: count }, () => item)).sort()).toEqual([...left].sort());
    }));
  });

  it("need names", () => {
    expect(() => multisetDifference(["a", 5 as unknown as string], [])).toThrow("expected[1] must be a name, got 5");
    expect(() => multisetDifference([], [Number.NaN as unknown as string])).toThrow("found[0] must be a name, got NaN");
  });
});

describe("the closing count", () => {
  // A children's hospital's guideline on the surgical count: each class is counted and agreed for itself.
  const whole = { opening: 5, added: 0, handedOff: 0, present: 5, notWhole: 0 };

  it("does not set one class off against another", () => {
    const { differences, agrees } = reconcileByClass({ needles: { ...whole, present: 4 }, swabs: { ...whole, present: 6 } });
    expect(differences).toEqual({ needles: -1, swabs: 1 });
    expect(agrees).toBe(false);
  });

  it("agrees only where all is there and whole", () => {
    expect(reconcileByClass({ needles: whole, swabs: whole })).toEqual({ differences: { needles: 0, swabs: 0 }, notWhole: [], agrees: true });
    expect(reconcileByClass({ needles: { ...whole, notWhole: 1 }, swabs: whole })).toMatchObject({ notWhole: ["needles"], agrees: false });
    expect(reconcileByClass({})).toEqual({ differences: {}, notWhole: [], agrees: true });
  });

  it(`stays the same when something is added and handed off again (seed ${SEED})`, () => {
    const count = fc.integer({ min: 0, max: 20 });
    check(fc.property(count, count, count, count, (opening, added, present, more) => {
      const plain = { opening, added, handedOff: 0, present, notWhole: 0 };
      const again = { ...plain, added: added + more, handedOff: more };
      expect(reconcileByClass({ again }).differences["again"]).toBe(reconcileByClass({ plain }).differences["plain"]);
      expect(reconcileByClass({ plain }).differences["plain"]).toBe(present - opening - added);
    }));
  });

  it("refuses more than there can be", () => {
    expect(() => reconcileByClass({ blades: { ...whole, handedOff: 6 } })).toThrow("blades.handedOff must be at most opening + added (5), got 6");
    expect(() => reconcileByClass({ blades: { ...whole, notWhole: 6 } })).toThrow("blades.notWhole must be at most present (5), got 6");
  });
});

describe("every calculator of the kit", () => {
  it.each(placesOf(CALCULATORS))("$calculator refuses what is no value for $parameter", ({ parameter, refusalOf }) => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, -1]) {
      const error = refusalOf(value);
      expect(error).toBeInstanceOf(RangeError);
      expect((error as RangeError).message).toMatch(new RegExp(`${parameter || "text"}.* must .+, got ${String(value)}$`));
    }
  });

  it.each(CALCULATORS)("$file does what its example says", (calculator) => {
    expect(() => calculator.run(...(calculator.legal as never[]))).not.toThrow();
    const examples = examplesOf(calculator);
    expect(examples).toHaveLength(1);
    for (const { got, expected } of examples) expect(got()).toEqual(expected());
  });
});
