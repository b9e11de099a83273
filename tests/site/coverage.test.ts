import { describe, expect, it } from "vitest";
import { families } from "../../src/bank/index.ts";
import { coverageOf, holesOf, type WrittenModule } from "../../src/components/coverage.ts";
import { isModuleStep, PATHS } from "../../src/facts/paths.ts";
import { sectionsAsked } from "../../src/components/sections-asked.ts";
import { pageAt, pages, textIn } from "../support/site.ts";

const html = pageAt("/coverage/").html;
const rows = [...html.matchAll(/<div id="((?:m\d\d|dx)-[a-z0-9-]+)">([\s\S]*?)<\/div>/g)].map(([, id = "", inside = ""]) => ({ id, codes: [...inside.matchAll(/\/practice\/([\w-]+)\//g)].map(([, family = ""]) => family) }));

const written: WrittenModule = { id: "band", body: 'Text <Ask family="path-width" /> text', data: { code: "M10", title: "Band", roles: { resident: "core" }, objectives: [{ id: "m10-least", text: "calculate" }] } };

describe("what is covered", () => {
  it("shows every objective with a question, and every question under its objectives", () => {
    expect(rows.length).toBeGreaterThan(50);
    expect(rows.filter(({ codes }) => codes.length === 0)).toEqual([]);
    const shown = new Map(rows.map(({ id, codes }) => [id, new Set(codes)]));
    expect(families.flatMap((family) => family.objectives.filter((id) => !shown.get(id)?.has(family.id)).map((id) => `${id} ${family.id}`))).toEqual([]);
    expect(rows.flatMap(({ id, codes }) => codes.filter((code) => !families.find((family) => family.id === code)?.objectives.includes(id)).map((code) => `${id} ${code}`))).toEqual([]);
  });

  it("counts what each reader meets", () => {
    for (const reader of ["Resident", "Theatre nurse", "Programme director"]) expect(textIn(html)).toMatch(new RegExp(`${reader} \\d+ \\d+ \\d+ \\d+`));
  });

  it("names every kind of hole, on which a build ends", () => {
    const path = families.filter(({ id }) => id === "path-width");
    const [row] = coverageOf([written], path);
    expect(row?.objectives[0]?.families).toEqual([{ id: "path-width", code: "10a", unsafe: false, isAsked: true }]);
    expect(holesOf(coverageOf([written], path), path)).toEqual(["no module is core for a nurse", "no module is core for a director"]);
    expect(holesOf(coverageOf([written], []), path)).toContain("m10-least has no question");
    expect(holesOf(coverageOf([{ ...written, data: { ...written.data, objectives: [] } }], path), path)).toContain("path-width serves m10-least, which no module lists");
    expect(holesOf(coverageOf([{ ...written, data: { ...written.data, roles: {} } }], path), path)).toContain("M10 is for nobody");
  });
});

describe("a part of a module on a path", () => {
  it("names the sections that ask its questions", () => {
    const headings = [{ depth: 2, slug: "one", text: "One" }, { depth: 3, slug: "sub", text: "Sub" }, { depth: 2, slug: "two", text: "Two" }, { depth: 2, slug: "three", text: "Three" }];
    const body = 'Lead\n\n## One\n\n<Ask family="a" />\n\n### Sub\n\n<Ask family="b" n={3} />\n\n## Two\n\nText\n\n## Three\n\n<Ask n={2} family="c" />\n';
    expect(sectionsAsked(body, headings)).toEqual([{ slug: "one", text: "One", families: ["a", "b"] }, { slug: "three", text: "Three", families: ["c"] }]);
  });

  // The curriculum of this course: nurse core, about 75 minutes in three sittings.
  it("makes the nurse core about 75 minutes in three sittings of about 25, with every question that it names", () => {
    const html = pageAt("/paths/nurse-core/").html;
    const sittings = [...html.matchAll(/<section class="sitting">[\s\S]*?<\/section>/g)].map(([text]) => textIn(text));
    const minutes = sittings.map((text) => Number(/(\d+) min/.exec(text)?.[1]));
    expect(minutes).toHaveLength(3);
    expect(minutes.reduce((sum, one) => sum + one, 0)).toBeGreaterThanOrEqual(65);
    expect(minutes.reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(80);
    for (const one of minutes) expect(Math.abs(one - 25)).toBeLessThanOrEqual(6);
    expect(sittings.filter((text) => !text.includes("Its sections:"))).toEqual([]);
  });
});

describe("a question on a path", () => {
  it("leads to the next of its path, and from the last to the page that the path ends with", () => {
    const named = PATHS.find(({ id }) => id === "nurse-core")?.sittings.flatMap(({ steps }) => steps.filter(isModuleStep).flatMap(({ families: part }) => part ?? [])) ?? [];
    expect(named.length).toBeGreaterThan(20);
    expect(new Set(named).size).toBe(named.length);
    for (const [at, family] of named.entries()) {
      const nav = /<nav class="on-path" aria-label="Theatre nurse: core[^"]*">([\s\S]*?)<\/nav>/.exec(pageAt(`/practice/${family}/`).html)?.[1] ?? "";
      expect(nav).toContain('href="/paths/nurse-core/"');
      expect([family, /href="\/practice\/([\w-]+)\/"/.exec(nav)?.[1]]).toEqual([family, named[at + 1]]);
    }
    const last = /<nav class="on-path" aria-label="Theatre nurse: core[^"]*">([\s\S]*?)<\/nav>/.exec(pageAt(`/practice/${named.at(-1)}/`).html)?.[1] ?? "";
    expect(last).toContain('href="/card/"');
    expect(pageAt("/practice/spares/").html).not.toContain('class="on-path"');
  });
});

describe("a module on a path", () => {
  it("leads back to every path that sends a reader there, and to no other", () => {
    const modules = pages.filter(({ path }) => /^\/modules\/[^/]+\/$/.test(path));
    const sent = (id: string, slugPath: string): boolean => [...pageAt(`/paths/${id}/`).html.matchAll(/<ul class="contents steps">([\s\S]*?)<\/ul>/g)].some(([, list = ""]) => list.includes(`href="${slugPath}"`));
    for (const { path, html } of modules) {
      const foot = /<p class="on-path">([\s\S]*?)<\/p>/.exec(html)?.[1] ?? "";
      const linked = [...foot.matchAll(/href="\/paths\/([\w-]+)\/"/g)].map(([, id]) => id);
      expect([path, linked]).toEqual([path, PATHS.filter(({ id }) => sent(id, path)).map(({ id }) => id)]);
    }
  });
});
