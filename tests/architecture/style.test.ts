import { describe, expect, it } from "vitest";
import { filesIn } from "../support/files.ts";

const source = filesIn("src", [".ts", ".tsx", ".astro"]);
const within = (...rooms: readonly string[]) => source.filter(({ path }) => rooms.some((room) => path.startsWith(`src/${room}/`)));
const code = (text: string): string => text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "");
const hits = (files: typeof source, pattern: RegExp): readonly string[] => files.filter(({ text }) => pattern.test(code(text))).map(({ path }) => path);

/** Numbers of the engine's parameters that have no unit: counts, shares, seeds, parameters of a model. */
const UNITLESS = new Set(["tp", "fp", "fn", "tn", "sensitivity", "specificity", "baseRate", "ppv", "events", "total", "refractiveIndex", "eccentricity", "known", "learn", "slip", "guess", "forget", "percent", "stitches", "cases"]);
const UNIT = /(Mm|Cm|M|Deg|Rad|Px|Kg|Mg|Ml|MmHg|Pa|PaS|MPaS|KgPerM3|MgPerKg|MlPerMin|MlPerKg|Min|Days?|Percent|Mg|S)$/;

describe("the engine", () => {
  it("takes no chance, no clock and nothing of a browser or of Node", () => {
    expect(hits(within("engine", "bank", "figures"), /Math\.random|Date\.now|new Date|performance\.|\bprocess\.|\bglobalThis\b|\bdocument\.|toLocale|Intl\./)).toEqual([]);
    expect(hits([{ path: "x", text: "const a = Math.random();" }], /Math\.random/)).toEqual(["x"]);
  });

  it("keeps its tolerances in one file", () => {
    const others = within("engine", "bank", "figures").filter(({ path }) => path !== "src/engine/quantity/tolerance.ts");
    expect(hits(others, /\d[eE]-\d/)).toEqual([]);
  });

  it("names the unit of every number that its public functions take", () => {
    const unnamed = within("engine").flatMap(({ path, text }) =>
      [...code(text).matchAll(/export const \w+ = \(\{([^}]*)\}: \{([\s\S]*?)\}\)/g)].flatMap(([, , types = ""]) =>
        [...types.matchAll(/readonly (\w+): number/g)].map(([, name = ""]) => name).filter((name) => !UNIT.test(name) && !UNITLESS.has(name)).map((name) => `${path} ${name}`)));
    expect(unnamed).toEqual([]);
  });
});

describe("the source", () => {
  // A letter in brackets keeps each pattern from finding itself, so that this file is searched like every other.
  it("has no skipped check, no silenced rule and nothing unfinished", () => {
    const all = [...source, ...filesIn("tests", [".ts", ".tsx"])];
    const silenced = /\b(?:it|describe|test)\.(?:ski[p]|onl[y]|tod[o])|@ts-ignor[e]|@ts-expect-erro[r]|\bas an[y]\b/;
    const unfinished = /TOD[O]|FIXM[E]|biome-ignor[e]/;
    expect([`it.${"skip"}`, `@ts-${"ignore"}`, `as ${"any"}`].filter((text) => !silenced.test(text))).toEqual([]);
    expect(hits(all, silenced)).toEqual([]);
    expect(all.filter(({ text }) => unfinished.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it("touches storage in one room, and takes a seed from outside in one file", () => {
    const site = source.filter(({ path }) => !path.startsWith("src/tools/"));
    expect(hits(site, /sessionStorage|localStorage|indexedDB|from "idb"/)).toEqual(["device", "place", "record", "visit"].map((name) => `src/islands/store/${name}.ts`));
    expect(hits(source, /getRandomValues|randomUUID/)).toEqual(["src/islands/new-seed.ts"]);
  });

  it("fetches nothing but how large the course is, of this very site, and writes no style into markup", () => {
    expect(hits(within("islands", "components", "mdx", "layouts", "pages", "figures"), /\bfetch\(|XMLHttpRequest|sendBeacon|WebSocket/)).toEqual(["src/islands/store/course.ts"]);
    expect(hits(within("islands", "components", "mdx", "layouts", "pages", "figures"), /\sstyle=/)).toEqual([]);
  });
});

describe("the style sheets", () => {
  it("keep every rule in a layer, every colour in the tokens, and no shouting", () => {
    const sheets = filesIn("src/styles", [".css"]);
    expect(sheets.filter(({ path, text }) => !path.endsWith("tokens.css") && /#[0-9a-f]{3,8}\b/i.test(code(text))).map(({ path }) => path)).toEqual([]);
    expect(sheets.filter(({ text }) => /!important/.test(text)).map(({ path }) => path)).toEqual([]);
    expect(sheets.filter(({ path, text }) => !/(all|fonts|layers)\.css$/.test(path) && !/^(\/\*[\s\S]*?\*\/\s*)?@layer \w+ \{/.test(text)).map(({ path }) => path)).toEqual([]);
    // The short form of "font" would reset the kind of figures below the tokens.
    expect(sheets.filter(({ text }) => /[;{\s]font:/.test(code(text))).map(({ path }) => path)).toEqual([]);
  });
});
