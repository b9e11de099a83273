import { corruptLine, fullQuota, newerSchema, twoTabs, wrongClock } from "./faults/cases.ts";
import { killTabs } from "./faults/kills.ts";
import { launchBrowser, NO_BROWSER } from "./find-browser.ts";
import { isBuilt, NOT_BUILT, startServer } from "./serve.ts";
import { fail, wordsOf } from "./words.ts";

/** Does to the built site what can go wrong with a record, and counts what was lost: nothing may be. */

const KILLS = 200;
const ANSWERS_EACH = 500;

wordsOf({ name: "faults", does: "Does to the built site what can go wrong with a record, and counts what was lost: nothing may be. Takes minutes; build the site first." });
if (!isBuilt()) fail(NOT_BUILT);
const served = await startServer();
const browser = (await launchBrowser()) ?? fail(NO_BROWSER);
let isGood = true;
for (const work of [fullQuota, corruptLine, newerSchema, wrongClock]) {
  const { name, said, wrong } = await work(browser, served.address);
  isGood &&= wrong.length === 0;
  console.log(`${wrong.length === 0 ? "held" : "FAILED"}  ${name}\n      the page says: ${said}${wrong.map((sentence) => `\n      ${sentence}`).join("")}`);
}
const tabs = await twoTabs(browser, served.address, ANSWERS_EACH);
isGood &&= tabs.wrong.length === 0;
console.log(`${tabs.wrong.length === 0 ? "held" : "FAILED"}  ${tabs.name}: ${tabs.said}${tabs.wrong.map((sentence) => `\n      ${sentence}`).join("")}`);
const killed = await killTabs(browser, served.address, KILLS);
isGood &&= killed.lost === 0 && killed.damage.length === 0;
console.log(`${killed.lost === 0 ? "held" : "FAILED"}  ${killed.kills} tabs killed while they answered: ${killed.found} answers on the device, ${killed.lost} lost${killed.damage.map((sentence) => `\n      ${sentence}`).join("")}`);
await browser.close();
await served.close();
process.exit(isGood ? 0 : 1);
