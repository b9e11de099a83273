import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { siteForTests } from "./open.ts";

const open = siteForTests();
/** One page of each kind; the checks of the built site read all of them. */
const paths = ["/", "/modules/", "/modules/needle-path-and-depth/", "/needle/", "/practice/", "/practice/depth-to-stop/", "/practice/medial-side/", "/practice/pack-check/", "/practice/hiatus/", "/gallery/", "/gallery/questions/", "/numbers/", "/numbers/tear/", "/sources/", "/search/", "/stand/", "/sheet/", "/intended-use/", "/card/", "/card/where/", "/poster/nurse-core/", "/certificate/", "/viva/", "/list/", "/list/compose/", "/returns/", "/coverage/", "/paths/nurse-core/", "/evidence/", "/evidence/objectives/", "/evidence/standard/", "/evidence/time/", "/evidence/completion/"];
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

const faults = async (page: Page): Promise<readonly string[]> => {
  const { violations } = await new AxeBuilder({ page }).options({ resultTypes: ["violations"] }).setLegacyMode(true).withTags(RULES).analyze();
  return violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`);
};

/** Pressed things outside of running text that are smaller than a finger. */
const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll("button:not(.term), summary, input, .btn, nav a, .foot li a, .contents a, .hits a")].flatMap((element) => {
      // A tick box or a round one is pressed by its label.
      const { width, height } = (element.closest("label.choice") ?? element).getBoundingClientRect();
      return width > 0 && (width < 43.5 || height < 43.5) ? [`${element.outerHTML.slice(0, 80)} ${width}×${height}`] : [];
    }),
  );

const overflow = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

describe("every kind of page in a browser", () => {
  it.each(paths)("%s keeps the accessibility rules narrow by day and wide by night, has targets for a finger, and a silent console", async (path) => {
    const { page, noise, close } = await open(path, { viewport: { width: 390, height: 900 }, colorScheme: "light" });
    expect(await faults(page)).toEqual([]);
    expect(await smallTargets(page)).toEqual([]);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    // A desk page at four times its size (WCAG 2.2, 1.4.10).
    await page.setViewportSize({ width: 320, height: 900 });
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.emulateMedia({ colorScheme: "dark" });
    expect(await faults(page)).toEqual([]);
    expect(await overflow(page)).toBeLessThanOrEqual(0);
    expect(noise).toEqual([]);
    await close();
  });

  it("prints its chrome away and keeps text and cautions", async () => {
    const { page, close } = await open("/modules/needle-path-and-depth/");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".head nav").isVisible()).toBe(false);
    expect(await page.locator(".scale").isVisible()).toBe(true);
    expect(await page.locator("main [data-caution=C2]").first().isVisible()).toBe(true);
    expect(await page.locator(".ask").first().isVisible()).toBe(true);
    expect(await page.evaluate(() => getComputedStyle(document.body).getPropertyValue("--own").trim())).toMatch(/^#000/);
    await close();
  });
});

describe("a word of the glossary in a sentence", () => {
  it("opens its meaning by keyboard and without a script, leads to the glossary, and is left out of print", async () => {
    const { page, close } = await open("/modules/needle-path-and-depth/", { javaScriptEnabled: false });
    const term = page.locator("button.term", { hasText: "window" });
    const meaning = page.locator("span.meaning", { hasText: "The depths on one line" });
    expect(await meaning.isVisible()).toBe(false);
    await term.focus();
    await page.keyboard.press("Enter");
    expect(await meaning.isVisible()).toBe(true);
    await meaning.getByRole("link").click();
    expect(new URL(page.url()).hash).toBe("#window");
    expect(await page.locator("#window dt").textContent()).toBe("window");
    await page.goBack();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("span.meaning").first().isVisible()).toBe(false);
    await close();
  });
});

/** Pressing Enter does something only once the page is alive; what was typed before is kept. */
const find = async (page: Page, words: string): Promise<void> => {
  await page.getByLabel("Words to find").fill(words);
  await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
  await page.keyboard.press("Enter");
};

describe("search", () => {
  it("finds a word of a module, and says how many pages have it", async () => {
    const { page, noise, requests, close } = await open("/search/");
    expect(requests.filter((address) => address.includes("pagefind"))).toEqual([]);
    await find(page, "junction");
    await page.getByRole("link", { name: "Needle path and depth" }).waitFor();
    expect(await page.getByRole("status").textContent()).toMatch(/^\d+ pages? for “junction”\.$/);
    expect(noise).toEqual([]);
    await close();
  });

  it("does not index a question or a value", async () => {
    const { page, close } = await open("/search/");
    const said = async (phrase: string): Promise<string> => {
      await find(page, phrase);
      return (await page.getByRole("status").filter({ hasText: phrase }).textContent()) ?? "";
    };
    expect(await said('"a wall and not a target"')).toMatch(/^1 page for/);
    expect(await said('"Cannot be told from this"')).toMatch(/^Nothing found for/);
    expect(await said("“Cannot be told from this”")).toMatch(/^Nothing found for/);
    await close();
  });
});
