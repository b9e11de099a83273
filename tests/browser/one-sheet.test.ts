import { describe, expect, it } from "vitest";
import { siteForTests } from "./open.ts";

const open = siteForTests();

/** Sheets of A4 that a page of the site takes on paper. */
const sheetsOf = async (path: string): Promise<number> => {
  const { page, close } = await open(path);
  await page.emulateMedia({ media: "print" });
  const printed = await page.pdf({ preferCSSPageSize: true });
  await close();
  return printed.toString("latin1").match(/\/Type \/Page\b/g)?.length ?? 0;
};

describe("a page on paper", () => {
  // Each of these once left a sheet to its foot, or parted a picture from its question.
  it.each([
    ["/practice/pattern/", 1],
    ["/practice/where-am-i/", 1],
    ["/practice/same-place/", 1],
    ["/practice/needle/", 1],
    ["/evidence/evaluation/", 2],
    ["/scope/", 4],
    ["/card/a5/", 1],
  ] as const)("%s takes %i sheets", async (path, sheets) => expect(await sheetsOf(path)).toBe(sheets));
});
