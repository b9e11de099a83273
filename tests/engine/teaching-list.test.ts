import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarText } from "../../src/engine/record/calendar.ts";
import { canonicalJson } from "../../src/engine/record/canonical.ts";
import { learnerCode } from "../../src/engine/record/learner-code.ts";
import { dayName, listCode, listOfPreset, type ListPreset, readListCode } from "../../src/engine/record/list-code.ts";
import { isTeachingList, listId, questionCount, type TeachingList } from "../../src/engine/record/list-form.ts";
import { linkText, readLink } from "../../src/engine/record/list-link.ts";
import { isSpokenRight, listSheet, spokenCheck } from "../../src/engine/record/list-sheet.ts";
import { lettersOf, textOfLetters } from "../../src/engine/record/text-bytes.ts";
import { EDITIONS, NEWEST } from "../../src/facts/editions.ts";
import { listOf, placeOf } from "../support/lists.ts";

const FAMILIES = ["least-depth", "greatest-depth", "how-many"];
const list = listOf(FAMILIES);
const read = (text: string): TeachingList => {
  const found = readLink(text);
  if ("fault" in found) throw new Error(found.fault);
  return found;
};

describe("letters", () => {
  it("are those of RFC 4648 section 10, and of Node for any text", () => {
    expect(["", "f", "fo", "foo", "foob", "fooba", "foobar"].map(lettersOf)).toEqual(["", "Zg", "Zm8", "Zm9v", "Zm9vYg", "Zm9vYmE", "Zm9vYmFy"]);
    fc.assert(fc.property(fc.string({ unit: "grapheme" }), (text) => {
      expect(lettersOf(text)).toBe(Buffer.from(text, "utf8").toString("base64url"));
      expect(textOfLetters(lettersOf(text))).toBe(text);
    }));
  });

  it("are refused where they are no text, as a strict decoder of the platform refuses them", () => {
    const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
    fc.assert(fc.property(fc.uint8Array({ maxLength: 12 }), (bytes) => {
      const wanted = (() => {
        try {
          return strict.decode(bytes);
        } catch {
          return null;
        }
      })();
      expect(textOfLetters(Buffer.from(bytes).toString("base64url"))).toBe(wanted);
    }), { numRuns: 2000 });
    expect(["A", "Zh", "Zm9", "Zm9v*"].map(textOfLetters)).toEqual([null, null, null, null]);
  });
});

