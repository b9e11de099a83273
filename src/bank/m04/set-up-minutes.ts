import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerValue, given, HOSPITALS } from "../m01/common.ts";

const MINUTES = { unit: "min", step: 1 } as const;
const OPENING = { key: "openingMin", ...MINUTES, least: 3, greatest: 9 } as const;
const CONNECTING = { key: "connectingMin", ...MINUTES, least: 2, greatest: 8 } as const;
const WHITE = { key: "whiteMin", ...MINUTES, least: 1, greatest: 4 } as const;
const COUNT = { key: "countMin", ...MINUTES, least: 3, greatest: 12 } as const;
const GAP = { key: "gapMin", ...MINUTES, least: 8, greatest: 30 } as const;

const part = (givens: Givens) => ({ opening: given(givens, "openingMin"), picture: given(givens, "connectingMin") + given(givens, "whiteMin"), count: given(givens, "countMin"), gap: given(givens, "gapMin") });
const withNeed = (givens: Givens, needMin: number): Readonly<Record<string, number>> => ({ needMin, spareMin: part(givens).gap - needMin });
const need = (givens: Givens): number => part(givens).opening + Math.max(part(givens).picture, part(givens).count);
const value = (say: Say, id: string): string => say.number(answerValue(say, id), 0);

/** 04d: how long a set-up takes where two things run side by side, and whether the gap holds it. */
export const setUpMinutes: SumFamily = {
  kind: "sum",
  id: "set-up-minutes",
  code: "04d",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m04-time"],
  reads: [],
  sources: [],
  cautions: ["C5"],
  givens: [OPENING, CONNECTING, WHITE, COUNT, GAP],
  asks: [
    { id: "needMin", unit: "min", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "spareMin", unit: "min", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const givens = { openingMin: chance.onGrid(OPENING), connectingMin: chance.onGrid(CONNECTING), whiteMin: chance.onGrid(WHITE), countMin: chance.onGrid(COUNT), gapMin: GAP.least };
    const gapMin = Math.min(GAP.greatest, Math.max(GAP.least, need(givens) - 5 + chance.below(14)));
    return { givens: { ...givens, gapMin }, about: { hospital: chance.pick(HOSPITALS), next: chance.pick(["second", "third", "last"]) }, origins: { gapMin: { from: "local" } } };
  },
  solve: (givens) => withNeed(givens, need(givens)),
  slips: [
    { id: "count-left-out", gives: ({ givens }) => (part(givens).count > part(givens).picture ? withNeed(givens, part(givens).opening + part(givens).picture) : null) },
    { id: "everything-in-a-row", gives: ({ givens }) => withNeed(givens, part(givens).opening + part(givens).picture + part(givens).count) },
    { id: "opening-left-out", gives: ({ givens }) => withNeed(givens, need(givens) - part(givens).opening) },
    { id: "sign-turned", gives: ({ givens }) => (part(givens).gap === need(givens) ? null : { needMin: need(givens), spareMin: need(givens) - part(givens).gap }) },
  ],
  words: {
    en: {
      title: "Minutes to be ready",
      stems: [
        (say) => [`${say.about("hospital")}, before the ${say.about("next")} case of the list. First the pack is opened. Then one colleague connects the scope and sets the white balance, while two others make the opening count.`],
        (say) => [`The list at ${say.about("hospital")} leaves a gap before the ${say.about("next")} case. After opening, two things run side by side: connecting with white balance, and the count.`],
        (say) => [`Before the ${say.about("next")} case at ${say.about("hospital")}: opening comes first and alone; then picture (connecting, white balance) and count at the same time, by different people.`],
      ],
      question: "How many minutes does the set-up take, and how many are left of the gap? Negative where the gap is too short.",
      givens: { openingMin: "Opening", connectingMin: "Connecting", whiteMin: "White balance", countMin: "Opening count", gapMin: "Gap in the list" },
      asks: { needMin: "Set-up takes", spareMin: "Left of the gap" },
      says: { none: "No time is needed", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "count-left-out": { name: "count left out", because: (say) => [`The count takes ${say.of("countMin")}, longer than the picture. Nobody may begin before it is done.`] },
        "everything-in-a-row": { name: "everything in a row", because: () => ["Picture and count run side by side. Only the longer of the two makes you wait."] },
        "opening-left-out": { name: "opening left out", because: (say) => [`Nothing can be connected or counted before the pack is open: ${say.of("openingMin")} come first.`] },
        "sign-turned": { name: "sign turned", because: () => ["The need is taken from the gap. Negative means that the gap is too short."] },
      },
      working: (say) => [
        `Side by side: ${say.value("connectingMin") + say.value("whiteMin")} min for the picture, ${say.bare("countMin")} min for the count; the longer one counts`,
        `${say.bare("openingMin")} + ${Math.max(say.value("connectingMin") + say.value("whiteMin"), say.value("countMin"))} = ${value(say, "needMin")} min; ${say.bare("gapMin")} − ${value(say, "needMin")} = ${value(say, "spareMin")} min`,
      ],
      right: (say) => [answerValue(say, "spareMin") < 0 ? `${value(say, "needMin")} min, and the gap is too short. Tell the list, do not shorten the count.` : `${value(say, "needMin")} min, with ${value(say, "spareMin")} left. The count is not what gives way when it gets tight.`],
      off: () => ["What runs side by side counts once, with the longer of the two. Opening comes before both."],
      inverse: () => [],
      turns: (say) => [`The count decides from ${say.value("connectingMin") + say.value("whiteMin")} min on; below that the picture does.`],
    },
  },
};
