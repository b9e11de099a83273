import type { OrderFamily, SumFamily } from "../../src/engine/question/family.ts";
import type { Draw, SlipSpec } from "../../src/engine/question/family-head.ts";
import { sumOnGrid } from "../../src/engine/quantity/grid.ts";
import type { FamilyFacts } from "../../src/tools/check/course.ts";

/** Families made for the check, each with one mistake; the numbers are invented. */

const ENTRY = { key: "entryMm", unit: "mm", least: 2, greatest: 6, step: 0.5 } as const;
const GAP = { key: "gapMm", unit: "mm", least: 1, greatest: 4, step: 0.5 } as const;
const at = ({ givens }: Draw, key: string): number => givens[key] ?? 0;
const entryOnly: SlipSpec = { id: "gap-left-out", gives: (draw) => ({ reachMm: at(draw, "entryMm") }) };
const gapTwice: SlipSpec = { id: "gap-twice", gives: (draw) => ({ reachMm: sumOnGrid(at(draw, "entryMm"), 2 * at(draw, "gapMm")) }) };
const sentence = { name: "a slip", because: () => ["One part was left out."] };
const because = { "gap-left-out": { name: "gap left out", because: () => ["The gap was left out."] }, "gap-twice": { name: "gap counted twice", because: () => ["The gap was counted twice."] } };

