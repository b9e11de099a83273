import { answerTo, draw, families } from "../../src/bank/index.ts";
import { HELD_ITEMS, type HeldItem, heldOf } from "./held.ts";
import { heldIn, writeHeld } from "./held-files.ts";
import { HELD_LIST } from "./held-list.ts";

/** Adds the first items of every version that is not held yet; what is held is never rewritten. */
for (const module of new Set(families.map((family) => family.module))) {
  const held: Record<string, readonly HeldItem[]> = { ...heldIn(module) };
  for (const { id, versions } of families.filter((family) => family.module === module)) {
    for (const version of versions.filter((one) => one > 0 && !(`${id}@${one}` in held))) {
      held[`${id}@${version}`] = Array.from({ length: HELD_ITEMS }, (_, seed) => {
        const item = draw(id, seed, { version, local: HELD_LIST });
        return heldOf(item, answerTo(item));
      });
    }
  }
  writeHeld(module, held);
}
