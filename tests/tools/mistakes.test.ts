import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Problem } from "../../src/tools/check/finding.ts";
import { LEAVE_OUT } from "../../src/tools/check/rule.ts";
import { checkCourse } from "../../src/tools/check/run.ts";
import { courseOf, fixtures, mistakes } from "./fixture-courses.ts";

/**
 * The catalogue of author mistakes. A folder of fixtures is one mistake, but for the older ones that hold several of
 * one topic; those are named here with the rule and the beginning of what was found.
 */
const SEVERAL: Readonly<Record<string, readonly (readonly [mistake: string, rule: string, found: string])[]>> = {
  attribute: [
    ["a misspelt attribute", "attribute", "off in <Num>"], ["an attribute left out", "attribute", "<Num> without"], ["a word that is not allowed", "attribute", 'part="average"'],
    ["a number in quotes", "attribute", 'n="3"'], ["a text in braces", "attribute", "family={window}"], ["an attribute too many", "attribute", "count in <Ask>"], ["a number for a text", "attribute", "value={9}"],
    ["an attribute of a tag that has none", "attribute", "title in <Pause>"], ["a piece of program", "attribute", "side={left}"], ["attributes spread", "attribute", "{...rest}"],
  ],
  "banned-word": [["a banned word in the front matter", "banned word", "quiz"], ["a banned word in prose", "banned word", "Click"], ["a banned word among the interface words", "banned word", "Submit"]],
  caution: [
    ["no C16 after the operation", "missing caution", 'no <Caution id="C16" />'], ["no C14 beside a simulated share", "missing caution", 'no <Caution id="C14" />'], ["no C15 beside cuff and fluid", "missing caution", 'no <Caution id="C15" />'],
    ["C4 behind the first heading", "missing caution", '<Caution id="C4" /> behind'], ["no C5 where things are counted", "missing caution", 'no <Caution id="C5" />'],
  ],
  "front-matter": [
    ["an open bracket", "front matter", "needs: ["], ["a colon in a text", "front matter", "title: Table: cuff"], ["a field left out", "front matter", 'no field "summary"'], ["a misspelt field", "front matter", 'the field "titel"'],
    ["a field too many", "front matter", 'the field "author"'], ["no role", "front matter", "roles: {}"], ["no minutes", "front matter", "minutes: 0"], ["no objective", "front matter", "objectives: []"], ["no C7 where things are used once", "missing caution", 'no <Caution id="C7" />'],
    ["no front matter", "front matter", "no front matter"], ["an open quote", "front matter", 'title: "Looking'], ["a tab", "front matter", "- { id: m07-flow"], ["a field twice", "front matter", "minutes: 30"], ["a list for a text", "front matter", "title: []"],
    ["a code that is none", "front matter", "code: 3"], ["a text for a list", "front matter", "needs: M01"], ["a role that is neither core nor optional", "front matter", "resident: yes"], ["minutes in quotes", "front matter", 'minutes: "25"'],
    ["an objective's id that is none", "front matter", "id: M03 Field"], ["an objective without words", "front matter", 'text: ""'], ["no day of the next review", "front matter", 'no field "due"'], ["a day that is none", "front matter", "on: November"], ["a language that is not there", "front matter", "language: en-GB"],
  ],
  formula: [["a formula with an open bracket", "formula", "$n = \\frac{a{b}$"], ["a formula with a word that is none", "formula", "$\\flow"]],
  "tag-and-unit": [["a tag with a longer name", "unknown tag", "<Number>"], ["a tag in the middle of a sentence", "unknown tag", "<Sidebar>"], ["a unit that nothing is near to", "unknown unit", '"gallon"']],
  heading: [["a title in the text", "heading level", "# The growing knee"], ["a level left out", "heading level", "#### Speed"]],
  html: [["bold in HTML", "HTML", "<b>"], ["a link in HTML", "HTML", "<a>"], ["a box in HTML", "HTML", "<div>"]],
  ledger: [
    ["an entry without a population", "ledger", 'no field "population"'], ["a unit that is spelt otherwise", "unknown unit", '"millimeter"'], ["a source that is not listed", "unknown source", '"autor-2020"'], ["a misspelt field of an entry", "ledger", 'the field "populaton"'],
    ["a derived number without parents", "derived number", '"band.four" is derived, without parents'], ["a derived number without a formula", "derived number", '"band.four" is derived, without a formula'], ["a parent that is not there", "derived number", 'parent "band.tow@1"'],
    ["a unit that is none", "unknown unit", '"furlong"'], ["a number read without a source", "missing source", '"band.seven"'],
  ],
  names: [
    ["a ledger key that is not there", "unknown ledger key", '"band-width.8-11"'], ["a revision that is not there", "unknown ledger key", '"depth.boys@7"'], ["a family that is not there", "unknown family", '"windwo"'], ["a term that is not there", "unknown term", '"juntion"'],
    ["a caution that is not there", "unknown caution", '"C17"'], ["a unit of the case that is none", "unknown unit", '"millimetre"'],
  ],
  number: [["a number beside a unit", "number beside a unit", "20 %"]],
  objectives: [["an objective that no family serves", "objective without questions", 'objective "m10-leest"'], ["a family whose objective no module lists", "question without objective", 'objective "m10-least"']],
  pins: [["a pin that is not there", "pinned number", 'family "band" reads "band-width.8-11@1"'], ["a pin without its revision", "pinned number", 'family "band" reads "band-width.5-7"'], ["a pin that was replaced", "pinned number", 'family "band" reads "depth.boys@1"'], ["a citation that is not listed", "unknown source", 'family "band" cites']],
  population: [["a value at an age that nobody measured", "age outside the study", '"band-width.8-10"'], ["a question at such an age", "age outside the study", 'family "band"']],
  program: [["an import", "program in a text", "import"], ["an export", "program in a text", "export"], ["an expression", "program in a text", "{width}"]],
  "same-name": [["a ledger key twice", "same name", "ledger key"], ["a module twice", "same name", "module code"], ["an objective twice", "same name", "objective"], ["names that differ in a capital letter", "same name", 'source "Author-2020"']],
  "stray-brace": [["a closing brace alone", "stray brace", "}"], ["an opening brace alone", "syntax", "{"]],
  syntax: [
    ["a less-than sign before a number", "syntax", "<5 mm"], ["a comment as in HTML", "syntax", "<!--"], ["a bare address", "syntax", "<https:"], ["an attribute without quotes", "syntax", "<Ask family=window"],
    ["a tag that is never closed", "syntax", "<Pause>"], ["a closing tag alone", "syntax", "</Term>"], ["a tag that must close itself", "syntax", "<Num of="],
  ],
  "unknown-tag": [["a misspelt tag", "unknown tag", "<Numm>"], ["a tag in small letters", "unknown tag", "<pause>"], ["a tag that is not given", "unknown tag", "<Sidebar>"]],
};

