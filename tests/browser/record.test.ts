import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { corruptLine, fullQuota, newerSchema, twoTabs, wrongClock } from "../../src/tools/faults/cases.ts";
import { answerOnce, openQuestion, startKeeping } from "../../src/tools/faults/drive.ts";
import { killTabs } from "../../src/tools/faults/kills.ts";
import { axe, overflow } from "./measure.ts";
import { browserForTests } from "./open.ts";

const PATIENCE = { timeout: 180_000 };
const { browser, address } = browserForTests();

describe("the record, when things go wrong", () => {
  it("loses no kept answer when ten tabs are killed while they answer", PATIENCE, async () => {
    const { lost, found, damage } = await killTabs(browser(), address(), 10);
    expect([lost, damage]).toEqual([0, []]);
    expect(found).toBeGreaterThan(10);
  });

  it.each([["no room", fullQuota], ["a damaged line", corruptLine], ["a newer edition", newerSchema], ["a clock set back", wrongClock]] as const)("says a sentence for %s, and keeps what was answered", PATIENCE, async (_, work) => {
    expect((await work(browser(), address())).wrong).toEqual([]);
  });

  it("keeps the answers of two tabs at once in one whole chain", PATIENCE, async () => {
    expect((await twoTabs(browser(), address(), 25)).wrong).toEqual([]);
  });

  it("grades, says where answers live and shows standing where all storage is refused", PATIENCE, async () => {
    const context = await browser().newContext();
    await context.addInitScript(() => {
      const refuse = { get: () => { throw new DOMException("refused", "SecurityError"); } };
      Object.defineProperty(window, "localStorage", refuse);
      Object.defineProperty(window, "sessionStorage", refuse);
      Object.defineProperty(window, "indexedDB", refuse);
    });
    const page = await openQuestion(context, address());
    expect(await answerOnce(page)).toContain("as long as this page");
    await page.getByRole("button", { name: "Keep my work on this device" }).click();
    await page.getByText("does not let this page keep anything").waitFor();
    await page.goto(`${address()}/stand/`);
    await page.getByText("This browser refuses to keep anything").waitFor();
    await context.close();
  });

  it("works where a page over plain http lacks locks, persistence and channels", PATIENCE, async () => {
    const context = await browser().newContext();
    await context.addInitScript(() => {
      Reflect.deleteProperty(Navigator.prototype, "locks");
      Reflect.deleteProperty(Navigator.prototype, "storage");
      Reflect.deleteProperty(globalThis, "BroadcastChannel");
      Reflect.deleteProperty(Crypto.prototype, "subtle");
      Reflect.deleteProperty(Crypto.prototype, "randomUUID");
    });
    const page = await openQuestion(context, address());
    await startKeeping(page);
    expect(await answerOnce(page)).toBe("Kept on this device.");
    await page.goto(`${address()}/stand/`);
    await page.getByText("It holds 2 lines.").waitFor();
    await context.close();
  });

  it("says with the script off what the pages would do, and shows the rules", PATIENCE, async () => {
    const context = await browser().newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${address()}/stand/`);
    expect(await page.locator("noscript p").first().isVisible()).toBe(true);
    expect(await page.getByRole("heading", { name: "The seven levels" }).isVisible()).toBe(true);
    await page.goto(`${address()}/sheet/`);
    expect(await page.locator("noscript p").first().isVisible()).toBe(true);
    await context.close();
  });
});

/** Works through a sheet by keyboard: a number where one is asked, everything else left for later. */
const workThrough = async (page: Page): Promise<void> => {
  for (let step = 0; step < 60; step += 1) {
    await page.locator(".headline, .sheet-grid").first().waitFor();
    if (await page.locator(".headline").count()) return;
    const example = page.getByRole("button", { name: "To the question" });
    if (await example.count()) {
      await example.press("Enter");
      continue;
    }
    const boxes = await page.locator(".question-card input[type=text]").all();
    const isAnswered = (await page.locator(".question-card .verdict").count()) > 0;
    if (boxes.length > 0 && !isAnswered) {
      for (const box of boxes) await box.fill("3");
      await page.locator(".question-card button.main").first().press("Enter");
      await page.locator(".question-card .verdict, .question-card .problem").first().waitFor();
    }
    await page.getByRole("button", { name: /^(Next question|See the result|Leave for later|Finish here|To the question)/ }).first().press("Enter");
  }
};

describe("a sheet", () => {
  it("is drawn, worked through by keyboard, come back to, and ends in levels and dates instead of a mark", PATIENCE, async () => {
    const context = await browser().newContext({ viewport: { width: 390, height: 900 } });
    const page = await context.newPage();
    await page.goto(`${address()}/sheet/`);
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await page.getByLabel("one module").press("Space");
    await page.getByLabel("Which").selectOption("M10");
    expect(await axe(page)).toEqual([]);
    await page.getByRole("button", { name: "Draw the sheet" }).press("Enter");
    await page.locator(".sheet-grid").waitFor();
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(await axe(page)).toEqual([]);
    const number = new URL(page.url()).hash;
    await workThrough(page);
    const title = await page.locator(".headline").textContent();
    expect(title).toMatch(/right/);
    expect(await page.getByText("There is no mark out of a hundred.").isVisible()).toBe(true);
    expect(await axe(page)).toEqual([]);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    await page.reload();
    await page.locator(".rail .answered").first().waitFor();
    const other = await context.newPage();
    await other.goto(`${address()}/sheet/${number}`);
    await other.locator(".rail li").first().waitFor();
    expect(await other.locator(".rail .t").allTextContents()).toEqual(await page.locator(".rail .t").allTextContents());
    await context.close();
  });

  it("is offered to a new reader as the one that shows where to begin, and asks without an example in front", PATIENCE, async () => {
    const context = await browser().newContext({ viewport: { width: 390, height: 900 } });
    const page = await context.newPage();
    await page.goto(`${address()}/sheet/`);
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    expect(await page.getByLabel("to see where I begin").isChecked()).toBe(true);
    await page.getByRole("button", { name: "Draw the sheet" }).press("Enter");
    await page.getByText("entry sheet").waitFor();
    await page.locator(".question-card").waitFor();
    expect(await page.getByText("Read one worked example first").count()).toBe(0);
    await page.goto(`${address()}/practice/greatest-depth/`);
    await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await answerOnce(page, "99");
    await page.goto(`${address()}/sheet/`);
    await expect.poll(() => page.getByLabel("where I stand now").isChecked()).toBe(true);
    await page.getByLabel("all my modules, mixed").press("Space");
    expect(await page.getByLabel("all my modules, mixed").isChecked()).toBe(true);
    await context.close();
  });

  it("refuses a number with a wrong sign in a sentence", PATIENCE, async () => {
    const context = await browser().newContext();
    const page = await context.newPage();
    await page.goto(`${address()}/sheet/#1051-9903-1404-1505`);
    await page.getByText("One of the signs is wrong").waitFor();
    await context.close();
  });

  it("says what to do where the number was left empty", PATIENCE, async () => {
    const context = await browser().newContext();
    const page = await context.newPage();
    await page.goto(`${address()}/sheet/`);
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await page.getByRole("button", { name: "Open this sheet" }).press("Enter");
    await page.getByText("Nothing was typed.").waitFor();
    await context.close();
  });
});