describe("a teaching list", () => {
  it("goes through a link and comes back the same, also broken over lines by a mail program", () => {
    const link = `https://workbook.example/list/#${linkText(list)}`;
    expect(read(link)).toEqual(list);
    expect(read(`<${link.match(/.{1,60}/g)?.join("\r\n")}>`)).toEqual(list);
    expect(read(linkText(list))).toEqual(list);
    expect(read(`${link}%3E`)).toEqual(list);
    expect(link.length).toBeLessThan(800);
  });

  it("is refused with a reason where the link is empty, cut, changed, of a newer form, or no list", () => {
    const link = linkText(list);
    const lettersWrong = link.replace(/^L1\.(.)/, (_, letter: string) => `L1.${letter === "e" ? "f" : "e"}`);
    const sumOf = (letters: string): string => createHash("sha256").update(letters).digest("hex").slice(0, 8);
    const madeUp = lettersOf(canonicalJson({ ...list, attempts: 99 }));
    expect([" ", link.slice(0, -3), lettersWrong, link.replace("L1.", "L2."), "https://example.org/", `L1.${madeUp}.${sumOf(madeUp)}`, "x".repeat(20_000)].map((text) => readLink(text)))
      .toEqual(["empty", "damaged", "damaged", "newer", "not-a-list", "content", "too-long"].map((fault) => ({ fault })));
  });

  it("is guarded field by field", () => {
    const wrong: readonly Partial<Record<keyof TeachingList, unknown>>[] = [
      { title: "" }, { title: "x".repeat(81) }, { edition: 32 }, { edition: 1.5 }, { lock: "12" }, { picks: [] }, { picks: [[0, 0]] }, { picks: [[0, 61]] }, { picks: [[0, 1], [0, 1]] }, { picks: [[0, 40], [1, 40]] }, { sheet: "none" },
      { attempts: 0 }, { dueOn: "2026-02-30" }, { dueOn: "2026-11-01" }, { keepUntil: "2026-12-01" }, { rule: { rightPercent: 101, must: [], noUnsafe: true } }, { rule: { rightPercent: 80, must: [1000], noUnsafe: true } },
      { back: [] }, { back: ["file", "file"] }, { back: ["pigeon"] }, { backTo: 4 }, { spoken: "x" }, { nonce: "XYZ" }, { form: "list/2" },
    ];
    expect(isTeachingList(list)).toBe(true);
    expect(wrong.filter((over) => isTeachingList({ ...list, ...over }))).toEqual([]);
    expect(isTeachingList({ ...list, more: 1 })).toBe(false);
  });

  it("draws one sheet for each learner and attempt, or the same for all, from seeds that anybody can reckon", () => {
    const sheetOf = (learner: string, attempt: number, of = list) => {
      const sheet = listSheet(of, { learner, attempt, spoken: null }, EDITIONS);
      if ("fault" in sheet) throw new Error(sheet.fault);
      return sheet.items;
    };
    const first = sheetOf("avocet-12", 1);
    expect(first.map(({ family }) => family)).toEqual([...FAMILIES, ...FAMILIES]);
    expect(first.length).toBe(questionCount(list));
    // SHA-256 of nonce | learner code | place | attempt, reckoned by Node.
    expect(first[4]?.seed).toBe(createHash("sha256").update("0123456789abcdef|avocet-12|4|1").digest("hex").slice(0, 32));
    const seeds = ["avocet-12", "bittern-03"].flatMap((learner) => [1, 2].flatMap((attempt) => sheetOf(learner, attempt).map(({ seed }) => seed)));
    expect(new Set(seeds).size).toBe(seeds.length);
    const same = listOf(FAMILIES, { sheet: "same" });
    expect(sheetOf("avocet-12", 1, same)).toEqual(sheetOf("bittern-03", 1, same));
    expect(listSheet({ ...list, edition: 31 }, { learner: "avocet-12", attempt: 1, spoken: null }, EDITIONS)).toEqual({ fault: "unknown-edition" });
    expect(listSheet({ ...list, picks: [[1000, 1]] }, { learner: "avocet-12", attempt: 1, spoken: null }, EDITIONS)).toEqual({ fault: "unknown-question" });
  });

  it("is refused where the edition was rewritten since, and means other questions or versions", () => {
    const sitting = { learner: "avocet-12", attempt: 1, spoken: null };
    const moved = EDITIONS.map((edition) => ({ ...edition, families: edition.families.toReversed() }));
    const newer = EDITIONS.map((edition) => ({ ...edition, families: edition.families.map((family) => ({ ...family, version: family.version + 1 })) }));
    expect([listSheet(list, sitting, moved), listSheet(list, sitting, newer)]).toEqual([{ fault: "other-questions" }, { fault: "other-questions" }]);
    expect("items" in listSheet(list, sitting, EDITIONS)).toBe(true);
  });

  it("asks for the word that is read aloud, does not hold it, and draws other questions for another word", () => {
    const supervised = listOf(FAMILIES, { spoken: spokenCheck(list.nonce, "HERON 42") });
    expect([isSpokenRight(supervised, "heron-42"), isSpokenRight(supervised, "heron 43"), isSpokenRight(supervised, null), isSpokenRight(list, null)]).toEqual([true, false, false, true]);
    expect(canonicalJson(supervised).toUpperCase()).not.toContain("HERON");
    const of = (spoken: string | null) => listSheet(supervised, { learner: "avocet-12", attempt: 1, spoken }, EDITIONS);
    expect(of("Heron 42")).toEqual(of("HERON42"));
    expect(of("Heron 42")).not.toEqual(of(null));
  });

  it("takes a learner code as people type it, and nothing else", () => {
    expect(["Avocet 12", " avocet–12 ", "ab", "a".repeat(25), "Ann O’Neil", "=cmd", "avocet_12", "-x-"].map(learnerCode)).toEqual(["avocet-12", "avocet-12", null, null, null, null, "avocet-12", null]);
  });
});

