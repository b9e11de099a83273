import { readFileSync } from "node:fs";
import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { linkText } from "../../src/engine/record/list-link.ts";
import { ARRIVALS, DEMO_LIST, TRUTH } from "../support/demo-cohort.ts";
import { listOf } from "../support/lists.ts";
import { axe, overflow } from "./measure.ts";
import { browserForTests } from "./open.ts";

const PATIENCE = { timeout: 180_000 };
const { browser, address } = browserForTests();
const contextOf = (width: number): Promise<BrowserContext> => browser().newContext({ viewport: { width, height: 900 }, acceptDownloads: true });

/** A page that has woken, with whatever it had to complain of. */
const pageAt = async (context: BrowserContext, path: string, noise: string[] = []): Promise<Page> => {
  const page = await context.newPage();
  page.on("console", (message) => noise.push(message.text()));
  page.on("pageerror", (error) => noise.push(error.message));
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(address())) noise.push(`asked ${request.url()}`);
  });
  await page.goto(`${address()}${path}`);
  await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
  return page;
};

const isSound = async (page: Page): Promise<void> => {
  expect(await axe(page)).toEqual([]);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
};

/** Answers every question of a sheet with a number, by keyboard. */
const workThrough = async (page: Page): Promise<void> => {
  for (let step = 0; step < 40; step += 1) {
    await page.locator(".headline, .sheet-grid").first().waitFor();
    if (await page.locator(".headline").count()) return;
    const example = page.getByRole("button", { name: "To the question" });
    if (await example.count()) {
      await example.press("Enter");
      continue;
    }
    await page.locator(".ask input[type=text]").first().fill("3");
    await page.locator(".ask button.main").first().press("Enter");
    await page.locator(".ask .verdict").waitFor();
    await page.getByRole("button", { name: /^(Next question|See the result)/ }).first().press("Enter");
  }
};

