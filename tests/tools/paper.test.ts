import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { answerTo, draw, explain } from "../../src/bank/index.ts";
import { readSheetNumber, sheetNumberText, sheetOf } from "../../src/engine/record/sheet-number.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { EDITIONS, NEWEST, planFor } from "../../src/facts/editions.ts";
import { agesOf, type KneeBand } from "../../src/facts/knee-model.ts";
import { pictureOnPaper } from "../../src/figures/picture-on-paper.ts";

const project = new URL("../..", import.meta.url).pathname;
const number = { edition: NEWEST.edition, plan: planFor("mixed", "nurse") ?? -1, nonce: 41, picks: [] };

const run = (typed: string): string => execFileSync(process.execPath, ["src/tools/paper.ts", typed], { cwd: project, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
const plain = (text: string): string => text.replace(/<[^>]+>/g, " ").replaceAll("&amp;", "&").replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replace(/\s+/g, " ");

describe("a question with a needle on paper", () => {
  it("has its own knee to draw in, in ink and in words, and neither needle nor angle", async () => {
    for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
      const item = draw("needle", seed);
      const right = answerTo(item);
      if (right.kind !== "line") throw new Error("A needle is answered by a line");
      const { markup = "", text = "" } = (await pictureOnPaper(item)) ?? {};
      expect(text).toContain(`A ${item.about["side"]} knee of the model, ${agesOf(item.about["band"] as KneeBand)}`);
      expect(text).toContain(`The ${item.about["portal"] === "AM" ? "anteromedial" : "anterolateral"} portal is the filled one`);
      expect(markup.match(/class="portal-on"/g)?.length).toBe(2);
      expect(markup).not.toMatch(/class="(ndl|mine|entry|grip|tipmark|haloline|clear|keep|forbid)"/);
      expect(text).not.toMatch(/stays at least|misses|needle enters/i);
      expect(text.endsWith(cautionText("C8"))).toBe(true);
    }
  });

  it("has the numbered places where places are asked for", async () => {
    const item = draw("structures", 1);
    if (item.kind !== "mark") throw new Error("Places are marked");
    const picture = await pictureOnPaper(item);
    for (const { id } of item.regions) expect(picture?.markup).toContain(`>${id}</text>`);
  });
});

describe("a sheet on paper", () => {
  it("holds the questions of its number in order, and every answer behind them", () => {
    const typed = sheetNumberText(number);
    expect(run(typed.toLowerCase())).toContain(`Sheet ${typed}, 12 questions`);
    const html = readFileSync(join(project, ".cache/paper", `${typed}.html`), "utf8");
    const [front = "", back = ""] = html.split('<section class="answers">').map(plain);
    const sheet = sheetOf(number, EDITIONS);
    if ("fault" in sheet) throw new Error(sheet.fault);
    let from = 0;
    for (const { family, version, seed } of sheet.items) {
      const item = draw(family, seed, { version });
      const at = front.indexOf(plain(item.question), from);
      expect([family, at > from]).toEqual([family, true]);
      from = at;
      for (const line of explain(item, answerTo(item)).working) expect(back).toContain(plain(line));
    }
    for (const id of ["C1", "C2", "C12"]) expect(front).toContain(id);
    expect(html).not.toMatch(/NaN|undefined|<script/);
  });

  it("names a number that works where it gives an example", () => {
    for (const file of ["README.md", "src/tools/paper.ts"]) {
      const [, example = ""] = /npm run paper -- ([0-9A-Z-]+)/.exec(readFileSync(join(project, file), "utf8")) ?? [];
      const read = readSheetNumber(example);
      expect([file, "fault" in read, "fault" in read || "fault" in sheetOf(read, EDITIONS)]).toEqual([file, false, false]);
    }
  });

  it("says in a sentence what is wrong with a number", () => {
    expect(() => run("1051-9903")).toThrow(/One of the signs is wrong|too short or too long|names? nothing/);
    expect(() => run("")).toThrow(/Nothing was typed/);
  });
});
