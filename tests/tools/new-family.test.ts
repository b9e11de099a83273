import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { catalogueWith, loadWith } from "../../src/tools/new/family-lists.ts";
import { familyQuestions, givensOf, nextCode } from "../../src/tools/new/family-plan.ts";
import { lawsOf, sharedCopy } from "./project-copy.ts";

const copy = sharedCopy();

const DRAWS = 400;
/** Five tools one after another, each reading the whole bank, on a machine that has other work. */
const SEVERAL_TOOLS_MS = 180_000;
const textIn = (path: string): string => readFileSync(join(copy().folder, path), "utf8");
const LENGTHS = "entry mm 2 to 6 by 0.5; margin mm 1 to 3 by 0.5";

describe("a new family", () => {
  test("asks six things on the terminal, writes one file and lists it", () => {
    const { out, err, code } = copy().run("new-family.ts", [], `way-with-margin\nM06\nsum\nWay with margin\n${LENGTHS}\nmm\n`);
    expect({ err, code }).toEqual({ err: "", code: 0 });
    expect(out.match(/^\d of 6/gm)).toHaveLength(6);
    expect(textIn("src/bank/m06/catalogue.ts")).toContain("  [wayWithMargin],\n];");
    expect(textIn("src/bank/m06/load.ts")).toContain('  "way-with-margin": () => import("./way-with-margin.ts"),\n};');
  });

  test("comes for sums of one unit and of several, for orders and for judgements, also in a module that had none", () => {
    const made = [
      ["--id=dose-by-weight", "--module=m12", "--kind=sum", "--title=Dose by weight", "--givens=weight kg 10 to 60 by 0.5; dose mg/kg 1 to 3 by 0.1", "--ask=mg"],
      ["--id=look-and-say", "--module=M08", "--kind=order", "--title=Look and say"],
      ["--id=whose-number", "--module=M13", "--kind=judge", "--title=Whose number"],
    ];
    for (const words of made) expect(copy().run("new-family.ts", words)).toMatchObject({ code: 0, err: "" });
    copy().run("new-module.ts", ["--title=A second look", "--roles=resident", "--objectives=calculate the second look", "--needs=none", "--review=none", "--reviewer=none"]);
    const { err, out } = copy().run("new-family.ts", ["--id=look-again", "--module=M16", "--kind=sum", "--title=Second look", `--givens=${LENGTHS}`, "--ask=mm", "--objective=m16-second-look"]);
    expect(err).toBe("");
    expect(out).toContain("src/bank/m16/look-again.ts is family 16a");
    expect(textIn("src/bank/catalogue.ts")).toContain("...M16];");
  }, SEVERAL_TOOLS_MS);

  test("is drawn and graded as it stands: its own answer is right, every slip has its name", () => {
    expect(copy().probe(lawsOf(["way-with-margin", "dose-by-weight", "look-and-say", "whose-number", "look-again"], DRAWS))).toEqual([]);
  });

  test("passes the check at once", () => expect(copy().run("check.ts", [])).toMatchObject({ code: 0, err: "" }));

  test("ends in a sentence where the answers end, and writes nothing", () => {
    const { err, code } = copy().run("new-family.ts", [], "half-told\nM06\n");
    expect({ err, code }).toEqual({ err: "The answers ended before --kind was answered. Nothing was written.\n", code: 1 });
    expect(existsSync(join(copy().folder, "src/bank/m06/half-told.ts"))).toBe(false);
  });

  test("says in one sentence what is wrong, and writes nothing", () => {
    const before = textIn("src/bank/m06/catalogue.ts");
    const { err, code } = copy().run("new-family.ts", ["--id=reach", "--module=M06", "--kind=sum", "--title=Reach", `--givens=${LENGTHS}`, "--ask=mm"]);
    expect({ err, code }).toEqual({ err: 'There is a family "reach" already. Nothing was written.\n', code: 1 });
    expect(textIn("src/bank/m06/catalogue.ts")).toBe(before);
  });
});

describe("its pieces", () => {
  test.each([
    ["id", "reach", 'There is a family "reach" already.'],
    ["id", "Second Reach", '"Second Reach" is no id; write small letters and hyphens, such as "second-reach".'],
    ["module", "M77", 'No module has the code "M77"'],
    ["kind", "tray", 'for "tray" copy src/bank/m04/pack-check.ts'],
    ["kind", "riddle", '"riddle" is no kind'],
    ["title", "?", "A title has letters."],
    ["givens", "entry mm 2 to 6 by 0.5", "Two givens or more"],
    ["givens", "entry mm 6 to 2 by 0.5; margin mm 1 to 3 by 0.5", "the least value comes first"],
    ["givens", "entry mm 2 to 6 by 0.3; margin mm 1 to 3 by 0.5", "does not reach 6"],
    ["givens", "entry mm 0 to 6 by 0.5; margin mm 1 to 3 by 0.5", "a given is above 0"],
    ["givens", "entry mn 2 to 6 by 0.5; margin mm 1 to 3 by 0.5", '"mn" is no unit'],
    ["givens", "entry, 2 to 6; margin mm 1 to 3 by 0.5", "cannot be read; write it as"],
    ["givens", "entry mm 2 to 6 by 0.5; entry mm 1 to 3 by 0.5", "stands twice"],
    ["ask", "furlong", '"furlong" is no unit'],
  ])("%s: %s is answered in one sentence", (name, answer, sentence) => {
    const { always, ofSums } = familyQuestions({ ids: ["reach"], modules: ["M06", "M12"] });
    const fault = [...always, ...ofSums].find((question) => question.name === name)?.fault(answer);
    expect(fault).toContain(sentence);
    expect(fault).not.toContain("\n");
  });

  test("kinds without a scaffold name a family that is there to be copied", () => {
    const { always } = familyQuestions({ ids: [], modules: [] });
    const fault = always.find(({ name }) => name === "kind")?.fault;
    const copied = ["range", "mark", "line", "tray", "name", "count", "chain"].map((kind) => /src\/bank\/\S+\.ts/.exec(fault?.(kind) ?? "")?.[0] ?? kind);
    expect(copied.filter((path) => !existsSync(join(copy().folder, path)))).toEqual([]);
  });

  test("a list of one line gets its comma, an empty module a file", () => {
    const family = { id: "least-way", module: "M12" };
    expect(catalogueWith('import { a } from "./a.ts";\n\nexport const M12 = [[a], [b]];\n', family)).toBe('import { a } from "./a.ts";\nimport { leastWay } from "./least-way.ts";\n\nexport const M12 = [[a], [b],\n  [leastWay],\n];\n');
    expect(loadWith(null, family)).toContain('export const LOAD_M12: Loaders = {\n  "least-way"');
  });

  test("the next code is the letter after the last", () => {
    expect(nextCode("M06", ["06b", "06e"])).toBe("06f");
    expect(nextCode("M16", [])).toBe("16a");
    expect(nextCode("M06", ["06z"])).toBeNull();
  });

  test("givens get the ending of their unit", () => {
    const givens = givensOf("cuff mmHg 100 to 200 by 5; weight kg 10 to 20 by 1; stitches pieces 2 to 4 by 1");
    expect(typeof givens === "string" ? givens : givens.map(({ key }) => key)).toEqual(["cuffMmHg", "weightKg", "stitches"]);
  });
});
