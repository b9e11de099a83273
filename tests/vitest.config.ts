/// <reference types="vitest/config" />
import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;
/** Second solvers, ten thousand knees, views through the scope, and tools run as a program take long; the quick run leaves them to the whole one. */
const SLOW = ["tests/published/bank-*.test.ts", "tests/published/knee.test.ts", "tests/engine/scope.test.ts", "tests/figures/stills.test.ts", "tests/bank/views-by-words.test.ts", "tests/tools/{new-family,new-module,guide,contact-sheet,paper,simulate,preview,blueprint,local-list,check-start,words}.test.ts"];
const exclude = process.env["QUICK"] ? SLOW : [];
const project = (name: string, include: string[]) => ({ test: { name, root, include, exclude, isolate: false, pool: "threads", testTimeout: 60_000, hookTimeout: 120_000 } });

export default defineConfig({
  oxc: { jsx: { runtime: "automatic" } },
  test: {
    maxWorkers: "100%",
    root,
    projects: [
      project("engine", ["tests/{engine,bank,laws,published,facts,schemas,tools,figures,islands,architecture}/**/*.test.{ts,tsx}"]),
      project("site", ["tests/site/**/*.test.ts"]),
      project("browser", ["tests/browser/**/*.test.ts"]),
    ],
  },
});
