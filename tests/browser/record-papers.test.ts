import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { draw, families, grade, slipsOf } from "../../src/bank/index.ts";
import { lineText } from "../../src/engine/record/chain.ts";
import { cautionText } from "../../src/facts/cautions.ts";
import { isModuleStep, pathNamed } from "../../src/facts/paths.ts";
import { type BareEvent, bareEvent, chainOf } from "../support/events.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const faults = async (page: Page): Promise<readonly string[]> =>
  (await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).withTags(RULES).analyze()).violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`);
const overflow = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
const sides = async (page: Page): Promise<number> => (await page.pdf({ preferCSSPageSize: true })).toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;

/** A page whose tab already holds these events. */
const openWith = async (path: string, events: readonly BareEvent[], width: number) => {
  const opened = await open("/record.schema.json", { viewport: { width, height: 900 } });
  await opened.page.evaluate((text) => sessionStorage.setItem("small-knee-workbook:visit", text), chainOf(events).map(lineText).join("\n"));
  opened.noise.length = 0;
  await opened.page.goto(new URL(path, opened.page.url()).href);
  return opened;
};

const days = ["2027-02-01", "2027-02-02", "2027-02-05"];
/** Every question of a module three times right, on three days: every objective of it is Steady. */
const steadyIn = (module: string): readonly BareEvent[] =>
  days.flatMap((day, at) => families.filter((family) => family.module === module).map(({ id }, index) => bareEvent(0, { id: `${id}-${at}`, family: id, seed: String(at), at: `${day}T10:${String(index).padStart(2, "0")}:00Z` })));

const CORE = pathNamed("nurse-core").sittings.flatMap(({ steps }) => steps.filter(isModuleStep).flatMap((step) => step.families ?? []));
/** Each of these questions right once on each of two days. */
const rightTwice = (ids: readonly string[]): readonly BareEvent[] =>
  days.slice(0, 2).flatMap((day, at) => ids.map((id, index) => bareEvent(0, { id: `${id}-${at}`, family: id, seed: String(at), at: `${day}T10:${String(index).padStart(2, "0")}:00Z` })));

/** An answer that shows a slip of a question, as the card would have kept it. */
const slipEvent = (family: string, seed: number): BareEvent => {
  const item = draw(family, seed);
  const slip = slipsOf(item).toSorted((one, other) => Number(other.unsafe) - Number(one.unsafe))[0];
  if (slip === undefined) throw new Error(`${family} has no slip`);
  const verdict = grade(item, slip.response);
  const givens = Object.fromEntries(item.givens.map(({ key, text }) => [key, text]));
  return bareEvent(0, { id: `${family}-${seed}`, family, version: String(item.version), seed: item.seed, givens, accepted: {}, response: slip.response, verdict: verdict.verdict, ...(verdict.slip === undefined ? {} : { slip: verdict.slip }) });
};

describe("a certificate of study", () => {
  it("is made from the record, prints on one side, and agrees with its code on another device and with no other name", async () => {
    const { page, noise, close } = await openWith("/certificate/", steadyIn("M13"), 390);
    await page.getByLabel("Your name").fill("Ida Sorrel");
    const paper = page.locator(".certificate");
    const text = (await paper.textContent()) ?? "";
    expect(text).toContain("Ida Sorrel");
    expect(text).toContain("M13");
    expect(text).not.toContain("M04");
    for (const id of ["C1", "C6", "C12"]) expect(text).toContain(cautionText(id));
    expect(text).not.toMatch(/competent|certified|cleared|safe to operate/i);
    const code = (await paper.locator("code").textContent()) ?? "";
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(await faults(page)).toEqual([]);
    expect(await sides(page)).toBe(1);
    expect(noise).toEqual([]);
    const other = await open("/certificate/");
    const check = async (typed: string, name: string): Promise<string> => {
      await other.page.getByLabel("Code on the paper").fill(typed);
      await other.page.getByLabel("Name on the paper").fill(name);
      await other.page.getByRole("button", { name: "Read the code" }).press("Enter");
      return (await other.page.locator(".said-many").textContent()) ?? "";
    };
    await other.page.getByText("There is none yet").waitFor();
    const said = await check(code.toLowerCase(), "ida sorrel");
    expect(said).toContain("M13 Counting out, waste and record (every objective is Steady)");
    expect(said).toContain("Path: none");
    expect(said).toContain("is the name that the code was made with");
    expect(said).toContain("Whoever has this page can make such a paper");
    expect(await check(code, "Ida Sorrell")).toContain("is not the one that the code was made with");
    // The first sign names the edition, so what is wrong does not change with the day; a wrong last sign may look like a code of another kind.
    expect(await check(`${code.startsWith("2") ? "3" : "2"}${code.slice(1)}`, "")).toContain("One of the signs is wrong");
    await other.close();
    await close();
  });
});

describe("a path on a certificate of study", () => {
  const choose = async (page: Page): Promise<void> => {
    const select = page.getByLabel("Path that the paper should name");
    await select.focus();
    for (const key of ["ArrowDown", "ArrowDown"]) await page.keyboard.press(key);
    expect(await select.locator("option:checked").textContent()).toBe("Theatre nurse: core, in three sittings");
  };

  it("shows an empty record every question that is missing, each with its link, and makes no paper", async () => {
    const { page, noise, close } = await openWith("/certificate/", [], 390);
    await choose(page);
    const links = await page.locator(".path-study li li a").evaluateAll((all) => all.map((one) => one.getAttribute("href")));
    expect(links.toSorted()).toEqual(CORE.map((id) => `/practice/${id}/`).toSorted());
    expect(await page.locator(".path-study").textContent()).toContain("0 of 6 parts are done");
    expect(await page.locator(".certificate").count()).toBe(0);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(await faults(page)).toEqual([]);
    expect(noise).toEqual([]);
    await close();
  });

  it("shows a half-done record what is left, names an unsafe answer, and leaves the path off the paper", async () => {
    const unsafe = bareEvent(0, { id: "late", family: "pack-check", seed: "9", verdict: "unsafe-side", at: "2027-02-03T10:00:00Z" });
    const { page, close } = await openWith("/certificate/", [...rightTwice(CORE.filter((id) => id !== "percent")), ...steadyIn("M02"), unsafe], 390);
    await choose(page);
    const undone = page.locator(".path-study section > ul > li").filter({ has: page.locator("li") });
    const texts = await undone.allTextContents();
    expect(texts.map((text) => text.slice(0, 3))).toEqual(["M04", "M12"]);
    expect(texts[0]).toContain("An unsafe answer is open.");
    expect(await undone.nth(1).locator("li a").evaluateAll((all) => all.map((one) => one.getAttribute("href")))).toEqual(["/practice/percent/"]);
    const paper = (await page.locator(".certificate").textContent()) ?? "";
    expect(paper).toContain("M02");
    expect(paper).not.toContain("Core, in three sittings");
    await close();
  });

  it("stands on the paper with its parts when nothing is missing, on one side, and the code names it elsewhere", async () => {
    const { page, noise, close } = await openWith("/certificate/", rightTwice(CORE), 390);
    await page.getByText("There is none yet").waitFor();
    await choose(page);
    const paper = page.locator(".certificate");
    const row = (await paper.locator("tbody tr").allTextContents()).join();
    for (const id of CORE) expect(row).toContain(families.find((family) => family.id === id)?.code ?? "none");
    expect(row).toContain("“Core, in three sittings” (theatre nurse)");
    for (const id of ["C1", "C6", "C12"]) expect(await paper.textContent()).toContain(cautionText(id));
    expect(await paper.textContent()).not.toMatch(/competent|certified|cleared|safe to operate/i);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(await faults(page)).toEqual([]);
    expect(await sides(page)).toBe(1);
    expect(noise).toEqual([]);
    const code = (await paper.locator("code").textContent()) ?? "";
    const other = await open("/certificate/");
    await other.page.getByText("There is none yet").waitFor();
    await other.page.getByLabel("Code on the paper").fill(code);
    await other.page.getByRole("button", { name: "Read the code" }).press("Enter");
    const said = (await other.page.locator(".said-many").textContent()) ?? "";
    expect(said).toContain("Path: “Core, in three sittings” (theatre nurse), M04 in part: 04a");
    expect(said).toContain("each question it names was right once");
    await other.close();
    await close();
  });

  it("prints on one side beside every module of the course", async () => {
    const { page, close } = await openWith("/certificate/", [...new Set(families.map(({ module }) => module))].flatMap(steadyIn).toSorted((one, two) => one.at.localeCompare(two.at)), 1280);
    await choose(page);
    expect(await page.locator(".certificate tbody tr").count()).toBe(new Set(families.map(({ module }) => module)).size + 1);
    expect(await sides(page)).toBe(1);
    await close();
  });
});

describe("a viva card", () => {
  it("shows the learner’s own slips, unsafe first, with what can be asked next, on one side", async () => {
    const events = [slipEvent("two-by-two", 3), slipEvent("greatest-depth", 7), slipEvent("how-many", 5), slipEvent("capped-dose", 2)];
    const { page, noise, close } = await openWith("/viva/", events, 390);
    await page.locator(".viva section").first().waitFor();
    const sections = await page.locator(".viva section").allTextContents();
    expect(sections).toHaveLength(3);
    const unsafe = sections.map((text) => text.includes("Off, on the unsafe side"));
    expect(unsafe).toEqual([...unsafe].sort((one, two) => Number(two) - Number(one)));
    const depth = sections.find((text) => text.includes(draw("greatest-depth", 7).title)) ?? "";
    expect(depth).toContain(draw("greatest-depth", 7).givens[0]?.text ?? "none");
    expect(depth).toMatch(/Slip: .+Ask: what went wrong\?.+Ask: how does it go\?/);
    expect(await page.locator(".viva footer").textContent()).toContain(cautionText("C10"));
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(await faults(page)).toEqual([]);
    expect(await sides(page)).toBe(1);
    expect(noise).toEqual([]);
    await close();
  });

  it("says so where there is nothing to talk about", async () => {
    const { page, close } = await open("/viva/");
    await page.getByText("holds no unsafe answer and no named slip").waitFor();
    await close();
  });
});