describe("a typed code", () => {
  const preset: ListPreset = { number: 3, title: "First list", families: FAMILIES, each: 2, sheet: "own", attempts: 3, rightPercent: 80, must: FAMILIES.slice(0, 2), noUnsafe: true, back: ["file", "block"] };
  const dates = { opensOn: "2026-11-16", dueOn: "2026-12-04", keepUntil: "2027-12-31", nonce: "0ab1c" };
  const code = listCode(preset, dates, NEWEST.edition) ?? "";

  it("has at most 24 characters and gives the same list as the preset", () => {
    expect(code.length).toBeLessThanOrEqual(24);
    const made = readListCode(code.toLowerCase().replaceAll("-", " "), [preset], EDITIONS);
    expect(made).toEqual(listOfPreset(preset, dates, NEWEST));
    expect("fault" in made ? [] : [made.rule.must, questionCount(made)]).toEqual([preset.must.map(placeOf), 6]);
    expect("fault" in made ? "" : listId(made)).toMatch(/^[0-9a-f]{16}$/);
  });

  it("refuses every single wrong sign, a preset that is not there, and dates too far off", () => {
    const signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    const wrong = [...code].flatMap((sign, at) => (sign === "-" ? [] : [...signs].filter((one) => one !== sign).map((one) => code.slice(0, at) + one + code.slice(at + 1))));
    expect(wrong.filter((typed) => !("fault" in readListCode(typed, [preset], EDITIONS)))).toEqual([]);
    expect(readListCode(code, [], EDITIONS)).toEqual({ fault: "content" });
    expect(listCode(preset, { ...dates, opensOn: "2025-01-01" }, NEWEST.edition)).toBeNull();
  });

  it("counts days as the platform's calendar does", () => {
    for (let day = 20_000; day < 30_000; day += 1) expect(dayName(day)).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
  });
});

describe("a calendar file", () => {
  const text = calendarText({ uid: "abc@list", stampedAt: "2026-11-16T09:00:00.123Z", on: "2026-12-31", title: "Due: A, B; and \\C", description: `Line one\nline two – ${"ö".repeat(80)}🦵`, url: "https://workbook.example/list/#L1.abc" });
  const unfolded = text.replace(/\r\n /g, "");

  // RFC 5545: 3.1 lines end in CRLF and have at most 75 octets, a folded line goes on with a space; 3.3.11 escaping; 3.6.1 DTEND of a day is the next day.
  it("keeps the rules of RFC 5545 on line ends, folding, escaping and days", () => {
    expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    expect(text.split("\r\n").filter((line) => Buffer.byteLength(line) > 75)).toEqual([]);
    expect(text).not.toContain("\uFFFD");
    expect(unfolded).toContain("\r\nSUMMARY:Due: A\\, B\\; and \\\\C\r\n");
    expect(unfolded).toContain(`\r\nDESCRIPTION:Line one\\nline two – ${"ö".repeat(80)}🦵\r\n`);
    expect(unfolded).toContain("\r\nDTSTART;VALUE=DATE:20261231\r\nDTEND;VALUE=DATE:20270101\r\n");
    expect(unfolded).toContain("\r\nDTSTAMP:20261116T090000Z\r\n");
    for (const needed of ["VERSION:2.0", "PRODID:", "UID:abc@list", "BEGIN:VEVENT", "END:VEVENT"]) expect(unfolded).toContain(needed);
  });
});
