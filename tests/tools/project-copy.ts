import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll } from "vitest";

const root = resolve(import.meta.dirname, "../..");

/** What a tool of the project printed, and how it ended. */
export interface Ran {
  readonly out: string;
  readonly err: string;
  readonly code: number;
}

/** A copy of the project in which tools may write. */
export interface ProjectCopy {
  readonly folder: string;
  readonly run: (tool: string, words: readonly string[], input?: string) => Ran;
  /** Runs a piece of program beside the bank and gives what it printed, read as JSON. */
  readonly probe: (program: string) => unknown;
  readonly remove: () => void;
}

/** Copies content, engine, bank, figures and tools; packages are those of the project. */
export const projectCopy = (): ProjectCopy => {
  const folder = mkdtempSync(join(tmpdir(), "project-"));
  for (const part of ["content", "package.json", "src/bank", "src/build/math.ts", "src/engine", "src/facts", "src/figures", "src/schemas", "src/tools"]) cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  // The bank is read anew by every tool; kept compiled, it takes half the time.
  const env = { ...process.env, NODE_COMPILE_CACHE: join(folder, ".cache") };
  return {
    folder,
    run: (tool, words, input = "") => {
      const { stdout, stderr, status } = spawnSync(process.execPath, [join(folder, "src/tools", tool), ...words], { cwd: folder, input, env, encoding: "utf8" });
      return { out: stdout, err: stderr, code: status ?? -1 };
    },
    probe: (program) => {
      writeFileSync(join(folder, "probe.ts"), program);
      return JSON.parse(execFileSync(process.execPath, [join(folder, "probe.ts")], { cwd: folder, env, encoding: "utf8" })) as unknown;
    },
    remove: () => rmSync(folder, { recursive: true }),
  };
};

/** One copy for all tests of a file: made before the first, removed behind the last. */
export const sharedCopy = (): (() => ProjectCopy) => {
  const held: { copy?: ProjectCopy } = {};
  beforeAll(() => {
    held.copy = projectCopy();
  });
  afterAll(() => held.copy?.remove());
  return () => {
    if (held.copy === undefined) throw new Error("the copy is made before the first test");
    return held.copy;
  };
};

/** Draws of some families, their own answers and their slips; prints what was not graded as it should be. */
export const lawsOf = (ids: readonly string[], draws: number): string => `
import { answerTo, draw, explain, grade, slipsOf } from "./src/bank/index.ts";
import { loadFamily } from "./src/bank/load.ts";
const wrong = [];
for (const id of ${JSON.stringify(ids)}) {
  if ((await loadFamily(id)).id !== id) wrong.push(id + " is not loaded");
  const met = new Set();
  for (let seed = 0; seed < ${draws}; seed += 1) {
    const item = draw(id, seed);
    const right = answerTo(item);
    if (grade(item, right).verdict !== "right") wrong.push(id + " " + seed + " does not take its own answer");
    const slips = slipsOf(item);
    if (slips.length < 2) wrong.push(id + " " + seed + " has too few slips");
    for (const slip of slips) {
      met.add(slip.id);
      const verdict = grade(item, slip.response);
      if (verdict.verdict === "right" || verdict.slip !== slip.id) wrong.push(id + " " + seed + " does not name " + slip.id);
    }
    const said = JSON.stringify([item, seed < 20 ? explain(item, right) : null]);
    if (/undefined|NaN|\\[object|\\$\\{/.test(said)) wrong.push(id + " " + seed + " has a hole in a sentence");
  }
  if (met.size < 2) wrong.push(id + " has slips that never occur");
}
console.log(JSON.stringify(wrong));
`;
