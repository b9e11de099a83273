import type { Locator, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answerTo, families, slipsOf } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import type { Response } from "../../src/engine/question/response.ts";
import { card, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const pathOf = (family: string): string => `/practice/${family}/`;

/** Types into the boxes of a sum, one after another, and presses Enter in the last. */
const typeSum = async (page: Page, ask: Locator, response: Response): Promise<void> => {
  if (response.kind !== "sum") return;
  if ("says" in response) {
    const index = ["none", "cannot-be-told", "ask-locally"].indexOf(response.says);
    await ask.locator(".or + .btns button").nth(index).press("Enter");
    return;
  }
  const texts = "text" in response ? [response.text] : Object.values(response.texts);
  for (const [index, text] of texts.entries()) {
    await ask.getByRole("textbox").nth(index).focus();
    await page.keyboard.type(text);
  }
  await page.keyboard.press("Enter");
};

const tick = async (page: Page, input: Locator): Promise<void> => {
  await input.focus();
  await page.keyboard.press("Space");
};

/** Gives a response with the keyboard and nothing else. */
const HANDS: Readonly<Record<string, (page: Page, ask: Locator, at: { item: Item; response: Response }) => Promise<void>>> = {
  sum: (page, ask, { response }) => typeSum(page, ask, response),
  chain: async (page, ask, { response }) => {
    if (response.kind !== "chain") return;
    for (const step of response.steps) await typeSum(page, ask, step);
  },
  tray: async (page, ask, { response }) => {
    if (response.kind !== "tray") return;
    if (response.found.length === 0) return ask.locator(".btns button").last().press("Enter");
    for (const found of response.found) await tick(page, ask.locator(`input[value="${found}"]`));
    await ask.locator(".main").press("Enter");
  },
  name: async (page, ask, { response, item }) => {
    if (response.kind !== "name" || item.kind !== "name") return;
    for (const [index, { id }] of item.attributes.entries()) await tick(page, ask.locator("fieldset").nth(index).locator(`input[value="${response.picks[id]}"]`));
    await ask.locator(".main").press("Enter");
  },
  mark: async (page, ask, { response, item }) => {
    if (response.kind !== "mark" || item.kind !== "mark") return;
    for (const [index, { id }] of item.targets.entries()) {
      const point = response.points[id];
      const region = item.regions.find(({ xMm, yMm }) => xMm === point?.xMm && yMm === point.yMm);
      await tick(page, ask.locator("fieldset").nth(index).locator("input").nth(item.regions.findIndex((one) => one.id === region?.id)));
    }
    await ask.locator(".main").press("Enter");
  },
  count: async (page, ask, { response, item }) => {
    if (response.kind !== "count" || item.kind !== "count") return;
    for (const [index, { id }] of item.classes.entries()) {
      await ask.getByRole("textbox").nth(index).focus();
      await page.keyboard.type(response.byClass[id] ?? "0");
    }
    await page.keyboard.press("Enter");
  },
  range: async (page, ask, { response }) => {
    if (response.kind !== "range") return;
    await ask.getByRole("textbox").first().focus();
    await page.keyboard.type(response.from);
    await ask.getByRole("textbox").nth(1).focus();
    await page.keyboard.type(response.to);
    await page.keyboard.press("Enter");
  },
};

const verdictOn = async (family: string, responseTo: (item: Item) => Response): Promise<{ verdict: string; slip: string; noise: readonly string[] }> => {
  const { page, noise, close } = await open(pathOf(family));
  const item = shown(family, pathOf(family));
  const ask = await card(page, family);
  await HANDS[item.kind]?.(page, ask, { item, response: responseTo(item) });
  const heading = ask.getByRole("heading", { level: 3 });
  await heading.waitFor({ timeout: 8000 });
  const verdict = (await heading.textContent()) ?? "";
  const slip = (await ask.locator(".slipname").allTextContents()).join(" ");
  await close();
  return { verdict, slip, noise };
};

/** The first family of each kind that is answered here; lines, orders and judgements are in the module’s own tests. */
const byKind = Object.keys(HANDS).flatMap((kind) => families.filter((family) => family.kind === kind).slice(0, 2).map(({ id }) => [kind, id] as const));

describe("every kind, by keyboard alone", () => {
  it("is in the bank", () => expect(new Set(byKind.map(([kind]) => kind)).size).toBe(Object.keys(HANDS).length));

  it.each(byKind)("%s %s: its answer is right", async (_, family) => {
    const { verdict, noise } = await verdictOn(family, answerTo);
    expect(verdict).toMatch(/^Right/);
    expect(noise).toEqual([]);
  });

  it.each(byKind)("%s %s: a slip is named", async (_, family) => {
    const { verdict, slip } = await verdictOn(family, (item) => slipsOf(item)[0]?.response as Response);
    expect(verdict).not.toMatch(/^Right/);
    expect(slip).toContain("Slip:");
  });
});
