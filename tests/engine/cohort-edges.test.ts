import { describe, expect, it } from "vitest";
import { standardOf } from "../../src/engine/cohort/by-cut.ts";
import { byObjective } from "../../src/engine/cohort/by-objective.ts";
import { cutBand, cutScoreOf, placeByCut } from "../../src/engine/cohort/cut-score.ts";
import { firstAnswers, firstMarks } from "../../src/engine/cohort/first-marks.ts";
import { choiceEfficiency, choiceFigures } from "../../src/engine/cohort/dead-choices.ts";
import { completionRows } from "../../src/engine/cohort/completion.ts";
import { fixedForm } from "../../src/engine/cohort/fixed-form.ts";
import { itemFigures } from "../../src/engine/cohort/item-figures.ts";
import { readEstimates } from "../../src/engine/cohort/judge-estimates.ts";
import { learnerObjectives } from "../../src/engine/cohort/learner-objectives.ts";
import { comparePlaces } from "../../src/engine/cohort/places.ts";
import { sheetFigures } from "../../src/engine/cohort/sheet-figures.ts";
import { slipCounts } from "../../src/engine/cohort/slip-counts.ts";
import { workingSlips } from "../../src/engine/cohort/working-slips.ts";
import type { Mark, Paper } from "../../src/engine/cohort/paper.ts";
import { markOf, paperOf, papersFrom } from "../support/papers.ts";
import { LSAT } from "../support/score-tables.ts";

/** Orders, ties and the last value on either side of a limit. */

const of = (learner: string, ...marks: readonly Partial<Mark>[]): Paper => paperOf(learner, marks.map((mark, slot) => markOf({ slot, ...mark })));

describe("the order of objectives", () => {
  it("is by unsafe learners, then by the share with all right, then by name", () => {
    const papers = [
      of("a", { objective: "o-safe-low", verdict: "safe-side" }, { objective: "o-two", verdict: "unsafe-side" }, { objective: "o-one" }, { objective: "o-b" }, { objective: "o-a" }, { objective: "o-half" }),
      of("b", { objective: "o-safe-low", verdict: "safe-side" }, { objective: "o-two", verdict: "unsafe-side" }, { objective: "o-one", verdict: "unsafe-side" }, { objective: "o-b" }, { objective: "o-a" }, { objective: "o-half", verdict: "safe-side" }),
      of("c", { objective: "o-b" }, { objective: "o-a" }, { objective: "o-half", verdict: "safe-side" }),
    ];
    for (const order of [papers, [...papers].reverse()]) expect(byObjective(order).map(({ objective }) => objective)).toEqual(["o-two", "o-one", "o-safe-low", "o-half", "o-a", "o-b"]);
  });

  it("counts shares and not learners: one of two comes before two of three", () => {
    const papers = [of("a", { objective: "z" }, { objective: "y" }), of("b", { objective: "z", verdict: "safe-side" }, { objective: "y" }), of("c", { objective: "y", verdict: "safe-side" })];
    expect(byObjective(papers).map(({ objective, allRight }) => [objective, allRight])).toEqual([["z", 1], ["y", 2]]);
  });

  it("keeps the module of each", () => expect(byObjective([of("a", { objective: "m10-x", module: "M10" })])[0]).toMatchObject({ objective: "m10-x", module: "M10" }));
});

describe("the order of slips", () => {
  it("is unsafe first, then by learners, then by family and name, whatever the order of the papers", () => {
    const papers = [
      of("a", { family: "f", verdict: "safe-side", slip: "often" }, { family: "g", verdict: "unsafe-side", slip: "harm" }, { family: "h", verdict: "safe-side", slip: "b" }, { family: "h", verdict: "safe-side", slip: "a" }, { family: "e", verdict: "safe-side", slip: "z" }),
      of("b", { family: "f", verdict: "safe-side", slip: "often" }),
    ];
    for (const order of [papers, [...papers].reverse()]) expect(slipCounts(firstAnswers(order)).map(({ slip }) => slip)).toEqual(["harm", "often", "z", "a", "b"]);
  });

  it("is unsafe where one of several led there", () => {
    const papers = [of("a", { verdict: "safe-side", slip: "s" }), of("b", { verdict: "unsafe-side", slip: "s" })];
    expect(slipCounts(firstAnswers(papers))).toEqual([{ family: "family-a", slip: "s", learners: 2, met: 2, unsafe: true }]);
  });
});

