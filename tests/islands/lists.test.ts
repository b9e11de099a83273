import { describe, expect, it } from "vitest";
import { readListCode } from "../../src/engine/record/list-code.ts";
import { questionCount } from "../../src/engine/record/list-form.ts";
import { isSpokenRight } from "../../src/engine/record/list-sheet.ts";
import { EDITIONS } from "../../src/facts/editions.ts";
import { PRESETS } from "../../src/facts/presets.ts";
import type { CourseModule } from "../../src/islands/course.ts";
import { type ComposeCourse, type Draft, draftOf, emptyDraft, familiesOf, makeList, mustOfDraft } from "../../src/islands/lists/draft.ts";
import { orText, ruleText } from "../../src/islands/lists/list-text.ts";
import { openedList } from "../../src/islands/lists/open-list.ts";
import { linkText } from "../../src/engine/record/list-link.ts";
import { learnerFrom } from "../../src/islands/lists/sitting.ts";
import { listOf } from "../support/lists.ts";

const modules: readonly CourseModule[] = [{
  code: "M10", title: "Needle path and depth", path: "/", core: ["resident"],
  objectives: [
    { id: "m10-least", module: "M10", text: "least", families: ["least-depth", "path-width"], isSafety: true },
    { id: "m10-greatest", module: "M10", text: "greatest", families: ["greatest-depth", "depth-to-stop"], isSafety: true },
  ],
  chains: [{ family: "depth-to-stop", needs: ["m10-least"] }],
}];
const course: ComposeCourse = { modules, unsafe: new Set(["greatest-depth"]) };
const TODAY = 20_800;
const draft: Draft = { ...emptyDraft(TODAY), title: "First list", objectives: new Set(["m10-least", "m10-greatest"]), each: 2 };
const made = (of: Draft) => {
  const list = makeList(of, course, PRESETS);
  if ("fault" in list) throw new Error(list.fault);
  return list;
};
const [preset] = PRESETS;

describe("the compose page", () => {
  it("makes a list of the families that serve the chosen objectives, without questions of several steps", () => {
    expect(familiesOf(draft, course)).toEqual(["least-depth", "path-width", "greatest-depth"]);
    expect(mustOfDraft(draft, course)).toEqual(["greatest-depth"]);
    const { list, code, spoken } = made(draft);
    expect([questionCount(list), list.rule.must.length, code, spoken]).toEqual([6, 1, null, null]);
    expect(made(draft).list.nonce).not.toBe(list.nonce);
  });

  it("says what is missing instead of making a list", () => {
    const wrong: readonly (readonly [Partial<Draft>, string])[] = [
      [{ title: " " }, "title"], [{ objectives: new Set() }, "picks"], [{ each: 30 }, "picks"], [{ opensOn: "2028-01-01" }, "days"], [{ dueOn: "" }, "days"], [{ back: [] }, "back"], [{ backTo: "x".repeat(200) }, "rest"],
    ];
    for (const [over, fault] of wrong) expect([over, makeList({ ...draft, ...over }, course, PRESETS)]).toEqual([over, { fault }]);
  });

  it("gives a typed code for a ready-made list as it is, and none once something but its days is changed", () => {
    if (preset === undefined) throw new Error("no ready-made list");
    const start = draftOf(preset, emptyDraft(TODAY));
    const { list, code } = made({ ...start, dueOn: "2027-03-01" });
    expect(code?.length).toBeLessThanOrEqual(24);
    expect(readListCode(code ?? "", PRESETS, EDITIONS)).toEqual(list);
    for (const over of [{ attempts: 1 }, { title: "Another" }, { isSupervised: true }, { rightPercent: 50 }, { ticked: new Set<string>() }, { backTo: "ward" }]) expect([over, made({ ...start, ...over }).code]).toEqual([over, null]);
  });

  it("makes a word for a supervised list that opens it and stands nowhere in the link", () => {
    const { list, spoken } = made({ ...draft, isSupervised: true });
    expect(spoken).toMatch(/^[A-Z0-9]{3} [A-Z0-9]{3}$/);
    expect(isSpokenRight(list, spoken)).toBe(true);
    expect(JSON.stringify(list)).not.toContain(spoken ?? "none");
  });
});

describe("the learner's side", () => {
  const list = listOf(["how-many"]);

  it("opens links and codes, and says a sentence for what is neither", () => {
    expect(openedList(linkText(list))).toEqual({ list });
    expect(openedList("")).toEqual({ said: expect.stringContaining("Nothing was typed") });
    expect(openedList("abc")).toEqual({ said: expect.stringContaining("too short:") });
    expect(openedList("ABCD-EFGH")).toEqual({ said: expect.stringContaining(".") });
    expect(openedList(linkText({ ...list, edition: 30 }))).toEqual({ said: expect.stringContaining("edition") });
  });

  it("takes a learner code and a place, and names what is wrong with either", () => {
    expect(learnerFrom(list, { learner: "Avocet 12", place: " Northmoor ", spoken: "" })).toEqual({ learner: "avocet-12", place: "Northmoor", spoken: null });
    expect([learnerFrom(list, { learner: "a", place: "", spoken: "" }), learnerFrom(list, { learner: "avocet", place: "x".repeat(61), spoken: "" })]).toEqual([{ fault: "learnerWrong" }, { fault: "placeLong" }]);
  });

  it("says the rule in one sentence", () => {
    expect(ruleText({ rightPercent: 80, must: [1], noUnsafe: true })).toBe("The last sheet handed in counts: at least 80\u00a0% of its questions right, every question on the must-be-right list right, and no answer on the unsafe side.");
    expect(orText(["a file", "a block", "a code"])).toBe("a file, a block or a code");
  });
});
