import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { draw, type FamilyEntry } from "../bank/index.ts";
import { sheetEntry, type SheetEntry } from "./contact-sheet/entry.ts";
import { familyNamed } from "./contact-sheet/named.ts";
import { sheetPage } from "./contact-sheet/page.ts";
import { sheetText } from "./contact-sheet/text.ts";
import { fail, type Tool, wholeNumber, wordsOf } from "./words.ts";

/** Prints drawn variants of one family for a second reader: every number, every slip, every sentence, and a place to sign. */

const project = resolve(import.meta.dirname, "../..");
const DRAWS = 50;
const MOST_DRAWS = 500;

const TOOL: Tool = {
  name: "contact-sheet",
  does: "Writes drawn variants of one question with figure, answer and slips, and a place for a second reader to sign.",
  words: ["family"],
  flags: {
    draws: { says: `how many variants, 1 to ${MOST_DRAWS}`, value: String(DRAWS) },
    out: { says: "the folder to write into", value: ".cache/contact-sheets" },
    text: { says: "prints them here, as text" },
  },
  example: "npm run contact-sheet -- window",
};

const asked = (): { readonly name: string; readonly draws: number; readonly out: string; readonly isText: boolean } => {
  const typed = wordsOf(TOOL);
  const draws = wholeNumber(typed, "draws", { least: 1, most: MOST_DRAWS, otherwise: DRAWS });
  return { name: typed.words[0] ?? "", draws, out: resolve(typed.values["out"] ?? join(project, ".cache/contact-sheets")), isText: typed.has("text") };
};

const source = (path: string): string => readFileSync(join(project, "src", path), "utf8");

/** The patterns of the site without the front matter of their component. */
const patterns = (): string => source("components/Defs.astro").replace(/^---[\s\S]*?---\s*/, "");

const pageOf = (family: FamilyEntry, entries: readonly SheetEntry[]): string =>
  sheetPage(family, entries, { title: draw(family.id, 0).title, style: ["styles/figures.css", "styles/scope.css", "tools/contact-sheet/sheet.css"].map(source).join("\n"), patterns: patterns() });

/** Writes the page and says where it stands. */
const written = (family: FamilyEntry, entries: readonly SheetEntry[], folder: string): string => {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${family.code}-${family.id}.html`);
  writeFileSync(path, pageOf(family, entries));
  return `${entries.length} variants of ${family.code} ${family.id}: ${relative(process.cwd(), path)}`;
};

const main = (): void => {
  const { name, draws, out, isText } = asked();
  const family = familyNamed(name);
  const named = "sentence" in family ? fail(family.sentence) : family;
  const entries = Array.from({ length: draws }, (_, seed) => sheetEntry(named.id, seed));
  console.log(isText ? sheetText(named, entries) : written(named, entries, out));
};

main();
