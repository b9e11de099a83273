import { AxeBuilder } from "@axe-core/playwright";
import { describe, expect, it } from "vitest";
import { draw } from "../../src/bank/index.ts";
import { card, MODULE, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

describe("a printed module", () => {
  it("says where its answers are, and leaves out what paper cannot do", async () => {
    const { page, close } = await open(MODULE);
    await card(page, "retractor-order");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".turn").isVisible()).toBe(false);
    expect(await page.locator(".answers-link").evaluate((link) => getComputedStyle(link, "::after").content)).toContain(`${MODULE}answers/`);
    expect(await page.locator("[data-family=retractor-order] .ud").first().isVisible()).toBe(false);
    expect(await page.locator("[data-family=retractor-order] .order li").first().isVisible()).toBe(true);
    expect(await page.locator("[data-family=two-papers] .choice").first().isVisible()).toBe(true);
    await close();
  });
});

describe("a printed practice page", () => {
  // Each of these is nearly as tall as a sheet; kept whole, it left the first sheet to the title alone and took three.
  it.each(["spread", "structures"])("begins the tall question %s under its title, and takes no third sheet", async (family) => {
    const { page, close } = await open(`/practice/${family}/`);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".ask").evaluate((ask) => getComputedStyle(ask).breakInside)).toBe("auto");
    const printed = await page.pdf({ preferCSSPageSize: true });
    expect(printed.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0).toBeLessThanOrEqual(2);
    await close();
  });
});

describe("the page of answers", () => {
  it("keeps the accessibility rules on a phone and at a desk, fits, and asks for no script", async () => {
    const { page, noise, requests, close } = await open(`${MODULE}answers/`, { viewport: { width: 390, height: 900 } });
    for (const width of [390, 1280]) {
      await page.setViewportSize({ width, height: 900 });
      const { violations } = await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).withTags(RULES).analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    }
    expect(requests.filter((address) => address.endsWith(".js"))).toEqual([]);
    expect(noise).toEqual([]);
    await close();
  });

  it("parts no answer over two sheets of paper", async () => {
    const { page, close } = await open(`${MODULE}answers/`);
    await page.emulateMedia({ media: "print" });
    const rules = await page.locator(".answers > li").evaluateAll((rows) => rows.map((row) => getComputedStyle(row).breakInside));
    expect(rules.length).toBeGreaterThan(0);
    expect(new Set(rules)).toEqual(new Set(["avoid"]));
    await close();
  });
});

describe("the report of a fault", () => {
  it("stands under an answered question, closed, brings the question back, is taken whole, and sends nothing", async () => {
    const { page, noise, requests, close } = await open(MODULE, { viewport: { width: 390, height: 900 } });
    const item = shown("path-width");
    const ask = await card(page, "path-width");
    await ask.getByRole("textbox").fill("3");
    await page.keyboard.press("Enter");
    const summary = ask.locator(".report summary");
    await summary.waitFor();
    // The figure of the answer is fetched after the answer; it has nothing to do with the report.
    await ask.locator("svg.fig").first().waitFor({ state: "attached" });
    expect(await ask.locator(".report textarea").isVisible()).toBe(false);
    const before = requests.length;
    await summary.focus();
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    const taken = await page.evaluate(() => {
      const field = document.activeElement as HTMLTextAreaElement;
      return field.value.slice(field.selectionStart, field.selectionEnd);
    });
    const [, family = "", version = "", seed = ""] = /: 10a ([a-z-]+), version (\d+), language en\nSeed: (\S+)\n/.exec(taken) ?? [];
    expect(draw(family, seed, { version: Number(version) })).toEqual(item);
    expect(taken).toContain(`${new URL(page.url()).origin}${MODULE}`);
    expect(taken).toContain('{"kind":"sum","text":"3"}');
    expect(await ask.locator(".report a").count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const { violations } = await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).include("[data-family=path-width]").withTags(RULES).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(requests.length).toBe(before);
    expect(noise).toEqual([]);
    await close();
  });
});
