import type { ChainFamily, CountFamily, JudgeFamily, LineFamily, MarkFamily, NameFamily, OrderFamily, RangeFamily, SumFamily, TrayFamily } from "../../src/engine/question/family.ts";
import type { CommonWords, Draw, FamilyHead } from "../../src/engine/question/family-head.ts";
import type { Kind } from "../../src/engine/question/response.ts";

/** One plain family a kind, about a shelf: small enough to grade by hand, so that the rules of grading are seen without the bank. */

const slipWords = (...ids: readonly string[]): CommonWords["slips"] =>
  Object.fromEntries(ids.map((id) => [id, { name: `name of ${id}`, because: () => [`because of ${id}`] }]));

const words = (...slips: readonly string[]): CommonWords => ({
  title: "Shelf",
  stems: [(say) => [`first ${say.about("room")}`], (say) => [`second ${say.about("room")}`], (say) => [`third ${say.about("room")}`]],
  question: "What fits?",
  givens: { lengthMm: "Length", gapMm: (say) => `Gap in the ${say.about("room")}` },
  slips: slipWords(...slips),
  working: (say) => [`working in the ${say.about("room")}`],
  right: () => ["all right"],
  off: () => ["not named"],
});

const LENGTH = { key: "lengthMm", unit: "mm", least: 1, greatest: 99, step: 0.1 } as const;
const GAP = { key: "gapMm", unit: "mm", least: 1, greatest: 99, step: 0.5 } as const;

/** The draw that most tests grade by. */
export const DRAW: Draw = { givens: { lengthMm: 7.2, gapMm: 2 }, about: { room: "hall" } };

const head = <K extends Kind>(kind: K): FamilyHead<K> => ({
  kind, id: `plain-${kind}`, code: "0a", module: "M00", version: 1, firstWave: false, unsafe: true, objectives: ["o"], reads: [], sources: [{ source: "s", entry: "e@1" }], cautions: ["C1"],
  givens: [LENGTH, GAP],
  draw: (chance) => ({ ...DRAW, givens: { lengthMm: chance.onGrid(LENGTH), gapMm: 2 } }),
});

const given = ({ givens }: Draw, key: string): number => givens[key] ?? Number.NaN;

/** Greatest length that still fits: the length itself, rounded down to half a millimetre. */
export const sum: SumFamily = {
  ...head("sum"),
  asks: [{ id: "fitMm", unit: "mm", roundTo: 0.5, rounding: "down", safeSide: "down" }],
  solve: (givens) => ({ fitMm: givens["lengthMm"] ?? Number.NaN }),
  slips: [
    { id: "gap-added", gives: (draw) => ({ fitMm: given(draw, "lengthMm") + given(draw, "gapMm") }) },
    { id: "gap-taken", gives: (draw) => ({ fitMm: given(draw, "lengthMm") - given(draw, "gapMm") }) },
    { id: "never", gives: () => null },
  ],
  inverseOf: "lengthMm",
  words: { en: { ...words("gap-added", "gap-taken", "never"), asks: { fitMm: "Fit" }, says: { none: "none fits", "cannot-be-told": "cannot be told", "ask-locally": "ask" }, inverse: (_, { key, text }) => [`${key} would be ${text}`] } },
};

/** Two numbers: what fits at least and at most; none where the gap is greater than the length. */
export const pair: SumFamily = {
  ...sum,
  id: "plain-pair",
  asks: [
    { id: "leastMm", unit: "mm", roundTo: 0.1, rounding: "up", safeSide: "up" },
    { id: "greatestMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down" },
  ],
  solve: ({ lengthMm = 0, gapMm = 0 }) => (gapMm > lengthMm ? { says: "none" } : { leastMm: gapMm, greatestMm: lengthMm }),
  slips: [
    { id: "swapped", gives: (draw) => ({ leastMm: given(draw, "lengthMm"), greatestMm: given(draw, "gapMm") }) },
    { id: "nothing-fits", gives: () => ({ says: "none" }) },
  ],
  words: { en: { ...sum.words.en, slips: slipWords("swapped", "nothing-fits") } },
};

export const order: OrderFamily = {
  ...head("order"),
  draw: () => ({ ...DRAW, shown: ["c", "b", "a"] }),
  edges: [{ before: "a", after: "b", critical: true }, { before: "b", after: "c" }, { before: "a", after: "d" }],
  slips: [{ id: "b-first", breaks: ["a", "b"] }, { id: "c-first", breaks: ["b", "c"] }, { id: "d-first", breaks: ["a", "d"] }],
  words: { en: { ...words("b-first", "c-first", "d-first"), cards: { a: "card A", b: (say) => `card B in the ${say.about("room")}`, c: "card C" } } },
};

export const judge: JudgeFamily = {
  ...head("judge"),
  options: ["keep", "mend", "throw"],
  reasons: ["bent", "split", "clean"],
  decide: () => ({ picks: "mend", reasons: ["bent", "split"] }),
  unsafeOptions: () => ["keep"],
  slips: [
    { id: "kept", gives: () => ({ picks: "keep", reasons: ["clean"] }) },
    { id: "thrown", gives: () => ({ picks: "throw", reasons: ["bent"] }) },
    { id: "never", gives: () => null },
  ],
  words: { en: { ...words("kept", "thrown", "never"), options: { keep: "Keep it", mend: "Mend it" }, reasons: { bent: "It is bent", split: "It is split" } } },
};

