import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, relative, resolve } from "node:path";
import type { Family } from "../../engine/question/family.ts";
import { type Course, type FamilyFacts, HELD_NUMBERS, readCourse } from "./course.ts";
import { loadFault } from "./load-fault.ts";
import { nearest } from "./nearest.ts";
import { printed } from "./print.ts";
import { heldLines } from "./rules/ledger-revisions.ts";
import { checkCourse } from "./run.ts";
import { fail } from "../words.ts";

const project = resolve(import.meta.dirname, "../../..");
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

/** True where the list beside a family names its file, so that a page can fetch it. */
const isLoaded = (path: string, id: string): boolean => {
  const list = join(path, "../load.ts");
  return existsSync(list) && new RegExp(`^\\s*(?:"${id}"|${id}):`, "m").test(readFileSync(list, "utf8"));
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
    const source = path === undefined ? {} : { source: { file: shown(path), text: readFileSync(path, "utf8") }, isLoaded: isLoaded(path, id) };
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
  return local.length > 0 ? local : fail(`${loadFault(cause, shown)}\nNothing else was checked; run it again when this file can be read.`);
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

const notFound = (only: string, known: readonly string[], path: string | undefined): string => {
  if (path !== undefined) return `${shown(path)} is not listed, so nobody is asked it. Add it to ${shown(join(path, "../catalogue.ts"))} and ${shown(join(path, "../load.ts"))}, as the others there stand.`;
  const meant = nearest(only, known);
  return `No family is called "${only}"${meant === null ? `; the names stand in ${shown(join(project, "src/bank"))}, and each is a file there.` : `; the nearest is "${meant}": npm run check -- --family=${meant}`}`;
};

/** What the check is to look at. */
export interface Looked {
  readonly folder: string;
  readonly only: string | undefined;
  readonly withNotes: boolean;
  readonly holds: boolean;
}

/** Reads everything and prints what was found; true where there is no problem. */
export const checkWhole = async ({ folder, only, withNotes, holds }: Looked): Promise<boolean> => {
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
  if (holds) hold(course, existsSync(join(folder, "ledger")) ? folder : engineFolder);
  const own = course.families.find(({ id }) => id === only)?.source?.file;
  if (only !== undefined && own === undefined && cause === undefined) fail(notFound(only, families.map(({ id }) => id), bankFiles().get(only)));
  const problems = problemsOf(course, cause).filter(({ file }) => own === undefined || file === own);
  console.log(printed(problems, course, withNotes || only !== undefined));
  return !problems.some(({ level }) => level === "problem");
};
