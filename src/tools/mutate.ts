import { globSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join, relative, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Bench } from "./mutate/bench.ts";
import { changesIn } from "./mutate/changes.ts";
import { reachOf } from "./mutate/reach.ts";
import { described, type Mutant, roomLine, scoreOf, type Tried } from "./mutate/score.ts";
import { fail, wholeNumber, wordsOf } from "./words.ts";

/**
 * Mutation testing: makes one small change after another in the engine and asks whether a test notices.
 * `--all` also runs the tests that load the bank or the ledger, `--every=5` tries every fifth change only, any other word picks files by path.
 */

const project = resolve(import.meta.dirname, "../..");
const ROOMS = ["question", "quantity", "geometry"] as const;
const LEAST_SCORE = 85;
const FOLDERS = "{engine,published,laws,schemas}";
const LONGEST_MS = 600_000;
const PATIENCE_MS = 4000;
const PATIENCE = 5;

const MOST_EVERY = 10_000;

const typed = wordsOf({
  name: "mutants",
  does: `Makes one small change after another in ${ROOMS.join(", ")} and lists the changes that no test noticed; all of them take many minutes. A part of a path picks files.`,
  words: ["part of a path"],
  isOpen: true,
  flags: { every: { says: "tries every fifth change only", value: "5" }, all: { says: "adds the tests that load the bank or the ledger" } },
  example: "npm run mutants -- geometry/circle.ts --every=5",
});
const every = wholeNumber(typed, "every", { least: 1, most: MOST_EVERY, otherwise: 1 });
const isAll = typed.has("all");
const picked = typed.words;

const url = (path: string): string => pathToFileURL(path).href;

interface TestFile {
  readonly path: string;
  readonly reach: ReadonlySet<string>;
}

const HEAVY = ["src/bank/index.ts", "src/facts/ledger.ts", "src/facts/knee-model.ts"].map((path) => join(project, path));
const isHeavy = ({ reach }: TestFile): boolean => HEAVY.some((path) => reach.has(path));

/** Test files, those first that load least; those that load the bank or the ledger are slow and come only with `--all`. */
const testFiles = (): readonly TestFile[] =>
  globSync(join(project, `tests/${FOLDERS}/*.test.ts`))
    .map((path) => ({ path, reach: reachOf(path) }))
    .filter((test) => isAll || !isHeavy(test))
    .sort((first, second) => first.reach.size - second.reach.size || first.path.localeCompare(second.path));

const mutantsOf = (room: string): readonly Mutant[] =>
  globSync(join(project, `src/engine/${room}/**/*.ts`)).sort().flatMap((file) => {
    const source = readFileSync(file, "utf8");
    return changesIn(source).map((change) => ({ room, path: relative(project, file), source, change }));
  });

/** Time that each test file takes with nothing changed; a file that fails by itself could notice nothing, and one that needs the real runner's loader is left out. */
const timed = async (tests: readonly TestFile[]): Promise<ReadonlyMap<string, number>> => {
  const times = new Map<string, number>();
  const bench = new Bench();
  for (const { path } of tests) {
    const start = performance.now();
    const { outcome, why } = await bench.try({ tests: [url(path)] }, () => LONGEST_MS);
    if (outcome === "killed") throw new Error(`${relative(project, path)} must pass before anything is changed: ${why}`);
    if (outcome === "survived") times.set(path, performance.now() - start);
    else console.log(`left out: ${relative(project, path)} (${why.split("\n")[0]})`);
  }
  bench.close();
  return times;
};

/** An endless loop is assumed after several times what the file takes with nothing changed: slow machines and busy ones get their time. */
const limits = (times: ReadonlyMap<string, number>) => (test: string): number => PATIENCE_MS + PATIENCE * (times.get(fileURLToPath(test)) ?? 0);

/** Works through the mutants, as many side by side as the machine has processors. */
const tryAll = async (mutants: readonly Mutant[], attempt: (mutant: Mutant, bench: Bench) => Promise<Tried>): Promise<readonly Tried[]> => {
  const tried: Tried[] = [];
  const waiting = [...mutants];
  const work = async (): Promise<void> => {
    const bench = new Bench();
    for (let mutant = waiting.shift(); mutant; mutant = waiting.shift()) {
      tried.push(await attempt(mutant, bench));
      if (tried.length % 100 === 0) console.log(`  ${tried.length} of ${mutants.length}`);
    }
    bench.close();
  };
  await Promise.all(Array.from({ length: availableParallelism() }, work));
  return tried.toSorted((first, second) => first.mutant.path.localeCompare(second.mutant.path) || first.mutant.change.start - second.mutant.change.start);
};

/** Prints what was not noticed and the line of each room; true where every room reaches its score. */
const report = (tried: readonly Tried[]): boolean => {
  for (const { mutant, outcome, why } of tried) if (outcome !== "killed") console.log(`${outcome === "broken" ? `did not load (${why})` : "not noticed"}  ${described(mutant)}`);
  const rooms = ROOMS.map((room) => ({ room, own: tried.filter(({ mutant }) => mutant.room === room) })).filter(({ own }) => own.length > 0);
  console.log(`\n${rooms.map(({ room, own }) => roomLine(room, own)).join("\n")}`);
  return rooms.every(({ own }) => scoreOf(own) >= LEAST_SCORE);
};

const main = async (): Promise<void> => {
  const start = performance.now();
  const mutants = ROOMS.flatMap(mutantsOf).filter(({ path }) => picked.length === 0 || picked.some((word) => path.includes(word))).filter((_, place) => place % every === 0);
  if (mutants.length === 0) fail(`No change is left to try: ${picked.length === 0 ? "every" : picked.join(", ")} ${picked.length === 0 ? "is too large" : `picks no file of ${ROOMS.map((room) => `src/engine/${room}`).join(", ")} with a place to change`}.`);
  const files = new Set(mutants.map(({ path }) => join(project, path)));
  const possible = testFiles().filter(({ reach }) => [...files].some((file) => reach.has(file)));
  const times = await timed(possible);
  const tests = possible.filter(({ path }) => times.has(path));
  console.log(`${mutants.length} ${mutants.length === 1 ? "change" : "changes"}${every > 1 ? `, every ${every}th` : ""}; ${tests.length} test files${isAll ? "" : ", without those that load the bank or the ledger (--all runs them too)"}`);
  const tried = await tryAll(mutants, async (mutant, bench) => {
    const file = join(project, mutant.path);
    const able = tests.filter(({ reach }) => reach.has(file)).map(({ path }) => url(path));
    return { mutant, ...(await bench.try({ tests: able, file: url(file), change: mutant.change }, limits(times))) };
  });
  const isGood = report(tried);
  console.log(`${Math.round((performance.now() - start) / 1000)} s; every room must reach ${LEAST_SCORE} %`);
  process.exit(isGood ? 0 : 1);
};

await main();
