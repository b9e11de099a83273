import { describe, expect, it } from "vitest";
import { grade } from "../../src/bank/index.ts";
import { frontOfKnee } from "../../src/figures/pictures/front.ts";
import { items, notRight, one, reader } from "../support/second-way.ts";

/** Families of module M06 that need no drawing beside a second way to their answer: coordinates instead of the law of cosines, lines counted one by one. */

describe("portals and reach", () => {
  it("give the angle that coordinates and an arc tangent give", () => {
    expect(notRight("between-tools", (_, of) => {
      const [scope, tool, gap] = [of("scopeMm"), of("toolMm"), of("portalGapMm")];
      const along = (scope ** 2 - tool ** 2 + gap ** 2) / (2 * gap);
      const height = Math.sqrt(scope ** 2 - along ** 2);
      return one(((Math.atan2(along, height) + Math.atan2(gap - along, height)) * 180) / Math.PI, 4);
    })).toEqual([]);
  });

  it("leave a length that is counted off millimetre by millimetre", () => {
    expect(notRight("reach", (_, of) => {
      let left = of("workingMm");
      for (let used = 0; used < of("softTissueMm") + of("pathMm"); used += 1) left -= 1;
      return left < 0 ? { kind: "sum", says: "none" } : one(left, 0);
    })).toEqual([]);
  });

  it("clear the hump at the tilt that halving finds", () => {
    expect(notRight("over-the-hump", (_, of) => {
      let [low, high] = [0, 90];
      for (let step = 0; step < 60; step += 1) [low, high] = of("awayMm") * Math.tan((((low + high) / 2) * Math.PI) / 180) < of("heightMm") ? [(low + high) / 2, high] : [low, (low + high) / 2];
      return one(low, 4);
    })).toEqual([]);
  });

  it("meet a tear at the angle that cross and dot product give, on the line with the larger margin", () => {
    const taken = new Set<string>();
    expect(notRight("approach", (item, of) => {
      const lean = (of("normalDeg") * Math.PI) / 180 * (/leans outward/.test(item.stem.join(" ")) ? 1 : -1);
      const lines = ["al", "am"].map((name) => {
        const [aside, front] = [of(`${name}AsideMm`), of("frontMm")];
        const [cross, dot] = [aside * Math.cos(lean) - front * Math.sin(lean), aside * Math.sin(lean) + front * Math.cos(lean)];
        return { name, margin: of(`${name}MarginMm`), deg: (Math.atan2(Math.abs(cross), Math.abs(dot)) * 180) / Math.PI };
      });
      const [best] = [...lines].sort((first, second) => second.margin - first.margin || first.deg - second.deg);
      if (!best || best.margin < of("leastMarginMm")) {
        taken.add("none");
        return { kind: "sum", says: "none" };
      }
      taken.add(best.name);
      return { kind: "sum", texts: { alDeg: (lines[0]?.deg ?? 0).toFixed(3), amDeg: (lines[1]?.deg ?? 0).toFixed(3), takenDeg: best.deg.toFixed(3) } };
    })).toEqual([]);
    expect([...taken].sort()).toEqual(["al", "am", "none"]);
  });

  it("stand where the words of the figure put them, for somebody who faces the knee", () => {
    const sides = new Set<string>();
    expect(notRight("portal", (item, of) => {
      const stem = item.stem.join(" ");
      const isRightKnee = /right knee/.test(stem);
      // Facing a right knee, its lateral side is on the reader's left.
      const page = isRightKnee === /anterolateral portal/.test(stem) ? "left" : "right";
      sides.add(`${isRightKnee} ${page}`);
      let aside = of("besideMm");
      for (let tenth = 0; tenth < 5 * of("tendonMm"); tenth += 1) aside = (10 * aside + 1) / 10;
      const sought = `${Number(aside.toFixed(1))} mm to the ${page} of the middle of the tendon, ${of("aboveMm")} mm above the joint line`;
      const [number] = new RegExp(`\\d+(?=: ${sought.replaceAll(".", "\\.")})`).exec(frontOfKnee(item)?.text ?? "") ?? [];
      const region = item.kind === "mark" ? item.regions.find(({ id }) => id === number) : undefined;
      return { kind: "mark", points: { portal: { xMm: region?.xMm ?? "", yMm: region?.yMm ?? "" } } };
    })).toEqual([]);
    expect(sides.size).toBe(4);
  });

  it("are swapped, kept or given up as a list says that is struck out line by line", () => {
    const picked = new Set<string>();
    expect(notRight("swap-or-stay", (item, of) => {
      const lines = [{ pick: "stay", margin: of("hereMarginMm"), deg: of("hereDeg") }, { pick: "swap", margin: of("otherMarginMm"), deg: of("otherDeg") }];
      const [thin, oblique] = [lines.filter(({ margin }) => margin < of("leastMarginMm")), lines.filter(({ margin, deg }) => margin >= of("leastMarginMm") && deg > of("mostDeg"))];
      const left = lines.filter(({ margin, deg }) => margin >= of("leastMarginMm") && deg <= of("mostDeg")).sort((first, second) => second.margin - first.margin || first.deg - second.deg);
      const other = lines.find(({ pick }) => pick !== left[0]?.pick)?.margin ?? 0;
      const reasons = [
        ...(left[0] && left[0].margin > other ? ["larger-margin"] : []),
        ...(left[0] && left[0].margin === other ? ["equal-then-angle"] : []),
        ...(thin.length > 0 ? ["below-least"] : []),
        ...(oblique.length > 0 ? ["too-oblique"] : []),
      ];
      picked.add(left[0]?.pick ?? "technique");
      // A line below the sheet's margin, or with less than the best one keeps, is unsafe however it is reasoned.
      const best = left[0]?.margin ?? 0;
      const poor = lines.filter(({ margin }) => margin < of("leastMarginMm") || margin < best).map(({ pick }) => pick);
      for (const pick of ["stay", "swap", "technique"].filter((one) => one !== (left[0]?.pick ?? "technique"))) expect(grade(item, { kind: "judge", picks: pick, reasons }).verdict).toBe(poor.includes(pick) ? "unsafe-side" : "safe-side");
      return { kind: "judge", picks: left[0]?.pick ?? "technique", reasons };
    })).toEqual([]);
    expect([...picked].sort()).toEqual(["stay", "swap", "technique"]);
  });

  it("differ by 26 points for the peroneal nerve at the lateral edge: 45 and 19 per cent (Houston 2025); in adults 20 and 3 of 29 (2023)", () => {
    expect(notRight("lines-that-touch", (item, of) => {
      const isChild = item.stem.join(" ").toLowerCase().includes("scans of children");
      const [more, less] = isChild ? [45, 19] : [Number((2000 / 29).toFixed(1)), Number((300 / 29).toFixed(1))];
      expect([of("anterolateralPercent"), of("anteromedialPercent")]).toEqual([more, less]);
      return { kind: "sum", texts: { lessPercent: less.toFixed(1), differencePoints: (more - less).toFixed(1), fewerLines: (of("lines") * (more - less) / 100).toFixed(2) } };
    })).toEqual([]);
    expect(items("lines-that-touch").filter((item) => grade(item, { kind: "sum", texts: { lessPercent: String(reader(item)("anterolateralPercent")), differencePoints: "26", fewerLines: "1" } }).verdict !== "unsafe-side")).toEqual([]);
  });
});
