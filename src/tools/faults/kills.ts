import type { Browser } from "playwright-core";
import { chanceFrom } from "../../engine/random/chance.ts";
import { sha256Words } from "../../engine/random/sha256.ts";
import { xoshiro128 } from "../../engine/random/xoshiro.ts";
import { answerMany, countOnDevice, openQuestion, startKeeping } from "./drive.ts";

const LONGEST_MS = 250;
const ENOUGH = 10_000;

export interface Killed {
  readonly kills: number;
  /** Answers that a page had called kept before it was killed. */
  readonly kept: number;
  /** Answers that the device held in the end; an answer may be kept though its page never came to say so. */
  readonly found: number;
  readonly lost: number;
  readonly damage: readonly string[];
}

/** Kills tabs at seeded moments while they answer, and counts after each kill what of the answers called kept is missing. */
export const killTabs = async (browser: Browser, address: string, kills: number): Promise<Killed> => {
  const chance = chanceFrom(xoshiro128(sha256Words("kills")));
  const context = await browser.newContext();
  const first = await openQuestion(context, address);
  await startKeeping(first);
  await first.close();
  const start = 1;
  let kept = start;
  let lost = 0;
  let found = start;
  let damage: readonly string[] = [];
  for (let kill = 0; kill < kills; kill += 1) {
    const page = await openQuestion(context, address);
    const tells = Promise.withResolvers<void>();
    const ended = answerMany(page, ENOUGH, () => {
      kept += 1;
      tells.resolve();
    }).catch(() => undefined);
    // At least one answer has come through; the next ones are cut off at any moment.
    await tells.promise;
    await new Promise((later) => setTimeout(later, chance.pick(Array.from({ length: LONGEST_MS }, (_, ms) => ms))));
    const session = await context.newCDPSession(page);
    session.send("Page.crash").catch(() => undefined);
    await page.waitForEvent("crash");
    await page.close();
    await ended;
    const counted = await countOnDevice(context, address);
    lost += Math.max(0, kept - counted.answers);
    // What was kept without being called so counts from here on.
    kept = counted.answers;
    found = counted.answers;
    damage = [...damage, ...counted.damage];
  }
  await context.close();
  return { kills, kept, found, lost, damage };
};
