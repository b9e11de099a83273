import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { answerTo, grade, slipsOf } from "../../src/bank/index.ts";
import type { JudgeResponse, LineResponse, OrderResponse } from "../../src/engine/question/response.ts";
import { axialOfItem } from "../../src/figures/axial-of-item.ts";
import { card, MODULE, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();

const pressTimes = async (page: Page, key: string, times: number): Promise<void> => {
  for (let count = 0; count < times; count += 1) await page.keyboard.press(key);
};

/** Turns and pushes the needle with the arrow keys from where the question puts it to where it should go. */
const placeNeedle = async (page: Page, to: LineResponse): Promise<void> => {
  const first = axialOfItem(shown("needle"));
  if (!first) throw new Error("the question has no figure");
  const turn = (Number(to.angleDeg) - first.bearingDeg) * (first.side === "left" ? -1 : 1);
  await pressTimes(page, turn < 0 ? "ArrowLeft" : "ArrowRight", Math.abs(turn));
  const push = (Number(to.depthMm) - first.depthMm) / 0.5;
  await pressTimes(page, push < 0 ? "ArrowUp" : "ArrowDown", Math.abs(push));
};

describe("a needle in the figure", () => {
  it("is placed and checked by keyboard alone; the words alone say where it is", async () => {
    const { page, noise, close } = await open(MODULE);
    const answer = answerTo(shown("needle")) as LineResponse;
    const ask = await card(page, "needle");
    await ask.locator(".stage").focus();
    await placeNeedle(page, answer);
    const text = (await ask.getByRole("img").first().getAttribute("aria-label")) ?? "";
    expect(text).toContain(`${Number(answer.depthMm).toFixed(1)}`);
    expect(await ask.getByRole("textbox").evaluateAll((boxes) => boxes.map((box) => Number((box as HTMLInputElement).value)))).toEqual([Number(answer.angleDeg), Number(answer.depthMm)]);
    await ask.getByRole("button", { name: "Check" }).focus();
    await page.keyboard.press("Enter");
    const verdict = ask.getByRole("heading", { level: 3 });
    await verdict.waitFor();
    expect(await verdict.textContent()).toBe("Right");
    expect(noise).toEqual([]);
    await close();
  });

  it("shows the learner's own needle after a slip, in words and in the picture", async () => {
    const { page, close } = await open(MODULE);
    const item = shown("needle");
    const slip = slipsOf(item)[0];
    if (!slip) throw new Error("the draw offers no slip");
    const ask = await card(page, "needle");
    await ask.locator(".stage").focus();
    await placeNeedle(page, slip.response as LineResponse);
    await ask.getByRole("button", { name: "Check" }).press("Enter");
    await ask.locator(".slipname").waitFor();
    await ask.locator(".figure svg.fig").first().waitFor();
    const { violations } = await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).include('[data-family="needle"]').withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"]).analyze();
    expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    await close();
  });
});

describe("cards in order", () => {
  it("are moved and checked by keyboard alone, and every move is said", async () => {
    const { page, noise, close } = await open(MODULE);
    const item = shown("pulse-and-foot");
    const { cards } = answerTo(item) as OrderResponse;
    const texts = item.kind === "order" ? cards.map((id) => item.cards.find((one) => one.id === id)?.text ?? "") : [];
    const ask = await card(page, "pulse-and-foot");
    const rows = ask.locator("li > span:nth-child(2)");
    const focusOn = (text: string) => ask.locator("li", { hasText: text }).getByRole("button").and(ask.locator(":enabled")).first().focus();
    for (const [at, text] of texts.slice(0, 9).entries()) {
      await focusOn(text);
      await page.keyboard.press(String(at + 1));
    }
    // There are nine number keys; from the tenth place on a card goes up step by step.
    for (const [at, text] of [...texts.entries()].slice(9)) {
      for (let place = (await rows.allTextContents()).indexOf(text); place > at; place -= 1) {
        await focusOn(text);
        await page.keyboard.press("ArrowUp");
      }
    }
    expect(await rows.allTextContents()).toEqual(texts);
    expect(await ask.locator(".ordering [role=status]").textContent()).not.toBe("");
    await ask.locator(".ordering .main").press("Enter");
    const verdict = ask.getByRole("heading", { level: 3 });
    await verdict.waitFor();
    expect(await verdict.textContent()).toBe("Right");
    expect(noise).toEqual([]);
    await close();
  });
});

describe("a judgement", () => {
  it("is made by keyboard alone; a wrong pick is named", async () => {
    const { page, close } = await open(MODULE);
    const item = shown("two-papers");
    const slip = slipsOf(item)[0];
    if (!slip) throw new Error("the draw offers no slip");
    const { picks, reasons } = slip.response as JudgeResponse;
    const ask = await card(page, "two-papers");
    await ask.locator(`input[value="${picks}"][type=radio]`).focus();
    await page.keyboard.press("Space");
    for (const reason of reasons) {
      await ask.locator(`input[value="${reason}"][type=checkbox]`).focus();
      await page.keyboard.press("Space");
    }
    await ask.getByRole("button", { name: "Check" }).press("Enter");
    await ask.locator(".slipname").waitFor();
    expect(grade(item, slip.response).slip).toBe(slip.id);
    await close();
  });

  it("asks for a decision where none is made, and counts nothing", async () => {
    const { page, close } = await open(MODULE);
    const ask = await card(page, "two-papers");
    await ask.getByRole("button", { name: "Check" }).press("Enter");
    await ask.locator(".problem").waitFor();
    expect(await ask.locator(".problem").textContent()).toContain("Nothing has been counted.");
    await close();
  });
});
