import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { KINDS, type Kind } from "../../src/engine/question/response.ts";
import { answerTo } from "../../src/bank/index.ts";
import { card, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const PATIENCE = { timeout: 120_000 };

/** A family of each kind. */
const FAMILY: Readonly<Record<Kind, string>> = { sum: "two-by-two", range: "balance", mark: "structures", line: "needle", order: "set-up", tray: "pack-check", name: "in-view", count: "reconcile", judge: "two-papers", chain: "depth-to-stop" };

/** Does to a question what somebody does who has not decided yet. */
const begin = async (page: Page, ask: Locator): Promise<void> => {
  const needle = ask.getByRole("application");
  if (await needle.count()) {
    await needle.focus();
    for (const key of ["ArrowRight", "ArrowRight", "ArrowDown"]) await page.keyboard.press(key);
    return;
  }
  const [down] = await ask.locator("ol.order button:not(:disabled)").all();
  await down?.press("Enter");
  for (const [index, set] of (await ask.locator("fieldset").all()).entries()) await set.locator("input").nth(index % 2).press("Space");
  for (const [index, box] of (await ask.getByRole("textbox").all()).entries()) await box.fill(`${3 + index}`);
  if (await ask.locator(".chain").count()) {
    await ask.locator("button.main").press("Enter");
    await ask.locator(".found li").first().waitFor();
    await ask.getByRole("textbox").first().fill("7");
  }
};

/** Everything of a question that somebody can have set. */
const setIn = (ask: Locator): Promise<readonly string[]> =>
  ask.evaluate((root) => [...root.querySelectorAll("input, ol.order li > span:nth-child(2), .found b")].map((one) => (one instanceof HTMLInputElement ? `${one.value} ${/radio|checkbox/.test(one.type) ? one.checked : ""}` : (one.textContent ?? ""))));

describe("an answer that was typed and not checked", () => {
  it.each(KINDS)("of the kind %s stands there again after a reload", PATIENCE, async (kind) => {
    const family = FAMILY[kind];
    const { page, noise, close } = await open(`/practice/${family}/`);
    const fresh = await setIn(await card(page, family));
    await begin(page, await card(page, family));
    const before = await setIn(await card(page, family));
    expect(before).not.toEqual(fresh);
    await page.reload();
    await expect.poll(async () => setIn(await card(page, family))).toEqual(before);
    expect(noise).toEqual([]);
    await close();
  });

  it("comes back with the question that it belongs to, and goes once it is checked", PATIENCE, async () => {
    const family = "greatest-depth";
    const { page, close } = await open(`/practice/${family}/`);
    const first = await card(page, family);
    const answer = answerTo(shown(family, `/practice/${family}/`));
    await first.getByRole("textbox").fill("text" in answer ? answer.text : "");
    await first.getByRole("button", { name: "Check" }).press("Enter");
    await first.getByRole("button", { name: "Another" }).press("Enter");
    await first.getByRole("textbox").fill("12,5");
    const stem = await first.locator(".stem").first().textContent();
    await page.reload();
    const again = await card(page, family);
    await expect.poll(() => again.getByRole("textbox").inputValue()).toBe("12,5");
    expect(await again.locator(".stem").first().textContent()).toBe(stem);
    await again.getByRole("button", { name: "Check" }).press("Enter");
    await again.locator(".verdict").waitFor();
    expect(await page.evaluate(() => Object.keys(sessionStorage).filter((key) => key.includes("draft:")))).toEqual([]);
    await page.reload();
    await (await card(page, family)).locator(".verdict").waitFor();
    await close();
  });

  it("is kept where it could not be read", PATIENCE, async () => {
    const { page, close } = await open("/practice/greatest-depth/");
    const ask = await card(page, "greatest-depth");
    await ask.getByRole("textbox").fill("about ten");
    await ask.getByRole("button", { name: "Check" }).press("Enter");
    await ask.locator(".problem").waitFor();
    await page.reload();
    const again = await card(page, "greatest-depth");
    await expect.poll(() => again.getByRole("textbox").inputValue()).toBe("about ten");
    await close();
  });

  it("of a sheet stands there again after a reload and after a look at another question", PATIENCE, async () => {
    const { page, close } = await open("/sheet/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await page.getByLabel("one module").press("Space");
    await page.getByLabel("Which").selectOption("M11");
    await page.getByRole("button", { name: "Draw the sheet" }).press("Enter");
    const toQuestion = async (): Promise<Locator> => {
      await page.locator(".sheet-grid").waitFor();
      const example = page.getByRole("button", { name: "To the question" });
      if (await example.count()) await example.press("Enter");
      return page.locator(".question-card");
    };
    const ask = await toQuestion();
    await begin(page, ask);
    const before = await setIn(ask);
    await page.reload();
    await toQuestion();
    await expect.poll(() => setIn(page.locator(".question-card"))).toEqual(before);
    await page.locator(".rail button").nth(1).press("Enter");
    await page.locator(".rail button").nth(0).press("Enter");
    await toQuestion();
    await expect.poll(() => setIn(page.locator(".question-card"))).toEqual(before);
    await close();
  });
});