describe("marks of a paper", () => {
  it("stand in the order of their places, and the first of two equal tries counts", () => {
    const marks = [markOf({ slot: 2 }), markOf({ slot: 0, verdict: "safe-side" }), markOf({ slot: 0 }), markOf({ slot: 1 })];
    expect(firstMarks(paperOf("a", marks)).map(({ slot, verdict }) => [slot, verdict])).toEqual([[0, "safe-side"], [1, "right"], [2, "right"]]);
  });
});

describe("the form that most answered", () => {
  const table = (persons: number, items: number) => papersFrom(Array.from({ length: persons }, (_, person) => Array.from({ length: items }, (__, item) => (person + item) % 2)));
  const renamed = (papers: readonly Paper[], list: string): readonly Paper[] => papers.map((paper) => ({ ...paper, list, learner: `${list} ${paper.learner}` }));

  it("is found wherever it stands among the papers", () => {
    const few = renamed(table(2, 4), "few");
    const many = renamed(table(5, 4), "many");
    for (const papers of [[...few, ...many], [...many, ...few]]) expect(fixedForm(papers)).toMatchObject({ otherForm: 2, learners: many.map(({ learner }) => learner) });
  });

  it("is the longer of two that equally many answered, and the shorter is then incomplete", () => {
    const long = table(3, 5);
    const short = table(3, 4).map((paper) => ({ ...paper, learner: `short ${paper.learner}` }));
    for (const papers of [[...short, ...long], [...long, ...short]]) expect(fixedForm(papers)).toMatchObject({ incomplete: 3, otherForm: 0, items: { length: 5 } });
  });

  it("counts a paper with a gap and a strange question as another form", () => {
    const papers = table(5, 4);
    const strange = of("strange", { slot: 1, family: "family-0" }, { slot: 2, family: "elsewhere" });
    expect(fixedForm([...papers, strange])).toMatchObject({ incomplete: 0, otherForm: 1 });
  });

  it("is none where the others are as many, and none where nothing was answered", () => {
    const half = [...renamed(table(2, 4), "x"), ...renamed(table(2, 4), "y")];
    expect(fixedForm(half)).toBeNull();
    expect(fixedForm([paperOf("a", []), paperOf("b", [])])).toBeNull();
  });
});

describe("figures at their limits", () => {
  const rows = (persons: number, items: number) => papersFrom(Array.from({ length: persons }, (_, person) => Array.from({ length: items }, (__, item) => ((person * 3 + item * 5) % 7 > 2 ? 1 : 0))));

  it("show a share from five persons on and none of four, on a fixed sheet too", () => {
    expect(itemFigures(rows(4, 3)).map(({ difficulty, interval }) => [difficulty.refused, interval])).toEqual(Array(3).fill(["under-five", null]));
    expect(itemFigures(rows(5, 3)).every(({ difficulty, interval }) => difficulty.refused === null && interval !== null)).toBe(true);
  });

  it("say that two items leave one, which has no reliability", () => {
    expect(itemFigures(rows(30, 2)).map(({ reliabilityWithout }) => reliabilityWithout.refused)).toEqual(["one-item", "one-item"]);
    expect(itemFigures(rows(30, 3)).map(({ reliabilityWithout }) => reliabilityWithout.refused)).toEqual([null, null, null]);
  });

  it("say that the totals are alike where they are", () => {
    const alike = papersFrom(Array.from({ length: 30 }, (_, person) => [person % 2, person % 2 === 0 ? 1 : 0, person % 3 === 0 ? 1 : 0]));
    expect(itemFigures(alike)[2]?.reliabilityWithout.refused).toBe("totals-alike");
    expect(itemFigures(alike)[2]?.discrimination.refused).toBe("rest-alike");
  });
});

