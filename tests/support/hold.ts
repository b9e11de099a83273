import { readFileSync, writeFileSync } from "node:fs";
import { answerTo, draw, families } from "../../src/bank/index.ts";
import { HELD_ITEMS, heldOf } from "./held.ts";
import { HELD_LIST } from "./held-list.ts";

/** Adds the first items of every version that is not held yet; what is held is never rewritten. */
const path = new URL("../laws/stable.json", import.meta.url);
const held = JSON.parse(readFileSync(path, "utf8")) as Record<string, unknown>;
for (const { id, versions } of families) {
  for (const version of versions.filter((one) => one > 0 && !(`${id}@${one}` in held))) {
    held[`${id}@${version}`] = Array.from({ length: HELD_ITEMS }, (_, seed) => {
      const item = draw(id, seed, { version, local: HELD_LIST });
      return heldOf(item, answerTo(item));
    });
  }
}
writeFileSync(path, `${JSON.stringify(held, null, 1)}\n`);
