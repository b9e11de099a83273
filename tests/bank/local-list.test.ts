import { describe, expect, it } from "vitest";
import { answerTo, draw, families, grade } from "../../src/bank/index.ts";
import type { LocalList } from "../../src/engine/kit/local-list.ts";
import { LOCAL_LIST, LOCAL_TABLES, localListOf } from "../../src/facts/local-list.ts";
import { pictureOfItem } from "../../src/figures/picture-of-item.ts";
import { localCountsSchema, localLimitsSchema, localPackSchema, localWasteSchema } from "../../src/schemas/local.ts";

const seeds = Array.from({ length: 300 }, (_, seed) => seed);
const READ_IT = ["pack-check", "opening-sum", "set-up", "reconcile", "streams", "minutes-left", "two-periods", "bag-life"];

/** The list with another number of needles in the pack. */
const threeNeedles: LocalList = localListOf({
  ...LOCAL_TABLES,
  pack: { ...LOCAL_TABLES.pack, things: LOCAL_TABLES.pack.things.map((one) => (one.thing === "long needle" ? { ...one, pieces: 3 } : one)) },
});

const foundIn = (list: LocalList, seed: number) => {
  const item = draw("pack-check", seed, { local: list });
  return { item, key: (answerTo(item) as { readonly found: readonly string[] }).found };
};

describe("the local list", () => {
  it("holds to its schemas and names this state of itself", () => {
    const { pack, counts, waste, limits } = LOCAL_TABLES;
    expect([localPackSchema.safeParse(pack), localCountsSchema.safeParse(counts), localWasteSchema.safeParse(waste), localLimitsSchema.safeParse(limits)].map(({ success }) => success)).toEqual([true, true, true, true]);
    expect(LOCAL_LIST.hash).toMatch(/^[0-9a-f]{12}$/);
    expect(localListOf(structuredClone(LOCAL_TABLES)).hash).toBe(LOCAL_LIST.hash);
    expect(threeNeedles.hash).not.toBe(LOCAL_LIST.hash);
  });

  it("is named by every question that reads it, and by no other", () => {
    const named = families.filter(({ id }) => draw(id, 3).local !== undefined).map(({ id }) => id);
    expect(named.sort()).toEqual([...READ_IT].sort());
    for (const id of READ_IT) expect(draw(id, 3, { local: threeNeedles }).local).toBe(threeNeedles.hash);
  });

  it("changes the question, its picture and its key with one line", async () => {
    let [questions, pictures, keys] = [0, 0, 0];
    for (const seed of seeds) {
      const [before, after] = [foundIn(LOCAL_LIST, seed), foundIn(threeNeedles, seed)];
      const asked = ({ item }: typeof before): string => (item.kind === "tray" ? item.things.map(({ text }) => text).join() : "");
      if (!asked(before).includes("long needle") || !asked(after).includes("long needle")) continue;
      expect(asked(after)).toContain("List: 3 long needles");
      expect(asked(before)).toMatch(/List: 2 long needles|List: 1 pair of long needles/);
      questions += 1;
      const [first, second] = [await pictureOfItem(before.item), await pictureOfItem(after.item)];
      if (first?.markup !== second?.markup && first?.text !== second?.text) pictures += 1;
      if (before.key.join() !== after.key.join()) keys += 1;
    }
    expect(Math.min(questions, pictures)).toBeGreaterThan(100);
    expect(keys).toBeGreaterThan(4);
  });

  it("makes the same two needles right by one list and wrong by another", () => {
    const item = seeds.map((seed) => draw("pack-check", seed)).find(({ about }) => about["long-needle"] === "right");
    if (item?.kind !== "tray") throw new Error("no draw has its long needles right");
    const line = item.about["long-needle-line"] ?? "";
    const byAnother = { ...item, about: { ...item.about, "long-needle": "half", "long-needle-line": line.replace("|2|", "|3|") } };
    const found = (answerTo(item) as { readonly found: readonly string[] }).found;
    expect(found).not.toContain("long-needle");
    expect(answerTo(byAnother)).toEqual({ kind: "tray", found: [...found, "long-needle"].sort() });
  });

  it("does not change how an old question is graded", () => {
    for (const id of READ_IT) {
      const item = draw(id, 11, { local: threeNeedles });
      expect(grade(item, answerTo(item)).verdict).toBe("right");
      expect(JSON.stringify(draw(id, 11, { local: threeNeedles }))).toBe(JSON.stringify(item));
    }
  });

  it("sends waste and sets limits at its own hospital, and there alone", () => {
    const ours = seeds.map((seed) => draw("streams", seed)).filter(({ about }) => about["hospital"] === LOCAL_LIST.hospital);
    expect(ours.length).toBeGreaterThan(50);
    for (const item of ours) expect((answerTo(item) as { readonly picks: object }).picks).toEqual(LOCAL_LIST.waste);
    for (const [id, key, limit] of [["minutes-left", "limitMin", "cuff-time"], ["two-periods", "restMin", "cuff-rest"], ["bag-life", "reserveMl", "bag-reserve"]] as const) {
      const drawn = seeds.map((seed) => draw(id, seed));
      const values = (isOurs: boolean) => new Set(drawn.filter(({ about }) => (about["hospital"] === LOCAL_LIST.hospital) === isOurs).map(({ givens }) => Number(givens.find((given) => given.key === key)?.text)));
      expect([...values(true)]).toEqual([LOCAL_LIST.limits[limit]?.value]);
      expect(values(false).size).toBeGreaterThan(2);
    }
  });
});
