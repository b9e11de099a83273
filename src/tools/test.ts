import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { findBrowser, NO_BROWSER } from "./find-browser.ts";
import { wordsOf } from "./words.ts";

/** Runs every check of the project one after the other and ends with one line: how many passed, how many failed. */

const project = resolve(import.meta.dirname, "../..");
const bin = (name: string): string => join(project, "node_modules", name);
const PROGRAMS = {
  biome: bin("@biomejs/biome/bin/biome"),
  tsc: bin("typescript/bin/tsc"),
  astro: bin("astro/bin/astro.mjs"),
  vitest: bin("vitest/vitest.mjs"),
} as const;

interface Counts {
  readonly passed: number;
  readonly failed: number;
}

const run = (words: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<boolean> =>
  new Promise((done) => {
    const child = spawn(process.execPath, words, { cwd: project, stdio: "inherit", env: { ...process.env, ASTRO_TELEMETRY_DISABLED: "1", ...env } });
    child.on("close", (code) => done(code === 0));
  });

const step = async (name: string, words: readonly string[]): Promise<Counts> => {
  console.log(`\n— ${name}`);
  const isGood = await run(words);
  return { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1 };
};

/** Runs test projects and reads the counts from the runner's own report; a run that wrote no report has failed. */
const tests = async (name: string, projects: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<Counts> => {
  console.log(`\n— ${name}`);
  const report = join(mkdtempSync(join(tmpdir(), "workbook-tests-")), "report.json");
  const isGood = await run(
    [PROGRAMS.vitest, "run", "--config", "tests/vitest.config.ts", ...projects.flatMap((one) => ["--project", one]), "--reporter=dot", "--reporter=json", `--outputFile.json=${report}`],
    env,
  );
  if (!existsSync(report)) return { passed: 0, failed: 1 };
  const { numPassedTests, numFailedTests, numFailedTestSuites } = JSON.parse(readFileSync(report, "utf8")) as Record<string, number>;
  const failed = (numFailedTests ?? 0) || (numFailedTestSuites ?? 0);
  return { passed: numPassedTests ?? 0, failed: isGood ? failed : Math.max(1, failed) };
};

/** Without a browser the page tests fail on a build machine; elsewhere one line says that they were left out. */
const browserTests = async (): Promise<Counts> => {
  const found = await findBrowser();
  if (found) {
    await found.browser.close();
    const counts = await tests("Pages in a browser", ["browser"], { CHROME_PATH: found.path });
    found.discard();
    return counts;
  }
  console.log(`\n${NO_BROWSER}`);
  return { passed: 0, failed: process.env["CI"] ? 1 : 0 };
};

const lint = (): Promise<Counts> => step("Lint", [PROGRAMS.biome, "lint", "--error-on-warnings", "--config-path=.ci/lint.json", "."]);
const engineTypes = (): Promise<Counts> => step("Types of the engine", [PROGRAMS.tsc, "-p", "src/engine/tsconfig.json", "--incremental", "--tsBuildInfoFile", ".cache/engine.tsbuildinfo"]);

const siteTypes = (): Promise<Counts> => step("Types of the site", [PROGRAMS.astro, "check", "--minimumFailingSeverity", "hint"]);
const build = (): Promise<Counts> => step("Content, build and search index", ["src/tools/build.ts"]);
const engineTests = (env: Readonly<Record<string, string>> = {}): Promise<Counts> => tests("Engine, laws, published values, checker", ["engine"], env);
const siteTests = (): Promise<Counts> => tests("The built site", ["site"]);

type Part = () => Promise<Counts>;

/** Parts of a stage run side by side; the stages run one after the other. */
const QUICK: readonly (readonly Part[])[] = [[lint, engineTypes, () => engineTests({ DRAWS: "20", QUICK: "1" })]];

/** Pages wait for a time that is counted, so nothing runs beside them. */
const WHOLE: readonly (readonly Part[])[] = [[lint, engineTypes, siteTypes], [build], [engineTests], [siteTests], [browserTests]];

const total: { passed: number; failed: number } = { passed: 0, failed: 0 };
const add = ({ passed, failed }: Counts): void => {
  total.passed += passed;
  total.failed += failed;
};
const typed = wordsOf({
  name: "test",
  does: "Runs every check of the project; the last line says how many passed and failed. `npm run quick` runs lint, types of the engine and its tests alone.",
  flags: { quick: { says: "what npm run quick does" } },
});
for (const stage of typed.has("quick") ? QUICK : WHOLE) {
  for (const counts of await Promise.all(stage.map((part) => part()))) add(counts);
}
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exit(total.failed === 0 ? 0 : 1);
