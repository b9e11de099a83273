import { describe, expect, it } from "vitest";
import * as bank from "../../src/bank/index.ts";
import { loadFamily } from "../../src/bank/load.ts";
import { textOf } from "../support/files.ts";

const EXAMPLE = /@example (.+?) \/\/ => (.+?)(?: \*\/)?$/gm;
const examples = [...textOf("src/bank/index.ts").matchAll(EXAMPLE)].map(([, call = "", printed = ""]) => ({ call, printed }));
const names = Object.keys(bank);
const values: unknown[] = Object.values(bank);
const evaluate = (code: string): unknown => new Function(...names, `return (${code});`)(...values);

describe("the public face of the bank", () => {
  it("has an example at every name", () => {
    expect(names.filter((name) => !examples.some(({ call }) => call.includes(name)))).toEqual([]);
  });
  it.each(examples)("$call gives $printed", ({ call, printed }) => {
    expect(evaluate(call)).toEqual(evaluate(printed));
  });
  it("loads every family that it lists, and no other", async () => {
    for (const { id, version } of bank.families) expect(await loadFamily(id)).toMatchObject({ id, version });
    await expect(loadFamily("nonsense")).rejects.toThrow("id must name a family, got nonsense");
  });
  it("refuses an unknown family, version, language and seed with the name of the parameter", () => {
    expect(() => bank.draw("nonsense", 1)).toThrow(/^familyId must be one of/);
    expect(() => bank.draw("window", 1, { version: 99 })).toThrow(/^version must be/);
    expect(() => bank.draw("window", 1, { language: "xx" })).toThrow(/^language must be one of en, got xx$/);
    expect(() => bank.draw("window", -1)).toThrow(/^seed must be/);
    expect(() => bank.compute("window", { entryToJunctionMm: 4 })).toThrow(/^givens must hold/);
    expect(() => bank.compute("window", { entryToJunctionMm: -4 })).toThrow(/^entryToJunctionMm must be/);
  });
});
