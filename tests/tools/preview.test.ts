import { spawnSync } from "node:child_process";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readAs, READERS, type ReadPath, stumblesIn, unreviewedIn } from "../../src/tools/preview/reading.ts";
import { readCourse } from "../../src/tools/check/course.ts";

const project = resolve(import.meta.dirname, "../..");
const content = resolve(project, "content");
const course = readCourse({ folder: content, shownAs: "content", engineFolder: content, engineShownAs: "content", families: [], today: "2026-11-30", draws: 0 });

const reading = { code: "M10", title: "Needle", minutes: 40, sections: [], words: 100, wordsInSentence: 12, asks: ["window"], pauses: 1, isReviewed: true, unmet: [] };
const pathWith = (part: Partial<typeof reading> & { readonly unmet?: readonly string[] }): readonly ReadPath[] => [{ title: "P", who: "", sittings: [{ name: "S", readings: [{ ...reading, ...part } as ReadPath["sittings"][number]["readings"][number]], pages: [] }] }];

describe("the course as a reader meets it", () => {
  it.each(READERS)("has something to read and to answer in every sitting of a %s", (reader) => {
    const paths = readAs(course, reader);
    expect(paths.length).toBeGreaterThan(0);
    for (const { sittings } of paths) for (const { readings, pages } of sittings) expect(readings.length + pages.length).toBeGreaterThan(0);
    expect(stumblesIn(paths, reader).filter((line) => !line.includes("builds on"))).toEqual([]);
  });

  it("takes a part of a module for what the path asks of it, and remembers what was met before", () => {
    const [core] = readAs(course, "nurse");
    const needle = core?.sittings.flatMap(({ readings }) => readings).find(({ code }) => code === "M10");
    expect(needle?.asks).toEqual(["pulse-and-foot"]);
    const weeks = readAs(course, "resident")[0];
    expect(weeks?.sittings.flatMap(({ readings }) => readings).every(({ unmet }) => unmet.length === 0)).toBe(true);
  });

  it("names what may stop a reader", () => {
    expect(stumblesIn(pathWith({}), "nurse")).toEqual([]);
    expect(stumblesIn(pathWith({ unmet: ["M01"] as never }), "nurse")).toEqual(["P, S: M10 builds on M01, which comes later or not at all"]);
    expect(stumblesIn(pathWith({ asks: [] }), "nurse")).toEqual(["P, S: M10 asks nothing"]);
    expect([stumblesIn(pathWith({ wordsInSentence: 17 }), "nurse"), stumblesIn(pathWith({ wordsInSentence: 17 }), "resident")]).toEqual([["P, S: sentences of M10 have 17.0 words on average, more than 16"], []]);
    expect([unreviewedIn(pathWith({})), unreviewedIn(pathWith({ isReviewed: false }))]).toEqual([[], ["M10"]]);
  });

  it("is printed by its tool, which asks for a reader that it knows", () => {
    const run = (...words: readonly string[]) => spawnSync(process.execPath, ["src/tools/preview.ts", ...words], { cwd: project, encoding: "utf8" });
    expect(run("nurse").stdout).toMatch(/is asked: .*pack-check/);
    expect([run("doctor").status, run("doctor").stderr]).toEqual([1, "\"doctor\" is no reader of the course. Say as whom you would like to read: npm run preview -- resident, npm run preview -- nurse, npm run preview -- director.\n"]);
  });
});
