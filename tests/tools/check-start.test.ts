import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Ran, sharedCopy } from "./project-copy.ts";

const copy = sharedCopy();

/** Changes one file of the copy, runs the check, and puts the file back. */
const checkedWith = (file: string, change: (text: string) => string, words: readonly string[] = []): Ran => {
  const path = join(copy().folder, file);
  const before = readFileSync(path, "utf8");
  const after = change(before);
  expect(after).not.toBe(before);
  writeFileSync(path, after);
  const ran = copy().run("check.ts", words);
  writeFileSync(path, before);
  return ran;
};

describe("what the check says before it can look at anything", () => {
  test.each([
    ["content/cautions.json", "“id", (text: string) => text.replace('"id', "“id")],
    ["content/glossary.json", "a comma between two fields", (text: string) => text.replace('",\n', '"\n')],
    ["content/sources.json", "text that is no JSON", (text: string) => text.replace("[", "")],
    ["content/graphs/set-up.json", "text that is no JSON", (text: string) => text.replace(":", "")],
  ])("%s that cannot be read is named alone, with its line, and without a trace", (file, said, change) => {
    const { out, err, code } = checkedWith(file, change);
    expect([err, code]).toEqual(["", 1]);
    expect(out).toMatch(new RegExp(`^${file}:\\d+:\\d+  JSON\n  found  `));
    expect(out).toContain(said);
    expect(out).toMatch(/Nothing else was checked; run it again when this can be read\.\n$/);
    expect(out.match(/^ {2}found/gm)).toHaveLength(1);
  });

  test("a family that cannot be read as a program is named with its line", () => {
    const { err, code } = checkedWith("src/bank/m01/cover-area.ts", (text) => text.replace('kind: "sum",', 'kind: "sum'));
    expect(code).toBe(1);
    expect(err).toMatch(/^src\/bank\/m01\/cover-area\.ts:\d+ {2}program\n {2}found .+\n {2}expected {2}a line that can be read: .+\n {2}write /);
    expect(err).not.toContain("\n    at ");
  });

  test("a family that its module does not list is told from one that is not there", () => {
    const unlisted = checkedWith("src/bank/m01/catalogue.ts", (text) => text.replace("[coverArea], ", ""), ["--family=cover-area"]);
    expect(unlisted.err).toMatch(/^src\/bank\/m01\/cover-area\.ts is not listed, .*src\/bank\/m01\/catalogue\.ts and src\/bank\/m01\/load\.ts/);
    expect(copy().run("check.ts", ["--family=windw"]).err).toBe('No family is called "windw"; the nearest is "window": npm run check -- --family=window\n');
    expect(copy().run("check.ts", ["nowhere"]).err).toMatch(/^There is no folder nowhere\./);
  });
});

describe("a number that was typed into a case", () => {
  const typedInto = (text: string) => (before: string): string => before.replace(/stems: \[\n(\s*)\(say\) => \[`/, (whole) => `${whole}${text} `);

  test("is noted where one family is looked at, with what to do instead", () => {
    const { out } = checkedWith("src/bank/m11/both-faces.ts", typedInto("The thread is 735 mm long."), ["--family=both-faces"]);
    expect(out).toMatch(/note: draws: family "both-faces": "735\smm" stands in the case and is no given; a published number is read from the ledger/);
    expect(copy().run("check.ts", ["--family=both-faces"]).out).not.toContain("is no given");
  });
});

describe("a family for a module that is new", () => {
  const words = (id: string): readonly string[] => [`--id=${id}`, "--module=M16", "--kind=sum", "--title=Bags", "--givens=bag L 1 to 3 by 1; used L 4 to 12 by 1", "--ask=L"];

  test("takes an objective of its module that nobody asks yet, so that the check has no problem with it", () => {
    copy().run("new-module.ts", ["--title=Water on the floor", "--roles=resident", "--objectives=calculate the bags; select who is told", "--needs=M07", "--review=none", "--reviewer=none"]);
    expect(copy().run("new-family.ts", words("bags-hung")).out).toContain("for the objective m16-bags.");
    expect(copy().run("new-family.ts", words("who-hears")).out).toContain("for the objective m16-who-told.");
    expect(copy().run("check.ts", [])).toMatchObject({ code: 0, err: "" });
  });

  test("names every unit where what was typed is near to none", () => {
    const { err } = copy().run("new-family.ts", words("gallons").map((word) => word.replaceAll(" L ", " gallon ")));
    expect(err).toMatch(/^"gallon" is no unit; there are "mm", .*"pieces"\. Nothing was written\.\n$/);
    expect(existsSync(join(copy().folder, "src/bank/m16/gallons.ts"))).toBe(false);
    rmSync(join(copy().folder, "src/bank/m16"), { recursive: true });
  });
});
