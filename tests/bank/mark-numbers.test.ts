import { describe, expect, it } from "vitest";
import { answerTo, draw, families } from "../../src/bank/index.ts";

const DRAWS = 300;
/** With six or seven numbers each has a share of about a sixth; more than this could be learnt. */
const MOST_SHARE = 0.35;

/** Families in which each target has one place; where any placement that keeps a rule is right, numbers may follow the tear. */
const PLACED = families.filter(({ kind, id }) => kind === "mark" && id !== "spread").map(({ id }) => id);

describe("the number of a place", () => {
  it.each(PLACED)("tells nothing of what lies there, in %s", (family) => {
    const counts = new Map<string, number>();
    let of = 0;
    for (let seed = 0; seed < DRAWS; seed += 1) {
      const item = draw(family, seed);
      const right = answerTo(item);
      if (item.kind !== "mark" || right.kind !== "mark") throw new Error(`${family} is no question of marks`);
      for (const [target, point] of Object.entries(right.points)) {
        const number = item.regions.find(({ xMm, yMm }) => xMm === point.xMm && yMm === point.yMm)?.id ?? "";
        counts.set(`${target} ${number}`, (counts.get(`${target} ${number}`) ?? 0) + 1);
      }
      of += 1;
    }
    const often = [...counts].filter(([, count]) => count / of > MOST_SHARE);
    expect(counts.size).toBeGreaterThan(4);
    expect(often).toEqual([]);
  });
});
