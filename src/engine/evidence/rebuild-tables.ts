import { requireCount, requireNumber } from "../quantity/require.ts";
import type { FourCounts } from "./two-by-two.ts";

export interface PrintedTable {
  readonly sensitivityPercent: number;
  readonly specificityPercent: number;
  /** `null` where the paper does not print it. */
  readonly ppvPercent: number | null;
  readonly npvPercent: number | null;
  /** Decimals of the printed percentages. */
  readonly decimals: number;
}

export interface KnownMargins {
  readonly leastTotal: number;
  readonly greatestTotal: number;
  /** Tears missed, `null` where the paper does not count them. */
  readonly missed: number | null;
}

/** Beyond this the search would be slow on a page. */
const GREATEST_TOTAL = 1000;
const GREATEST_DECIMALS = 3;

const requireMargins = ({ leastTotal, greatestTotal, missed }: KnownMargins): void => {
  requireCount({ leastTotal, greatestTotal });
  requireNumber("leastTotal", leastTotal, { least: 1, leastIncluded: true });
  const range = { least: leastTotal, leastIncluded: true, greatest: GREATEST_TOTAL, greatestIncluded: true };
  requireNumber("greatestTotal", greatestTotal, range);
  if (missed !== null) requireCount({ missed });
};

const requirePercents = (percents: Readonly<Record<string, number>>, decimals: number): void => {
  for (const [name, percent] of Object.entries(percents)) {
    requireNumber(name, percent, { least: 0, leastIncluded: true, greatest: 100, greatestIncluded: true });
    if (Number(percent.toFixed(decimals)) !== percent) {
      throw new RangeError(`${name} must have at most ${decimals} decimals, got ${percent}`);
    }
  }
};

const requirePrinted = (printed: PrintedTable): void => {
  const { sensitivityPercent, specificityPercent, ppvPercent, npvPercent, decimals } = printed;
  requireCount({ decimals });
  requireNumber("decimals", decimals, { greatest: GREATEST_DECIMALS, greatestIncluded: true });
  requirePercents({ sensitivityPercent, specificityPercent }, decimals);
  if (ppvPercent !== null) requirePercents({ ppvPercent }, decimals);
  if (npvPercent !== null) requirePercents({ npvPercent }, decimals);
};

/** A printed percentage in whole units of its last digit, `perWhole` of which are the whole. */
interface Print {
  readonly units: number;
  readonly perWhole: number;
}

/** Parts of a whole that print so, in whole numbers, so that no half is lost; a half may have gone either way. */
const partsPrinting = ({ units, perWhole }: Print, whole: number): readonly number[] => {
  const first = Math.max(0, Math.ceil(((2 * units - 1) * whole) / (2 * perWhole)));
  const last = Math.min(whole, Math.floor(((2 * units + 1) * whole) / (2 * perWhole)));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, step) => first + step);
};

const printsSo = (print: Print | null, part: number, whole: number): boolean =>
  print === null || (whole > 0 && Math.abs(2 * (print.perWhole * part - print.units * whole)) <= whole);

/**
 * All tables of whole counts that print the percentages of a paper, by trying them. One table left means that the paper can be
 * counted again; none means that a printed number is wrong; many mean that the print does not tell.
 *
 * @param printed - `sensitivityPercent`, `specificityPercent`, and `ppvPercent`, `npvPercent` or `null`, in per cent, 0 to 100
 * (included), with at most `decimals` decimals (whole number, 0 to 3, included).
 * @param known - `leastTotal` and `greatestTotal`, the same where the total is printed; whole numbers, 1 to 1000 (included);
 * `missed`, false negatives, whole number, or `null`.
 * @returns The tables, those with fewer tears first.
 * @throws {RangeError} If a value is outside its range or has more decimals than stated.
 * @example rebuildTables({ sensitivityPercent: 100, specificityPercent: 88.9, ppvPercent: 80, npvPercent: 100, decimals: 1 }, { leastTotal: 26, greatestTotal: 26, missed: null }) // => [{ tp: 8, fp: 2, fn: 0, tn: 16 }]
 */
export const rebuildTables = (printed: PrintedTable, known: KnownMargins): readonly FourCounts[] => {
  requirePrinted(printed);
  requireMargins(known);
  const perWhole = 100 * 10 ** printed.decimals;
  const print = (percent: number): Print => ({ units: Math.round(percent * 10 ** printed.decimals), perWhole });
  const sensitivity = print(printed.sensitivityPercent);
  const specificity = print(printed.specificityPercent);
  const ppv = printed.ppvPercent === null ? null : print(printed.ppvPercent);
  const npv = printed.npvPercent === null ? null : print(printed.npvPercent);
  const tables: FourCounts[] = [];
  const tryAbsent = (present: number, absent: number, tp: number): void => {
    for (const tn of partsPrinting(specificity, absent)) {
      const table = { tp, fp: absent - tn, fn: present - tp, tn };
      if (printsSo(ppv, tp, tp + table.fp) && printsSo(npv, tn, tn + table.fn)) tables.push(table);
    }
  };
  for (let present = 1; present < known.greatestTotal; present += 1) {
    const found = partsPrinting(sensitivity, present).filter((tp) => known.missed === null || present - tp === known.missed);
    for (let absent = Math.max(1, known.leastTotal - present); found.length > 0 && present + absent <= known.greatestTotal; absent += 1) {
      for (const tp of found) tryAbsent(present, absent, tp);
    }
  }
  return tables;
};
