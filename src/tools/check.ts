import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import { type FamilyFacts, readCourse } from "./check/course.ts";
import { printed } from "./check/print.ts";
import { checkCourse } from "./check/run.ts";

const project = resolve(import.meta.dirname, "../..");
const shown = (path: string): string => relative(process.cwd(), path).replaceAll("\\", "/") || ".";

/** Files of the bank by the id of their family, so that a message can point into them. */
const bankFiles = (): ReadonlyMap<string, string> => {
  const folder = join(project, "src/bank");
  if (!existsSync(folder)) return new Map();
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
  return new Map(paths.map((path) => [basename(path, ".ts"), join(folder, path)]));
};

/** The families of the bank; none before the bank has its public face. */
const bankFamilies = async (): Promise<readonly FamilyFacts[]> => {
  const face = join(project, "src/bank/index.ts");
  if (!existsSync(face)) return [];
  const { families } = (await import(face)) as { families: readonly FamilyFacts[] };
  const files = bankFiles();
  return families.map((family) => {
    const path = files.get(family.id);
    return path === undefined ? family : { ...family, source: { file: shown(path), text: readFileSync(path, "utf8") } };
  });
};

const main = async (words: readonly string[]): Promise<void> => {
  const folder = resolve(words.find((word) => !word.startsWith("--")) ?? join(project, "content"));
  if (!existsSync(folder)) throw new Error(`There is no folder ${folder}`);
  const engineFolder = join(project, "content");
  const course = readCourse({
    folder,
    shownAs: shown(folder),
    engineFolder,
    engineShownAs: shown(engineFolder),
    families: await bankFamilies(),
  });
  const problems = checkCourse(course);
  console.log(printed(problems, course, words.includes("--notes")));
  process.exitCode = problems.some(({ level }) => level === "problem") ? 1 : 0;
};

await main(process.argv.slice(2));
