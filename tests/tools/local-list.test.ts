import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { sharedCopy } from "./project-copy.ts";

/** Runs the check as a lead nurse does, after one slip of the pen in a local list that the bank reads too. */
const copy = sharedCopy();

const checkedWith = (file: string, from: string, to: string): { readonly out: string; readonly err: string; readonly code: number } => {
  const path = join(copy().folder, "content/local", file);
  const before = readFileSync(path, "utf8");
  expect(before).toContain(from);
  writeFileSync(path, before.replace(from, to));
  const ran = copy().run("check.ts", []);
  writeFileSync(path, before);
  return ran;
};

test.each([
  ["a bin that is none", "waste.json", '"thing": "scope", "to": "keep"', '"thing": "scope", "to": "bin"', "sharps, clinical, electronics"],
  ["a class that is none", "pack.json", '"class": "tips"', '"class": "tip"', "needles"],
  ["a comma left out", "pack.json", '"pieces": 2,', '"pieces": 2', "a comma between two fields"],
])("%s is shown with its line and what to write, not as a fault of the program", (_, file, from, to, expected) => {
  const { out, err, code } = checkedWith(file, from, to);
  expect(out).toMatch(new RegExp(`content/local/${file}:\\d+:\\d+`));
  expect(out).toContain(expected);
  expect(out).toMatch(/^1 problem,|Nothing else was checked/m);
  expect([err, code]).toEqual(["", 1]);
});

test("a line for implant labels that is missing is proposed as kept, since a record needs them", () => {
  const { out } = checkedWith("waste.json", '    { "thing": "label", "to": "keep" },\n', "");
  expect(out).toContain('{ "thing": "label", "to": "keep" }');
});
