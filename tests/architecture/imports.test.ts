import { describe, expect, it } from "vitest";
import { filesIn, imported } from "../support/files.ts";

/** Who may enter which room. Everything that is not listed is forbidden. */
const MAY: Readonly<Record<string, readonly string[]>> = {
  "src/engine": ["src/engine"],
  "src/facts": ["src/facts", "content", "src/engine"],
  "src/bank": ["src/bank", "src/engine", "src/facts"],
  "src/figures": ["src/figures", "src/engine", "src/facts"],
  "src/schemas": ["src/schemas", "src/engine", "zod"],
  "src/islands": ["src/islands", "src/engine", "src/bank", "src/figures", "src/facts", "react", "react-dom", "idb", "fflate", "jsqr", "uqr"],
  "src/components": ["src/components", "src/islands", "src/figures", "src/engine", "src/bank", "src/facts"],
  "src/mdx": ["src/mdx", "src/components", "src/islands", "src/figures", "src/engine", "src/bank", "src/facts"],
  "src/layouts": ["src/layouts", "src/components", "src/mdx", "src/schemas", "src/facts", "src/styles", "astro:"],
  "src/pages": ["src/pages", "src/layouts", "src/components", "src/mdx", "src/islands", "src/bank", "src/schemas", "src/facts", "src/styles", "astro:", "virtual:"],
  "src/build": ["src/build", "src/schemas", "src/engine", "src/bank", "src/figures", "src/facts", "node:", "astro", "temml"],
  "src/tools": ["src/tools", "src/build", "src/schemas", "src/engine", "src/bank", "src/figures", "src/facts", "node:", "astro", "pagefind", "satteri", "yaml", "playwright-core", "@sparticuz/chromium", "zod", "typescript", "vitest"],
  "src/virtual.d.ts": [],
  "src/content.config.ts": ["src/schemas", "astro:", "astro/loaders"],
};

/** Rooms of the engine from bottom to top; a room may enter itself and what stands before it in its own column. */
const BELOW: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  random: ["quantity"],
  geometry: ["quantity"],
  knee: ["quantity", "random", "geometry"],
  ...Object.fromEntries(["repair", "optics", "fluid", "theatre", "evidence", "kit", "growth"].map((room) => [room, ["quantity", "random", "geometry", "knee"]])),
  question: ["quantity", "random", "geometry", "knee", "repair", "optics", "fluid", "theatre", "evidence", "kit", "growth"],
  standing: ["quantity", "question"],
  record: ["quantity", "random", "question", "standing"],
  cohort: ["quantity", "question", "standing", "record", "evidence"],
};

const IMPORT = /(?:^|\n)\s*(?:import|export)\b[^"';]*?from\s*["']([^"']+)["']|(?:^|\n)\s*import\s*["']([^"']+)["']|\bimport\(\s*(?:\/\*[^*]*\*\/\s*)?["']([^"']+)["']\s*\)/g;

const importsOf = (text: string): readonly string[] => [...text.matchAll(IMPORT)].map((match) => match[1] ?? match[2] ?? match[3] ?? "");

const files = filesIn("src", [".ts", ".tsx", ".astro", ".mjs"]);
const allows = (allowed: readonly string[], target: string): boolean =>
  allowed.some((room) => (room.endsWith(":") ? target.startsWith(room) : target === room || target.startsWith(`${room}/`)));

describe("the rooms of the house", () => {
  it("finds imports in every form, so that the table can fail", () => {
    const text = 'import { a } from "x";\nimport "y";\nexport { b } from "./z.ts";\nconst c = await import("w");\nimport type {\n  D,\n} from "v";';
    expect(importsOf(text)).toEqual(["x", "y", "./z.ts", "w", "v"]);
    expect(allows(["src/engine"], "src/engine/quantity/grid.ts")).toBe(true);
    expect(allows(["src/engine"], "src/bank/index.ts")).toBe(false);
    expect(files.length).toBeGreaterThan(100);
  });

  it("are entered only from where the table allows", () => {
    const wrong = files.flatMap(({ path, text }) => {
      const room = Object.keys(MAY).find((one) => path === one || path.startsWith(`${one}/`));
      if (room === undefined) return [`${path} stands in no room`];
      return importsOf(text).map((name) => imported(path, name)).filter((target) => !allows(MAY[room] ?? [], target)).map((target) => `${path} imports ${target}`);
    });
    expect(wrong).toEqual([]);
  });

  it("of the engine are entered downwards only", () => {
    const wrong = files.filter(({ path }) => path.startsWith("src/engine/") && path !== "src/engine/index.ts").flatMap(({ path, text }) => {
      const room = path.split("/")[2] ?? "";
      return importsOf(text).map((name) => imported(path, name).split("/")[2] ?? "").filter((target) => target !== room && !(BELOW[room] ?? []).includes(target)).map((target) => `${path} enters ${target}`);
    });
    expect(wrong).toEqual([]);
  });

  it("hold no import of the tests, and modules hold no program", () => {
    expect(files.filter(({ text }) => /from\s*["'][^"']*\/tests\//.test(text)).map(({ path }) => path)).toEqual([]);
    expect(filesIn("content", [".mdx"]).filter(({ text }) => /^\s*(import|export)\s/m.test(text)).map(({ path }) => path)).toEqual([]);
  });
});
