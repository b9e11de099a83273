import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { browserForTests } from "./open.ts";

const PATIENCE = { timeout: 60_000 };
const { browser, address, closeSite } = browserForTests();
const fresh = async (): Promise<{ context: BrowserContext; page: Page }> => {
  const context = await browser().newContext({ viewport: { width: 390, height: 844 } });
  return { context, page: await context.newPage() };
};
const openKeeping = async (page: Page): Promise<void> => {
  await page.goto(`${address()}/without-a-network/`);
  await page.locator(".said").waitFor();
};

describe("the course on a device", () => {
  it("asks a plain page for no program beside it, and keeps nothing unasked", PATIENCE, async () => {
    const { context, page } = await fresh();
    await openKeeping(page);
    expect(await page.getByText("The course is not kept on this device.").isVisible()).toBe(true);
    expect(await page.evaluate(async () => [(await navigator.serviceWorker.getRegistrations()).length, (await caches.keys()).length])).toEqual([0, 0]);
    await context.close();
  });

  it("works with the network off once it is kept: pages, search, questions; and goes when it is removed", PATIENCE, async () => {
    const { context, page } = await fresh();
    const noise: string[] = [];
    page.on("pageerror", (error) => noise.push(error.message));
    await openKeeping(page);
    await page.getByRole("button", { name: /^Keep the course on this device \(\d/ }).press("Enter");
    await page.getByText("The course is kept on this device, in the edition").waitFor({ timeout: 40_000 });
    await page.goto(`${address()}/no-such-page/`);
    const notFound = await page.getByRole("heading", { level: 1 }).textContent();
    // With the server gone, what opens comes from the device.
    await closeSite();
    await page.goto(`${address()}/practice/path-width/`);
    const ask = page.locator('[data-family="path-width"]');
    await ask.scrollIntoViewIfNeeded();
    await ask.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await ask.getByRole("textbox").fill("3");
    await ask.getByRole("textbox").press("Enter");
    await ask.getByRole("heading", { level: 3 }).waitFor();
    await page.goto(`${address()}/search/`);
    await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await page.getByRole("searchbox").fill("tourniquet");
    await page.keyboard.press("Enter");
    await page.locator(".hits").getByText("Table, cuff and clock").first().waitFor();
    await page.goto(`${address()}/modules/fluid/`);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("Fluid");
    await page.goto(`${address()}/no-such-page/`);
    expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe(notFound);
    await page.goto(`${address()}/without-a-network/`);
    await page.getByRole("button", { name: "Remove it from this device" }).press("Enter");
    await page.getByText("The course is removed from this device.").waitFor();
    expect(await page.evaluate(async () => [(await navigator.serviceWorker.getRegistrations()).length, (await caches.keys()).length])).toEqual([0, 0]);
    expect(noise).toEqual([]);
    await context.close();
  });
});
