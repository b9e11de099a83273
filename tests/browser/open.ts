import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { launchBrowser, NO_BROWSER } from "../../src/tools/find-browser.ts";
import { type Served, startServer } from "../../src/tools/serve.ts";

export interface Opened {
  readonly page: Page;
  /** Everything that the console, a failed request or a foreign origin had to say; should stay empty. */
  readonly noise: string[];
  /** Addresses that were requested, in order. */
  readonly requests: string[];
  readonly close: () => Promise<void>;
}

/** The site and a browser for the tests of one file; both end with it. */
export const browserForTests = () => {
  const held: { browser?: Browser; served?: Served } = {};
  beforeAll(async () => {
    held.served = await startServer();
    const browser = await launchBrowser();
    if (!browser) throw new Error(NO_BROWSER);
    held.browser = browser;
  });
  afterAll(async () => {
    await held.browser?.close();
    await held.served?.close();
  });
  const both = (): { readonly browser: Browser; readonly served: Served } => {
    const { browser, served } = held;
    if (!browser || !served) throw new Error("The site is not served yet");
    return { browser, served };
  };
  return { browser: (): Browser => both().browser, address: (): string => both().served.address, closeSite: (): Promise<void> => both().served.close() };
};

/** Pages of the built site, for the tests of one file. */
export const siteForTests = () => {
  const { browser, address } = browserForTests();
  return async (path: string, options: BrowserContextOptions = {}): Promise<Opened> => {
    const context = await browser().newContext({ viewport: { width: 1280, height: 900 }, ...options });
    const page = await context.newPage();
    const noise: string[] = [];
    const requests: string[] = [];
    page.on("console", (message) => noise.push(message.text()));
    page.on("pageerror", (error) => noise.push(error.message));
    page.on("request", (request) => {
      requests.push(request.url().replace(address(), ""));
      if (!request.url().startsWith(address()) && !request.url().startsWith("data:")) noise.push(`asked ${request.url()}`);
    });
    page.on("requestfailed", (request) => {
      // A request that a reload cut off says nothing about the page.
      if (!request.failure()?.errorText.includes("ERR_ABORTED")) noise.push(`failed ${request.url()}`);
    });
    await page.goto(address() + path);
    return { page, noise, requests, close: () => context.close() };
  };
};
