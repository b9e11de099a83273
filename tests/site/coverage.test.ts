import { describe, expect, it } from "vitest";
import { families } from "../../src/bank/index.ts";
import { coverageOf, holesOf, type WrittenModule } from "../../src/components/coverage.ts";
import { pageAt, textIn } from "../support/site.ts";

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
