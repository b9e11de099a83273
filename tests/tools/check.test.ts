import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type FamilyFacts, readCourse } from "../../src/tools/check/course.ts";
import { printed } from "../../src/tools/check/print.ts";
import { checkCourse } from "../../src/tools/check/run.ts";

const fixtures = join(import.meta.dirname, "fixtures");

/** Question families as the bank lists them; the numbers behind the fixtures are invented. */
const FAMILIES: readonly FamilyFacts[] = [
  { id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["band-width.8-10@1", "band-width.11-13@1"], sources: [{ source: "author-2020" }] },
  { id: "window", code: "10d", module: "M10", objectives: ["m10-least", "m10-window"], reads: ["depth.boys@2"] },
];

/** Families of the fixture "pins", each with one fault. */
const WRONG_FAMILIES: readonly FamilyFacts[] = [
  { id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["band-width.8-11@1", "band-width.5-7", "depth.boys@1"], sources: [{ source: "autor-2020" }] },
  {
    id: "share", code: "01b", module: "M01", objectives: ["m01-band"], reads: ["nothing.like-it@1"],
    source: { file: "src/bank/m01/share.ts", text: 'export const share = {\n  reads: ["nothing.like-it@1"],\n};\n' },
  },
];

/** A family of the fixture "adult-family", which reads an adult value and does not say so. */
const ADULT_FAMILY: readonly FamilyFacts[] = [{ id: "band", code: "01e", module: "M01", objectives: ["m01-band"], reads: ["capsule.adult@1"], cautions: ["C3"] }];

const [BAND] = FAMILIES;
const WITH_M10: ReadonlySet<string> = new Set(["good", "objectives", "several", "caution", "attribute", "names"]);

const familiesFor = (name: string): readonly FamilyFacts[] => {
  if (name === "pins") return WRONG_FAMILIES;
  if (name === "adult-family") return ADULT_FAMILY;
  if (name === "same-name") return [];
  return WITH_M10.has(name) || BAND === undefined ? FAMILIES : [BAND];
};

const courseOf = (name: string) =>
  readCourse({
    folder: join(fixtures, name),
    shownAs: name,
    engineFolder: join(fixtures, "engine"),
    engineShownAs: "engine",
    families: familiesFor(name),
  });

const messageOf = (name: string): string => {
  const course = courseOf(name);
  return `${printed(checkCourse(course), course)}\n`;
};

const mistakes = readdirSync(fixtures).filter((name) => existsSync(join(fixtures, name, "message.txt")));

describe("the content check says what an author should write", () => {
  test.each(mistakes)("for the mistakes of the folder %s", async (name) => {
    await expect(messageOf(name)).toMatchFileSnapshot(join(fixtures, name, "message.txt"));
  });

  test("and every folder of fixtures has a message to hold to", () => {
    const folders = readdirSync(fixtures).filter((name) => name !== "engine");
    expect(mistakes).toEqual(folders);
  });
});

test("a good course passes with nothing but the line of counts", () => {
  const course = courseOf("good");
  const problems = checkCourse(course);
  expect(problems.filter(({ level }) => level !== "note")).toEqual([]);
  expect(printed(problems, course)).toMatch(/^0 problems, 0 warnings, .*\.$/);
});

test("notes list what is from memory, what is of adults, and the length of each module", () => {
  const rules = checkCourse(courseOf("good")).filter(({ level }) => level === "note").map(({ rule, found }) => `${rule}: ${found}`);
  expect(rules).toEqual([
    'to be verified: "guess.children" is from memory',
    expect.stringMatching(/^length: \d+ words of prose$/),
    expect.stringMatching(/^length: \d+ words of prose$/),
    'adult value: adult value "capsule.adult"',
  ]);
});

test("all problems of several files come in one run", () => {
  const files = new Set(checkCourse(courseOf("several")).filter(({ level }) => level === "problem").map(({ file }) => file));
  expect([...files]).toEqual(["several/glossary/junction.mdx", "several/modules/band.mdx", "several/modules/depth.mdx"]);
});

test("every problem has a place and a line to write", () => {
  const problems = mistakes.flatMap((name) => checkCourse(courseOf(name))).filter(({ level }) => level !== "note");
  expect(problems.length).toBeGreaterThan(80);
  expect(problems.filter(({ line, column, corrected, expected }) => !(line >= 1 && column >= 1 && corrected !== "" && expected !== ""))).toEqual([]);
});
