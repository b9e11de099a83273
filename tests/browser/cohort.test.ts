import { readFileSync } from "node:fs";
import { AxeBuilder } from "@axe-core/playwright";
import type { Download, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { byObjective } from "../../src/engine/cohort/by-objective.ts";
import { cohortText, readCohort } from "../../src/engine/cohort/cohort-file.ts";
import { learnerObjectives } from "../../src/engine/cohort/learner-objectives.ts";
import type { Paper } from "../../src/engine/cohort/paper.ts";
import { sheetFigures } from "../../src/engine/cohort/sheet-figures.ts";
import { linkText } from "../../src/engine/record/list-link.ts";
import { readCsv } from "../support/csv-reader.ts";
import { ARRIVALS, DEMO_LIST } from "../support/demo-cohort.ts";
import { madePapers } from "../support/made-papers.ts";
import { statementSchema } from "../support/xapi-schema.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const PAGE = "/evidence/completion/";
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const give = async (page: Page, text: string): Promise<void> => {
  await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
  await page.locator("input[type=file]").setInputFiles({ name: "cohort.json", mimeType: "application/json", buffer: Buffer.from(text) });
};

const fileOf = (papers: readonly Paper[]): string => cohortText({ edition: "0.1.0", madeAt: "2026-11-30T10:00:00Z", notes: ["C12"], papers });

const shown = async (page: Page, papers: readonly Paper[]): Promise<void> => {
  await give(page, fileOf(papers));
  await page.locator(".understanding").waitFor();
  // Names come with the families, each in a file of its own.
  await page.getByRole("rowheader", { name: "Greatest depth", exact: true }).first().waitFor();
};

const faults = async (page: Page): Promise<readonly string[]> => (await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).withTags(RULES).analyze()).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`);
const overflow = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.locator(".understanding button, .understanding select, .understanding summary, .btn").evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height > 0 && one.getBoundingClientRect().height < 43.5).map((one) => one.outerHTML.slice(0, 90)));

const saved = async (page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> => {
  const [download] = await Promise.all([page.waitForEvent("download") as Promise<Download>, page.getByRole("button", { name: button, exact: true }).click()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), "utf8") };
};

describe("a cohort of twenty-four", () => {
  const papers = madePapers(24);

  it("shows each learner and objective as the figures say, refuses what so few cannot carry, and keeps the accessibility rules at every width", async () => {
    const { page, noise, requests, close } = await open(PAGE, { viewport: { width: 390, height: 900 }, colorScheme: "light" });
    await shown(page, papers);
    const text = await page.locator(".understanding").textContent();
    expect(text).toContain("n = 24: read as a conversation, not a ranking.");
    expect(text).toContain("Not given: fewer than thirty learners (common practice, no source).");
    const rows = learnerObjectives(papers);
    expect(await page.locator(".matrix tbody th").allInnerTexts()).toEqual(rows.map(({ learner }) => learner));
    const states = await page.locator(".matrix tbody tr").evaluateAll((all) => all.map((row) => [...row.querySelectorAll("td use")].map((use) => use.getAttribute("href"))));
    const glyphs = { right: "#v-right", off: "#v-safe-side", unsafe: "#v-unsafe-side" };
    const order = byObjective(papers).map(({ objective }) => objective);
    expect(states).toEqual(rows.map(({ cells }) => order.flatMap((objective) => cells.filter((cell) => cell.objective === objective).map(({ state }) => glyphs[state]))));
    for (const [width, scheme] of [[390, "light"], [320, "light"], [1280, "dark"]] as const) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme: scheme });
      expect([width, await faults(page), await overflow(page), await smallTargets(page)]).toEqual([width, [], 0, []]);
    }
    expect(requests.filter((address) => !/\.(js|css|woff2|svg)$|\/$/.test(address))).toEqual([]);
    expect(noise).toEqual([]);
    await close();
  });

  it("hands out a table, a file and statements that read as they should, and a card for one learner", async () => {
    const { page, noise, close } = await open(PAGE, { acceptDownloads: true });
    await shown(page, papers);
    const table = await saved(page, "Table, with semicolons");
    const rows = readCsv(table.text, ";");
    expect([table.name, rows.length]).toEqual(["small-knee-7F3K.csv", 1 + 240 + 3]);
    const file = await saved(page, "File, to open again");
    expect(readCohort(file.text)).toMatchObject({ fault: null, papers, aside: [] });
    const statements = JSON.parse((await saved(page, "Statements (xAPI)")).text) as readonly unknown[];
    expect([statements.length, statements.filter((one) => !statementSchema.safeParse(one).success)]).toEqual([24 * 11, []]);
    await page.locator(".name-button", { hasText: "heron-15" }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("talk");
    expect(await page.locator(".talk-card h4").allInnerTexts()).toEqual(["Card for heron-15"]);
    expect(noise).toEqual([]);
    await close();
  });

  it("prints a card with four questions on one side, with every caution once and no letter too small", async () => {
    const { page, close } = await open(PAGE);
    await page.addInitScript(() => { window.print = () => undefined; });
    await page.reload();
    await shown(page, papers);
    await page.getByRole("button", { name: "Print all cards" }).click();
    await page.locator(".understanding[data-print=cards]").waitFor();
    await page.emulateMedia({ media: "print" });
    const cards = await page.locator(".talk-card").evaluateAll((all) => all.map((card) => {
      const seen = [...card.querySelectorAll<HTMLElement>("p, li, h4, h5")].filter((one) => one.offsetParent !== null);
      const cautions = seen.map((one) => one.dataset["caution"]).filter((id) => id !== undefined && id !== "C10");
      return { questions: card.querySelectorAll(".talk-question").length, twice: cautions.filter((id, at) => cautions.indexOf(id) !== at), leastPt: Math.min(...seen.map((one) => Number.parseFloat(getComputedStyle(one).fontSize))) * 0.75 };
    }));
    expect(cards.filter(({ questions }) => questions === 4).length).toBeGreaterThan(10);
    for (const { twice, leastPt } of cards) expect([twice, leastPt >= 8.5]).toEqual([[], true]);
    const sides = (await page.pdf({ preferCSSPageSize: true })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(sides).toBeGreaterThan(10);
    expect(sides).toBeLessThanOrEqual(cards.length);
    await close();
  });

  it("prints all cards or the completion list alone", async () => {
    const { page, close } = await open(PAGE);
    await page.addInitScript(() => { window.print = () => undefined; });
    await page.reload();
    await shown(page, papers);
    await page.getByRole("button", { name: "Print all cards" }).click();
    await page.locator(".understanding[data-print=cards]").waitFor();
    await page.emulateMedia({ media: "print" });
    expect([await page.locator(".talk-card").count(), await page.locator(".talk-card").last().isVisible(), await page.locator(".matrix").isVisible(), await page.locator("h1").isVisible()]).toEqual([24, true, false, false]);
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    expect([await page.locator(".talk").isVisible(), await page.locator(".matrix").isVisible()]).toEqual([false, true]);
    await close();
  });

  it("has a cut score as soon as every question is judged, and says what stands in its way before", async () => {
    const { page, close } = await open(PAGE);
    await shown(page, papers);
    const field = page.getByLabel(/^Judges/);
    await field.fill("greatest-depth 0.6 sixty");
    await page.getByText("Line 1: “sixty” is no share. Write 0.6, 0,6 or 60%.").waitFor();
    const families = [...new Set(papers.flatMap(({ marks }) => marks.map(({ family }) => family)))];
    await field.fill(families.map((family) => `${family} 0.5 0,7`).join("\n"));
    // Two judges, ten questions: sums 5 and 7, mean 6, band √(6 × 4 ÷ 9) = 1.6 on either side.
    await page.getByText("Cut: 6.0 of 10 points, at or above reaches it. Judges: 2, from 5.0 to 7.0.").waitFor();
    await page.getByText("from 4.4 to 7.6").waitFor();
    const [points, place] = await page.locator(".cut tbody tr").first().locator("td").allInnerTexts();
    const total = papers[0]?.marks.filter(({ verdict }) => verdict === "right").length ?? -1;
    expect(points).toContain(`${total} / 10`);
    expect(place).toContain(total < 5 ? "below" : (total > 7 && "above") || "undecided");
    await close();
  });
});

describe("the file of the returns desk", () => {
  it("shows next year what the desk showed this year", async () => {
    const desk = await open(`/returns/#${linkText(DEMO_LIST)}`, { acceptDownloads: true });
    await desk.page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await desk.page.locator("input[type=file]").first().setInputFiles(ARRIVALS.map(({ name, text }) => ({ name, mimeType: "text/plain", buffer: Buffer.from(text) })));
    await desk.page.getByRole("rowheader", { name: "Greatest depth", exact: true }).first().waitFor({ timeout: 30_000 });
    const tables = (page: Page): Promise<readonly string[]> => page.locator(".understanding table").allTextContents();
    const before = await tables(desk.page);
    const { text } = await saved(desk.page, "File, to open again");
    await desk.close();
    const { page, noise, close } = await open(PAGE);
    await give(page, text);
    await page.getByRole("rowheader", { name: "Greatest depth", exact: true }).first().waitFor();
    expect(before.length).toBeGreaterThan(4);
    expect(await tables(page)).toEqual(before);
    expect(noise).toEqual([]);
    await close();
  });
});

