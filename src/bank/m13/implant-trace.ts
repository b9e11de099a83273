import { multisetDifference } from "../../engine/kit/multiset-difference.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { CountFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { childOf, drawPlace, signed } from "./count-words.ts";

const LOTS = ["first", "second", "third"] as const;
type Lot = (typeof LOTS)[number];
const CLASSES = [...LOTS, "side"] as const;
type ByClass = Readonly<Record<(typeof CLASSES)[number], number>>;

/** What happened to the implants of one lot, and how many of its labels stand in the record. */
interface LotCounts {
  readonly opened: number;
  readonly dropped: number;
  readonly unused: number;
  readonly labels: number;
}

const countsOf = (about: Draw["about"], lot: Lot): LotCounts => {
  const [opened = 0, dropped = 0, unused = 0, labels = 0] = (about[lot] ?? "").split("|").map(Number);
  return { opened, dropped, unused, labels };
};
const implanted = ({ opened, dropped, unused }: LotCounts): number => opened - dropped - unused;
const unsided = (about: Draw["about"]): number => Number(about["unsided"] ?? "0");
const repeated = (lot: Lot, times: number): readonly string[] => Array.from({ length: times }, () => lot);

/** Labels against implants, lot by lot: below 0 a label is missing, above 0 one is there for nothing that is in the child. */
const truthIn = ({ about }: Draw): ByClass => {
  const expected = LOTS.flatMap((lot) => repeated(lot, implanted(countsOf(about, lot))));
  const found = LOTS.flatMap((lot) => repeated(lot, countsOf(about, lot).labels));
  const { missing, extra } = multisetDifference(expected, found);
  const of = (lot: Lot): number => (extra.find(({ item }) => item === lot)?.count ?? 0) - (missing.find(({ item }) => item === lot)?.count ?? 0);
  return { first: of("first"), second: of("second"), third: of("third"), side: unsided(about) === 0 ? 0 : -unsided(about) };
};

const drawLot = (chance: Chance, change: string): string => {
  const opened = 2 + chance.below(3);
  const dropped = change === "dropped-kept" ? 1 : chance.below(2);
  const unused = opened - dropped > 1 ? chance.below(2) : 0;
  const inside = opened - dropped - unused;
  const labels = { missing: inside - 1, "dropped-kept": inside + dropped, extra: inside + 1 }[change] ?? inside;
  return [opened, dropped, unused, labels].join("|");
};

const drawn = (chance: Chance): Draw => {
  const changes = chance.shuffled([chance.pick(["missing", "dropped-kept", "agrees"]), chance.pick(["missing", "dropped-kept", "extra", "agrees"]), "agrees"]);
  const lots = Object.fromEntries(LOTS.map((lot, index) => [lot, drawLot(chance, changes[index] ?? "agrees")]));
  const labels = LOTS.reduce((sum, lot) => sum + countsOf(lots, lot).labels, 0);
  const lotNames = chance.shuffled(["K417", "K429", "M083", "M117", "R255"]);
  return {
    givens: {},
    about: { ...drawPlace(chance), ...lots, unsided: String(chance.happens(1, 2) ? 0 : Math.min(labels, 1 + chance.below(2))), firstLot: lotNames[0] ?? "", secondLot: lotNames[1] ?? "", thirdLot: lotNames[2] ?? "" },
  };
};

const withDropped = (draw: Draw): ByClass | null => {
  const truth = truthIn(draw);
  const dropped = (lot: Lot): number => countsOf(draw.about, lot).dropped;
  return LOTS.every((lot) => dropped(lot) === 0) ? null : { ...truth, first: truth.first - dropped("first"), second: truth.second - dropped("second"), third: truth.third - dropped("third") };
};
const withUnused = (draw: Draw): ByClass | null => {
  const truth = truthIn(draw);
  const unused = (lot: Lot): number => countsOf(draw.about, lot).unused;
  return LOTS.every((lot) => unused(lot) === 0) ? null : { ...truth, first: truth.first - unused("first"), second: truth.second - unused("second"), third: truth.third - unused("third") };
};
const isClean = (truth: ByClass): boolean => CLASSES.every((id) => truth[id] === 0);
const netted = (draw: Draw): ByClass | null => {
  const truth = truthIn(draw);
  const sum = truth.first + truth.second + truth.third;
  return sum === 0 && !LOTS.every((lot) => truth[lot] === 0) ? { first: 0, second: 0, third: 0, side: truth.side } : null;
};

