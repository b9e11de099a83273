import { describe, expect, it } from "vitest";
import { answerTo, draw, explain, families, slipsOf } from "../../src/bank/index.ts";
import { foundOf, packLineOf, packStateOf } from "../../src/engine/kit/pack-line.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { grade } from "../../src/bank/index.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { howMany } from "../support/how-many.ts";
import { PICTURED, pictureOfItem } from "../../src/figures/picture-of-item.ts";
import type { Own } from "../../src/figures/pictures/picture.ts";

const DRAWS = 200;
const seeds = Array.from({ length: DRAWS }, (_, seed) => seed);
/** Views are cast ray by ray, which takes long; the quick run looks at two of them, and at fewer of the others. */
const CAST: ReadonlySet<string> = new Set(["same-place", "pattern", "where-am-i", "hiatus"]);
const seedsOf = (id: string): readonly number[] => (CAST.has(id) ? seeds.slice(0, howMany(DRAWS, 2)) : seeds.slice(0, howMany(DRAWS, 8)));
const LEAST_LETTER_PX = 15;

const ownOf = (item: Item, response: Response): Own => ({
  response,
  values: Object.fromEntries(grade(item, response).parts.flatMap(({ ask, value }) => (value === undefined ? [] : [[ask, Number(value)]]))),
});

const pictureBefore = async (item: Item) => {
  const picture = await pictureOfItem(item);
  if (!picture) throw new Error(`${item.family} has no picture`);
  return picture;
};

/** What a picture shows in letters, without the sizes and places of its markup. */
const lettersOf = (markup: string): string => [...markup.matchAll(/<text[^>]*>([\s\S]*?)<\/text>/g)].map(([, inside = ""]) => inside.replace(/<[^>]+>/g, "")).join(" | ");
const sizesOf = (markup: string): readonly number[] => [...markup.matchAll(/font-size="([\d.]+)"/g)].map(([, size = ""]) => Number(size));
const everyGiven = (item: Item): string => [...item.stem, ...item.givens.map(({ text }) => text), ...Object.values(item.about)].join(" ");

describe.each(PICTURED)("the picture of %s", (id) => {
  it(`is sound before and after an answer, in ${DRAWS} draws`, async () => {
    expect(families.some((family) => family.id === id)).toBe(true);
    for (const seed of seedsOf(id)) {
      const item = draw(id, seed);
      const response = slipsOf(item)[seed % slipsOf(item).length]?.response ?? answerTo(item);
      for (const picture of [await pictureBefore(item), await pictureOfItem(item, ownOf(item, response))]) {
        expect(picture?.markup).not.toMatch(/NaN|undefined|Infinity|style=|null/);
        expect(picture?.markup).not.toMatch(/\d\.\d{3,}/);
        expect(picture?.text).not.toMatch(/NaN|undefined|Infinity|\[object/);
        expect(picture?.text.endsWith(cautionText("C8"))).toBe(true);
        expect(lettersOf(picture?.markup ?? "")).toContain("C8");
        expect(Math.min(...sizesOf(picture?.markup ?? ""))).toBeGreaterThanOrEqual(LEAST_LETTER_PX);
      }
    }
  });

  it("does not show the answer before it is given", async () => {
    for (const seed of seedsOf(id)) {
      const item = draw(id, seed);
      const { markup, text } = await pictureBefore(item);
      const told = `${lettersOf(markup)} ${text}`;
      const answers = item.kind === "sum" || item.kind === "range" ? explain(item, answerTo(item)).compare.map(({ answer }) => answer) : [];
      const shownAnyway = everyGiven(item);
      for (const answer of answers.filter((one) => /\d/.test(one) && !shownAnyway.includes(one.split("\u2009")[0] ?? one))) expect(told).not.toContain(` ${answer}`);
      expect(told).not.toMatch(/\byours\b|\byour\b/i);
    }
  });

  it("is violet only where the learner's own answer stands", async () => {
    for (const seed of seedsOf(id).slice(0, 40)) expect((await pictureBefore(draw(id, seed))).markup).not.toMatch(/class="[^"]*(mine|grip|own)/);
  });
});

