import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { blueprint, holesIn, type PlannedFamily, rolesIn, staleIn } from "../../src/tools/blueprint/plan.ts";
import { blueprintText } from "../../src/tools/blueprint/table.ts";
import { courseOf } from "./fixture-courses.ts";

/** Families of the fixtures, as the blueprint sees them. */
const family = (id: string, code: string, module: string, objectives: readonly string[], unsafe = false): PlannedFamily => ({ id, code, module, kind: "sum", unsafe, version: 1, objectives });
const BAND = family("band", "01e", "M01", ["m01-band"]);
const WINDOW = family("window", "10d", "M10", ["m10-least", "m10-window"], true);

describe("the blueprint", () => {
  test("of a good course has no hole in its objectives, and names the roles that have no core module", () => {
    const rows = blueprint(courseOf("good"), [BAND, WINDOW]);
    expect(rows.map(({ code, objectives }) => [code, ...objectives.map(({ id, verb, families, asked }) => `${id} ${verb} ${families.map((each) => each.code).join()} ${asked}`)])).toEqual([
      ["M01", "m01-band select 01e 0"],
      ["M10", "m10-least calculate 10d 1", "m10-window calculate 10d 1"],
    ]);
    expect(holesIn(rows)).toEqual(["nurse: no module is core", "director: no module is core"]);
    expect(rolesIn(rows)[0]).toEqual({ role: "resident", core: 2, optional: 0, objectives: 3, served: 3, unsafe: 1 });
  });

  test("shows an objective without a question and a question without an objective as holes", () => {
    const rows = blueprint(courseOf("objectives"), [BAND, WINDOW, family("lost", "10z", "M10", ["m10-lost"])]);
    const text = blueprintText(rows);
    expect(holesIn(rows)).toEqual(expect.arrayContaining(["m01-share: no question", "m10-leest: no question", "10z lost: its objective m10-lost is not listed in M10"]));
    expect(text).toMatch(/m01-share +calculate +\[ +no question +\]/);
    expect(text).toMatch(/Holes: [3-9]\n/);
  });

  test("shows modules of the curriculum that nobody has written", () => {
    const rows = blueprint(courseOf("module-unlisted"), [BAND]);
    expect(holesIn(rows)).toContain("M10 Needle path and depth: no module is written");
    expect(blueprintText(rows)).toContain("M10 Needle path and depth  |  no roles  |  not written");
  });

  test("names a review whose day has come, and none whose day has not", () => {
    expect(staleIn(blueprint(courseOf("review-past"), [BAND]))).toEqual(["M01 The growing knee: read by paediatric surgeon, due 2025-11-01"]);
    expect(blueprintText(blueprint(courseOf("review-past"), [BAND]))).toContain("REVIEW PAST, due 2025-11-01");
    expect(staleIn(blueprint(courseOf("good"), [BAND, WINDOW]))).toEqual([]);
  });

  test("is printed by its tool, and with --strict a hole fails", () => {
    const root = resolve(import.meta.dirname, "../..");
    const run = (...words: readonly string[]) => spawnSync(process.execPath, ["src/tools/blueprint.ts", ...words], { cwd: root, encoding: "utf8" });
    const plain = run("tests/tools/fixtures/review-past");
    expect({ status: plain.status, stderr: plain.stderr }).toEqual({ status: 0, stderr: "" });
    expect(plain.stdout).toContain("m01-band             select     01e band-pick (name");
    expect(plain.stdout).toContain("Reviews past their day: 1");
    expect(run("--strict", "tests/tools/fixtures/review-past").status).toBe(1);
  });
});