describe("other files", () => {
  it("with thirty-four learners give the figures of the sheet, and the hospitals side by side", async () => {
    const papers = madePapers(34, { isOwn: true });
    const { page, close } = await open(PAGE);
    await shown(page, papers);
    const { reliability } = sheetFigures(papers);
    const text = await page.locator(".understanding").textContent();
    expect(text).toContain((reliability.value ?? 9).toFixed(2).replace("-", "−"));
    expect(text).toContain("Each learner had numbers of his or her own");
    const working = (await page.locator("section:has(#questions) tbody td:last-child").allTextContents()).map((cell) => Number(cell.split(" of ")[0]));
    expect(working).toHaveLength(10);
    expect(text).toContain(`Here ${(working.reduce((sum, count) => sum + count, 0) / 10).toFixed(1)} of them work in a question`);
    expect(await page.locator("section:has(#hospitals) tbody th").allInnerTexts()).toEqual(["Carrow", "Hythe Vale", "Northmoor", "Saltmere"]);
    await close();
  });

  it("with codes that are markup or formulas show them as text, and nothing runs", async () => {
    const bad = '<img src=x onerror="document.title=1">';
    const papers = madePapers(6).map((paper, at) => ({ ...paper, learner: [bad, "=1+1", "</script>", "a\u202eb", "'", " "][at] ?? "", place: bad }));
    const { page, noise, close } = await open(PAGE);
    await shown(page, papers);
    expect((await page.locator(".matrix tbody th").allTextContents()).toSorted()).toEqual(papers.map(({ learner }) => learner).toSorted());
    await page.locator(".name-button", { hasText: "<img" }).click();
    expect(await page.locator(".talk-card h4").textContent()).toBe(`Card for ${bad}`);
    expect([await page.locator("main img").count(), await page.title()]).toEqual([0, "Completion and results · Small Knee Workbook"]);
    expect(noise).toEqual([]);
    await close();
  });

  it("with hundreds of learners show sixty rows first, and the others when asked", async () => {
    const { page, close } = await open(PAGE);
    await shown(page, madePapers(75));
    expect(await page.locator(".matrix tbody tr").count()).toBe(60);
    await page.getByRole("button", { name: "Show the other 15 learners" }).click();
    expect(await page.locator(".matrix tbody tr").count()).toBe(75);
    await close();
  });

  it("with four learners show no share, and with damage say what to do and lose nothing", async () => {
    const { page, noise, close } = await open(PAGE);
    await give(page, fileOf(madePapers(4)));
    await page.getByText("Fewer than five learners.").waitFor();
    expect(await page.locator("#by-objective, #slips, #questions, #hospitals").count()).toBe(0);
    await give(page, "<script>alert(1)</script>");
    await page.getByText("This is not a file of the returns desk").waitFor();
    expect(await page.locator(".matrix tbody tr").count()).toBe(4);
    await give(page, fileOf(madePapers(6)).replace('"score":1', '"score":9'));
    await page.getByText("5 papers read. Set aside, because they could not be read: 1. They stay in the file (places 1).").waitFor();
    expect(noise).toEqual([]);
    await close();
  });
});
