import { describe, expect, it } from "vitest";
import { ordinaryFamilies, standardOf } from "../../src/engine/cohort/by-cut.ts";
import { byObjective } from "../../src/engine/cohort/by-objective.ts";
import { completionRows } from "../../src/engine/cohort/completion.ts";
import { firstAnswers, firstMarks, firstPapers } from "../../src/engine/cohort/first-marks.ts";
import { fixedForm } from "../../src/engine/cohort/fixed-form.ts";
import { itemFigures } from "../../src/engine/cohort/item-figures.ts";
import { readEstimates } from "../../src/engine/cohort/judge-estimates.ts";
import { learnerObjectives } from "../../src/engine/cohort/learner-objectives.ts";
import { comparePlaces } from "../../src/engine/cohort/places.ts";
import { sheetFigures } from "../../src/engine/cohort/sheet-figures.ts";
import { slipCounts } from "../../src/engine/cohort/slip-counts.ts";
import { variantSpreads } from "../../src/engine/cohort/variants.ts";
import { workingSlips } from "../../src/engine/cohort/working-slips.ts";
import { wilson } from "../../src/engine/evidence/wilson.ts";
import { markOf, paperOf, papersFrom } from "../support/papers.ts";

/** A table of so many persons and items with some spread in it. */
const table = (persons: number, items = 6): number[][] => Array.from({ length: persons }, (_, person) => Array.from({ length: items }, (__, item) => ((person * 7 + item * 3) % 10 > item ? 1 : 0)));

describe("first attempts and first tries", () => {
  it("are the only ones that count", () => {
    const early = paperOf("anna", [markOf({ verdict: "safe-side" }), markOf({ try: 2 })]);
    const late = paperOf("anna", [markOf()], { attempt: 2, handedInAt: "2026-11-19T10:00:00Z" });
    expect(firstPapers([late, early])).toEqual([early]);
    expect(firstMarks(early).map(({ verdict }) => verdict)).toEqual(["safe-side"]);
    expect(byObjective([late, early])[0]).toMatchObject({ learners: 1, allRight: 0, answers: 1, right: 0 });
  });

  it("are told apart by list, and by the moment where the attempt is the same", () => {
    const here = paperOf("anna", [markOf()]);
    expect(firstPapers([here, { ...here, list: "list-b" }])).toHaveLength(2);
    const sooner = { ...here, handedInAt: "2026-11-18T10:00:00Z" };
    expect(firstPapers([here, sooner])).toEqual([sooner]);
  });

  it("leave out what could not be read as an answer, and do not take the second try for it", () => {
    expect(firstAnswers([paperOf("anna", [markOf({ verdict: "not-recognised" }), markOf({ try: 2 })])])).toEqual([]);
  });
});