describe.each([390, 1280])("a teaching list at %i pixels", (width) => {
  it("goes from the director to a learner and back, and is marked again", PATIENCE, async () => {
    const noise: string[] = [];
    const director = await contextOf(width);
    const compose = await pageAt(director, "/list/compose/", noise);
    await isSound(compose);
    await compose.getByRole("button", { name: "Make the link" }).press("Enter");
    await compose.getByText("The list needs a title.").waitFor();
    await compose.getByLabel("Title that learners read").fill("Northmoor, winter list");
    await compose.getByLabel(/^M11/).press("Space");
    await compose.getByRole("button", { name: "Choose single objectives" }).or(compose.locator("summary", { hasText: "Choose single objectives" })).first().press("Enter");
    const boxes = await compose.locator("details[open] input[type=checkbox]").all();
    for (const box of boxes.slice(1)) await box.press("Space");
    for (const way of ["As printed square codes", "As a code of twelve signs"]) await compose.getByLabel(way).press("Space");
    await compose.getByRole("button", { name: "Make the link" }).press("Enter");
    const link = await compose.getByLabel(/^The link, \d+ characters/).inputValue();
    expect(await compose.getByLabel("Text for a mail").inputValue()).toContain(link);
    const [calendar] = await Promise.all([compose.waitForEvent("download"), compose.getByRole("button", { name: "Save a calendar file" }).press("Enter")]);
    expect(readFileSync(await calendar.path(), "utf8").replace(/\r\n /g, "")).toContain(`URL:${link}`);
    await isSound(compose);

    const ward = await contextOf(width);
    const learner = await pageAt(ward, new URL(link).pathname + new URL(link).hash, noise);
    await learner.getByRole("heading", { name: "Northmoor, winter list" }).waitFor();
    for (const words of ["When you pass", "What is stored", "No clock runs.", "Due"]) expect(await learner.getByText(words).first().isVisible()).toBe(true);
    for (const id of ["C1", "C2", "C6", "C12"]) expect([id, await learner.locator(`main [data-caution=${id}]`).first().isVisible()]).toEqual([id, true]);
    await isSound(learner);
    await learner.getByLabel("Your learner code").fill("Ann O’Neil");
    await learner.getByRole("button", { name: "Begin" }).press("Enter");
    await learner.getByText("A learner code has 3 to 24").waitFor();
    await learner.getByLabel("Your learner code").fill("avocet-12");
    await learner.getByLabel("Hospital or group").fill("Saltmarsh");
    await learner.getByRole("button", { name: "Begin" }).press("Enter");
    await learner.locator(".sheet-grid").waitFor();
    await isSound(learner);
    await workThrough(learner);
    await learner.getByText("The rule of your list").waitFor();
    await isSound(learner);
    await learner.reload();
    await learner.locator(".headline").waitFor();
    await learner.getByRole("button", { name: "Make the hand-in" }).press("Enter");
    await learner.getByRole("button", { name: "Save the hand-in" }).waitFor();
    await isSound(learner);
    await learner.locator("details.more > summary", { hasText: "sign by sign" }).press("Enter");
    const shown = (await learner.locator("pre.raw").textContent()) ?? "";
    const [file] = await Promise.all([learner.waitForEvent("download"), learner.getByRole("button", { name: "Save the hand-in" }).press("Enter")]);
    const path = await file.path();
    // What was shown before it goes is what goes, sign by sign.
    expect(readFileSync(path, "utf8")).toBe(shown);
    const block = await learner.getByLabel(/^Paste it into a mail/).inputValue();
    const code = (await learner.locator(".typed-code").first().textContent()) ?? "";
    const picture = await learner.locator(".squares ul").screenshot({ scale: "css" });

    const desk = await pageAt(director, "/returns/", noise);
    await isSound(desk);
    await desk.getByLabel("Or paste the whole link").fill(`<${link.match(/.{1,70}/g)?.join("\r\n")}>`);
    await desk.getByRole("button", { name: "Open the list" }).press("Enter");
    await desk.locator("input[type=file]").first().setInputFiles(path);
    const row = desk.locator(".returns-table tbody tr");
    await row.getByText("avocet-12").waitFor();
    const paste = desk.getByLabel(/^Paste blocks/);
    await paste.fill(`On Tuesday somebody wrote:\n${block.split("\n").map((line) => `> ${line}`).join("\n")}`);
    await desk.getByRole("button", { name: "Read what is pasted" }).press("Enter");
    await desk.getByText("copies merged: 1").waitFor();
    await desk.locator("input[type=file]").nth(1).setInputFiles({ name: "squares.png", mimeType: "image/png", buffer: picture });
    await desk.getByText("copies merged: 2").waitFor();
    await paste.fill(code);
    await desk.getByRole("button", { name: "Read what is pasted" }).press("Enter");
    await desk.getByText("There are no answers to mark again").waitFor();
    expect(await row.count()).toBe(1);
    const text = (await row.textContent()) ?? "";
    for (const wanted of ["avocet-12", "Saltmarsh", "file, pasted, square code, typed code", "Reads well.", "2 more copies"]) expect(text).toContain(wanted);
    await desk.getByRole("heading", { name: "What it shows" }).waitFor();
    await isSound(desk);
    await director.close();
    await ward.close();
    expect(noise).toEqual([]);
  });
});

describe("what was begun with a list", () => {
  it("stands on the compose page again after a reload, with everything that was chosen", PATIENCE, async () => {
    const context = await contextOf(390);
    const page = await pageAt(context, "/list/compose/");
    const set = (): Promise<readonly string[]> => page.locator(".compose").evaluate((root) => [...root.querySelectorAll<HTMLInputElement | HTMLSelectElement>("input, select")].map((one) => `${one.value} ${"checked" in one && /radio|checkbox/.test(one.type) ? one.checked : ""}`));
    const fresh = await set();
    await page.getByLabel(/^M11/).press("Space");
    await page.locator("summary", { hasText: "Choose single objectives" }).first().press("Enter");
    await page.locator("details[open] input[type=checkbox]").nth(1).press("Space");
    await page.getByLabel("Title that learners read").fill("Northmoor, winter list");
    await page.getByLabel("As a code of twelve signs").press("Space");
    await page.locator(".rule-sentence select").first().selectOption("70");
    await page.locator("input[type=date]").nth(1).fill("2099-12-04");
    await page.locator("input[type=date]").nth(2).fill("2099-12-31");
    const before = await set();
    expect(before).not.toEqual(fresh);
    await page.reload();
    await expect.poll(set).toEqual(before);
    await page.getByRole("button", { name: "Make the link" }).press("Enter");
    await page.getByLabel(/^The link, \d+ characters/).waitFor();
    await page.locator(".start select").selectOption({ index: 1 });
    const preset = await set();
    await page.reload();
    await expect.poll(set).toEqual(preset);
    await context.close();
  });

  it("is come back to from the page of the hand-in, by Back and by its button, with its answers", PATIENCE, async () => {
    const context = await contextOf(390);
    const page = await pageAt(context, `/list/#${linkText(listOf(["how-many"], { opensOn: "2020-01-01", dueOn: "2099-12-04", keepUntil: "2099-12-05" }))}`);
    await page.getByLabel("Your learner code").fill("avocet-12");
    await page.getByRole("button", { name: "Begin" }).press("Enter");
    await page.locator(".sheet-grid").waitFor();
    await workThrough(page);
    const answered = (): Promise<readonly string[]> => page.locator(".result-table tbody tr").allTextContents();
    await page.getByText("The rule of your list").waitFor();
    const before = await answered();
    expect(before.length).toBeGreaterThan(0);
    const toHandIn = async (): Promise<void> => {
      await page.getByRole("button", { name: "Make the hand-in" }).press("Enter");
      await page.locator(".hand-in").getByRole("button", { name: "Save the hand-in" }).waitFor();
    };
    const isBack = async (): Promise<void> => {
      await page.getByText("The rule of your list").waitFor();
      expect([await answered(), await page.locator(".hand-in").count()]).toEqual([before, 0]);
    };
    await toHandIn();
    await page.goBack();
    await isBack();
    await page.goForward();
    await page.locator(".hand-in").getByRole("button", { name: "Save the hand-in" }).waitFor();
    await page.reload();
    await page.getByRole("button", { name: "Back to the list" }).press("Enter");
    await isBack();
    await context.close();
  });
});

