import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { slimCautions, slimLedger } from "../../src/build/slim-ledger.ts";
import type { CautionData } from "../../src/facts/cautions.ts";
import { pinnedIn, type TopicData } from "../../src/facts/reader.ts";

const folder = new URL("../../content/ledger/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
const read = (name: string): string => readFileSync(new URL(name, folder), "utf8");

describe("the ledger that a browser is sent", () => {
  it.each(files)("gives the same numbers as the whole %s", (name) => {
    const [whole, slim] = [JSON.parse(read(name)) as TopicData, JSON.parse(slimLedger(read(name))) as TopicData];
    const pins = whole.entries.flatMap(({ key, revisions }) => revisions.map(({ revision }) => `${key}@${revision}`));
    expect(pins.length).toBeGreaterThan(0);
    for (const pin of pins) expect(pinnedIn(slim, pin)).toEqual(pinnedIn(whole, pin));
  });

  it("leaves the prose behind", () => {
    const [whole, slim] = [files.map(read).join(""), files.map((name) => slimLedger(read(name))).join("")];
    expect(slim).not.toContain("definition");
    expect(slim.length).toBeLessThan(whole.length / 2);
  });
});

describe("the cautions that a browser is sent", () => {
  const whole = readFileSync(new URL("../cautions.json", folder), "utf8");
  const said = (text: string) => (JSON.parse(text) as readonly CautionData[]).map(({ id, text: words }) => [id, words]);

  it("say the same, without the places where they must stand", () => {
    expect(said(slimCautions(whole))).toEqual(said(whole));
    expect(said(whole).length).toBeGreaterThan(10);
    expect(slimCautions(whole)).not.toContain("footer of every page");
  });
});
