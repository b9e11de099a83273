import type { Locator, Page } from "playwright-core";
import { draw } from "../../src/bank/index.ts";
import type { Item } from "../../src/engine/question/item.ts";
import { pageAt } from "../support/site.ts";

/** The page whose questions are worked on in the browser. */
export const MODULE = "/modules/needle-path-and-depth/";

/** The question that the built page shows for a family, drawn again from its seed. */
export const shown = (family: string, path: string = MODULE): Item => {
  const { html } = pageAt(path);
  const ask = html.slice(html.indexOf(`data-family="${family}"`));
  const seed = /&quot;seed&quot;:\[0,&quot;([0-9a-f]+)&quot;\]/.exec(ask)?.[1] ?? "";
  return draw(family, seed);
};

/** The card of a family, scrolled to and alive. */
export const card = async (page: Page, family: string): Promise<Locator> => {
  const ask = page.locator(`[data-family="${family}"]`);
  await ask.scrollIntoViewIfNeeded();
  await ask.locator("astro-island:not([ssr])").waitFor({ state: "attached" });
  return ask;
};
