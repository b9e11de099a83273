import { AxeBuilder } from "@axe-core/playwright";
import { describe, expect, it } from "vitest";
import { pages } from "../support/site.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const paths = pages.map(({ path }) => path).filter((path) => path !== "/404.html");
const LOOKS = [{ width: 390, colorScheme: "light" }, { width: 1280, colorScheme: "dark" }] as const;

describe("every page in a browser", () => {
  it.each(paths)("%s has nothing for the accessibility rules to find, narrow by day and wide by night, and a silent console", async (path) => {
    for (const { width, colorScheme } of LOOKS) {
      const { page, noise, close } = await open(path, { viewport: { width, height: 900 }, colorScheme });
      const { violations } = await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]).analyze();
      expect(violations.map(({ id, nodes }) => `${width} ${colorScheme} ${id} ${nodes[0]?.html}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(noise).toEqual([]);
      await close();
    }
  });

  it.each(paths)("%s has targets of at least 44 pixels outside of running text", async (path) => {
    const { page, close } = await open(path, { viewport: { width: 390, height: 900 } });
    const small = await page.evaluate(() =>
      [...document.querySelectorAll("button, summary, input, .btn, nav a, .foot li a, .contents a, .hits a")].flatMap((element) => {
        const { width, height } = element.getBoundingClientRect();
        return width > 0 && (width < 43.5 || height < 43.5) ? [`${element.outerHTML.slice(0, 80)} ${width}×${height}`] : [];
      }),
    );
    expect(small).toEqual([]);
    await close();
  });

  it("prints its chrome away and keeps text and cautions", async () => {
    const { page, close } = await open("/modules/needle-path-and-depth/");
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".head nav").isVisible()).toBe(false);
    expect(await page.locator(".scale").isVisible()).toBe(true);
    expect(await page.locator("main [data-caution=C2]").isVisible()).toBe(true);
    expect(await page.locator(".ask").first().isVisible()).toBe(true);
    expect(await page.evaluate(() => getComputedStyle(document.body).getPropertyValue("--own").trim())).toMatch(/^#000/);
    await close();
  });
});

describe("search", () => {
  it("finds a word of a module, and says how many pages have it", async () => {
    const { page, noise, requests, close } = await open("/search/");
    expect(requests.filter((address) => address.includes("pagefind"))).toEqual([]);
    await page.getByLabel("Words to find").fill("junction");
    await page.keyboard.press("Enter");
    await page.getByRole("link", { name: "Needle path and depth" }).waitFor();
    expect(await page.getByRole("status").textContent()).toMatch(/^\d+ pages? for “junction”$/);
    expect(noise).toEqual([]);
    await close();
  });

  it("does not index a question or a value", async () => {
    const { page, close } = await open("/search/");
    await page.getByLabel("Words to find").fill("“Cannot be told from this”");
    await page.keyboard.press("Enter");
    await page.getByRole("status").filter({ hasText: "for" }).waitFor();
    expect(await page.locator(".hits mark", { hasText: "told" }).count()).toBe(0);
    await close();
  });
});
