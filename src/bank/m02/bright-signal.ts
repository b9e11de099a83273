import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { testAccuracy } from "../../facts/test-accuracy.ts";
import { answerText, given, HOSPITALS, isSaid, PERCENT } from "../m01/common.ts";

const MENISCI = { key: "menisci", unit: "pieces", least: 10, greatest: 80, step: 2 } as const;
const RATE = { unit: "%", least: 20, greatest: 90, step: 1 } as const;
const MEASURED = ["10", "13", "15"] as const;
const BETWEEN = ["11", "12", "14"] as const;
const PINS: Readonly<Record<string, string>> = { rateAt10Percent: "bright-signal.10@1", rateAt13Percent: "bright-signal.13@1", rateAt15Percent: "bright-signal.15@1", adultPercent: "any-signal.adult@1" };

type About = Draw["about"];
const age = (about: About): number => Number(about["age"] ?? "13");
const rateKey = (years: number | string): string => `rateAt${years}Percent`;
const isMeasured = (about: About): boolean => MEASURED.some((one) => Number(one) === age(about));
const times = (givens: Givens, percent: number): Solution => ({ expected: (given(givens, "menisci") * percent) / PERCENT });
/** The next measured age below or above; undefined where there is none. */
const nextAge = (about: About, direction: 1 | -1): string | undefined =>
  (direction > 0 ? MEASURED : [...MEASURED].reverse()).find((one) => direction * Number(one) > direction * age(about));
const atAge = (givens: Givens, years: string | undefined): Solution | null => (years === undefined ? null : times(givens, given(givens, rateKey(years))));
/** What the rate leaves over, where that is not another age's rate as well. */
const leftOver = (givens: Givens, about: About): Solution | null => {
  if (!isMeasured(about)) return null;
  const percent = PERCENT - given(givens, rateKey(age(about)));
  return MEASURED.some((one) => given(givens, rateKey(one)) === percent) ? null : times(givens, percent);
};
/** Straight line between the two measured ages around a child. */
const interpolated = (givens: Givens, about: About): number => {
  const [younger = "10", older = "15"] = [nextAge(about, -1), nextAge(about, 1)];
  const [low, high] = [given(givens, rateKey(younger)), given(givens, rateKey(older))];
  return low + ((high - low) * (age(about) - Number(younger))) / (Number(older) - Number(younger));
};
const solved = (givens: Givens, about: About): Solution => {
  const years = isMeasured(about) ? age(about) : 13;
  const solution = times(givens, given(givens, rateKey(years)));
  return isMeasured(about) ? solution : { says: "cannot-be-told" };
};
const rate = (say: Say): string => say.of(rateKey(say.about("age")));

/** 02i: bright signal to be expected in menisci of children without symptoms. */
export const brightSignal: SumFamily = {
  kind: "sum",
  id: "bright-signal",
  code: "02i",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-list"],
  reads: Object.values(PINS),
  sources: Object.values(PINS).map((entry) => ({ source: "signal-1998", entry })),
  cautions: ["C9"],
  givens: [MENISCI, ...Object.keys(PINS).map((key) => ({ key, ...RATE }))],
  asks: [{ id: "expected", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const rates = Object.fromEntries(Object.entries(PINS).map(([key, pin]) => [key, testAccuracy(pin).number.value ?? 0]));
    const origins = Object.fromEntries(Object.entries(PINS).map(([key, entry]) => [key, { from: "study" as const, entry }]));
    return { givens: { menisci: chance.onGrid(MENISCI), ...rates }, about: { age: chance.happens(1, 5) ? chance.pick(BETWEEN) : chance.pick(MEASURED), hospital: chance.pick(HOSPITALS) }, origins };
  },
  solve: solved,
  slips: [
    { id: "adult-rate", gives: ({ givens }) => times(givens, given(givens, "adultPercent")) },
    { id: "younger-age", gives: ({ givens, about }) => atAge(givens, nextAge(about, -1)) },
    { id: "older-age", gives: ({ givens, about }) => atAge(givens, nextAge(about, 1)) },
    { id: "line-between-ages", gives: ({ givens, about }) => (isMeasured(about) ? null : times(givens, interpolated(givens, about))) },
    { id: "all-that-is-left", gives: ({ givens, about }) => leftOver(givens, about) },
  ],
  words: {
    en: {
      title: "Bright and whole",
      stems: [
        (say) => [`${say.about("hospital")} scans knees of healthy children aged ${say.about("age")} for a study. None has symptoms. The published shares are below: three ages of children, and adults.`],
        (say) => [`Menisci of children aged ${say.about("age")} without any symptom, scanned at ${say.about("hospital")}. Published for three ages only: the share of menisci with signal of grade 2 or 3. For adults the share of knees with any signal is printed.`],
        (say) => [`Before a bright meniscus is called torn, know how many are bright in healthy children. Age ${say.about("age")}, ${say.about("hospital")}; the paper gives three ages and draws no line between them.`],
      ],
      question: "How many of these menisci are expected to show signal of grade 2 or 3? A whole number, or the answer in words.",
      givens: { menisci: "Menisci scanned", rateAt10Percent: "Share of menisci at 10 years", rateAt13Percent: "Share of menisci at 13 years", rateAt15Percent: "Share of menisci at 15 years", adultPercent: "Adults, any signal, share of knees" },
      asks: { expected: "Menisci expected to be bright" },
      says: { none: "None is expected", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "adult-rate": { name: "adult rate on a child", because: (say) => [`${say.of("adultPercent")} is of adult knees, with any signal. Children’s menisci are brighter, and they were counted as menisci.`] },
        "younger-age": { name: "a younger age’s rate", because: (say) => [`These children are ${say.about("age")}. The share falls with age, so a younger age’s share gives too many.`] },
        "older-age": { name: "an older age’s rate", because: (say) => [`These children are ${say.about("age")}. The share falls with age, so an older age’s share gives too few.`] },
        "line-between-ages": { name: "line drawn between two ages", because: (say) => [`Three ages were measured and ${say.about("age")} is none of them. A straight line between two points is your drawing, not their measurement.`] },
        "all-that-is-left": { name: "the dark ones counted", because: () => ["Those are the menisci without such signal. The bright ones were asked for."] },
      },
      working: (say) => isSaid(say) ? [`Measured at 10, 13 and 15 years. At ${say.about("age")} nothing was measured.`] : [`${say.bare("menisci")} menisci × ${rate(say)} = ${answerText(say, "expected", { places: 1, unit: "pieces" })}`],
      right: (say) => isSaid(say) ? ["It cannot be told. Between measured ages there is no number, only a guess."] : [`${answerText(say, "expected", { places: 0, unit: "pieces" })} bright menisci, all of them in children without symptoms. Grade 3 reaches the surface and would be read as a tear.`],
      off: (say) => isSaid(say) ? ["Look at which ages were measured before you multiply."] : ["The share of this very age, times the menisci."],
      inverse: () => [],
      turns: (say) => [isSaid(say) ? "At 10, 13 or 15 years it would be a product." : "At an age between the measured ones it could not be told."],
    },
  },
};
