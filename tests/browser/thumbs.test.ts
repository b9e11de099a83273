import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answerTo } from "../../src/bank/index.ts";
import type { OrderResponse } from "../../src/engine/question/response.ts";
import { card, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const PACK = "/modules/pack-on-the-trolley/";
const WASTE = "/practice/streams/";

/** Things that are pressed and are smaller than a finger; a tick box is pressed by its label. */
const small = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [...document.querySelectorAll(".ask button, .ask select, .ask label.choice, .ask input[type=text]")].flatMap((element) => {
    const { width, height } = element.getBoundingClientRect();
    return width > 0 && (width < 43.5 || height < 43.5) ? [`${element.outerHTML.slice(0, 60)} ${width}×${height}`] : [];
  }));

describe("a phone held in one hand", () => {
  it("puts cards in order by choosing places, one press a card", async () => {
    const { page, noise, close } = await open(PACK, PHONE);
    const item = shown("set-up", PACK);
    const { cards } = answerTo(item) as OrderResponse;
    const texts = item.kind === "order" ? cards.map((id) => item.cards.find((one) => one.id === id)?.text ?? "") : [];
    const ask = await card(page, "set-up");
    // The card is alive once an arrow does something.
    const first = ask.locator("li").first();
    const before = await first.textContent();
    while ((await first.textContent()) === before) await first.getByRole("button", { name: /^Move down/ }).tap();
    for (const [at, text] of texts.entries()) await ask.getByLabel(`Place of: ${text}`, { exact: true }).selectOption({ value: String(at) });
    expect(await ask.locator("li > span:nth-child(2)").allTextContents()).toEqual(texts);
    expect(await page.evaluate(() => document.activeElement?.matches("select.place"))).toBe(true);
    expect(await small(page)).toEqual([]);
    await ask.locator(".ordering .main").tap();
    const verdict = ask.getByRole("heading", { level: 3 });
    await verdict.waitFor();
    expect(await verdict.textContent()).toBe("Right");
    expect(noise).toEqual([]);
    await close();
  });

  it("goes to the part that was left open where it is out of sight, and says which", async () => {
    const { page, close } = await open(WASTE, PHONE);
    await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    const things = page.locator("fieldset.choices");
    const count = await things.count();
    for (let at = 0; at < count; at += 1) if (at !== 1) await things.nth(at).locator(".choice").first().tap();
    await page.locator(".ask button.main").tap();
    await page.locator(".problem").waitFor();
    expect(await page.locator(".problem").textContent()).toContain(await things.nth(1).locator("legend").textContent());
    const { top, bottom } = await things.nth(1).evaluate((field) => field.getBoundingClientRect());
    expect([top >= 0, bottom <= 844]).toEqual([true, true]);
    expect(await things.nth(1).evaluate((field) => field.contains(document.activeElement))).toBe(true);
    // Twelve things with six bins each: side by side they fill less than five screens.
    expect(await page.locator(".ask").evaluate((ask) => ask.getBoundingClientRect().height)).toBeLessThan(5 * 844);
    expect(await small(page)).toEqual([]);
    await close();
  });
});
