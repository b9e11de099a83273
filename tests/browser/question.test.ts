import { describe, expect, it } from "vitest";
import { AxeBuilder } from "@axe-core/playwright";
import { answerTo, slipsOf } from "../../src/bank/index.ts";
import type { SumResponse } from "../../src/engine/question/response.ts";
import { card, MODULE, shown } from "./card.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();

const textsOf = (response: SumResponse): readonly string[] => {
  if ("says" in response) return [];
  return "text" in response ? [response.text] : Object.values(response.texts);
};

describe("a question", () => {
  it("asks for no script file before it comes into view", async () => {
    const { page, requests, close } = await open(MODULE, { viewport: { width: 1280, height: 500 } });
    await page.waitForTimeout(300);
    expect(requests.filter((address) => address.endsWith(".js"))).toEqual([]);
    await card(page, "path-width");
    expect(requests.filter((address) => address.endsWith(".js")).length).toBeGreaterThan(2);
    expect(requests.filter((address) => /path-width|window\.|least-depth/.test(address))).toEqual([]);
    await close();
  });

  it("is answered by keyboard alone, shows what is accepted, and moves the focus to the verdict", async () => {
    const { page, noise, close } = await open(MODULE);
    const item = shown("greatest-depth");
    const [answer = ""] = textsOf(answerTo(item) as SumResponse);
    const ask = await card(page, "greatest-depth");
    await ask.getByRole("textbox").focus();
    await page.keyboard.type(answer.replace(".", ","));
    await page.keyboard.press("Enter");
    const verdict = ask.getByRole("heading", { level: 3 });
    await verdict.waitFor();
    expect(await verdict.textContent()).toBe("Right");
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("H3");
    expect(await ask.locator(".compare").textContent()).toContain("Greatest depth");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("SUMMARY");
    expect(noise).toEqual([]);
    await close();
  });

  it("names the slip behind an unsafe answer, with C10, the figure and three open panels", async () => {
    const { page, close } = await open(MODULE);
    const item = shown("greatest-depth");
    const slip = slipsOf(item).find(({ unsafe }) => unsafe);
    const [text = ""] = textsOf(slip?.response as SumResponse);
    const ask = await card(page, "greatest-depth");
    await ask.getByRole("textbox").fill(`${text} mm`);
    await ask.getByRole("button", { name: "Check" }).press("Enter");
    await ask.getByRole("heading", { name: "Off, on the unsafe side" }).waitFor();
    expect(await ask.locator(".slipname").textContent()).toContain("Slip:");
    expect(await ask.locator("[data-caution=C10]").isVisible()).toBe(true);
    expect(await ask.getByRole("img").getAttribute("aria-label")).toContain(`Your depth of ${Number(text).toFixed(1)}`);
    expect(await ask.locator(".panels h4").allTextContents()).toEqual(["What happened", "What moves the answer", "When would you be right?"]);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).include('[data-family="greatest-depth"]').withTags(["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"]).analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
    }
    await close();
  });

  it("takes “none” as the answer where none is right, or says which depths are left", async () => {
    const { page, close } = await open(MODULE);
    const isNone = "says" in answerTo(shown("window"));
    const ask = await card(page, "window");
    await ask.getByRole("button", { name: "No safe depth on this line" }).press("Enter");
    const verdict = ask.getByRole("heading", { level: 3 });
    await verdict.waitFor();
    expect(await verdict.textContent()).toBe(isNone ? "Right: no safe depth on this line" : "Off, on the safe side");
    expect(await ask.locator(".compare").first().textContent()).toContain(isNone ? "Missing" : "Least depth");
    await close();
  });

  it.each([
    ["", "Nothing is written yet"], ["1,640", "two ways"], ["16.4 kg", "not a unit of this quantity"], ["abc", "does not read as one number"], ["9".repeat(400), "longer than a number"],
  ])("keeps %j, says what to do, and counts nothing", async (text, sentence) => {
    const { page, close } = await open(MODULE);
    const ask = await card(page, "path-width");
    const box = ask.getByRole("textbox");
    await box.fill(text);
    await box.press("Enter");
    await ask.locator(".problem").waitFor();
    const problem = await ask.locator(".problem").textContent();
    expect(problem).toContain("Not recognised.");
    expect(problem).toContain(sentence);
    expect(problem).toContain("Nothing has been counted.");
    expect(await box.inputValue()).toBe(text);
    const described = (await box.getAttribute("aria-describedby"))?.split(" ") ?? [];
    const words = await page.evaluate((ids) => ids.map((id) => document.getElementById(id)?.textContent ?? "").join(" "), described);
    expect(words).toContain(sentence);
    expect(await box.evaluate((element) => element === document.activeElement)).toBe(true);
    await close();
  });

  it("is remembered for this visit and comes back after a reload, with its numbers", async () => {
    const { page, close } = await open(MODULE);
    const ask = await card(page, "least-depth");
    await ask.getByRole("textbox").fill("1");
    await ask.getByRole("textbox").press("Enter");
    await ask.getByRole("heading", { level: 3 }).waitFor();
    await ask.getByRole("button", { name: "Another like this" }).click();
    await ask.getByRole("textbox").waitFor();
    const givens = await ask.locator(".givens").first().textContent();
    await ask.getByRole("textbox").fill("2");
    await ask.getByRole("textbox").press("Enter");
    await ask.getByRole("heading", { level: 3 }).waitFor();
    await page.reload();
    const again = await card(page, "least-depth");
    await again.getByRole("heading", { level: 3 }).waitFor();
    expect(await again.locator(".compare .own").first().textContent()).toContain("2");
    expect(await again.locator("details .givens").textContent()).toBe(givens);
    await close();
  });

  it("works where the browser refuses storage", async () => {
    const { page, noise, close } = await open(MODULE);
    await page.addInitScript(() => Object.defineProperty(window, "sessionStorage", { get: () => { throw new DOMException("refused", "SecurityError"); } }));
    await page.reload();
    const ask = await card(page, "path-width");
    await ask.getByRole("textbox").fill("1");
    await ask.getByRole("textbox").press("Enter");
    await ask.getByRole("heading", { level: 3 }).waitFor();
    expect(noise).toEqual([]);
    await close();
  });

  it("shows itself and a worked example where scripts are off, and no button that does nothing", async () => {
    const { page, close } = await open(MODULE, { javaScriptEnabled: false });
    const ask = page.locator('[data-family="window"]');
    expect(await ask.locator(".givens").first().isVisible()).toBe(true);
    expect(await ask.locator(".worked").isVisible()).toBe(true);
    expect(await ask.locator("button:visible").count()).toBe(0);
    expect(await page.locator(".figure .fig.wide").first().isVisible()).toBe(true);
    await close();
  });
});
