import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { draw } from "../bank/index.ts";
import { readSheetNumber, type Sheet, sheetOf } from "../engine/record/sheet-number.ts";
import { CODE_WORDS } from "../engine/record/words.ts";
import { EDITIONS } from "../facts/editions.ts";
import { pictureOnPaper } from "../figures/picture-on-paper.ts";
import { sheetEntry } from "./contact-sheet/entry.ts";
import { paperPage, type PaperQuestion } from "./paper/page.ts";
import { fail, type Tool, wordsOf } from "./words.ts";

/** Prints the sheet of a number: the questions with room to write, the answers with their working on a page of their own. */

const project = resolve(import.meta.dirname, "../..");
const source = (path: string): string => readFileSync(join(project, "src", path), "utf8");

const TOOL: Tool = {
  name: "paper",
  does: "Writes the sheet of a number as a page to print: questions with room to write, answers on a page of their own.",
  words: ["sheet number"],
  isOpen: true,
  example: "npm run paper -- 142B-02C6",
};

const sheetNamed = (typed: string): Sheet => {
  const number = readSheetNumber(typed);
  const sheet = "fault" in number ? number : sheetOf(number, EDITIONS);
  return "fault" in sheet ? fail(`${CODE_WORDS.en[sheet.fault]} A sheet number stands at the head of each sheet; give it as in: npm run paper -- 142B-02C6`) : sheet;
};

const questionsOf = (sheet: Sheet): Promise<readonly PaperQuestion[]> =>
  Promise.all(sheet.items.map(async ({ family, version, seed }) => {
    const item = draw(family, seed, { version });
    return { title: item.title, entry: sheetEntry(family, seed), picture: await pictureOnPaper(item) };
  }));

const sheet = sheetNamed(wordsOf(TOOL).words.join(" "));
const folder = join(project, ".cache/paper");
const style = ["styles/figures.css", "styles/scope.css", "tools/contact-sheet/sheet.css", "tools/paper/paper.css"].map(source).join("\n");
const patterns = source("components/Defs.astro").replace(/^---[\s\S]*?---\s*/, "");
mkdirSync(folder, { recursive: true });
const path = join(folder, `${sheet.number}.html`);
writeFileSync(path, paperPage(sheet, await questionsOf(sheet), { style, patterns }));
console.log(`Sheet ${sheet.number}, ${sheet.items.length} questions: ${relative(process.cwd(), path)}. Open it in a browser and print it on both sides.`);