describe("a fixed form", () => {
  it("is the sheet that most answered whole; gaps and other items are counted and set aside", () => {
    const papers = papersFrom(table(8));
    const gap = { ...papers[0], learner: "gap", marks: papers[0]?.marks.slice(1) ?? [] };
    const other = { ...papers[0], learner: "other", marks: papers[0]?.marks.map((mark) => ({ ...mark, version: 2 })) ?? [] };
    const form = fixedForm([...papers, paperOf(gap.learner, gap.marks), paperOf(other.learner, other.marks)]);
    expect(form).toMatchObject({ incomplete: 1, otherForm: 1, isDrawnForEach: false });
    expect(form?.learners).toHaveLength(8);
    expect(form?.rights).toEqual(table(8));
  });

  it("is none where everybody had other questions, and says so", () => {
    const papers = Array.from({ length: 40 }, (_, person) => paperOf(`l${person}`, [markOf({ family: `f${person}` }), markOf({ slot: 2, family: `g${person}` })]));
    expect(fixedForm(papers)).toBeNull();
    expect(sheetFigures(papers)).toMatchObject({ learners: 0, reliability: { value: null, refused: "no-fixed-form" } });
    expect(itemFigures(papers)[0]).toMatchObject({ slot: null, difficulty: { value: null, refused: "under-five" }, discrimination: { value: null, refused: "no-fixed-form" } });
    expect([sheetFigures([]).reliability.refused, itemFigures([])]).toEqual(["nobody", []]);
  });

  it("may have other numbers for each learner, and then it says that too", () => {
    const papers = papersFrom(table(6)).map((paper, person) => ({ ...paper, marks: paper.marks.map((mark) => ({ ...mark, seed: String(person) })) }));
    expect(fixedForm(papers)?.isDrawnForEach).toBe(true);
  });

  it("gives figures from thirty learners on, and never a 0 for what is not defined", () => {
    expect(sheetFigures(papersFrom(table(29))).reliability.refused).toBe("under-thirty");
    expect(sheetFigures(papersFrom(table(30))).reliability.refused).toBeNull();
    const easy = itemFigures(papersFrom(table(30).map((row) => [1, ...row])));
    expect(easy[0]).toMatchObject({ difficulty: { value: 1 }, discrimination: { value: null, refused: "item-alike" } });
    const alike = Array.from({ length: 30 }, (_, person) => (person % 2 === 0 ? [1, 0] : [0, 1]));
    expect(sheetFigures(papersFrom(alike))).toMatchObject({ reliability: { value: null, refused: "totals-alike" }, errorPoints: { value: null, refused: "totals-alike" } });
    expect(sheetFigures(papersFrom(table(30, 1))).reliability).toEqual({ value: null, refused: "one-item" });
    const against = Array.from({ length: 30 }, (_, person) => [[1, 1, 0], [0, 0, 1], [1, 1, 0], [0, 0, 1], [0, 1, 1]][person % 5] ?? []);
    const figures = sheetFigures(papersFrom(against));
    expect(figures.reliability.value).toBeLessThan(0);
    expect(figures.errorPoints).toEqual({ value: null, refused: "reliability-below-0" });
  });
});

describe("objectives", () => {
  const papers = ["a", "b", "c", "d", "e", "f"].map((learner, index) =>
    paperOf(learner, [
      markOf({ slot: 1, objective: "m01-x", family: "f1", verdict: index < 2 ? "unsafe-side" : "right", slip: index < 2 ? "twice" : null }),
      markOf({ slot: 2, objective: "m01-x", family: "f2", verdict: index === 2 ? "rounding" : "right" }),
      markOf({ slot: 3, objective: "m01-y", family: "f3", verdict: index < 5 ? "safe-side" : "right", slip: index < 5 ? "half" : null }),
    ]));

  it("stand unsafe first, by learners with all right, with Wilson's interval of learners", () => {
    const [first, second] = byObjective(papers);
    expect(first).toMatchObject({ objective: "m01-x", learners: 6, allRight: 3, unsafe: 2, answers: 12, right: 9, interval: wilson({ events: 3, total: 6 }), commonestSlip: { family: "f1", slip: "twice", learners: 2, met: 6, unsafe: true } });
    expect(second).toMatchObject({ objective: "m01-y", learners: 6, allRight: 1, unsafe: 0, commonestSlip: { slip: "half", learners: 5 } });
  });

  it("have no interval under five persons", () => {
    expect(byObjective(papers.slice(0, 4)).map(({ interval }) => interval)).toEqual([null, null]);
    expect(byObjective(papers.slice(0, 5))[0]?.interval).not.toBeNull();
  });

  it("make a row for each learner: unsafe ones first, then by code, and nobody is ranked", () => {
    const rows = learnerObjectives([...papers].reverse());
    expect(rows.map(({ learner }) => learner)).toEqual(["a", "b", "c", "d", "e", "f"]);
    expect(rows[0]).toEqual({ learner: "a", unsafe: 1, off: 1, cells: [{ objective: "m01-x", state: "unsafe", right: 1, answers: 2 }, { objective: "m01-y", state: "off", right: 0, answers: 1 }] });
    expect(rows[5]?.cells.map(({ state }) => state)).toEqual(["right", "right"]);
  });

  it("count a slip once a learner, unsafe ones first", () => {
    const answers = firstAnswers([...papers, paperOf("g", [markOf({ slot: 1, family: "f3", verdict: "safe-side", slip: "half" }), markOf({ slot: 2, family: "f3", verdict: "safe-side", slip: "half" })])]);
    expect(slipCounts(answers).map(({ slip, learners, met, unsafe }) => [slip, learners, met, unsafe])).toEqual([["twice", 2, 6, true], ["half", 6, 7, false]]);
  });
});

