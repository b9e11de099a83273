import { twoByTwo } from "../../engine/evidence/two-by-two.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, given, HOSPITALS, PERCENT } from "../m01/common.ts";

const PRINT = { unit: "%", least: 40, greatest: 99, step: 0.1 } as const;
const SENSITIVITY = { key: "sensitivityPercent", ...PRINT } as const;
const SPECIFICITY = { key: "specificityPercent", ...PRINT } as const;
const PPV = { key: "ppvPercent", ...PRINT } as const;
const MISSED = { key: "missed", unit: "pieces", least: 4, greatest: 26, step: 1 } as const;
const CELLS = { tp: { least: 20, greatest: 60, step: 1 }, fp: { least: 4, greatest: 20, step: 1 }, tn: { least: 20, greatest: 70, step: 1 } } as const;

const share = (givens: Givens, key: string): number => given(givens, key) / PERCENT;
const alarmsOf = (givens: Givens, tp: number): number => Math.round((tp * (1 - share(givens, PPV.key))) / share(givens, PPV.key));
const calledWholeOf = (givens: Givens, fp: number, specificity = share(givens, SPECIFICITY.key)): number => Math.round((fp * specificity) / (1 - specificity));
/** The table from the print: torn from the missed, then the called torn, then the whole; each is rounded only at its own end. */
const tableOf = (givens: Givens, sensitivity = share(givens, SENSITIVITY.key), specificity = share(givens, SPECIFICITY.key)): Readonly<Record<string, number>> => {
  const fn = given(givens, "missed");
  const tp = Math.round((fn * sensitivity) / (1 - sensitivity));
  const fp = alarmsOf(givens, tp);
  return { tp, fp, fn, tn: calledWholeOf(givens, fp, specificity) };
};
/** What follows from a wrong count of the found, or of the false alarms: everything after it is worked rightly from there. */
const fromFound = (givens: Givens, tp: number): Readonly<Record<string, number>> => {
  const fp = alarmsOf(givens, tp);
  return { tp, fp, fn: given(givens, "missed"), tn: calledWholeOf(givens, fp) };
};
const fromAlarms = (givens: Givens, fp: number): Readonly<Record<string, number>> => ({ ...tableOf(givens), fp, tn: calledWholeOf(givens, fp) });
const count = (table: Readonly<Record<string, number>>, id: string): number => table[id] ?? 0;
const solved = (givens: Givens): Solution => {
  const table = tableOf(givens);
  return Object.values(table).every((count) => Number.isFinite(count) && count >= 0) ? table : { says: "none" };
};
const print = (value: number | null): number => Number((PERCENT * (value ?? 0)).toFixed(1));
const prints = ({ tp = 0, fp = 0, fn = 0, tn = 0 }: Readonly<Record<string, number>>): Readonly<Record<string, number>> => {
  const { sensitivity, specificity, ppv } = twoByTwo({ tp, fp, fn, tn });
  return { sensitivityPercent: print(sensitivity), specificityPercent: print(specificity), ppvPercent: print(ppv), missed: fn };
};
const whole = (givens: Givens, key: string): number => Math.round(given(givens, key)) / PERCENT;
const cell = (say: Say, id: string): string => String(answerValue(say, id));

