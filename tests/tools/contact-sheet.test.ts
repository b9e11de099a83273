import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { answerTo, draw, families, slipsOf } from "../../src/bank/index.ts";
import { asWritten, withUnit } from "../../src/engine/quantity/format.ts";
import { escaped } from "../../src/figures/markup.ts";
import { sheetEntry } from "../../src/tools/contact-sheet/entry.ts";
import { familyNamed } from "../../src/tools/contact-sheet/named.ts";
import { sheetPage } from "../../src/tools/contact-sheet/page.ts";
import { sheetText } from "../../src/tools/contact-sheet/text.ts";
import { howMany } from "../support/how-many.ts";

const program = resolve(import.meta.dirname, "../../src/tools/contact-sheet.ts");
const run = (...words: readonly string[]) => spawnSync(process.execPath, [program, ...words], { encoding: "utf8" });
const HOLE = /undefined|\bNaN\b|\[object|\$\{|Infinity/;
const countOf = (text: string, piece: string): number => text.split(piece).length - 1;

const familyOf = (id: string) => {
  const found = familyNamed(id);
  if ("sentence" in found) throw new Error(found.sentence);
  return found;
};

describe("a contact sheet written to a file", () => {
  const held = { folder: "", page: "", told: "" };
  beforeAll(() => {
    held.folder = mkdtempSync(join(tmpdir(), "contact-sheet-"));
    held.told = run("share-too-near", "--out", held.folder).stdout;
    held.page = readFileSync(join(held.folder, "01d-share-too-near.html"), "utf8");
  });
  afterAll(() => rmSync(held.folder, { recursive: true }));

  it("holds fifty variants, each with its seed and a place for initials and a remark", () => {
    expect(held.told).toContain("50 variants of 01d share-too-near");
    expect(countOf(held.page, "<article>")).toBe(50);
    expect(Array.from({ length: 50 }, (_, seed) => seed).filter((seed) => !held.page.includes(`>seed ${seed}</span>`))).toEqual([]);
    expect(countOf(held.page, "<span>Initials</span>")).toBe(50);
    expect(countOf(held.page, "<span>Remark</span>")).toBe(50);
  });

  it("has the answer of every variant, and marks the slips on the unsafe side", () => {
    const items = Array.from({ length: 50 }, (_, seed) => draw("share-too-near", seed));
    const articles = held.page.split("<article>").slice(1);
    const missing = items.filter((item, index) => {
      const right = answerTo(item);
      const unit = item.kind === "sum" ? (item.asks[0]?.unit ?? "%") : "%";
      const text = right.kind === "sum" && "text" in right ? withUnit(right.text, unit) : "no number";
      return !articles[index]?.includes(`<span class="v">${text}</span>`);
    });
    expect(missing).toEqual([]);
    const unsafe = items.flatMap((item) => slipsOf(item).filter((slip) => slip.unsafe)).length;
    expect(unsafe).toBeGreaterThan(0);
    expect(countOf(held.page, "UNSAFE SIDE")).toBe(unsafe);
  });

  it("is complete in itself, without script, hole or anything from elsewhere", () => {
    expect(held.page).not.toMatch(HOLE);
    expect(held.page).not.toMatch(/<script|<link|\ssrc=|@import|url\((?!#)/);
    expect(held.page).toContain("@page");
  });
});

describe("every family", () => {
  it.each(families.map(({ id }) => id))("%s has its answers, slips and questions on the sheet as drawn", (id) => {
    const family = familyOf(id);
    const seeds = Array.from({ length: howMany(3, 1) }, (_, seed) => seed);
    const entries = seeds.map((seed) => sheetEntry(id, seed));
    const page = sheetPage(family, entries, { title: "Title", style: "", patterns: "" });
    const text = sheetText(family, entries);
    expect(page).not.toMatch(HOLE);
    expect(text).not.toMatch(HOLE);
    for (const [index, entry] of entries.entries()) {
      const item = draw(id, index);
      const right = answerTo(item);
      expect(page).toContain(escaped(item.question));
      expect(item.stem.filter((sentence) => !page.includes(escaped(sentence)))).toEqual([]);
      expect(item.givens.filter(({ text: given, unit }) => !page.includes(escaped(withUnit(asWritten(given, unit), unit))))).toEqual([]);
      expect(entry.slips.map((slip) => [slip.id, slip.isUnsafe])).toEqual(slipsOf(item).map((slip) => [slip.id, slip.unsafe]));
      expect(entry.answer.length).toBeGreaterThan(0);
      if (item.kind === "sum" && right.kind === "sum" && "texts" in right) {
        expect(entry.answer.map((row) => row.text)).toEqual(item.asks.map((ask) => withUnit(asWritten(right.texts[ask.id] ?? "", ask.unit), ask.unit)));
      }
      if (item.kind === "sum" && right.kind === "sum" && "says" in right) expect(entry.answer.map((row) => row.text)).toEqual([item.says[right.says]]);
    }
  });

  it("with a figure has it on the sheet, once a variant", () => {
    const drawn = families.filter(({ id }) => sheetEntry(id, 0).figure !== null).map(({ id }) => id);
    expect(drawn).toEqual(expect.arrayContaining(["greatest-depth", "needle", "structures", "zone-angle"]));
    const page = sheetPage(familyOf("needle"), [sheetEntry("needle", 0)], { title: "Title", style: "", patterns: "" });
    expect(countOf(page, "<svg")).toBe(1);
  });
});

describe("what an editor types", () => {
  it("may be the id or the code of a family", () => {
    expect(familyOf("10c").id).toBe("greatest-depth");
    expect(familyOf("greatest-depth").code).toBe("10c");
  });

  it("is answered with the nearest names where no family is called so", () => {
    expect(familyNamed("z-scroe")).toEqual({ sentence: 'No family is called "z-scroe". Near it: z-score.' });
    const { status, stderr } = run("greatest-dept");
    expect(status).toBe(1);
    expect(stderr).toContain('No family is called "greatest-dept". Near it: greatest-depth');
    expect(run("greatest-depth", "--draws", "0").stderr).toContain("--draws must be a whole number from 1 to 500, got 0");
  });

  it("is never taken as markup", () => {
    const entry = { ...sheetEntry("greatest-depth", 0), stem: ['<b onmouseover="x">5 & 6</b>'] };
    const page = sheetPage(familyOf("greatest-depth"), [entry], { title: "<i>", style: "", patterns: "" });
    expect(page).toContain("&lt;b onmouseover=&quot;x&quot;&gt;5 &amp; 6&lt;/b&gt;");
    expect(page).not.toContain("<b onmouseover");
    expect(page).toContain("<h1>&lt;i&gt;</h1>");
  });
});
