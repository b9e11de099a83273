import { readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { pageWordsOf } from "../../src/facts/page-words.ts";
import { axe } from "./measure.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const words = pageWordsOf("en").idle;
const program = stripTypeScriptTypes(readFileSync(new URL("../../src/islands/store/idle.ts", import.meta.url), "utf8")).replace("export const", "const");
/** The cover as the shared copy has it; the site under test is a copy for one reader, so the cover is put into it here. */
const markup = `<dialog class="idle" id="idle" aria-labelledby="idle-title"><h2 id="idle-title" tabindex="-1" autofocus>${words.title}</h2><p>${words.text}</p><div class="btns"><button type="button" class="main">${words.fresh}</button><button type="button" class="quiet">${words.on}</button></div></dialog>`;

const shared = async () => {
  const opened = await open("/practice/least-depth/", { bypassCSP: true, reducedMotion: "reduce" });
  await opened.page.clock.install();
  await opened.page.evaluate((html) => document.body.insertAdjacentHTML("beforeend", html), markup);
  await opened.page.addScriptTag({ content: `${program}\ncoverWhenIdle(document.querySelector("#idle"), () => { document.title = "fresh"; });` });
  return opened;
};

const isCovered = (page: Page): Promise<boolean> => page.locator("#idle").evaluate((cover) => (cover as HTMLDialogElement).open);
const minutes = (page: Page, count: number): Promise<void> => page.clock.runFor(count * 60_000);

describe("the cover of a shared copy", () => {
  it("comes after five minutes without a touch and not before, and any key puts it off", async () => {
    const { page, close } = await shared();
    await minutes(page, 4);
    await page.keyboard.press("Shift");
    await minutes(page, 4);
    expect(await isCovered(page)).toBe(false);
    await minutes(page, 2);
    expect(await isCovered(page)).toBe(true);
    await close();
  });

  it("hides everything under it, keeps the focus inside, keeps the accessibility rules and does not move", async () => {
    const { page, close } = await shared();
    await minutes(page, 6);
    const under = await page.evaluate(() => [[5, 5], [innerWidth / 2, innerHeight / 2], [innerWidth - 5, innerHeight - 5]].map(([x = 0, y = 0]) => document.elementFromPoint(x, y)?.closest("#idle") !== null));
    expect(under).toEqual([true, true, true]);
    expect(await page.locator("#idle").evaluate((cover) => getComputedStyle(cover).backgroundColor)).toMatch(/^rgb\(/);
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    for (let step = 0; step < 4; step += 1) {
      await page.keyboard.press("Tab");
      expect(await page.evaluate(() => document.activeElement === document.body || document.activeElement?.closest("#idle") !== null)).toBe(true);
    }
    expect(await axe(page)).toEqual([]);
    await close();
  });

  it("goes on with what was typed, or starts fresh, by keyboard alone", async () => {
    const { page, close } = await shared();
    await page.getByRole("textbox").first().fill("7.5");
    await minutes(page, 6);
    await page.getByRole("button", { name: words.on }).focus();
    await page.keyboard.press("Enter");
    expect([await isCovered(page), await page.getByRole("textbox").first().inputValue()]).toEqual([false, "7.5"]);
    await minutes(page, 6);
    await page.getByRole("button", { name: words.fresh }).focus();
    await page.keyboard.press("Enter");
    expect(await page.title()).toBe("fresh");
    await close();
  });

  it("comes at the first touch after the computer slept, before anything is seen to be done", async () => {
    const { page, close } = await shared();
    await page.clock.setSystemTime(Date.now() + 3_600_000);
    await page.mouse.click(5, 5);
    expect(await isCovered(page)).toBe(true);
    await close();
  });
});
