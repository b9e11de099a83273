import { describe, expect, it } from "vitest";
import { overflow } from "./measure.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();
const PHONE = { viewport: { width: 320, height: 640 } };

/** Doubles the letters as a reader's browser does: every length in the styles that counts in letters grows with it. */
const doubled = async (path: string): Promise<number> => {
  const { page, close } = await open(path, PHONE);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = "200%";
  });
  const over = await overflow(page);
  await close();
  return over;
};

describe("letters at twice their size on the smallest phone", () => {
  // One page of each make: doors, tables, formulas, cards to order, the needle, the scope, papers to hang up.
  it.each(["/", "/modules/", "/modules/counting-out/", "/modules/setting-a-standard/", "/modules/needle-path-and-depth/", "/needle/", "/scope/", "/numbers/", "/numbers/shortest-distance/", "/glossary/", "/model-knee/", "/paths/nurse-core/", "/poster/author/", "/card/", "/card/where/", "/evidence/conflicts/", "/evidence/time/", "/practice/", "/practice/needle/", "/practice/set-up/", "/practice/spread/", "/practice/write-it-safely/", "/stand/", "/sheet/", "/list/compose/", "/search/"])("do not scroll %s sideways", async (path) => expect(await doubled(path)).toBeLessThanOrEqual(0));
});
