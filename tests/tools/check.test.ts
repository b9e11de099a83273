import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { printed } from "../../src/tools/check/print.ts";
import { courseOf, fixtures, mistakes } from "./fixture-courses.ts";
import { checkCourse } from "../../src/tools/check/run.ts";

const messageOf = (name: string): string => {
  const course = courseOf(name);
  return `${printed(checkCourse(course), course)}\n`;
};

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