/** Fixtures that are no mistake of their own: a good course, and one with mistakes of several files. */
const NO_MISTAKE: ReadonlySet<string> = new Set(["good", "several"]);
const singles = mistakes.filter((name) => SEVERAL[name] === undefined && !NO_MISTAKE.has(name));
const LEAST_MISTAKES = 60;

const problemsIn = (name: string, folder?: string): readonly Problem[] => checkCourse(courseOf(name, folder)).filter(({ level }) => level !== "note");
const named = ({ file, rule, found }: Problem): string => `${file} ${rule} ${found}`;

const place: { folder: string } = { folder: "" };
beforeAll(() => {
  place.folder = mkdtempSync(join(tmpdir(), "mistakes-"));
});
afterAll(() => rmSync(place.folder, { recursive: true }));

/** Pastes the line of one problem where the message says, in a copy of the fixture, and looks again. */
const afterPaste = (name: string, problem: Problem): readonly string[] => {
  const copy = join(place.folder, name);
  cpSync(join(fixtures, name), copy, { recursive: true });
  const path = join(copy, problem.file.slice(name.length + 1));
  const lines = readFileSync(path, "utf8").split("\n");
  const [first, last] = problem.replaces ?? [0, 0];
  const pasted = problem.corrected === LEAVE_OUT ? [] : problem.corrected.split("\n");
  writeFileSync(path, [...lines.slice(0, first - 1), ...pasted, ...lines.slice(last)].join("\n"));
  const left = problemsIn(name, copy).map(named);
  rmSync(copy, { recursive: true });
  return left;
};

const canBePasted = (name: string): readonly Problem[] => problemsIn(name).filter(({ file, replaces }) => replaces !== null && file.startsWith(`${name}/`));
const pasteable = mistakes.filter((name) => !NO_MISTAKE.has(name) && canBePasted(name).length > 0);

describe("the catalogue of author mistakes", () => {
  test(`holds at least ${LEAST_MISTAKES} of them, each of its own`, () => {
    const listed = Object.values(SEVERAL).flat().map(([mistake]) => mistake);
    const all = [...singles, ...listed];
    expect(new Set(all).size).toBe(all.length);
    expect(singles.length).toBeGreaterThanOrEqual(LEAST_MISTAKES);
    const first = singles.map((name) => {
      const [problem] = problemsIn(name);
      return problem === undefined ? `${name}: nothing` : `${problem.rule}: ${problem.found}`;
    });
    // Two folders that are found in the same words would be one mistake.
    expect(first.filter((text, index) => first.indexOf(text) < index)).toEqual([]);
  });

  test.each(singles)("finds %s at a line, says what it expects and what to write", (name) => {
    const problems = problemsIn(name);
    expect(problems.length).toBeGreaterThan(0);
    expect(problems.filter(({ line, column, expected, corrected }) => !(line > 0 && column > 0 && expected !== "" && corrected !== ""))).toEqual([]);
  });

  test.each(Object.entries(SEVERAL).flatMap(([name, list]) => list.map((each) => [name, ...each] as const)))("finds in %s %s", (name, _, rule, found) => {
    expect(problemsIn(name).filter((problem) => problem.rule === rule && problem.found.startsWith(found)).length).toBeGreaterThan(0);
  });
});

describe("the line to write is right", () => {
  test("for more mistakes than are asked for", () => expect(pasteable.length).toBeGreaterThanOrEqual(LEAST_MISTAKES));

  test.each(pasteable)("in %s: pasted where the message says, the problem is gone", (name) => {
    const before = problemsIn(name).map(named);
    const kept = canBePasted(name).filter((problem) => {
      const text = named(problem);
      const times = (list: readonly string[]): number => list.filter((each) => each === text).length;
      return times(afterPaste(name, problem)) >= times(before);
    });
    expect(kept.map(named)).toEqual([]);
  });
});
