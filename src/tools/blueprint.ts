import { resolve } from "node:path";
import { CATALOGUE } from "../bank/catalogue.ts";
import { readCourse } from "./check/course.ts";
import { blueprint, holesIn, type PlannedFamily, staleIn } from "./blueprint/plan.ts";
import { blueprintText } from "./blueprint/table.ts";
import { folderNamed, type Tool, wordsOf } from "./words.ts";

/** Prints objectives, questions and roles with what is missing. `--strict` fails where there is a hole or a review past its day. */

const content = resolve(import.meta.dirname, "../../content");

const TOOL: Tool = {
  name: "blueprint",
  does: "Prints objectives, their questions and their readers, with what is missing.",
  words: ["content folder"],
  flags: {
    strict: { says: "fails where there is a hole or a review past its day" },
    today: { says: "reckons reviews from that day", value: "2027-03-01" },
  },
};

const main = (): void => {
  const { values, words, has } = wordsOf(TOOL);
  const folder = folderNamed(words[0], content);
  const families: readonly PlannedFamily[] = CATALOGUE.flatMap(([newest]) => (newest === undefined ? [] : [newest]));
  const today = values["today"] ?? new Date().toISOString().slice(0, 10);
  const course = readCourse({ folder, shownAs: "content", engineFolder: content, engineShownAs: "content", families: [], today, draws: 0 });
  const rows = blueprint(course, families);
  console.log(blueprintText(rows));
  if (has("strict") && holesIn(rows).length + staleIn(rows).length > 0) process.exitCode = 1;
};

main();
