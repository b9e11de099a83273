import { describe, expect, it } from "vitest";
import { isHandIn } from "../../src/engine/record/hand-in-form.ts";
import { listOfPreset } from "../../src/engine/record/list-code.ts";
import { isTeachingList } from "../../src/engine/record/list-form.ts";
import { listSheet } from "../../src/engine/record/list-sheet.ts";
import { EDITIONS, NEWEST } from "../../src/facts/editions.ts";
import { PRESETS } from "../../src/facts/presets.ts";
import { handInFileSchema, handInSchema } from "../../src/schemas/hand-in.ts";
import { presetsSchema } from "../../src/schemas/preset.ts";
import { teachingListSchema } from "../../src/schemas/teaching-list.ts";
import { handInOf, listOf } from "../support/lists.ts";

const BAD: readonly unknown[] = [null, 12, -1, 1.5, "", "x".repeat(600), {}, [], [1], [[0, 1], [0, 1]], true, "2026-02-30"];

/** The value with one field at any depth left out, added or replaced. */
const damaged = (value: unknown): readonly unknown[] => {
  if (Array.isArray(value)) return value.flatMap((entry, at) => [value.toSpliced(at, 1), ...damaged(entry).map((wrong) => value.with(at, wrong))]).slice(0, 400);
  if (typeof value !== "object" || value === null) return BAD;
  const fields = value as Record<string, unknown>;
  return [
    { ...fields, more: 1 },
    ...Object.keys(fields).flatMap((key) => [Object.fromEntries(Object.entries(fields).filter(([one]) => one !== key)), ...BAD.map((wrong) => ({ ...fields, [key]: wrong })), ...damaged(fields[key]).map((wrong) => ({ ...fields, [key]: wrong }))]),
  ];
};

const list = listOf(["greatest-depth", "how-many"]);
const handIn = handInOf(list, { learner: "avocet-12", place: "Northmoor", words: ["+-", "+"] });

describe.each([
  ["a teaching list", list, isTeachingList, teachingListSchema],
  ["a hand-in", handIn, isHandIn, handInSchema],
] as const)("%s", (_, whole, guard, schema) => {
  it("is taken whole and refused damaged, by guard and schema alike", () => {
    const all = damaged(whole);
    expect([guard(whole), schema.safeParse(whole).success]).toEqual([true, true]);
    expect(all.filter((value) => guard(value) !== schema.safeParse(value).success)).toEqual([]);
    expect(all.filter((value) => !guard(value)).length).toBeGreaterThan(all.length / 2);
  });
});

describe("what is published and ready made", () => {
  it("says the form of a hand-in file in JSON Schema", () => {
    expect(JSON.parse(JSON.stringify(handInFileSchema))).toMatchObject({ $id: "small-knee-workbook/hand-in/1", type: "object", required: ["form", "sum", "handIn"] });
  });

  it("keeps ready-made lists to their schema, and every one of them gives a sheet in the newest edition", () => {
    expect(presetsSchema.safeParse(PRESETS).error?.issues ?? []).toEqual([]);
    expect(PRESETS.length).toBeGreaterThan(0);
    for (const preset of PRESETS) {
      const made = listOfPreset(preset, { opensOn: "2026-11-16", dueOn: "2026-12-04", keepUntil: "2027-12-31", nonce: "0ab1c" }, NEWEST);
      const sheet = made === null ? null : listSheet(made, { learner: "avocet-12", attempt: 1, spoken: null }, EDITIONS);
      expect(sheet !== null && "items" in sheet ? sheet.items.length : 0).toBe(preset.families.length * preset.each);
    }
  });
});
