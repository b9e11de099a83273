import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import type { Family } from "../engine/question/family.ts";
import { type Course, type FamilyFacts, HELD_NUMBERS, readCourse } from "./check/course.ts";
import { printed } from "./check/print.ts";
import { heldLines } from "./check/rules/ledger-revisions.ts";
import { checkCourse } from "./check/run.ts";

/**
 * Reads an author's files and says what to write. Words on the command line: a content folder of one's own; `--notes`;
 * `--family=window` looks at ten thousand draws of one family; `--hold` writes down the new revisions of the ledger.
 */

const project = resolve(import.meta.dirname, "../..");
const shown = (path: string): string => relative(process.cwd(), path).replaceAll("\\", "/") || ".";

/** Draws of every family in each run: enough to see a fault of the formula, few enough to wait for. */
const FEW_DRAWS = 6;
const MANY_DRAWS = 10_000;

/** Files of the bank by the id of their family, so that a message can point into them. */
const bankFiles = (): ReadonlyMap<string, string> => {
  const folder = join(project, "src/bank");
  if (!existsSync(folder)) return new Map();
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
  return new Map(paths.map((path) => [basename(path, ".ts"), join(folder, path)]));
};

/** The families of the bank; none before the bank has its list. */
const bankFamilies = async (only: string | undefined): Promise<readonly FamilyFacts[]> => {
  const list = join(project, "src/bank/catalogue.ts");
  if (!existsSync(list)) return [];
  const { CATALOGUE } = (await import(list)) as { CATALOGUE: readonly (readonly Family[])[] };
  const files = bankFiles();
  return CATALOGUE.flatMap(([newest]): readonly FamilyFacts[] => {
    if (newest === undefined) return [];
    const { id, code, module, objectives, reads, sources, cautions } = newest;
    const path = files.get(id);
    const source = path === undefined ? {} : { source: { file: shown(path), text: readFileSync(path, "utf8") } };
    const declared = only === undefined || only === id ? { declared: newest } : {};
    return [{ id, code, module, objectives, reads, sources, cautions, ...declared, ...source }];
  });
};

/** The families, or why the bank cannot be loaded: it reads the local list, so a wrong word there stops it. */
const bankOrCause = async (only: string | undefined): Promise<{ readonly families: readonly FamilyFacts[]; readonly cause?: unknown }> => {
  try {
    return { families: await bankFamilies(only) };
  } catch (cause) {
    return { families: [], cause };
  }
};

/** Problems to print: where the bank could not be loaded, those of the local list, and the cause itself where the list has none. */
const problemsOf = (course: Course, cause: unknown): ReturnType<typeof checkCourse> => {
  const problems = checkCourse(course);
  if (cause === undefined) return problems;
  const local = problems.filter(({ file, level }) => level === "problem" && file.includes("/local/"));
  if (local.length === 0) throw cause;
  return local;
};

/** Adds the revisions that are not held yet; what is held stays as it is. */
const hold = (course: Course, folder: string): void => {
  const before = (course.held.value ?? {}) as Readonly<Record<string, string>>;
  const now = heldLines(course.records);
  const added = Object.keys(now).filter((pin) => before[pin] === undefined);
  const all = Object.entries({ ...now, ...before }).sort(([first], [second]) => first.localeCompare(second, "en"));
  writeFileSync(join(folder, HELD_NUMBERS), `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`);
  console.log(`${added.length} revisions added to ${HELD_NUMBERS}.`);
};

const main = async (words: readonly string[]): Promise<void> => {
  const folder = resolve(words.find((word) => !word.startsWith("--")) ?? join(project, "content"));
  if (!existsSync(folder)) throw new Error(`There is no folder ${folder}`);
  const only = words.find((word) => word.startsWith("--family="))?.slice("--family=".length);
  const engineFolder = join(project, "content");
  const { families, cause } = await bankOrCause(only);
  const course = readCourse({
    folder,
    shownAs: shown(folder),
    engineFolder,
    engineShownAs: shown(engineFolder),
    families,
    today: new Date().toISOString().slice(0, 10),
    draws: only === undefined ? FEW_DRAWS : MANY_DRAWS,
  });
  if (words.includes("--hold")) hold(course, existsSync(join(folder, "ledger")) ? folder : engineFolder);
  const own = course.families.find(({ id }) => id === only)?.source?.file;
  if (only !== undefined && own === undefined && cause === undefined) throw new Error(`No family is called "${only}"`);
  const problems = problemsOf(course, cause).filter(({ file }) => own === undefined || file === own);
  console.log(printed(problems, course, words.includes("--notes") || only !== undefined));
  process.exitCode = problems.some(({ level }) => level === "problem") ? 1 : 0;
};

await main(process.argv.slice(2));