const words: SumFamily["words"]["en"] = {
  title: "Reach",
  stems: [() => ["A needle is measured."], () => ["A line is drawn."], () => ["A stop is set."]],
  question: "How far does it reach, to half a millimetre?",
  givens: { entryMm: "Entry", gapMm: "Gap" },
  asks: { reachMm: "Reach" },
  says: { none: "No reach here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
  slips: because,
  working: () => ["Entry and gap together."],
  right: () => ["Entry and gap together."],
  off: () => ["Add the entry and the gap."],
  inverse: () => ["With another gap."],
};

const base: SumFamily = {
  kind: "sum",
  id: "reach-made",
  code: "01e",
  module: "M01",
  version: 0,
  firstWave: false,
  unsafe: false,
  objectives: ["m01-band"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [ENTRY, GAP],
  asks: [{ id: "reachMm", unit: "mm", roundTo: 0.5, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: { entryMm: chance.onGrid(ENTRY), gapMm: chance.onGrid(GAP) }, about: {} }),
  solve: (givens) => ({ reachMm: sumOnGrid(givens["entryMm"] ?? 0, givens["gapMm"] ?? 0) }),
  slips: [entryOnly, gapTwice],
  words: { en: words },
};

const order: OrderFamily = {
  kind: "order",
  id: "reach-made",
  code: "01e",
  module: "M01",
  version: 0,
  firstWave: false,
  unsafe: true,
  objectives: ["m01-band"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [],
  draw: (chance) => ({ givens: {}, about: {}, shown: chance.shuffled(["look", "say", "set"]) }),
  edges: [{ before: "look", after: "say" }, { before: "say", after: "set" }],
  slips: [{ id: "said-first", breaks: ["look", "say"] }, { id: "set-first", breaks: ["say", "set"] }],
  words: { en: { ...words, slips: { "said-first": sentence, "set-first": sentence }, givens: {}, cards: { look: "Look", say: "Say", set: "Set" } } },
};

const facts = (declared: SumFamily | OrderFamily, file = "src/bank/m01/reach-made.ts"): FamilyFacts => {
  const { id, code, module, objectives, reads, sources, cautions } = declared;
  const text = [`  id: "${id}",`, `  code: "${code}",`, `  module: "${module}",`, ...reads.map((pin) => `  "${pin}"`)].join("\n");
  return { id, code, module, objectives, reads, sources, cautions, declared, source: { file, text } };
};

const made = (change: Partial<SumFamily>, file?: string): readonly FamilyFacts[] => [facts({ ...base, ...change }, file)];
const worded = (change: Partial<SumFamily["words"]["en"]>): readonly FamilyFacts[] => made({ words: { en: { ...words, ...change } } });
const asked = (change: Partial<SumFamily["asks"][number]>): SumFamily["asks"] => base.asks.map((ask) => ({ ...ask, ...change }));
const drawn = (entryMm: number): Partial<SumFamily> => ({ draw: (chance) => ({ givens: { entryMm, gapMm: chance.onGrid(GAP) }, about: {} }) });
const fromStudy = (entry: string): SumFamily["draw"] => (chance) => ({ givens: { entryMm: chance.onGrid(ENTRY), gapMm: chance.onGrid(GAP) }, about: {}, origins: { gapMm: { from: "study", entry } } });
const dose = { key: "doseMg", unit: "mg", least: 2, greatest: 6, step: 0.5 } as const;
const cuff = { key: "cuffMmHg", unit: "mmHg", least: 2, greatest: 6, step: 0.5 } as const;
const inUnit = (unit: string): SumFamily["givens"] => [ENTRY, { ...GAP, unit } as SumFamily["givens"][number]];

const noStem: SumFamily["words"]["en"]["stems"][number] = () => [];
const reachOf = (say: Parameters<typeof noStem>[0]): string => say.number(sumOnGrid(Number(say.bare("entryMm")), Number(say.bare("gapMm"))), 1);

/** By the name of the fixture. */
export const MADE: Readonly<Record<string, readonly FamilyFacts[]>> = {
  "family-slip": made({ slips: [gapTwice, { id: "gap-left-out", gives: (draw) => base.solve(draw.givens, {}) }] }),
  "family-slips-alike": made({ slips: [entryOnly, { ...entryOnly, id: "gap-twice" }] }),
  "family-bounds": made({ plausible: { reachMm: { least: 3, greatest: 8 } } }),
  "family-given-outside": made(drawn(7)),
  "family-given-between": made(drawn(3.3)),
  "family-answer-none": made({ solve: ({ entryMm = 0, depthMm = Number.NaN }) => ({ reachMm: entryMm + depthMm }), slips: [{ id: "gap-left-out", gives: () => ({ reachMm: 1 }) }, { id: "gap-twice", gives: () => ({ reachMm: 2 }) }] }),
  "family-fails": made({ draw: () => { throw new RangeError("count must be a whole number from 1 to 4294967296, got 0"); } }),
  "family-hole": worded({ stems: words.stems.map(() => (say) => [`A line of ${String(Number(say.bare("gapMm")) / Number("?"))} is drawn.`]) }),
  "family-unit-end": made({ givens: [ENTRY, { ...GAP, key: "gap" }], draw: (chance) => ({ givens: { entryMm: chance.onGrid(ENTRY), gap: chance.onGrid(GAP), gapMm: 1 }, about: {} }), words: { en: { ...words, givens: { entryMm: "Entry", gap: "Gap" } } } }),
  "family-unit": made({ givens: inUnit("millimetre") }),
  "family-ledger-unit": made({ givens: [ENTRY, { ...GAP, unit: "kg" }], reads: ["depth.boys@2"], sources: [{ source: "author-2020", entry: "depth.boys@2" }], cautions: ["C3"], draw: fromStudy("depth.boys@2") }),
  "family-grid-order": made({ givens: [ENTRY, { ...GAP, least: 4, greatest: 1 }] }),
  "family-grid-step": made({ givens: [ENTRY, { ...GAP, step: 0 }] }),
  "family-grid-end": made({ givens: [ENTRY, { ...GAP, greatest: 4.2 }] }),
  "family-stems": worded({ stems: words.stems.slice(0, 2) }),
  "family-label": worded({ givens: { entryMm: "Entry" } }),
  "family-ask-words": worded({ asks: {} }),
  "family-slip-words": worded({ slips: { "gap-twice": because["gap-twice"] } }),
  "family-idle-words": worded({ slips: { ...because, "gap-twise": sentence } }),
  "family-says": worded({ says: { ...words.says, none: "" } }),
  "family-question": worded({ question: "How far does it reach" }),
  "family-title": worded({ title: "" }),
  "family-older-pin": made({ reads: ["depth.boys@1"], sources: [{ source: "author-2020", entry: "depth.boys@1" }] }),
  "family-no-source": made({ reads: ["depth.boys@2"] }),
  "family-other-source": made({ reads: ["depth.boys@2"], sources: [{ source: "writer-2021", entry: "depth.boys@2" }] }),
  "family-unread-source": made({ sources: [{ source: "author-2020", entry: "depth.boys@2" }] }),
  "family-unsafe": made({ unsafe: true }),
  "family-order-unsafe": [facts(order)],
  "family-c3": made({ reads: ["depth.boys@2"], sources: [{ source: "author-2020", entry: "depth.boys@2" }], draw: fromStudy("depth.boys@2") }),
  "family-c4": made({ module: "M12", code: "12a", objectives: ["m12-dose"], givens: [ENTRY, GAP, dose], words: { en: { ...words, givens: { ...words.givens, doseMg: "Dose" } } } }, "src/bank/m12/reach-made.ts"),
  "family-c15": made({ module: "M05", code: "05a", objectives: ["m05-cuff"], givens: [ENTRY, GAP, cuff], words: { en: { ...words, givens: { ...words.givens, cuffMmHg: "Cuff" } } } }, "src/bank/m05/reach-made.ts"),
  "family-unknown-caution": made({ cautions: ["C33"] }),
  "family-code": made({ code: "1e" }),
  "family-id": made({ id: "Reach_Made" }, "src/bank/m01/Reach_Made.ts"),
  "family-file": made({}, "src/bank/m01/reach.ts"),
  "family-module": made({ module: "M21", code: "21a", objectives: ["m21-band"] }, "src/bank/m21/reach-made.ts"),
  "family-folder": made({}, "src/bank/m02/reach-made.ts"),
  "family-objective": made({ objectives: ["m02-band"] }),
  "family-no-objective": made({ objectives: [] }),
  "family-few-slips": made({ slips: [entryOnly], words: { en: { ...words, slips: { "gap-left-out": sentence } } } }),
  "family-slip-twice": made({ slips: [entryOnly, gapTwice, gapTwice] }),
  "family-inverse": made({ inverseOf: "gapMn" }),
  "family-round": made({ asks: asked({ roundTo: 0 }) }),
  "family-source-text": made({ reads: ["depth.boys@2"], cautions: ["C3"], sources: ["author-2020"] as unknown as SumFamily["sources"] }),
  "family-unit-none": made({ givens: inUnit("gallon") }),
  "family-rounding": made({ asks: asked({ rounding: "near" as "nearest" }) }),
  "family-side": made({ asks: asked({ safeSide: "upp" as "up" }) }),
  "family-not-loaded": made({}).map((family) => ({ ...family, isLoaded: false })),
  "family-tells": worded({ stems: [words.stems[0] ?? noStem, (say) => [`It reaches ${say.of("entryMm")} and no farther, so ${reachOf(say)} mm in all.`], words.stems[2] ?? noStem] }),
  "family-twice": [...made({}), ...made({ code: "01f" })],
};
