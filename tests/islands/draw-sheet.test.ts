import { describe, expect, it } from "vitest";
import type { ObjectiveStanding } from "../../src/engine/record/learner-state.ts";
import { readSheetNumber, sheetOf } from "../../src/engine/record/sheet-number.ts";
import type { Level } from "../../src/engine/standing/attempt.ts";
import { EDITIONS } from "../../src/facts/editions.ts";
import type { CourseModule } from "../../src/islands/course.ts";
import { numberFromFamilies, numberFromStand } from "../../src/islands/draw-sheet.ts";

const NEEDS = ["m10-least", "m10-greatest"];
const modules: readonly CourseModule[] = [{
  code: "M10", title: "Needle path and depth", path: "/", core: ["resident"],
  objectives: [
    { id: "m10-least", module: "M10", text: "least", families: ["least-depth"], isSafety: true },
    { id: "m10-greatest", module: "M10", text: "greatest", families: ["greatest-depth", "depth-to-stop"], isSafety: true },
  ],
  chains: [{ family: "depth-to-stop", needs: NEEDS }],
}];

const standing = (objective: string, level: Level): ObjectiveStanding => ({
  objective, module: "M10", level, madeBy: [], wouldChange: [], returns: null, isBack: false, known: 0.5, firstTries: [],
});

const familiesIn = (number: string | null): readonly string[] => {
  const read = readSheetNumber(number ?? "");
  const sheet = "fault" in read ? read : sheetOf(read, EDITIONS);
  if ("fault" in sheet) throw new Error(sheet.fault);
  return sheet.items.map(({ family }) => family);
};

/** Families of thirty sheets: enough that one that may come does come. */
const drawn = (standings: readonly ObjectiveStanding[]): ReadonlySet<string> => new Set(Array.from({ length: 30 }, () => familiesIn(numberFromStand({ modules, standings }))).flat());

describe("a sheet from where the learner stands", () => {
  it("offers a chain only once every one of its parts is Worked", () => {
    expect(drawn([standing("m10-least", "read"), standing("m10-greatest", "worked")])).toEqual(new Set(["least-depth", "greatest-depth"]));
    expect(drawn(NEEDS.map((id) => standing(id, "worked")))).toEqual(new Set(["least-depth", "greatest-depth", "depth-to-stop"]));
  });

  it("is not drawn where nothing asks for practice", () => {
    expect(numberFromStand({ modules, standings: NEEDS.map((id) => standing(id, "steady")) })).toBeNull();
  });

  it("asks an objective with one question at least three times, and many families at most ten times", () => {
    expect(familiesIn(numberFromFamilies(["window"]))).toEqual(["window", "window", "window"]);
    const many = EDITIONS.at(-1)?.families.map(({ id }) => id) ?? [];
    expect(familiesIn(numberFromFamilies(many))).toHaveLength(10);
    expect(numberFromFamilies(["no-such-family"])).toBeNull();
  });
});
