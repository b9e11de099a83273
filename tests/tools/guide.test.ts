import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { textOf } from "../support/files.ts";
import { lawsOf, sharedCopy } from "./project-copy.ts";

/** The author's guide, as an author reads it: every block of its worked example is done here, in the order in which it stands. */
const guide = /## Add a question in twenty minutes\n([\s\S]*?)\n## /.exec(textOf("DEVELOPERS.md"))?.[1] ?? "";

const blocks = [...guide.matchAll(/^( *)```(sh|diff)\n([\s\S]*?)^ *```$/gm)].map(([, indent = "", kind = "", body = ""]) => ({
  kind,
  lines: body.split("\n").slice(0, -1).map((line) => line.slice(indent.length)),
}));

/** Words of a command as a shell would read them. */
const wordsOf = (command: string): readonly string[] => [...command.matchAll(/(?:[^\s"]|"[^"]*")+/g)].map(([word]) => word.replaceAll('"', ""));

const TOOLS: Readonly<Record<string, string>> = { "new:family": "new-family.ts", check: "check.ts" };

const held: { file: string } = { file: "" };
const copy = sharedCopy();

const runBlock = (lines: readonly string[]): void => {
  for (const line of lines) {
    const [npm, run, name = "", dashes, ...words] = wordsOf(line);
    expect([npm, run, dashes]).toEqual(["npm", "run", "--"]);
    const { out, err, code } = copy().run(TOOLS[name] ?? "", words);
    expect({ err, code }).toEqual({ err: "", code: 0 });
    held.file = /^(src\/bank\/\S+\.ts) is family/m.exec(out)?.[1] ?? held.file;
    if (name === "check") expect(out).toMatch(/^0 problems, 0 warnings/m);
  }
};

/** Takes the lines with a minus out of the family's file, which must stand in it together, and puts those with a plus there. */
const change = (lines: readonly string[]): void => {
  const path = join(copy().folder, held.file);
  const before = readFileSync(path, "utf8");
  const marked = (sign: string): string => lines.filter((line) => line.startsWith(sign)).map((line) => `${line.slice(1)}\n`).join("");
  expect(before).toContain(marked("-"));
  writeFileSync(path, before.replace(marked("-"), () => marked("+")));
};

describe("the guide for a question in twenty minutes", () => {
  test("has numbered steps and a worked example", () => {
    expect(guide.match(/^\d\. /gm)?.length).toBeGreaterThanOrEqual(6);
    expect(blocks.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["sh", "diff"]));
    expect(blocks.length).toBeGreaterThanOrEqual(8);
  });

  test.each(blocks.map((block, index) => ({ ...block, number: index + 1 })))("block $number can be done as it stands", ({ kind, lines }) => {
    if (kind === "sh") runBlock(lines);
    else change(lines);
  });

  test("ends in a question that keeps the laws", () => expect(copy().probe(lawsOf(["thread-left"], 500))).toEqual([]));

  test("and gives the numbers that were worked out on paper, each mistake with its name", () => {
    const paper = [...guide.matchAll(/(?:\d+ − )?(?:3 × 90|90) = (\d+)/g)].map(([, result]) => result);
    expect(paper).toEqual(["480", "660", "270"]);
    const graded = copy().probe(`
      import { draw, grade } from "./src/bank/index.ts";
      const isPaper = ({ givens }) => JSON.stringify(givens.map(({ text }) => text)) === JSON.stringify(["750", "90", "3"]);
      const item = Array.from({ length: 3000 }, (_, seed) => draw("thread-left", seed)).find(isPaper);
      console.log(JSON.stringify(${JSON.stringify(paper)}.map((text) => grade(item, { kind: "sum", text })).map(({ verdict, slip }) => slip ?? verdict)));
    `);
    expect(graded).toEqual(["right", "one-stitch", "used-for-left"]);
  });
});