describe("where you stand", () => {
  it("gives reasons, and goes to another device by code and by file", PATIENCE, async () => {
    const here = await browser().newContext({ acceptDownloads: true });
    const page = await openQuestion(here, address());
    await startKeeping(page);
    await page.goto(`${address()}/practice/greatest-depth/`);
    await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await answerOnce(page, "99");
    await page.goto(`${address()}/stand/`);
    const stopped = page.locator("#m10-greatest");
    await stopped.locator("summary").press("Enter");
    expect(await stopped.textContent()).toContain("Off, on the unsafe side");
    expect(await stopped.locator("[data-caution=C10]").isVisible()).toBe(true);
    expect(await axe(page)).toEqual([]);
    const code = (await page.locator(".carry code").textContent()) ?? "";
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save the record as a file" }).press("Enter")]);
    const path = await file.path();
    expect(readFileSync(path, "utf8").trim().split("\n")).toHaveLength(2);

    const there = await browser().newContext();
    const other = await there.newPage();
    await other.goto(`${address()}/stand/`);
    await other.getByLabel("Type a carry code").fill(`${code.slice(0, -1)}${code.endsWith("2") ? "3" : "2"}`);
    await other.getByRole("button", { name: "Bring it in" }).press("Enter");
    await other.getByText("One of the signs is wrong").waitFor();
    await other.getByLabel("Type a carry code").fill(code.toLowerCase());
    await other.getByRole("button", { name: "Bring it in" }).press("Enter");
    await other.getByText("Brought in.").waitFor();
    await other.locator("#m10-greatest.stopped").waitFor();
    await other.locator("input[type=file]").setInputFiles(path);
    await other.getByText("2 new of 2.").waitFor();
    await other.locator("input[type=file]").setInputFiles(path);
    await other.getByText("0 new of 2.").waitFor();
    await other.getByRole("button", { name: "Erase from this device" }).press("Enter");
    await other.getByRole("button", { name: /^Erase 3 lines/ }).press("Enter");
    await other.getByText("Nothing of the record is left").waitFor();
    await there.close();
    await here.close();
  });
});
