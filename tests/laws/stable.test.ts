import { describe, expect, it } from "vitest";
import { answerTo, draw, families } from "../../src/bank/index.ts";
import { broken, HELD_ITEMS, type HeldFile, heldOf } from "../support/held.ts";
import { heldIn, heldModules } from "../support/held-files.ts";
import { HELD_LIST } from "../support/held-list.ts";

const itemsOf = (id: string, version: number) =>
  Array.from({ length: HELD_ITEMS }, (_, seed) => {
    const item = draw(id, seed, { version, local: HELD_LIST });
    return heldOf(item, answerTo(item));
  });

const stable: HeldFile = Object.assign({}, ...heldModules().map(heldIn));

/** Every version from 1 on of every family; drafts are not held. */
const now: HeldFile = Object.fromEntries(
  families.flatMap(({ id, versions }) => versions.filter((version) => version > 0).map((version) => [`${id}@${version}`, itemsOf(id, version)])),
);

describe("held questions", () => {
  it("are the same in every release", () => expect(broken(stable, now)).toEqual([]));

  it("holds nothing that no longer exists", () => expect(Object.keys(stable).filter((name) => !(name in now))).toEqual([]));

  it("stand each in the file of their own module, and in no other", () => {
    const moduleOf = (name: string): string => families.find(({ id }) => id === name.split("@")[0])?.module.toLowerCase() ?? "";
    expect(heldModules().flatMap((module) => Object.keys(heldIn(module)).filter((name) => moduleOf(name) !== module))).toEqual([]);
  });

  it("would notice a changed number, a changed sentence and a version that nobody held", () => {
    const draft = { "path-width@1": itemsOf("path-width", families.find(({ id }) => id === "path-width")?.version ?? 0) };
    expect(broken(draft, draft)).toEqual([]);
    expect(broken({}, draft)[0]).toContain("is not held yet");
    const [first, ...rest] = draft["path-width@1"];
    if (!first) throw new Error("no item");
    const changed = { "path-width@1": [{ ...first, givens: { ...first.givens, junctionToBundleMm: "9.9" } }, ...rest] };
    expect(broken(draft, changed)[0]).toContain("changed from item 0 on");
    const reworded = { "path-width@1": [first, ...rest.map((item) => ({ ...item, stem: `${item.stem}.` }))] };
    expect(broken(draft, reworded)[0]).toContain("changed from item 1 on");
  });
});
