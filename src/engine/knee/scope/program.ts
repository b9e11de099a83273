import type { Formula, Step } from "./formula.ts";

/** A solid of the scene: its distance, and a cheaper lower bound that says when it need not be reckoned. */
export interface Solid {
  readonly id: number;
  readonly distance: Formula;
  readonly bound: Formula | null;
}

/** One step of a program: what it does, where it writes, where it reads. */
export interface Line {
  readonly step: Step;
  readonly to: number;
  readonly from: readonly number[];
  readonly value: number;
}

export interface Block {
  readonly id: number;
  /** Register of the bound; −1 where the solid is always reckoned. */
  readonly bound: number;
  readonly lines: readonly Line[];
  readonly distance: number;
}

/** Formulas put in order: first what hangs on the setting alone, then what every point needs, then each solid. */
export interface Program {
  readonly registers: number;
  readonly once: readonly Line[];
  readonly always: readonly Line[];
  readonly blocks: readonly Block[];
  /** Registers of the formulas that were asked for beside the solids. */
  readonly extras: readonly number[];
  /** Registers that hold a constant or hang on the setting alone, and are read by what hangs on the point. */
  readonly fixed: readonly number[];
}

const PER_POINT: ReadonlySet<Step> = new Set<Step>(["x", "y", "z"]);

interface Numbered extends Line {
  readonly isPerPoint: boolean;
}

/** Gives equal formulas one register, so that nothing is reckoned twice. */
const numberer = (): { readonly lines: Numbered[]; readonly place: (formula: Formula) => number } => {
  const lines: Numbered[] = [];
  const byKey = new Map<string, number>();
  const byFormula = new Map<Formula, number>();
  const place = (formula: Formula): number => {
    const known = byFormula.get(formula);
    if (known !== undefined) return known;
    const from = formula.of.map(place);
    const key = `${formula.step} ${formula.value} ${from.join(" ")}`;
    const to = byKey.get(key) ?? lines.length;
    if (to === lines.length) {
      byKey.set(key, to);
      lines.push({ step: formula.step, to, from, value: formula.value, isPerPoint: PER_POINT.has(formula.step) || from.some((one) => lines[one]?.isPerPoint === true) });
    }
    byFormula.set(formula, to);
    return to;
  };
  return { lines, place };
};

/** All registers that these hang on, themselves included. */
const needed = (lines: readonly Line[], roots: readonly number[]): ReadonlySet<number> => {
  const found = new Set<number>();
  const open = [...roots];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    open.push(...(lines[next]?.from ?? []));
  }
  return found;
};

/**
 * A program for solids and further formulas.
 *
 * @param solids - In the order in which equal distances are decided: the first wins.
 * @param extras - Formulas whose values are wanted as well.
 */
export const programOf = (solids: readonly Solid[], extras: readonly Formula[] = []): Program => {
  const { lines, place } = numberer();
  const placed = solids.map(({ id, distance, bound }) => ({ id, distance: place(distance), bound: bound === null ? -1 : place(bound) }));
  const wanted = extras.map(place);
  const inside = placed.map(({ distance, bound }) => ({ set: needed(lines, [distance]), isGuarded: bound >= 0 }));
  const outside = needed(lines, [...wanted, ...placed.flatMap(({ bound }) => (bound < 0 ? [] : [bound]))]);
  const homeOf = (register: number): number => {
    if (outside.has(register) || PER_POINT.has(lines[register]?.step ?? "number")) return -1;
    const homes = inside.flatMap(({ set }, index) => (set.has(register) ? [index] : []));
    return homes.length === 1 ? (homes[0] ?? -1) : -1;
  };
  const perPoint = lines.filter((line) => line.isPerPoint);
  const homes = new Map(perPoint.map(({ to }) => [to, homeOf(to)]));
  const read = new Set([...perPoint.flatMap(({ from }) => from), ...wanted, ...placed.flatMap(({ distance, bound }) => [distance, bound])]);
  return {
    registers: lines.length,
    once: lines.filter((line) => !line.isPerPoint),
    always: perPoint.filter(({ to }) => homes.get(to) === -1),
    blocks: placed.map((one, index) => ({ ...one, lines: perPoint.filter(({ to }) => homes.get(to) === index) })),
    extras: wanted,
    fixed: lines.filter(({ isPerPoint, to }) => !isPerPoint && read.has(to)).map(({ to }) => to),
  };
};
