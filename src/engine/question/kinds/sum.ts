import { asWritten, numberText, printed, withUnit } from "../../quantity/format.ts";
import { placesOf } from "../../quantity/places.ts";
import type { SumFamily } from "../family.ts";
import { type Draw, isSays, type Solution } from "../family-head.ts";
import type { ShownAsk, SumItem } from "../item.ts";
import { type Compared, type KindRules, plainDraw } from "../kind-rules.ts";
import { applyingTo } from "../diagnose.ts";
import { markSum } from "../mark-sum.ts";
import { areTypedApart, solutionOf, typedAs } from "../solve.ts";
import type { Verdict } from "../verdict.ts";

const MOST_END_DIGITS = 6;
const answerTexts = (family: SumFamily, solution: Solution): Readonly<Record<string, string>> => {
  const typed = typedAs(family, solution);
  if ("text" in typed) return { [family.asks[0]?.id ?? ""]: typed.text };
  return "texts" in typed ? typed.texts : {};
};

/** The exact answer is printed where its digits fit the grid of the givens, a count where it is whole; the rounded one elsewhere. */
const shownAnswer = (family: SumFamily, solution: Solution, id: string): string => {
  if (isSays(solution)) return "";
  const unit = family.asks.find((ask) => ask.id === id)?.unit;
  const places = unit === "pieces" ? 0 : Math.max(...family.givens.map(({ step }) => placesOf(step)));
  const exact = solution[id] as number;
  const fits = Number(exact.toFixed(places)) === Number(exact.toFixed(6));
  const text = fits ? numberText(exact, places) : (answerTexts(family, solution)[id] ?? "");
  return asWritten(text, unit);
};

/** An end of the accepted span as printed: whole for a count, else one digit finer than the rounding that was asked, and never outside the span. */
const endText = (text: string, { roundTo, unit }: ShownAsk, inwards: (value: number) => number): string => {
  if (unit === "pieces" && Number(roundTo) >= 1) return String(inwards(Number(text)));
  if (text.length <= MOST_END_DIGITS) return asWritten(text, unit);
  const places = placesOf(Number(roundTo)) + 1;
  const scaled = Number((Number(text) * 10 ** places).toFixed(MOST_END_DIGITS));
  return asWritten((inwards(scaled) / 10 ** places).toFixed(places), unit);
};

const compareAsk = (family: SumFamily, item: SumItem, { ask, verdict }: { ask: ShownAsk; verdict: Verdict }): Compared => {
  const draw = plainDraw(item);
  const solution = solutionOf(family, draw);
  const span = verdict.accepted[ask.id];
  const yours = verdict.parts.find((part) => part.ask === ask.id)?.value;
  const said = isSays(solution) ? item.says[solution.says] : withUnit(shownAnswer(family, solution, ask.id), ask.unit);
  const [from, to] = span === undefined ? ["", ""] : [endText(span.from, ask, Math.ceil), endText(span.to, ask, Math.floor)];
  const range = span === undefined ? said : `${printed(from)} to ${withUnit(to, ask.unit)}`;
  const accepted = span !== undefined && Number(from) === Number(to) ? withUnit(from.length < to.length ? from : to, ask.unit) : range;
  return { ask: ask.id, label: ask.label, ...(yours === undefined ? {} : { yours: withUnit(yours, ask.unit) }), answer: said, accepted };
};

/** What every slip that applies gives on a draw, unrounded. A formula that refuses its own draw is a fault of the family and is not hidden here, as it is where values may be a learner’s own. */
const applying = (family: SumFamily, draw: Draw): { readonly id: string; readonly gives: Solution }[] => {
  const found: { readonly id: string; readonly gives: Solution }[] = [];
  for (const slip of family.slips) {
    const gives = slip.gives(draw);
    if (gives !== null) found.push({ id: slip.id, gives });
  }
  return found;
};

type Own = Pick<SumItem, "asks" | "says">;

/** What every item of a family shows alike, made once for each family and frozen, as all its items share it. */
const OWN = new WeakMap<SumFamily, Own>();

const ownOf = (family: SumFamily): Own => {
  const before = OWN.get(family);
  if (before) return before;
  const { asks, says } = family.words.en;
  const shown = family.asks.map((ask) => Object.freeze({ ...ask, roundTo: String(ask.roundTo), label: asks[ask.id] ?? ask.id }));
  const own = { asks: Object.freeze(shown), says };
  OWN.set(family, own);
  return own;
};

/** Sums: one number or several, or one of the three answers that are not a number. */
export const sumRules: KindRules<SumFamily, SumItem> = {
  drawOf: plainDraw,
  answer: (family, draw) => typedAs(family, solutionOf(family, draw)),
  slips: (family, draw) => applying(family, draw).map(({ id, gives }) => ({ id, response: typedAs(family, gives) })),
  isTellingApart: (family, draw, leastSlips) => {
    const slips = applyingTo(family, draw);
    return slips.length >= leastSlips && areTypedApart(family.asks, solutionOf(family, draw), slips);
  },
  mark: markSum,
  marksWholeSlips: true,
  shown: ownOf,
  compare: (family, item, { verdict }) => item.asks.map((ask) => compareAsk(family, item, { ask, verdict })),
};
