import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { readCourse } from "./check/course.ts";
import { readAs, READERS, type ReadPath, type Reader, stumblesIn, unreviewedIn } from "./preview/reading.ts";

/** Prints the course as one kind of reader meets it: `npm run preview -- nurse`. */

const content = resolve(import.meta.dirname, "../../content");

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
  const { positionals: [reader, folder] } = parseArgs({ allowPositionals: true, options: {} });
  if (!isReader(reader)) {
    console.error(`Say as whom you would like to read: ${READERS.map((one) => `npm run preview -- ${one}`).join(", ")}.`);
    process.exitCode = 1;
    return;
  }
  const course = readCourse({ folder: resolve(folder ?? content), shownAs: "content", engineFolder: content, engineShownAs: "content", families: [], today: new Date().toISOString().slice(0, 10), draws: 0 });
  const paths = readAs(course, reader);
  const stumbles = stumblesIn(paths, reader);
  const unreviewed = unreviewedIn(paths);
  console.log([...paths.map(pathText), `Not reviewed, and their pages say so: ${unreviewed.join(", ") || "none"}`, [`What may stop this reader: ${stumbles.length === 0 ? "nothing found" : stumbles.length}`, ...stumbles.map((one) => `  ${one}`)].join("\n")].join("\n\n"));
};

main();
