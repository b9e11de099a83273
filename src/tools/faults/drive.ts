import type { BrowserContext, Page } from "playwright-core";
import { readLog } from "../../engine/record/chain.ts";

/** A page with one question that can be asked again and again, and one without scripts of its own. */
export const QUESTION = "/practice/path-width/";
export const QUIET = "/record.schema.json";

/** Opens the question and waits until it is alive. */
export const openQuestion = async (context: BrowserContext, address: string): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(address + QUESTION);
  await page.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
  return page;
};

/** Answers by hand once and gives the sentence that says where the answer is kept. */
export const answerOnce = async (page: Page, text = "3"): Promise<string> => {
  const another = page.getByRole("button", { name: "Another like this" });
  if (await another.count()) await another.click();
  await page.locator(".ask input[type=text]").first().fill(text);
  await page.keyboard.press("Enter");
  return (await page.locator(".kept p").first().textContent()) ?? "";
};

/** Presses the button that starts the record on the device. */
export const startKeeping = async (page: Page): Promise<void> => {
  await answerOnce(page);
  await page.getByRole("button", { name: "Keep my work on this device" }).click();
  await page.getByText("Kept on this device.").waitFor();
};

/**
 * Answers again and again as fast as the page goes, and tells for each answer that the page has called kept. Ends after
 * so many answers, or with the page.
 */
export const answerMany = async (page: Page, count: number, onKept: () => void): Promise<void> => {
  await page.exposeFunction("tellKept", onKept);
  await page.evaluate(async (most) => {
    const found = async <T>(look: () => T | null | undefined): Promise<T> => {
      for (;;) {
        const here = look();
        if (here) return here;
        await new Promise((later) => setTimeout(later, 1));
      }
    };
    const button = (text: string) => [...document.querySelectorAll<HTMLButtonElement>(".ask button")].find((one) => one.textContent === text);
    const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
    for (let done = 0; done < most; done += 1) {
      button("Another like this")?.click();
      const input = await found(() => (document.querySelector(".ask .verdict") ? null : document.querySelector<HTMLInputElement>(".ask input[type=text]")));
      write?.call(input, String(1 + (done % 9)));
      input.dispatchEvent(new Event("input", { bubbles: true }));
      (await found(() => button("Check"))).click();
      await found(() => document.querySelector(".kept p")?.textContent?.startsWith("Kept on this device"));
      await (globalThis as unknown as { tellKept: () => Promise<void> }).tellKept();
    }
  }, count);
};

/** Every line of the record on the device, as it stands. */
export const linesOnDevice = async (context: BrowserContext, address: string): Promise<readonly string[]> => {
  const page = await context.newPage();
  await page.goto(address + QUIET);
  const texts = await page.evaluate(() => new Promise<string[]>((done, failed) => {
    const request = indexedDB.open("small-knee-workbook");
    request.onerror = () => failed(request.error);
    request.onsuccess = () => {
      const all = request.result.transaction("lines").objectStore("lines").getAll();
      all.onsuccess = () => {
        request.result.close();
        done((all.result as { readonly text: string }[]).map(({ text }) => text));
      };
      all.onerror = () => failed(all.error);
    };
  }));
  await page.close();
  return texts;
};

export interface Counted {
  readonly answers: number;
  /** Sentences about damage; should stay empty. */
  readonly damage: readonly string[];
}

/** How many answers the device holds, each counted once, and what its own check says. */
export const countOnDevice = async (context: BrowserContext, address: string): Promise<Counted> => {
  const { lines, findings } = readLog(await linesOnDevice(context, address));
  return { answers: lines.filter(({ event }) => event.kind === "answered").length, damage: findings.map(({ sentence }) => sentence) };
};

/** Runs a piece of script on a page of the site that has none of its own. */
export const onQuietPage = async (context: BrowserContext, address: string, work: (page: Page) => Promise<unknown>): Promise<void> => {
  const page = await context.newPage();
  await page.goto(address + QUIET);
  await work(page);
  await page.close();
};