const drawOf = (say: Say): Draw => ({ givens: {}, about: Object.fromEntries([...LOTS, "unsided"].map((key) => [key, say.about(key)])) });
const lotName = (say: Say, lot: Lot): string => say.about(`${lot}Lot`);
const lotLine = (say: Say, lot: Lot): string => {
  const { opened, dropped, unused, labels } = countsOf({ [lot]: say.about(lot) }, lot);
  return `${{ first: "First", second: "Second", third: "Third" }[lot]} lot, ${lotName(say, lot)}: ${opened} opened, ${dropped} dropped, ${unused} opened but not implanted; ${labels} ${labels === 1 ? "label" : "labels"} in the record.`;
};
const sideLine = (say: Say): string => (say.about("unsided") === "0" ? "Every label has the side beside it." : `${say.about("unsided")} of the labels ${say.about("unsided") === "1" ? "has" : "have"} no side beside it.`.replace("have no side beside it", "have no side beside them"));
const lines = (say: Say): readonly string[] => [...LOTS.map((lot) => lotLine(say, lot)), sideLine(say)];
const differences = (say: Say): string => {
  const truth = truthIn(drawOf(say));
  return `${LOTS.map((lot) => `${lotName(say, lot)} ${signed(truth[lot])}`).join(", ")}, sides ${signed(truth.side)}`;
};

/** 13j: implants against the labels in the record, lot by lot. */
export const implantTrace: CountFamily = {
  kind: "count",
  id: "implant-trace",
  code: "13j",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-reconcile"],
  reads: [],
  sources: [],
  cautions: ["C2", "C5", "C7"],
  givens: [],
  classes: CLASSES,
  draw: drawn,
  truth: truthIn,
  slips: [
    { id: "dropped-as-implanted", gives: withDropped },
    { id: "unused-as-implanted", gives: withUnused },
    { id: "lots-netted", gives: netted },
    { id: "side-overlooked", gives: (draw) => (unsided(draw.about) === 0 || isClean({ ...truthIn(draw), side: 0 }) ? null : { ...truthIn(draw), side: 0 }) },
    { id: "called-complete", gives: (draw) => (isClean(truthIn(draw)) || netted(draw) !== null && unsided(draw.about) === 0 ? null : { first: 0, second: 0, third: 0, side: 0 }) },
  ],
  words: {
    en: {
      title: "Which anchor is in the child?",
      stems: [
        (say) => [`Anchors were implanted in the ${say.about("side")} knee of ${childOf(say)}. The record keeps a label for each one that is inside.`, ...lines(say)],
        (say) => [`At ${say.about("hospital")} the labels of the anchors are set against the sheet before the record is closed.`, ...lines(say)],
        (say) => [`A lot may be called back one day. Whoever asks then must find every child that has one of it, and no other. This is the record of ${childOf(say)}.`, ...lines(say)],
      ],
      question: "By lot: how many labels are missing (below 0) or there without an implant (above 0)? And for the side: how many lack it (below 0)? Write 0 where all agrees.",
      givens: {},
      classes: { first: "Labels of the first lot", second: "Labels of the second lot", third: "Labels of the third lot", side: "Labels with the side beside them" },
      slips: {
        "dropped-as-implanted": { name: "a dropped one counted as implanted", because: () => ["What fell on the floor is not in the child. Its label belongs with the waste, and no label of it belongs here."] },
        "unused-as-implanted": { name: "an opened one counted as implanted", because: () => ["Opened is not implanted. What was put back on the trolley needs no label in this record."] },
        "lots-netted": { name: "lots set off against each other", because: (say) => [`One label too many of one lot does not replace a missing one of another: ${differences(say)}. A recall goes by lot.`] },
        "side-overlooked": { name: "side overlooked", because: () => ["A label without its side cannot say which knee it is in. It is not whole."] },
        "called-complete": { name: "called complete", because: (say) => [`It does not agree: ${differences(say)}.`] },
      },
      working: (say) => [...LOTS.map((lot) => { const counts = countsOf({ [lot]: say.about(lot) }, lot); return `${lotName(say, lot)}: implanted ${counts.opened} − ${counts.dropped} − ${counts.unused} = ${implanted(counts)}, labels ${counts.labels}, so ${signed(counts.labels - implanted(counts))}`; }), sideLine(say)],
      right: (say) => [`${differences(say)}. Lot by lot, and each with its side.`],
      off: (say) => [`Implanted is opened less dropped less unused; then labels less implanted, lot by lot. Here: ${differences(say)}.`],
      moves: () => ["An anchor dropped changes what is inside by one and asks for no label. A label stuck in by habit is as wrong as one that is missing."],
      turns: () => ["The record agrees where every anchor inside has one label with its lot and its side, and nothing else has one."],
    },
  },
};