export const name: NameFamily = {
  ...head("name"),
  attributes: [{ id: "wood", options: ["oak", "pine"] }, { id: "shape", options: ["flat", "round"] }],
  truth: () => ({ wood: "oak", shape: "flat" }),
  isUnsafe: (_, picks) => picks["shape"] === "round",
  slips: [
    { id: "pine", gives: () => ({ wood: "pine", shape: "flat" }) },
    { id: "round", gives: () => ({ wood: "oak", shape: "round" }) },
    { id: "never", gives: () => null },
  ],
  words: { en: { ...words("pine", "round", "never"), attributes: { wood: "Wood" }, options: { oak: "Oak", pine: "Pine", flat: "Flat" } } },
};

export const tray: TrayFamily = {
  ...head("tray"),
  draw: () => ({ ...DRAW, shown: ["a", "b", "c", "d"] }),
  faults: () => ["c", "a"],
  critical: () => ["a"],
  slips: [
    { id: "missed-a", gives: () => ["c"] },
    { id: "flagged-d", gives: () => ["d", "c", "a"] },
    { id: "never", gives: () => null },
  ],
  words: { en: { ...words("missed-a", "flagged-d", "never"), thing: (say, id) => `${id} in the ${say.about("room")}`, nothing: "Nothing" } },
};

export const count: CountFamily = {
  ...head("count"),
  classes: ["nails", "hooks"],
  truth: () => ({ nails: -1, hooks: 2 }),
  slips: [
    { id: "nails-whole", gives: () => ({ nails: 0, hooks: 2 }) },
    { id: "hooks-whole", gives: () => ({ nails: -1, hooks: 0 }) },
    { id: "never", gives: () => null },
  ],
  words: { en: { ...words("nails-whole", "hooks-whole", "never"), classes: { nails: "Nails" } } },
};

export const range: RangeFamily = {
  ...head("range"),
  unit: "mm",
  roundTo: 0.5,
  solve: () => ({ from: 10, to: 20 }),
  slips: [
    { id: "shifted", gives: () => ({ from: 12.2, to: 22.2 }) },
    { id: "narrow", gives: () => ({ from: 14, to: 16 }) },
    { id: "never", gives: () => null },
  ],
  words: { en: words("shifted", "narrow", "never") },
};

export const mark: MarkFamily = {
  ...head("mark"),
  targets: () => ["lamp", "door"],
  regions: () => [
    { id: "r1", xMm: 0, yMm: 0, radiusMm: 5 },
    { id: "r2", xMm: 8, yMm: 0, radiusMm: 5 },
    { id: "r3", xMm: 0, yMm: 40, radiusMm: 2.5 },
  ],
  truth: () => ({ lamp: "r1", door: "r3" }),
  critical: ["lamp"],
  slips: [
    { id: "lamp-right", gives: () => ({ lamp: "r2", door: "r3" }) },
    { id: "door-left", gives: () => ({ lamp: "r1", door: "r1" }) },
    { id: "never", gives: () => null },
  ],
  words: { en: { ...words("lamp-right", "door-left", "never"), targets: { lamp: "Lamp" } } },
};

/** Right at 30 degrees and between 5 and 8 mm; unsafe where deeper. */
export const line: LineFamily = {
  ...head("line"),
  angle: { least: -60, greatest: 60, step: 5 },
  depth: { least: 0, greatest: 20, step: 0.5 },
  check: (_, { angleDeg, depthMm }) => ({
    isRight: angleDeg === 30 && depthMm >= 5 && depthMm <= 8,
    isUnsafe: depthMm > 8,
    score: angleDeg === 30 ? 0.5 : 0.25,
    ...(depthMm > 8 ? { slip: "too-deep" } : {}),
  }),
  answer: () => ({ angleDeg: 30, depthMm: 6.5 }),
  slips: [
    { id: "too-deep", gives: () => ({ angleDeg: 30, depthMm: 9 }) },
    { id: "turned", gives: () => ({ angleDeg: -30, depthMm: 6.5 }) },
    { id: "never", gives: () => null },
  ],
  words: { en: words("too-deep", "turned", "never") },
};

const SAYS = { none: "none fits", "cannot-be-told": "cannot be told", "ask-locally": "ask" };

/** What is left beside the gap, and then half of it; half of nothing cannot be told. */
export const chain: ChainFamily = {
  ...head("chain"),
  steps: [
    { id: "rest", asks: [{ id: "restMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "down" }], solve: ({ lengthMm = 0, gapMm = 0 }) => (gapMm > lengthMm ? { says: "none" } : { restMm: lengthMm - gapMm }) },
    { id: "half", asks: [{ id: "halfMm", unit: "mm", roundTo: 0.1, rounding: "down", safeSide: "none" }], solve: ({ restMm }) => (restMm === undefined ? { says: "cannot-be-told" } : { halfMm: restMm / 2 }) },
  ],
  slips: [
    { id: "gap-added", step: "rest", gives: (draw) => ({ restMm: given(draw, "lengthMm") + given(draw, "gapMm") }) },
    { id: "not-halved", step: "half", gives: ({ givens }) => (givens["restMm"] === undefined ? null : { halfMm: givens["restMm"] }) },
    { id: "never", step: "half", gives: () => null },
  ],
  words: { en: { ...words("gap-added", "not-halved", "never"), steps: { rest: { question: "What is left?", asks: { restMm: "Rest" }, says: SAYS }, half: { question: "And half of it?", asks: {}, says: SAYS } } } },
};