describe("hospitals", () => {
  const at = (place: string | null, count: number) => Array.from({ length: count }, (_, index) => paperOf(`${place}-${index}`, [markOf({ verdict: index === 0 ? "unsafe-side" : "right" })], { place }));

  it("are compared only where each has five persons", () => {
    expect(comparePlaces([...at("Hythe Vale", 5), ...at("Carrow", 4)])).toEqual({ refused: "under-five", places: [], small: 1, all: 2 });
    const { places } = comparePlaces([...at("Hythe Vale", 5), ...at("Carrow", 6)]);
    expect(places.map(({ place, learners, withoutUnsafe }) => [place, learners, withoutUnsafe])).toEqual([["Carrow", 6, 5], ["Hythe Vale", 5, 4]]);
  });

  it("are one where people spell one name in two ways, whatever came first", () => {
    for (const papers of [[...at(" saltmarsh", 2), ...at("Saltmarsh", 3)], [...at("Saltmarsh", 3), ...at("saltmarsh  ", 2)]]) expect(comparePlaces([...papers, ...at("Carrow", 5)]).places.map(({ place, learners }) => [place, learners])).toEqual([["Carrow", 5], ["Saltmarsh", 5]]);
    expect(comparePlaces([...at("Hythe Vale", 3), ...at("hythe  vale", 3)]).refused).toBe("one-place");
  });

  it("are not made of papers: five attempts of one person are one person", () => {
    const again = Array.from({ length: 5 }, (_, index) => paperOf("one", [markOf()], { place: "Carrow", list: `list-${index}` }));
    expect(comparePlaces([...at("Hythe Vale", 5), ...again])).toMatchObject({ refused: "under-five", small: 1 });
  });

  it("are refused with their reason where there is one, none, or a few whose place is not known", () => {
    expect(comparePlaces(at("Carrow", 9)).refused).toBe("one-place");
    expect(comparePlaces(at(null, 9)).refused).toBe("no-places");
    expect(comparePlaces([...at("Carrow", 5), ...at("Hythe Vale", 5), ...at(null, 2)]).refused).toBe("places-unknown");
  });
});

describe("draws of one family", () => {
  it("are compared where two of them were answered by five learners each", () => {
    const papers = Array.from({ length: 12 }, (_, index) => paperOf(`l${index}`, [markOf({ seed: index < 5 ? "1" : "2", verdict: index < 4 ? "right" : "safe-side" })]));
    expect(variantSpreads(papers)).toEqual([{ family: "family-a", version: 1, draws: 2, leastShare: 0, greatestShare: 0.8 }]);
    expect(variantSpreads(papers.slice(0, 8))).toEqual([{ family: "family-a", version: 1, draws: 1, leastShare: null, greatestShare: null }]);
  });
});

describe("judges' estimates as typed", () => {
  const families = ["greatest-depth", "window"];
  it("are read as shares with a point or comma, or as per cent", () => {
    expect(readEstimates("greatest-depth 0.6 0,65 55%\r\n\r\n window; .7;1;0 \n", families)).toEqual({ judged: [{ family: "greatest-depth", shares: [0.6, 0.65, 0.55] }, { family: "window", shares: [0.7, 1, 0] }], faults: [] });
  });
  it("that cannot be read are named with their line, and never change the others", () => {
    const { judged, faults } = readEstimates("window 0.6 60\nwidth 0.5\n0.6 0.7\ngreatest-depth\nwindow 0.5 0.5\nwindow 0.4\nwindow 0.5 120%", families);
    expect(faults.map(({ line, fault, found }) => [line, fault, found])).toEqual([[1, "not-a-share", "60"], [2, "unknown-family", "width"], [3, "no-family", "0.6"], [4, "no-estimate", "greatest-depth"], [6, "twice", "window"], [6, "other-count", "window"], [7, "not-a-share", "120%"]]);
    expect(judged[0]).toEqual({ family: "window", shares: [0.5, 0.5] });
    expect(readEstimates("x".repeat(20_001), families).faults[0]?.fault).toBe("too-long");
  });
});

