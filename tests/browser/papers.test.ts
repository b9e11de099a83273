import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { MOST_COUNTED } from "../../src/engine/kit/local-list.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const POINT_PX = 96 / 72;
const LEAST_POINTS = 11;

/** Pages and their size in points, as the browser prints them: a page object of a PDF holds its own box. */
const printed = async (page: Page): Promise<{ readonly pages: number; readonly size: string }> => {
  const text = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
  const [, width = "0", height = "0"] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(text) ?? [];
  return { pages: text.match(/\/Type\s*\/Page\b/g)?.length ?? 0, size: `${Math.round(Number(width))} × ${Math.round(Number(height))}` };
};

/** ISO 216: A4 is 210 × 297 mm, A5 is 148 × 210 mm; a point is 1/72 inch. */
const SIZES = { a4: "595 × 842", a5: "420 × 595" } as const;

/** Letters that are too small, or too pale on white (WCAG 2.2, 1.4.3: 4.5 to 1), of what is printed. */
const hardToRead = (page: Page): Promise<readonly string[]> =>
  page.evaluate(([leastPx]) => {
    const channel = (value: number): number => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4);
    const contrast = (colour: string): number => {
      const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number);
      return 1.05 / (0.2126 * channel(red) + 0.7152 * channel(green) + 0.0722 * channel(blue) + 0.05);
    };
    return [...document.querySelectorAll(".card *")].flatMap((element) => {
      const own = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "");
      const { fontSize, color } = getComputedStyle(element);
      return own && (Number.parseFloat(fontSize) < (leastPx ?? 0) - 0.01 || contrast(color) < 4.5) ? [`${element.textContent?.slice(0, 30)} ${fontSize} ${color}`] : [];
    });
  }, [LEAST_POINTS * POINT_PX]);

describe("what is printed and hung up", () => {
  it.each([["/card/", "a4"], ["/card/a5/", "a5"]] as const)("%s is one side of %s, large enough and black, also with the longest list that it takes", async (path, paper) => {
    const { page, noise, close } = await open(path);
    expect(await printed(page)).toEqual({ pages: 1, size: SIZES[paper] });
    await page.emulateMedia({ media: "print" });
    expect(await hardToRead(page)).toEqual([]);
    expect(await page.locator(".head").isVisible()).toBe(false);
    const grow = (to: number) => page.evaluate((most) => {
      const rows = document.querySelector(".card-count tbody");
      const row = rows?.querySelector("tr:nth-child(4)");
      while (rows && row && rows.children.length < most) rows.append(row.cloneNode(true));
    }, to);
    await grow(MOST_COUNTED[paper]);
    expect((await printed(page)).pages).toBe(1);
    await grow(MOST_COUNTED[paper] * 2);
    expect((await printed(page)).pages).toBeGreaterThan(1);
    expect(noise).toEqual([]);
    await close();
  });

  it.each(["/card/where/", "/poster/nurse-core/", "/poster/resident-two-weeks/"])("%s fits on one sheet of A4", async (path) => {
    const { page, close } = await open(path);
    expect(await printed(page)).toEqual({ pages: 1, size: SIZES.a4 });
    await close();
  });
});
