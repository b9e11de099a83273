import { describe, expect, it } from "vitest";
import { answerTo, draw, explain, grade, slipsOf } from "../../src/bank/index.ts";
import { loadFamily } from "../../src/bank/load.ts";
import type { Mark } from "../../src/engine/cohort/paper.ts";
import { namesOf } from "../../src/islands/understanding/names.ts";
import type { Families } from "../../src/islands/understanding/use-families.ts";
import { vivaCard } from "../../src/islands/understanding/viva.ts";
import { markOf, paperOf } from "../support/papers.ts";

const IDS = ["greatest-depth", "capped-dose", "how-many", "set-up"];
const families: Families = new Map(await Promise.all(IDS.map(async (id) => [id, await loadFamily(id)] as const)));
const names = namesOf(families, [{ code: "M10", title: "", path: "", core: [], chains: [], objectives: [{ id: "m10-x", module: "M10", text: "calculate the depth", families: [], isSafety: true }] }]);

/** A mark for the first slip of a question that leads to the wanted side. */
const slipped = (id: string, slot: number, isUnsafe: boolean): Mark => {
  for (let seed = 1; seed < 200; seed += 1) {
    const item = draw(id, seed);
    const found = slipsOf(item).find(({ unsafe }) => unsafe === isUnsafe);
    if (found === undefined) continue;
    const { verdict, slip = null } = grade(item, found.response);
    return markOf({ slot, family: id, version: item.version, seed: String(seed), verdict, slip });
  }
  throw new Error(`${id} has no such slip`);
};

describe("a card for a talk", () => {
  it("begins with the unsafe answer, names the slip as the question does, and asks for the side that harms", () => {
    const unsafe = slipped("greatest-depth", 3, true);
    const off = slipped("how-many", 0, false);
    const card = vivaCard(paperOf("heron-41", [off, markOf({ slot: 1, family: "capped-dose" }), unsafe]), families, names);
    expect(card.questions.map(({ mark }) => mark)).toEqual([unsafe, off]);
    const [first] = card.questions;
    const slipName = families.get("greatest-depth")?.words.en.slips[unsafe.slip ?? ""]?.name ?? "none";
    expect(first?.title).toBe(draw("greatest-depth", 1).title);
    expect(first?.said).toContain(slipName);
    expect(first?.asks).toHaveLength(2);
    expect(first?.asks[0]).toContain(slipName);
    expect(first?.asks[1]).toBe("Which side of the answer does harm here, and why?");
    expect(card.questions[1]?.asks).toHaveLength(1);
  });

  it("brings the question with the learner's own numbers, its answer and its working", () => {
    const mark = slipped("greatest-depth", 0, true);
    const item = draw("greatest-depth", mark.seed);
    const { compare, working } = explain(item, answerTo(item));
    const drawn = vivaCard(paperOf("a", [mark]), families, names).questions[0]?.drawn;
    expect(drawn?.item).toEqual(item);
    expect(drawn?.working).toEqual(working);
    expect(compare.length).toBeGreaterThan(0);
    for (const { answer } of compare) expect(drawn?.answer).toContain(answer);
  });

  it("asks no question in a version that this site does not have, nor one that it does not know", () => {
    const questions = vivaCard(paperOf("a", [{ ...slipped("how-many", 0, false), version: 99 }, markOf({ slot: 1, family: "gone", verdict: "rounding", slip: "some-slip" })]), families, names).questions;
    expect(questions.map(({ drawn }) => drawn)).toEqual([undefined, undefined]);
    expect(questions[1]).toMatchObject({ title: "gone", said: "The answer fits the slip “some slip”." });
    expect(questions[1]?.asks).toHaveLength(2);
  });

  it("holds four questions and counts the rest, and says where everything was right", () => {
    const marks = Array.from({ length: 7 }, (_, slot) => markOf({ slot, verdict: "unit-or-power" }));
    expect(vivaCard(paperOf("a", marks), families, names)).toMatchObject({ questions: { length: 4 }, more: 3 });
    expect(vivaCard(paperOf("a", [markOf()]), families, names)).toMatchObject({ questions: [], more: 0 });
  });
});

describe("names", () => {
  it("are those of the course and the questions, and words where nothing is known", () => {
    expect([names.objective("m10-x"), names.objective("m99-not-there")]).toEqual(["calculate the depth", "m99 not there"]);
    expect([names.family("how-many"), names.family("not-there"), names.slip("not-there", "a-slip")]).toEqual([draw("how-many", 1).title, "not there", "a slip"]);
  });
});
