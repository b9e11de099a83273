import { answerTo, draw, families } from "../../src/bank/index.ts";
import { HELD_ITEMS, type HeldItem, heldOf } from "./held.ts";
import { heldIn, writeHeld } from "./held-files.ts";
import { HELD_LIST } from "./held-list.ts";
import { wordsOf } from "../../src/tools/words.ts";

wordsOf({ name: "hold", does: "Writes down the first questions of every family version that is not held yet; from then on they may not change. What is held is never rewritten." });
const added: string[] = [];

/** Adds the first items of every version that is not held yet; what is held is never rewritten. */
for (const module of new Set(families.map((family) => family.module))) {
  const held: Record<string, readonly HeldItem[]> = { ...heldIn(module) };
  const before = added.length;
  for (const { id, versions } of families.filter((family) => family.module === module)) {
    for (const version of versions.filter((one) => one > 0 && !(`${id}@${one}` in held))) {
      added.push(`${id}@${version}`);
      held[`${id}@${version}`] = Array.from({ length: HELD_ITEMS }, (_, seed) => {
        const item = draw(id, seed, { version, local: HELD_LIST });
        return heldOf(item, answerTo(item));
      });
    }
  }
  if (added.length > before) writeHeld(module, held);
}
process.stdout.write(`${added.length === 0 ? "Every version from 1 on is held already; nothing was written." : `Held from now on: ${added.join(", ")}. Commit tests/laws/held with the families.`}\n`);