describe("a cut score at its limits", () => {
  it("has a spread with two judges, and a band with two items", () => {
    const { spreadPoints, errorPoints } = cutScoreOf([{ family: "a", shares: [0.2, 0.6] }], ["a"]);
    // Two judges at 0.2 and 0.6: standard deviation 0.4 ÷ √2, error 0.2.
    expect([spreadPoints.value, errorPoints.value]).toEqual([expect.closeTo(0.282842712, 8), expect.closeTo(0.2, 8)]);
    expect(cutBand(1, 2)).toEqual({ low: 0, high: 2 });
  });

  it("counts a family that stands twice on the sheet twice", () => {
    expect(cutScoreOf([{ family: "a", shares: [0.5] }], ["a", "a"])).toMatchObject({ items: 2, sums: [1] });
    expect(cutScoreOf([{ family: "a", shares: [] }], ["a"]).cutPoints.refused).toBe("items-not-judged");
  });

  it("leaves a score on either edge undecided", () => expect([3, 4, 5, 6, 7].map((points) => placeByCut(points, { low: 4, high: 6 }))).toEqual(["below", "undecided", "undecided", "undecided", "above"]));

  it("lists learners by code, and none without a cut", () => {
    const papers = ["c", "a", "b"].map((learner) => of(learner, { family: "x" }, { family: "y", verdict: learner === "a" ? "right" : "safe-side" }));
    const form = fixedForm(papers);
    if (form === null) throw new Error("no form");
    const judged = ["x", "y"].map((family) => ({ family, shares: [0.5, 0.5] }));
    expect(standardOf(form, judged, []).learners.map(({ learner, points }) => [learner, points])).toEqual([["a", 2], ["b", 1], ["c", 1]]);
    expect(standardOf(form, [], []).learners).toEqual([]);
  });
});

describe("hospitals at their limits", () => {
  const at = (place: string | null, count: number) => Array.from({ length: count }, (_, index) => paperOf(`${place}-${index}`, [markOf()], { place }));

  it("are compared where five name none, since five tell nothing of one", () => {
    expect(comparePlaces([...at("A", 5), ...at("B", 5), ...at(null, 5)]).refused).toBeNull();
    expect(comparePlaces([...at("A", 5), ...at("B", 5), ...at(null, 4)]).refused).toBe("places-unknown");
  });

  it("count somebody once over several lists, and as unsafe where one of them was", () => {
    const twice = at("A", 5).flatMap((paper, index) => [paper, { ...paper, list: "other", marks: [markOf({ slot: 0 }), markOf({ slot: 1, verdict: index === 0 ? "unsafe-side" : "safe-side" })] }]);
    expect(comparePlaces([...twice, ...at("B", 5)]).places[0]).toMatchObject({ place: "A", learners: 5, withoutUnsafe: 4, answers: 15, right: 10 });
  });

  it("stand by name, whoever came first", () => {
    for (const papers of [[...at("A", 5), ...at("B", 6), ...at("C", 7)], [...at("C", 7), ...at("B", 6), ...at("A", 5)]]) expect(comparePlaces(papers).places.map(({ place, learners }) => [place, learners])).toEqual([["A", 5], ["B", 6], ["C", 7]]);
  });
});

describe("judges' estimates at their limits", () => {
  it("are read to the last sign that fits", () => {
    const line = "window 0.5";
    expect(readEstimates(line.padEnd(20_000), ["window"]).judged).toHaveLength(1);
    expect(readEstimates(line.padEnd(20_001), ["window"]).faults.map(({ line: at, fault }) => [at, fault])).toEqual([[1, "too-long"]]);
  });

  it("show forty signs of what cannot be read", () => expect(readEstimates(`window ${"9".repeat(60)}`, ["window"]).faults[0]?.found).toBe("9".repeat(40)));

  it("count lines from the first, and compare with the first that could be read", () => {
    expect(readEstimates("\nwindow 0.5 0.5\nstop 0.5", ["window", "stop"]).faults).toEqual([{ line: 3, fault: "other-count", found: "stop" }]);
  });
});