describe("a standard on a sheet", () => {
  // Six questions; the last must be right. Two judges, by hand: sums 2.5 and 3, cut 2.75, band √(2.75 × 2.25 ÷ 4) on either side.
  const papers = papersFrom([[1, 1, 1, 1, 1, 0], [1, 1, 1, 0, 0, 1], [0, 0, 0, 0, 1, 1], [1, 1, 1, 1, 1, 1]]);
  const judged = [0, 1, 2, 3, 4].map((item) => ({ family: `family-${item}`, shares: [0.5, 0.6] }));
  const form = fixedForm(papers);

  it("keeps what must be right out of the points, and names who missed it", () => {
    if (form === null) throw new Error("no form");
    expect(ordinaryFamilies(form, ["family-5"])).toHaveLength(5);
    const { cut, band, learners } = standardOf(form, judged, ["family-5"]);
    expect([cut.cutPoints.value, band?.low, band?.high]).toEqual([2.75, expect.closeTo(1.506266, 5), expect.closeTo(3.993734, 5)]);
    expect(learners).toEqual([
      { learner: "learner-0", points: 5, place: "above", missed: ["family-5"] },
      { learner: "learner-1", points: 3, place: "undecided", missed: [] },
      { learner: "learner-2", points: 1, place: "below", missed: [] },
      { learner: "learner-3", points: 5, place: "above", missed: [] },
    ]);
  });

  it("is none while a question of the sheet is not judged", () => {
    if (form === null) throw new Error("no form");
    expect(standardOf(form, judged, [])).toMatchObject({ cut: { cutPoints: { refused: "items-not-judged" } }, band: null, learners: [] });
  });
});

describe("slips that work", () => {
  it("are judged by who made them, from thirty learners on", () => {
    // Thirty learners: the three weakest made the slip, which is one in ten; nobody made the other.
    const rows = table(30).map((row, person) => (person < 3 ? [0, ...row.map(() => 0)] : [1, ...row]));
    const papers = papersFrom(rows).map((paper, person) => ({ ...paper, marks: paper.marks.map((mark, item) => (item === 0 && person < 3 ? { ...mark, slip: "twice" } : mark)) }));
    const form = fixedForm(papers);
    if (form === null) throw new Error("no form");
    expect(workingSlips(form, 0, ["twice", "never"])).toEqual({ works: 1, of: 2, efficiency: 0.5 });
    expect(workingSlips(form, 0, [])).toBeNull();
    const few = fixedForm(papers.slice(0, 29));
    expect(few === null ? few : workingSlips(few, 0, ["twice"])).toBeNull();
  });
});

describe("the completion list", () => {
  it("has a row for each learner and list, with the last attempt's unsafe answers", () => {
    const first = paperOf("b", [markOf({ slot: 0, verdict: "unsafe-side" }), markOf({ slot: 1 })], { place: "Carrow" });
    const second = { ...first, attempt: 2, handedInAt: "2026-11-25T10:00:00Z", marks: [markOf({ slot: 0 }), markOf({ slot: 1, verdict: "not-recognised" })] };
    expect(completionRows([second, paperOf("a", []), first])).toEqual([
      { learner: "a", place: null, list: "list-a", attempts: 1, firstAt: "2026-11-20T10:00:00Z", lastAt: "2026-11-20T10:00:00Z", answered: 0, unsafeInLast: 0 },
      { learner: "b", place: "Carrow", list: "list-a", attempts: 2, firstAt: "2026-11-20T10:00:00Z", lastAt: "2026-11-25T10:00:00Z", answered: 1, unsafeInLast: 0 },
    ]);
    expect(completionRows([first])[0]?.unsafeInLast).toBe(1);
  });
});
