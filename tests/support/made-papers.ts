import { answerTo, draw, grade, slipsOf } from "../../src/bank/index.ts";
import type { Mark, Paper } from "../../src/engine/cohort/paper.ts";
import { chanceFor } from "../../src/engine/random/chance.ts";

/** An invented cohort: who is able, who slips and where is decided by a seed, so that its tables can be known beforehand. */

const FAMILIES = ["least-depth", "greatest-depth", "window", "stop-setting", "zone-angle", "how-many", "cuff-width", "capped-dose", "two-by-two", "set-up"];
const PLACES = ["Saltmere", "Hythe Vale", "Carrow", "Northmoor"];
const CODES = ["avocet", "bittern", "curlew", "dunlin", "gannet", "heron", "kestrel", "lapwing", "linnet", "petrel", "siskin", "dipper"];

const markOf = (id: string, slot: number, { seed, slip }: { readonly seed: number; readonly slip: number | null }): Mark => {
  const item = draw(id, seed);
  const slips = slipsOf(item);
  const { verdict, score, slip: named } = grade(item, slip === null ? answerTo(item) : (slips[slip % slips.length] ?? { response: answerTo(item) }).response);
  return { slot, family: id, version: item.version, module: item.module, objective: item.objectives[0] ?? "", seed: String(seed), verdict, score, slip: named ?? null, unsafe: verdict === "unsafe-side", try: 1 };
};

/** So many learners with one sheet; the numbers in it are each learner's own where asked for. */
export const madePapers = (learners: number, { isOwn = false, list = "7F3K" } = {}): readonly Paper[] =>
  Array.from({ length: learners }, (_, person) => {
    const chance = chanceFor("made-papers", 1, String(person));
    const able = 3 + chance.below(6);
    const marks = FAMILIES.map((id, slot) => markOf(id, slot, { seed: isOwn ? 100 * person + slot : slot + 1, slip: chance.below(10) < able ? null : chance.below(2) }));
    return { learner: `${CODES[person % CODES.length]}-${10 + person}`, place: PLACES[person % PLACES.length] ?? null, list, attempt: 1, handedInAt: `2026-11-${18 + (person % 7)}T10:00:00Z`, marks };
  });
