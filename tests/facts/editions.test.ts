import { describe, expect, it } from "vitest";
import { draw, families } from "../../src/bank/index.ts";
import { carryCode } from "../../src/engine/record/carry-code.ts";
import { learnerState } from "../../src/engine/record/learner-state.ts";
import { type SheetNumber, sheetNumberText, sheetOf } from "../../src/engine/record/sheet-number.ts";
import { CARRY_PLANS, EDITIONS, NEWEST, planFor } from "../../src/facts/editions.ts";

const ROLES = ["resident", "nurse", "director"] as const;

const sheet = (number: SheetNumber) => {
  const made = sheetOf(number, EDITIONS);
  if ("fault" in made) throw new Error(made.fault);
  return made;
};

describe("the editions that sheet numbers and carry codes name", () => {
  it("list every question of the bank at its present version in the newest", () => {
    expect(NEWEST.families.map(({ id, version }) => `${id} ${version}`).toSorted()).toEqual(families.map(({ id, version }) => `${id} ${version}`).toSorted());
  });

  it("can draw each question of each edition at the version that it lists", () => {
    for (const { families: listed } of EDITIONS) for (const { id, version } of listed) expect(draw(id, 5, { version }).version).toBe(version);
  });

  it.each(ROLES)("hold an entry sheet with one question of each core module for the %s, and a mixed one with neighbours apart", (role) => {
    const entry = sheet({ edition: NEWEST.edition, plan: planFor("entry", role) ?? -1, nonce: 7, picks: [] });
    const modules = entry.items.map(({ module }) => module);
    expect(new Set(modules).size).toBe(modules.length);
    const mixed = sheet({ edition: NEWEST.edition, plan: planFor("mixed", role) ?? -1, nonce: 7, picks: [] }).items;
    expect(mixed).toHaveLength(12);
    expect(new Set(mixed.map(({ family }) => family)).size).toBe(12);
    expect(mixed.slice(1).filter(({ module }, index) => module === mixed[index]?.module)).toEqual([]);
  });

  it("give another sheet for another nonce, and the same for the same", () => {
    const plan = planFor("mixed", "resident") ?? -1;
    const number = (nonce: number): SheetNumber => ({ edition: NEWEST.edition, plan, nonce, picks: [] });
    expect(sheet(number(1))).toEqual(sheet(number(1)));
    expect(sheet(number(1)).items).not.toEqual(sheet(number(2)).items);
    expect(sheet(number(1)).number).toBe(sheetNumberText(number(1)));
  });

  it("keep the carry code within sixty signs for the whole course", () => {
    const plan = CARRY_PLANS.at(-1);
    if (plan === undefined) throw new Error("no plan");
    const objectives = [...new Set(families.flatMap((family) => family.objectives))].map((id) => {
      const serving = families.filter((family) => family.objectives.includes(id));
      return { id, module: serving[0]?.module ?? "", families: serving.map((family) => family.id) };
    });
    const code = carryCode(learnerState([], { objectives, todayDay: 20_800 }), plan, 20_800);
    expect(code.replaceAll("-", "").length).toBeLessThanOrEqual(60);
    expect(plan.safety.toSorted()).toEqual([...new Set(families.filter(({ unsafe }) => unsafe).flatMap((family) => family.objectives))].toSorted());
  });
});
