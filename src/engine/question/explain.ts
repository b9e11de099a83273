import { asWritten, numberText, withUnit } from "../quantity/format.ts";
import { sumOnGrid } from "../quantity/grid.ts";
import { placesOf } from "../quantity/places.ts";
import type { UnitId } from "../quantity/units.ts";
import { behind, slipsOf } from "./behind.ts";
import type { Family, SumFamily } from "./family.ts";
import { type Givens, type GivenSpec, isSays } from "./family-head.ts";
import { inverseGiven } from "./inverse.ts";
import type { Item } from "./item.ts";
import type { BrokenEdge, Compared, SlipResponse } from "./kind-rules.ts";
import { rulesOf } from "./kinds/rules.ts";
import type { Response } from "./response.ts";
import { sayOf } from "./say.ts";
import { solvedAt } from "./solve.ts";
import type { Verdict } from "./verdict.ts";

/** What a little more of a given does to each ask. */
export interface Move {
  readonly key: string;
  readonly label: string;
  readonly unit: UnitId;
  /** How much more, or less, with its sign and unit. */
  readonly by: string;
  /** By ask, with sign and unit. */
  readonly changes: Readonly<Record<string, string>>;
}

/** Everything that a page says after an answer, ready to print. */
export interface Explanation {
  readonly happened: readonly string[];
  readonly slipName?: string;
  readonly moves: readonly Move[];
  /** "What moves the answer" in words, where the givens are not numbers. */
  readonly movesText: readonly string[];
  readonly inverse: readonly string[];
  readonly working: readonly string[];
  readonly compare: readonly Compared[];
  /** Of an order: the rules between steps that it broke; empty for all other kinds. */
  readonly broken: readonly BrokenEdge[];
}

const signed = (change: number, places: number): string => {
  const text = numberText(change, places);
  if (Number(change.toFixed(places)) === 0) return "0";
  return change > 0 ? `+${text}` : text;
};

/** One unit more where the given has room for it, otherwise one step of its grid; less where the range ends. */
const stepOf = ({ key, least, greatest, step }: GivenSpec, givens: Givens): number => {
  const by = greatest - least >= 2 ? Math.max(1, step) : step;
  return (givens[key] as number) + by <= greatest ? by : -by;
};

const HOUR_MIN = 60;
const DAY_MIN = 1440;

/** True where a clock time stands in two asks, the hour and the minutes past it. */
const isHourOfClock = ({ asks }: SumFamily, at: number): boolean => asks[at]?.unit === "h" && asks[at + 1]?.unit === "min";

/** Minutes on a clock, the short way round: an hour more and fifty-five minutes less are five minutes, also past midnight. */
const clockMin = (hours: number, minutes: number): number => {
  const by = (hours * HOUR_MIN + minutes + DAY_MIN) % DAY_MIN;
  return by > DAY_MIN / 2 ? by - DAY_MIN : by;
};

const changesFor = (family: SumFamily, item: Item, { givens, key, by }: { givens: Givens; key: string; by: number }): Readonly<Record<string, string>> => {
  const before = family.solve(givens, item.about);
  const after = solvedAt(family, { ...givens, [key]: sumOnGrid(givens[key] as number, by) }, item.about);
  if (after === null || isSays(before) || isSays(after)) return {};
  const changeOf = (id: string): number => (after[id] as number) - (before[id] as number);
  return Object.fromEntries(family.asks.flatMap(({ id, unit, roundTo }, at) => {
    if (isHourOfClock(family, at)) return [];
    const hour = isHourOfClock(family, at - 1) ? family.asks[at - 1] : undefined;
    const change = hour === undefined ? changeOf(id) : clockMin(changeOf(hour.id), changeOf(id));
    const text = signed(change, Math.max(unit === "pieces" ? 0 : 1, placesOf(roundTo)));
    return [[id, withUnit(asWritten(text, unit), unit)] as const];
  }));
};

/** Sensitivity of every given of a sum: a little more of it, all else the same. */
const movesOf = (family: Family, item: Item): readonly Move[] => {
  if (family.kind !== "sum") return [];
  const { givens } = rulesOf(family).drawOf(item);
  return item.givens.flatMap(({ key, label, unit }) => {
    const spec = family.givens.find((given) => given.key === key);
    if (!spec) return [];
    const by = stepOf(spec, givens);
    return [{ key, label, unit, by: withUnit(asWritten(signed(by, placesOf(spec.step)), unit), unit), changes: changesFor(family, item, { givens, key, by }) }];
  });
};

/** Beyond this many times the range of a given, or below this share of it, no child, list or room is like that. */
const BEYOND = 2;

/** True where a value of the given could be met with, and differs from the one that the question shows. */
const isTelling = (needed: number, { least, greatest, step }: GivenSpec, shown: number): boolean =>
  needed >= least / BEYOND && needed <= greatest * BEYOND && 2 * Math.abs(needed - shown) >= step;

const inverseOf = (family: Family, item: Item, verdict: Verdict): readonly string[] => {
  if (family.kind !== "sum") return [];
  const key = family.inverseOf;
  const part = verdict.parts.find(({ value }) => value !== undefined);
  const spec = family.givens.find((given) => given.key === key);
  if (key === undefined || spec === undefined || part?.value === undefined || verdict.verdict === "right") return [];
  const draw = rulesOf(family).drawOf(item);
  const needed = inverseGiven(family, draw, { key, ask: part.ask, value: Number(part.value) });
  if (needed === null || !isTelling(needed, spec, draw.givens[key] as number)) return [];
  // A given in whole numbers is not told as 93.0.
  const isWhole = placesOf(spec.step) === 0 && Number.isInteger(Number(needed.toFixed(1)));
  const text = withUnit(asWritten(numberText(needed, isWhole ? 0 : 1), spec.unit), spec.unit);
  return family.words.en.inverse(sayOf(family, draw), { key, text });
};

/** The sentences for one graded response. */
export const explainItem = (family: Family, item: Item, { response, verdict }: { readonly response: Response; readonly verdict: Verdict }): Explanation => {
  const rules = rulesOf(family);
  const words = family.words.en;
  const say = sayOf(family, behind(family, item).draw);
  const slip = verdict.slip === undefined ? undefined : words.slips[verdict.slip];
  const solved = inverseOf(family, item, verdict);
  const unnamed = verdict.verdict === "right" ? words.right(say) : words.off(say);
  return {
    happened: slip ? slip.because(say) : unnamed,
    ...(slip ? { slipName: slip.name } : {}),
    moves: movesOf(family, item),
    movesText: words.moves?.(say) ?? [],
    inverse: solved.length > 0 ? solved : (words.turns?.(say) ?? []),
    working: verdict.working,
    compare: rules.compare(family, item, { response, verdict }),
    broken: rules.broken?.(family, item, response) ?? [],
  };
};

/** The right response to an item, typed as asked. */
export const answerOf = (family: Family, item: Item): Response => rulesOf(family).answer(family, behind(family, item).draw);

/** What each slip that applies gives on this item. */
export const slipResponses = (family: Family, item: Item): readonly SlipResponse[] => slipsOf(behind(family, item));
