import { syringePressureMmHg } from "../../engine/fluid/syringe-pressure-mm-hg.ts";
import { UNITS } from "../../engine/quantity/units.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { jointPressure } from "../../facts/joint-pressure.ts";
import { AGES, answerIn, CHILDREN, childOf, given, measure } from "./fluid-words.ts";

const FORCE = { key: "forceN", unit: "N", least: 10, greatest: 50, step: 1 } as const;
const BARREL = { key: "barrelMm", unit: "mm", least: 14, greatest: 30, step: 0.5 } as const;
const BURST = "capsule-bursts.adult@1";
const CM_PER_MM_SQUARED = 100;
const MMHG_PER_KPA = Number(UNITS.kPa.size) / Number(UNITS.mmHg.size);

const pressureOf = (givens: Givens): number => {
  const [forceN, barrelMm] = [given(givens, "forceN"), given(givens, "barrelMm")];
  return barrelMm > 0 && forceN >= 0 ? syringePressureMmHg({ forceN, barrelMm }) : Number.NaN;
};
const pressure = (say: Say): string => measure(Math.ceil(answerIn(say, "pressureMmHg")), "mmHg");
const area = (say: Say): string => ((Math.PI * say.value("barrelMm") ** 2) / 4).toFixed(2);
const kiloPascal = (say: Say): string => (answerIn(say, "pressureMmHg") / MMHG_PER_KPA).toFixed(2);
const bursts = (): string => { const { from = "", to = "" } = jointPressure(BURST).value; return `${from}–${to}\u2009mmHg`; };

/** 07h: the pressure that a thumb makes in a syringe. */
export const syringe: SumFamily = {
  kind: "sum",
  id: "syringe",
  code: "07h",
  module: "M07",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m07-flow"],
  reads: [BURST],
  sources: [{ source: "rupture-1988", entry: BURST }],
  cautions: ["C9", "C15"],
  givens: [FORCE, BARREL],
  asks: [{ id: "pressureMmHg", unit: "mmHg", roundTo: 1, rounding: "up", safeSide: "up" }],
  draw: (chance) => ({
    givens: { forceN: chance.onGrid(FORCE), barrelMm: chance.onGrid(BARREL) },
    about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), who: chance.pick(["The assistant", "A trainee", "The surgeon", "A visitor who scrubbed in"]) },
  }),
  solve: (givens) => ({ pressureMmHg: pressureOf(givens) }),
  slips: [
    { id: "diameter-for-radius", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens) / 4 }) },
    { id: "millimetres-as-centimetres", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens) / CM_PER_MM_SQUARED }) },
    { id: "kilopascals-kept", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens) / MMHG_PER_KPA }) },
  ],
  inverseOf: "forceN",
  words: {
    en: {
      title: "A thumb on a syringe",
      stems: [
        (say) => [`The view is poor in the knee of ${childOf(say)}. ${say.about("who")} fills the joint with a syringe; the outflow is shut, and the thumb keeps pressing.`],
        (say) => [`Outflow shut, a full syringe on the cannula in the knee of ${childOf(say)}. ${say.about("who")} says: “Only by hand, so it cannot be much.”`],
        (say) => [`${say.about("who")} presses saline into the knee of ${childOf(say)} with a syringe. Nothing can leave the joint. Friction of the plunger is left out.`],
      ],
      question: "What pressure stands behind the plunger? Rounded up to a whole mmHg.",
      givens: { forceN: "Force of the thumb", barrelMm: "Inner diameter of the barrel" },
      asks: { pressureMmHg: "Pressure" },
      says: { none: "No such pressure exists", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "diameter-for-radius": { name: "diameter taken for the radius", because: (say) => [`π r² wants half of ${say.of("barrelMm")}. With the diameter the area is four times too large and the pressure a quarter of what it is.`] },
        "millimetres-as-centimetres": { name: "millimetres taken for centimetres", because: () => ["The area came out a hundred times too large. One square centimetre is a hundred square millimetres, so the pressure is a hundred times higher."] },
        "kilopascals-kept": { name: "left in kPa", because: (say) => [`${kiloPascal(say)} is the pressure in kPa. One kPa is ${MMHG_PER_KPA.toFixed(2)} mmHg.`] },
      },
      working: (say) => [
        `Area: π × (${say.bare("barrelMm")} ÷ 2)² = ${area(say)} mm²`,
        `${say.bare("forceN")} N ÷ ${area(say)} mm² = ${kiloPascal(say)} kPa`,
        `1 kPa is ${MMHG_PER_KPA.toFixed(4)} mmHg, so it is ${answerIn(say, "pressureMmHg").toFixed(2)} mmHg, rounded up: ${pressure(say)}`,
      ],
      right: (say) => [`${pressure(say)} from a thumb. Filled adult cadaver knees burst at ${bursts()} when they were moved; no value for children was found. A hand has no gauge and no valve, so leave the outflow open.`],
      off: (say) => [`Force over area: the area of a circle of ${say.of("barrelMm")} diameter, then kPa into mmHg. The narrower the barrel, the higher the pressure.`],
      inverse: (say, { text }) => [`If the thumb pressed with ${text}. Here it presses with ${say.of("forceN")}.`],
    },
  },
};
