import { numberText, THIN_SPACE, unitText, withUnit } from "../quantity/format.ts";
import type { UnitId } from "../quantity/units.ts";
import { type Givens, isSays, type Solution, type SumFamily } from "./family.ts";
import { inverseGiven } from "./inverse.ts";
import type { SumItem } from "./item.ts";
import type { SumResponse } from "./response.ts";
import { placesOf, sayFor } from "./say.ts";
import { drawOf, typedAs } from "./solve.ts";
import type { Verdict } from "./verdict.ts";

/** What one unit more of a given does to each ask. */
export interface Move {
  readonly key: string;
  readonly label: string;
  readonly unit: UnitId;
  readonly changes: Readonly<Record<string, string>>;
}

export interface Compared {
  readonly ask: string;
  readonly label: string;
  readonly unit: UnitId;
  readonly yours?: string;
  readonly answer: string;
  readonly accepted: string;
}

/** Everything that a page says after an answer, ready to print. */
export interface Explanation {
  readonly happened: readonly string[];
  readonly slipName?: string;
  readonly moves: readonly Move[];
  readonly inverse: readonly string[];
  readonly working: readonly string[];
  readonly compare: readonly Compared[];
}

const signed = (change: number): string => {
  const text = numberText(change, 1);
  if (Number(change.toFixed(1)) === 0) return "0";
  return change > 0 ? `+${text}` : text;
};

const changesFor = (family: SumFamily, givens: Givens, key: string): Readonly<Record<string, string>> => {
  const before = family.solve(givens);
  const after = family.solve({ ...givens, [key]: (givens[key] as number) + 1 });
  if (isSays(before) || isSays(after)) return {};
  return Object.fromEntries(family.asks.map(({ id }) => [id, signed((after[id] as number) - (before[id] as number))]));
};

/** Sensitivity of every given: one unit more, all else the same. */
const movesOf = (family: SumFamily, item: SumItem): readonly Move[] => {
  const { givens } = drawOf(item);
  return item.givens.map(({ key, label, unit }) => ({ key, label, unit, changes: changesFor(family, givens, key) }));
};

const answerTexts = (family: SumFamily, solution: Solution): Readonly<Record<string, string>> => {
  const typed = typedAs(family, solution);
  if ("text" in typed) return { [family.asks[0]?.id ?? ""]: typed.text };
  return "texts" in typed ? typed.texts : {};
};

/** The exact answer is printed where its digits fit the grid of the givens; the rounded one elsewhere. */
const shownAnswer = (family: SumFamily, solution: Solution, id: string): string => {
  if (isSays(solution)) return "";
  const places = Math.max(...family.givens.map(({ step }) => placesOf(step)));
  const exact = solution[id] as number;
  const fits = Number(exact.toFixed(places)) === Number(exact.toFixed(6));
  return fits ? numberText(exact, places) : (answerTexts(family, solution)[id] ?? "");
};

const compared = (family: SumFamily, item: SumItem, verdict: Verdict): readonly Compared[] => {
  const solution = family.solve(drawOf(item).givens);
  return item.asks.map((ask) => {
    const span = verdict.accepted[ask.id];
    const yours = verdict.parts.find((part) => part.ask === ask.id)?.value;
    const said = isSays(solution) ? item.says[solution.says] : withUnit(shownAnswer(family, solution, ask.id), ask.unit);
    const range = span === undefined ? said : `${span.from} to ${withUnit(span.to, ask.unit)}`;
    const accepted = span !== undefined && span.from === span.to ? withUnit(span.from, ask.unit) : range;
    return { ask: ask.id, label: ask.label, unit: ask.unit, ...(yours === undefined ? {} : { yours: withUnit(yours, ask.unit) }), answer: said, accepted };
  });
};

const inverseOf = (family: SumFamily, item: SumItem, verdict: Verdict): readonly string[] => {
  const key = family.inverseOf;
  const part = verdict.parts.find(({ value }) => value !== undefined);
  if (key === undefined || part?.value === undefined || verdict.verdict === "right") return [];
  const draw = drawOf(item);
  const needed = inverseGiven(family, { givens: draw.givens, key, ask: part.ask, value: Number(part.value) });
  if (needed === null) return [];
  const spec = item.givens.find((given) => given.key === key);
  const text = numberText(needed, 1) + (spec ? THIN_SPACE + unitText(spec.unit) : "");
  return family.words.en.inverse(sayFor(family.givens, draw, family.solve(draw.givens)), { key, text });
};

/** The sentences for one graded response. */
export const explainItem = (family: SumFamily, item: SumItem, verdict: Verdict): Explanation => {
  const draw = drawOf(item);
  const words = family.words.en;
  const say = sayFor(family.givens, draw, family.solve(draw.givens));
  const slip = verdict.slip === undefined ? undefined : words.slips[verdict.slip];
  const solved = inverseOf(family, item, verdict);
  const unnamed = verdict.verdict === "right" ? words.right(say) : words.off(say);
  return {
    happened: slip ? slip.because(say) : unnamed,
    ...(slip ? { slipName: slip.name } : {}),
    moves: movesOf(family, item),
    inverse: solved.length > 0 ? solved : (words.turns?.(say) ?? []),
    working: verdict.working,
    compare: compared(family, item, verdict),
  };
};

/** The right response to an item, typed as asked. */
export const answerOf = (family: SumFamily, item: SumItem): SumResponse => typedAs(family, family.solve(drawOf(item).givens));

/** What each slip that applies gives on this item, and whether that would be unsafe. */
export const slipResponses = (family: SumFamily, item: SumItem): readonly { readonly id: string; readonly response: SumResponse }[] => {
  const draw = drawOf(item);
  return family.slips.flatMap((slip) => {
    const gives = slip.gives(draw);
    return gives === null ? [] : [{ id: slip.id, response: typedAs(family, gives) }];
  });
};