/** 02d: the four counts behind a printed table. */
export const rebuildTable: SumFamily = {
  kind: "sum",
  id: "rebuild-table",
  code: "02d",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-accuracy"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [SENSITIVITY, SPECIFICITY, PPV, MISSED],
  asks: ["tp", "fp", "fn", "tn"].map((id) => ({ id, unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" }) as const),
  draw: (chance) => {
    const drawn = () => ({ tp: chance.onGrid(CELLS.tp), fp: chance.onGrid(CELLS.fp), fn: chance.onGrid(MISSED), tn: chance.onGrid(CELLS.tn) });
    // A table that its own print does not give back is no question; the next one is drawn.
    const tables = Array.from({ length: 12 }, drawn);
    const fits = (table: Readonly<Record<string, number>>): boolean => {
      const givens = prints(table);
      const back = tableOf(givens);
      const within = Object.values(givens).slice(0, 3).every((value) => value >= PRINT.least && value <= PRINT.greatest);
      return within && Object.keys(table).every((id) => table[id] === back[id]);
    };
    // The last one is the only table that fits a published print (sensitivity 62.3, specificity 68.4, 26 of 107 missed).
    const table = tables.find(fits) ?? { tp: 43, fp: 12, fn: 26, tn: 26 };
    return { givens: prints(table), about: { hospital: chance.pick(HOSPITALS), test: chance.pick(["scan", "examination"]) } };
  },
  solve: solved,
  slips: [
    {
      id: "rounded-early",
      gives: ({ givens }) => {
        const early = tableOf(givens, whole(givens, SENSITIVITY.key), whole(givens, SPECIFICITY.key));
        const right = tableOf(givens);
        return Object.keys(right).every((id) => right[id] === early[id]) ? null : early;
      },
    },
    { id: "missed-for-torn", gives: ({ givens }) => fromFound(givens, Math.round(given(givens, "missed") * share(givens, SENSITIVITY.key))) },
    { id: "false-alarms-of-the-torn", gives: ({ givens }) => fromAlarms(givens, Math.round(count(tableOf(givens), "tp") * (1 - share(givens, SPECIFICITY.key)))) },
    { id: "false-alarms-for-all-whole", gives: ({ givens }) => ({ ...tableOf(givens), tn: Math.round(count(tableOf(givens), "fp") * share(givens, SPECIFICITY.key)) }) },
  ],
  words: {
    en: {
      title: "The table behind the print",
      stems: [
        (say) => [`A report from ${say.about("hospital")} prints sensitivity, specificity and positive predictive value of its ${say.about("test")}, and how many tears it missed. The table itself is not printed. The report is invented; its counts are whole.`],
        (say) => [`Whoever prints shares has counted heads. Invented report, ${say.about("hospital")}, ${say.about("test")} against arthroscopy: three shares to one decimal, and the missed tears.`],
        (say) => [`Can the four counts be recovered from what ${say.about("hospital")} prints about its ${say.about("test")}? Three shares and the number of missed tears are in the invented report.`],
      ],
      question: "What are the four counts? Whole numbers, rounded at the end of each.",
      givens: { sensitivityPercent: "Sensitivity, as printed", specificityPercent: "Specificity, as printed", ppvPercent: "Positive predictive value, as printed", missed: "Tears missed" },
      asks: { tp: "Torn, and called torn", fp: "Whole, but called torn", fn: "Torn, but called whole", tn: "Whole, and called whole" },
      says: { none: "No table fits", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "rounded-early": { name: "rounded early", because: () => ["Shares rounded to whole per cent before the division throw the counts off. Round each count, not what leads to it."] },
        "missed-for-torn": { name: "missed taken for all torn", because: (say) => [`${say.bare("missed")} are the missed ones alone: the share that sensitivity leaves over. The found ones come on top.`] },
        "false-alarms-of-the-torn": { name: "false alarms taken from the torn", because: () => ["A false alarm is a whole meniscus. The predictive value gives them: they share the called torn with those that were found."] },
        "false-alarms-for-all-whole": { name: "false alarms taken for all whole", because: (say) => [`${cell(say, "fp")} are the false alarms alone: the share that specificity leaves over. The rightly called whole come on top.`] },
      },
      working: (say) => [
        `Found: ${say.bare("missed")} × ${say.bare("sensitivityPercent")} ÷ (100 − ${say.bare("sensitivityPercent")}) = ${cell(say, "tp")}`,
        `False alarms: ${cell(say, "tp")} × (100 − ${say.bare("ppvPercent")}) ÷ ${say.bare("ppvPercent")} = ${cell(say, "fp")}`,
        `Called whole and whole: ${cell(say, "fp")} × ${say.bare("specificityPercent")} ÷ (100 − ${say.bare("specificityPercent")}) = ${cell(say, "tn")}`,
      ],
      right: () => ["All four counts recovered from a print. If a paper’s shares give no whole counts, one of them is a misprint."],
      off: () => ["Start from the missed: with sensitivity they give the found, with the predictive value the false alarms, with specificity the rest."],
      inverse: () => [],
      turns: () => ["Without the number of missed tears the shares fix only proportions, and the size of the table cannot be told."],
    },
  },
};
