import type { Browser, BrowserContext } from "playwright-core";
import { answerMany, answerOnce, countOnDevice, onQuietPage, openQuestion, startKeeping } from "./drive.ts";

export interface Case {
  readonly name: string;
  /** Empty where all went as it should. */
  readonly wrong: readonly string[];
  readonly said: string;
}

const must = (holds: boolean, sentence: string): readonly string[] => (holds ? [] : [sentence]);

const withContext = async (browser: Browser, work: (context: BrowserContext) => Promise<Case>): Promise<Case> => {
  const context = await browser.newContext();
  const done = await work(context);
  await context.close();
  return done;
};

/** Two tabs answer at once; every answer is there, and the chain is whole. */
export const twoTabs = (browser: Browser, address: string, each: number): Promise<Case> =>
  withContext(browser, async (context) => {
    const one = await openQuestion(context, address);
    await startKeeping(one);
    const other = await openQuestion(context, address);
    await Promise.all([answerMany(one, each, () => undefined), answerMany(other, each, () => undefined)]);
    const { answers, damage } = await countOnDevice(context, address);
    return { name: `two tabs, ${each} answers each`, said: `${answers} answers on the device`, wrong: [...must(answers === 2 * each + 1, `expected ${2 * each + 1} answers, found ${answers}`), ...damage] };
  });

/**
 * The device has no room: the page says so, the answer stays in the tab, and goes to the device once there is room. The
 * browser's own error is raised in its place, because no browser here lets a test shrink its room.
 */
export const fullQuota = (browser: Browser, address: string): Promise<Case> =>
  withContext(browser, async (context) => {
    const page = await openQuestion(context, address);
    await startKeeping(page);
    await page.evaluate(() => {
      const { add } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.add = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
      Object.assign(globalThis, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { add }) });
    });
    const said = await answerOnce(page);
    const before = await countOnDevice(context, address);
    await page.evaluate(() => (globalThis as unknown as { makeRoom: () => void }).makeRoom());
    const after = await answerOnce(page);
    const { answers } = await countOnDevice(context, address);
    return { name: "no room on the device", said, wrong: [...must(said.startsWith("There is no room left"), `no sentence about room, but “${said}”`), ...must(before.answers === 1, "the full device took a line"), ...must(after === "Kept on this device." && answers === 3, `expected 3 answers once there was room, found ${answers}`)] };
  });

/** One character of a kept line changes: the line is set aside with a sentence, all others count. */
export const corruptLine = (browser: Browser, address: string): Promise<Case> =>
  withContext(browser, async (context) => {
    const page = await openQuestion(context, address);
    await startKeeping(page);
    await answerOnce(page);
    await answerOnce(page);
    await onQuietPage(context, address, (quiet) => quiet.evaluate(() => new Promise<void>((done, failed) => {
      const request = indexedDB.open("small-knee-workbook");
      request.onerror = () => failed(request.error);
      request.onsuccess = () => {
        const cursor = request.result.transaction("lines", "readwrite").objectStore("lines").openCursor();
        cursor.onsuccess = () => {
          const line = cursor.result?.value as { readonly hash: string; readonly text: string };
          const changed = cursor.result?.update({ ...line, text: line.text.replace('"try":"1"', '"try":"7"') });
          if (changed) changed.onsuccess = () => {
            request.result.close();
            done();
          };
        };
      };
    })));
    await page.goto(`${address}/stand/`);
    const said = (await page.locator(".findings p").first().textContent()) ?? "";
    const held = (await page.locator(".record > p").first().textContent()) ?? "";
    return { name: "a damaged line", said, wrong: [...must(said.includes("is not as it was written"), `no sentence about the line, but “${said}”`), ...must(held.includes("3 lines"), `expected 3 lines to be held, read “${held}”`)] };
  });

/** A newer edition has raised the form of the record: this one leaves it alone and says so. */
export const newerSchema = (browser: Browser, address: string): Promise<Case> =>
  withContext(browser, async (context) => {
    const page = await openQuestion(context, address);
    await startKeeping(page);
    await page.goto(`${address}/search/`);
    await onQuietPage(context, address, (quiet) => quiet.evaluate(() => new Promise<void>((done, failed) => {
      const request = indexedDB.open("small-knee-workbook", 99);
      request.onerror = () => failed(request.error);
      request.onsuccess = () => {
        request.result.close();
        done();
      };
    })));
    const again = await openQuestion(context, address);
    const said = await answerOnce(again);
    const { answers, damage } = await countOnDevice(context, address);
    return { name: "a record of a newer edition", said, wrong: [...must(said.startsWith("A newer edition"), `no sentence about the edition, but “${said}”`), ...must(answers === 1, `expected 1 answer untouched, found ${answers}`), ...damage] };
  });

/** The clock goes back by years between two answers: both count, and the page says so. */
export const wrongClock = (browser: Browser, address: string): Promise<Case> =>
  withContext(browser, async (context) => {
    const page = await openQuestion(context, address);
    await startKeeping(page);
    await page.close();
    const late = await context.newPage();
    await late.clock.setFixedTime(new Date("2019-05-06T07:08:09Z"));
    await late.goto(`${address}/practice/path-width/`);
    await late.locator("astro-island:not([ssr])").first().waitFor({ state: "attached" });
    await answerOnce(late);
    await late.goto(`${address}/stand/`);
    const said = (await late.locator(".findings p").first().textContent()) ?? "";
    const { answers, damage } = await countOnDevice(context, address);
    return { name: "a clock set back by years", said, wrong: [...must(said.startsWith("The clock of this device was set back"), `no sentence about the clock, but “${said}”`), ...must(answers === 2, `expected 2 answers, found ${answers}`), ...damage] };
  });