describe("the returns desk", () => {
  it("shows the invented cohort as the truth has it, with a sentence for everything that is odd", PATIENCE, async () => {
    const context = await contextOf(1280);
    const page = await pageAt(context, `/returns/#${linkText(DEMO_LIST)}`);
    await page.locator("input[type=file]").first().setInputFiles(ARRIVALS.map(({ name, text }) => ({ name, mimeType: "text/plain", buffer: Buffer.from(text) })));
    const rows = page.locator(".returns-table tbody tr");
    await rows.nth(23).waitFor();
    const texts = await rows.allTextContents();
    const of = (learner: string): string => texts.find((text) => text.startsWith(learner)) ?? "";
    for (const { learner, word, route, trouble } of TRUTH) {
      const right = [...word].filter((letter) => letter === "+").length;
      if (trouble === "damaged") expect(of(learner)).toContain("Nothing was counted.");
      else expect(of(learner)).toContain(route === "code" ? `${right} right` : `${right} of ${word.length} right`);
      if (trouble === "twice") expect(of(learner)).toContain("A second copy was merged.");
      if (trouble === "older") expect(of(learner)).toContain("edition 0.0.9");
      if (trouble === "edited") expect(of(learner)).toContain("The sum does not fit");
    }
    const results = await page.locator(".returns-table tbody tr td:last-child").allTextContents();
    const many = (result: string): number => results.filter((one) => one.trim() === result).length;
    const told = ([["passes", "pass"], ["not yet", "not yet"], ["unknown", "unknown"]] as const).filter(([result]) => many(result) > 0).map(([result, word]) => `${many(result)} ${word}`).join(", ");
    expect(results).toHaveLength(24);
    await page.getByText(`By the rule: ${told}.`).waitFor();
    await page.locator(".completion").getByText(`${DEMO_LIST.title}, ${DEMO_LIST.spoken === null ? "not supervised" : "supervised"}`).waitFor();
    expect(of("gannet-05")).toMatch(/lacks lines \(\d+ of them\)/);
    await page.getByText("n = 18").waitFor();
    await page.getByRole("button", { name: "Count it all the same" }).press("Enter");
    await page.getByRole("button", { name: "Leave it out again" }).waitFor();
    await page.getByText("n = 19").waitFor();
    await context.close();
  });

  it("asks for the word of a supervised list, and says what is wrong with a link", PATIENCE, async () => {
    const context = await contextOf(390);
    const page = await pageAt(context, `/list/#${linkText(listOf(["how-many"], { spoken: "0123456789abcdef", opensOn: "2020-01-01" }))}`);
    await page.getByLabel("Your learner code").fill("avocet-12");
    await page.getByLabel("The word that is read aloud").fill("HERON 42");
    await page.getByRole("button", { name: "Begin" }).press("Enter");
    await page.getByText("This is not the word of this list.").waitFor();
    const broken = await pageAt(context, `/list/#${linkText(DEMO_LIST).slice(0, -4)}`);
    await broken.getByText("The link lost or changed some signs").waitFor();
    await context.close();
  });
});
