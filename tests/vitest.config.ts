/// <reference types="vitest/config" />
import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;
const project = (name: string, include: string[]) => ({ test: { name, root, include, testTimeout: 60_000, hookTimeout: 120_000 } });

export default defineConfig({
  oxc: { jsx: { runtime: "automatic" } },
  test: {
    root,
    projects: [
      project("engine", ["tests/{engine,bank,laws,published,facts,schemas,tools,figures,islands,architecture}/**/*.test.{ts,tsx}"]),
      project("site", ["tests/site/**/*.test.ts"]),
      project("browser", ["tests/browser/**/*.test.ts"]),
    ],
  },
});