describe("a sheet as a whole", () => {
  it("has the error that follows from its spread and reliability, and counts what was set aside", () => {
    // Section 6 of the LSAT: spread of the totals from its pattern counts and reliability .2949971922, multiplied out in another language.
    const whole = papersFrom(LSAT);
    const gap = { ...paperOf("gap", whole[0]?.marks.slice(1) ?? []) };
    const other = paperOf("other", whole[0]?.marks.map((mark) => ({ ...mark, version: 9 })) ?? []);
    const figures = sheetFigures([...whole, gap, other]);
    expect(figures).toMatchObject({ learners: 1000, items: 5, incomplete: 1, otherForm: 1, isDrawnForEach: false });
    expect([figures.sdPoints.value, figures.errorPoints.value]).toEqual([expect.closeTo(1.0345235618, 9), expect.closeTo(0.8686319704, 9)]);
    expect(sheetFigures(whole.map((paper, person) => (person === 7 ? { ...paper, marks: paper.marks.map((mark) => ({ ...mark, seed: "9" })) } : paper)))).toMatchObject({ isDrawnForEach: true });
    expect(sheetFigures([])).toMatchObject({ learners: 0, items: 0, incomplete: 0, otherForm: 0, isDrawnForEach: false });
  });
});

describe("learners' rows", () => {
  it("count what was unsafe and what was off, and stand by code within each", () => {
    const papers = [of("d", { objective: "x" }), of("c", { objective: "x", verdict: "unsafe-side" }, { objective: "y", verdict: "safe-side" }, { objective: "z", verdict: "safe-side" }), of("b", { objective: "x", verdict: "safe-side" }), of("a", { objective: "x", verdict: "unsafe-side" })];
    for (const order of [papers, [...papers].reverse()]) expect(learnerObjectives(order).map(({ learner, unsafe, off }) => [learner, unsafe, off])).toEqual([["a", 1, 0], ["c", 1, 2], ["b", 0, 1], ["d", 0, 0]]);
  });
});

describe("the completion list", () => {
  it("goes by attempt, then by moment, and stands by code and list", () => {
    const at = (learner: string, list: string, [attempt, handedInAt]: readonly [number, string]): Paper => paperOf(learner, [], { list, attempt, handedInAt });
    const papers = [at("b", "l1", [1, "2026-11-22T10:00:00Z"]), at("b", "l1", [1, "2026-11-21T10:00:00Z"]), at("b", "l1", [2, "2026-11-20T10:00:00Z"]), at("a", "l2", [1, "2026-11-23T10:00:00Z"]), at("a", "l1", [1, "2026-11-23T10:00:00Z"])];
    for (const order of [papers, [...papers].reverse()]) {
      expect(completionRows(order).map(({ learner, list, attempts, firstAt, lastAt }) => [learner, list, attempts, firstAt.slice(8, 10), lastAt.slice(8, 10)])).toEqual([["a", "l1", 1, "23", "23"], ["a", "l2", 1, "23", "23"], ["b", "l1", 2, "21", "20"]]);
    }
  });
});

describe("slips as choices", () => {
  it("are judged against the rest of the sheet, not against the item itself", () => {
    // Fifteen of thirty made the slip and are otherwise exactly as good as the others: it tells nobody apart, so it does not work.
    const rows = Array.from({ length: 30 }, (_, person) => [person < 15 ? 0 : 1, person % 5 < 2 ? 1 : 0, person % 5 < 3 ? 1 : 0]);
    const papers = papersFrom(rows).map((paper, person) => ({ ...paper, marks: paper.marks.map((mark, item) => (item === 0 && person < 15 ? { ...mark, slip: "even" } : mark)) }));
    const form = fixedForm(papers);
    expect(form === null ? form : workingSlips(form, 0, ["even"])).toEqual({ works: 0, of: 1, efficiency: 0 });
  });

  it("have the correlation of two columns of noughts and ones", () => {
    // Thirty learners, by hand: phi of the table 5, 10, 10, 5 is (5 × 5 − 10 × 10) ÷ (15 × 15) = −1/3.
    const answers = Array.from({ length: 30 }, (_, person) => ({ choice: person < 15 ? "s" : null, restPoints: person < 5 || (person >= 15 && person < 25) ? 1 : 0 }));
    const figures = choiceFigures(["s"], answers);
    expect(figures[0]).toMatchObject({ chosen: 15, works: true, share: { value: 0.5 } });
    expect(figures[0]?.discrimination.value).toBeCloseTo(-1 / 3, 12);
    expect(choiceFigures(["s"], answers.map((answer) => ({ ...answer, restPoints: 1 })))[0]).toMatchObject({ works: false, discrimination: { refused: "rest-alike" } });
    expect(choiceEfficiency([...figures, ...choiceFigures(["x"], answers.slice(0, 3))])).toBeNull();
  });
});