describe("the tray", () => {
  it("shows what was found, and nothing where something is missing", async () => {
    let missing = 0;
    for (const seed of seeds) {
      const item = draw("pack-check", seed);
      const { markup, text } = await pictureBefore(item);
      const letters = lettersOf(markup);
      const lines = item.kind === "tray" ? item.things.map(({ id }) => ({ line: packLineOf(item.about[`${id}-line`] ?? ""), state: packStateOf(item.about[id]) })) : [];
      for (const { line, state } of lines) {
        const { count } = foundOf(line, state);
        if (count > 0) expect(text).toContain(`${count === 1 ? line.thing : line.more}`);
        if (count > 0) continue;
        missing += 1;
        expect(`${letters.replaceAll(" | ", " ")} ${text}`).not.toContain(line.thing);
      }
      const filled = lines.filter(({ line, state }) => foundOf(line, state).count > 0);
      // The empty compartments are the last ones, whatever is missing.
      expect(text).toContain(`${"ABCDEFGHIJKL"[filled.length - 1] ?? ""}: `);
      expect(text).not.toContain(`${"ABCDEFGHIJKL"[filled.length] ?? ""}: `);
      const pieces = filled.reduce((sum, { line, state }) => sum + foundOf(line, state).count, 0);
      expect([...markup.matchAll(/class="t-out" d="[^"]+" transform=/g)]).toHaveLength(2 * pieces);
    }
    expect(missing).toBeGreaterThan(50);
  });

  it("of a count holds what lies there, class by class, broken tips among them", async () => {
    for (const seed of seeds) {
      const item = draw("reconcile", seed);
      const { text } = await pictureBefore(item);
      const told = (word: string): number => [...text.matchAll(new RegExp(`: (\\d+) ${word}`, "g"))].reduce((sum, [, count = ""]) => sum + Number(count), 0);
      const present = (id: string): number => Number((item.about[id] ?? "").split("|")[3]);
      expect([told("swabs?"), told("needles?"), told("blades?"), told("instruments?")]).toEqual(["swabs", "needles", "blades", "tips"].map(present));
      const broken = [...text.matchAll(/(\d+) broken/g)].reduce((sum, [, count = ""]) => sum + Number(count), 0);
      expect(broken).toBe(Number((item.about["tips"] ?? "").split("|")[4]));
    }
  });
});

describe("the pictures say what the question says", () => {
  it.each([
    ["date-check", (item: Item) => (item.kind === "tray" ? item.things.map(({ id }) => `use by ${item.about[id] ?? ""}`) : [])],
    ["minutes-left", ({ about }: Item) => ["upAt", "cutAt", "nowAt"].map((key) => about[key] ?? "")],
    ["two-periods", ({ about }: Item) => ["firstUpAt", "downAt", "againUpAt", "nowAt"].map((key) => about[key] ?? "")],
    ["head", ({ givens }: Item) => givens.slice(0, 2).map(({ text }) => text)],
    ["hang-at", ({ givens }: Item) => givens.slice(0, 3).map(({ text }) => text)],
    ["table-up", ({ givens, about }: Item) => [...givens.slice(0, 2).map(({ text }) => text), about["way"] ?? ""]],
    ["cuff-width", ({ givens }: Item) => givens.map(({ text }) => text)],
    ["rim-zone", ({ givens, about }: Item) => [...givens.map(({ text }) => text), about["place"] ?? ""]],
    ["orientation", ({ givens, about }: Item) => [...givens.map(({ text }) => String(Number(text))), `${about["meniscus"]} meniscus`]],
    ["depth-in-width", ({ givens, about }: Item) => [...givens.map(({ text }) => text), about["place"] ?? ""]],
    ["slices", ({ givens, about }: Item) => [givens[0]?.text ?? "", givens[1]?.text ?? "", about["plane"] ?? ""]],
  ] as const)("%s", async (id, facts) => {
    for (const seed of seeds) {
      const item = draw(id, seed);
      const { text } = await pictureBefore(item);
      expect(facts(item).filter((fact) => !text.includes(fact))).toEqual([]);
    }
  });

  it("and a package is whole in the picture exactly where it is whole in the question", async () => {
    for (const seed of seeds) {
      const item = draw("field-fault", seed);
      const { text } = await pictureBefore(item);
      const faulty = (answerTo(item) as { readonly found: readonly string[] }).found;
      const sentences = item.kind === "tray" ? item.things.map(({ id, text: said }) => ({ id, told: text.split(". ").find((one) => one.includes(`${said.split(":")[0] ?? ""}:`)) ?? "" })) : [];
      const isSound = (told: string): boolean => /film whole|without a hole/.test(told) && told.includes("seal closed") && told.includes("striped") && /outer label lot (\d+), inner label lot \1/.test(told) && !/tear|water mark|pinhole/.test(told);
      expect(sentences.filter(({ told }) => !isSound(told)).map(({ id }) => id).sort()).toEqual([...faulty].sort());
    }
  });
});

describe("the tear on the clock", () => {
  it("runs over the angle that is graded, on the side of the named rim", async () => {
    for (const seed of seeds) {
      const item = draw("clock-length", seed);
      const { markup } = await pictureBefore(item);
      const ends = /class="tear" d="M([\d.]+) ([\d.]+)A.* ([\d.]+) ([\d.]+)"/.exec(/class="tear" d="[^"]+"/.exec(markup)?.[0] ?? "")?.slice(1).map(Number) ?? [];
      const isRight = (item.about["meniscus"] === "lateral") === (item.about["side"] === "right");
      const centre = [178 + (isRight ? -40 : 40), 150] as const;
      const angle = ([x, y]: readonly [number, number]): number => Math.atan2(isRight ? x - centre[0] : centre[0] - x, centre[1] - y) * (180 / Math.PI);
      const [fromX, fromY, toX, toY] = ends;
      if (fromX === undefined || fromY === undefined || toX === undefined || toY === undefined) throw new Error("no tear is drawn");
      const [first, last] = [[fromX, fromY], [toX, toY]] as const;
      const halves = Number(item.about["toHalves"]) - Number(item.about["fromHalves"]);
      expect(angle(last) - angle(first)).toBeCloseTo(halves * 15, 0);
      expect(angle(first)).toBeCloseTo(Number(item.about["fromHalves"]) * 15, 0);
    }
  });
});

it("a question without a picture has none", async () => expect(await pictureOfItem(draw("aim-error", 1))).toBeNull());
