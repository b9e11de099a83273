import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { codeFor, moduleQuestions, objectivesOf } from "../../src/tools/new/module-plan.ts";
import { sharedCopy } from "./project-copy.ts";

const copy = sharedCopy();

const SIX = ["A second look", "resident core, nurse optional", "calculate the least look; reject a look that shows nothing", "M10", "2027-03-01", "paediatric surgeon"];
const FLAGS = ["title", "roles", "objectives", "needs", "review", "reviewer"].map((name, index) => `--${name}=${SIX[index]}`);
const fileOf = (slug: string): string => join(copy().folder, "content/modules", `${slug}.mdx`);

describe("a new module", () => {
  test("asks six things on the terminal and writes one file that the check takes at once", () => {
    const { out, err, code } = copy().run("new-module.ts", [], `${SIX.join("\n")}\n`);
    expect({ err, code }).toEqual({ err: "", code: 0 });
    expect(out.match(/^\d of 6/gm)).toHaveLength(6);
    expect(out).toContain("content/modules/a-second-look.mdx is module M16.");
    const text = readFileSync(fileOf("a-second-look"), "utf8");
    for (const part of ["title: A second look", "needs: [M10]", "  nurse: optional", "minutes:", "verb: reject", "state: none", "paediatric surgeon", "due: 2027-03-01", "Cautions C2, C13, C3, C9", "## What is not known"]) expect(text).toContain(part);
    expect(out).toContain("content/paths.json has it at the end of resident-two-weeks;");
    const before = readFileSync(new URL("../../content/paths.json", import.meta.url), "utf8");
    expect(readFileSync(join(copy().folder, "content/paths.json"), "utf8").replace(', { "module": "M16" }', "")).toBe(before);
    expect(copy().run("check.ts", [])).toMatchObject({ code: 0, err: "" });
  });

  test("never writes over what is there, neither a file nor a code", () => {
    const before = readFileSync(fileOf("a-second-look"), "utf8");
    const { err, code } = copy().run("new-module.ts", FLAGS);
    expect({ err, code }).toEqual({ err: "There is a module of that name already: content/modules/a-second-look.mdx. Nothing was written.\n", code: 1 });
    expect(readFileSync(fileOf("a-second-look"), "utf8")).toBe(before);
  });

  test("takes the code and the families of a module that the curriculum names, and asks them", () => {
    for (const slug of ["portals-and-reach"]) if (existsSync(fileOf(slug))) rmSync(fileOf(slug));
    const words = ["--title=Portals and reach", "--roles=resident", "--objectives=calculate the angle between two tools", "--needs=none", "--review=none", "--reviewer=none"];
    expect(copy().run("new-module.ts", words)).toMatchObject({ code: 0, err: "" });
    const text = readFileSync(fileOf("portals-and-reach"), "utf8");
    expect(text).toContain("code: M06");
    expect(text).toContain("id: m06-angle");
    expect(text).toContain('<Ask family="between-tools" />');
    expect(text).toContain('<Caution id="C14" />');
    expect(copy().run("check.ts", [])).toMatchObject({ code: 0, err: "" });
  });

  test("says in one sentence what is wrong, and writes nothing", () => {
    const { err, code } = copy().run("new-module.ts", ["--title=Another one", ...FLAGS.slice(1, 2), "--objectives=understand the knee", ...FLAGS.slice(3)]);
    expect(code).toBe(1);
    expect(err).toMatch(/^"understand" is not a verb that can be checked\. Write .* Nothing was written\.\n$/);
    expect(existsSync(fileOf("another-one"))).toBe(false);
  });
});

describe("its pieces", () => {
  test("objectives have ids of their own", () => {
    expect(objectivesOf("calculate the depth; order the depth", "M10").map(({ id }) => id)).toEqual(["m10-depth", "m10-depth-2"]);
  });

  test("a title gives the code of the curriculum, or the next free one", () => {
    expect(codeFor("needle path", { M01: "Growth", M10: "Needle path", DX: "Standards" })).toEqual({ code: "M10", isListed: true });
    expect(codeFor("Something else", { M01: "Growth", M10: "Needle path", DX: "Standards" })).toEqual({ code: "M11", isListed: false });
  });

  test.each([
    ["title", "A: B", "A title has no colon"],
    ["roles", "surgeon", '"surgeon" is no role'],
    ["roles", "nurse mostly", '"mostly" is neither'],
    ["objectives", "calculat the depth", 'the nearest is "calculate"'],
    ["objectives", "calculate", "What is to be calculated?"],
    ["needs", "M77", 'No module has the code "M77"'],
    ["review", "2027-02-30", '"2027-02-30" is no day'],
    ["reviewer", "{ surgeon }", "A reviewer is named by role"],
  ])("%s: %s is answered in one sentence", (name, answer, sentence) => {
    const fault = moduleQuestions(["M01", "M10"]).find((question) => question.name === name)?.fault(answer);
    expect(fault).toContain(sentence);
    expect(fault).not.toContain("\n");
  });

  test("six questions are asked, and each refuses an empty objective or role", () => {
    const questions = moduleQuestions(["M01"]);
    expect(questions).toHaveLength(6);
    expect(questions.filter(({ fault }) => fault("") !== null).map(({ name }) => name)).toEqual(["title", "roles", "objectives"]);
  });
});
