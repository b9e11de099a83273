import { resolve } from "node:path";
import { readCourse } from "./check/course.ts";
import { readAs, READERS, type ReadPath, type Reader, stumblesIn, unreviewedIn } from "./preview/reading.ts";
import { fail, folderNamed, type Tool, wordsOf } from "./words.ts";

/** Prints the course as one kind of reader meets it: `npm run preview -- nurse`. */

const content = resolve(import.meta.dirname, "../../content");

const TOOL: Tool = {
  name: "preview",
  does: "Prints the course as one kind of reader meets it, sitting by sitting, with what may stop them.",
  words: [READERS.join(" | "), "content folder"],
  example: "npm run preview -- nurse",
};

const isReader = (text: string | undefined): text is Reader => READERS.some((reader) => reader === text);

const pathText = ({ title, who, sittings }: ReadPath): string =>
  [
    `${title}  |  ${who}`,
    ...sittings.flatMap(({ name, readings, pages }) => [
      `  ${name}`,
      ...readings.flatMap(({ code, title: module, minutes, words, sections, asks, pauses }) => [
        `    ${code} ${module}: ${minutes} min for the whole, ${words} words, ${pauses} pauses`,
        `      reads: ${sections.join(" · ")}`,
        `      is asked: ${asks.join(", ") || "nothing"}`,
      ]),
      ...pages.map((page) => `    ${page}`),
    ]),
  ].join("\n");

const main = (): void => {
  const { words: [typed, folder] } = wordsOf(TOOL);
  const reader = isReader(typed) ? typed : fail(`${typed === undefined ? "" : `"${typed}" is no reader of the course. `}Say as whom you would like to read: ${READERS.map((one) => `npm run preview -- ${one}`).join(", ")}.`);
  const course = readCourse({ folder: folderNamed(folder, content), shownAs: "content", engineFolder: content, engineShownAs: "content", families: [], today: new Date().toISOString().slice(0, 10), draws: 0 });
  const paths = readAs(course, reader);
  const stumbles = stumblesIn(paths, reader);
  const unreviewed = unreviewedIn(paths);
  console.log([...paths.map(pathText), `Not reviewed, and their pages say so: ${unreviewed.join(", ") || "none"}`, [`What may stop this reader: ${stumbles.length === 0 ? "nothing found" : stumbles.length}`, ...stumbles.map((one) => `  ${one}`)].join("\n")].join("\n\n"));
};

main();
