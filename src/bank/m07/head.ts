import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { bagOf, COLUMN_READS, COLUMN_SAYS, COLUMN_SOURCES, DENSITY, densityLabel, drawSaline, exactFactorOf, factorOf, heightOf, pressureOf } from "./column.ts";
import { AGES, answerIn, CHILDREN, childOf, given, measure } from "./fluid-words.ts";

const LEVEL = { key: "levelAboveFloorCm", unit: "cm", least: 110, greatest: 240, step: 1 } as const;
const JOINT = { key: "jointAboveFloorCm", unit: "cm", least: 75, greatest: 110, step: 1 } as const;
const LEAST_HEAD_CM = 40;
const GREATEST_HEAD_CM = 150;

const headOf = (givens: Givens): number => given(givens, "levelAboveFloorCm") - given(givens, "jointAboveFloorCm");
const head = (say: Say): string => say.number(say.value("levelAboveFloorCm") - say.value("jointAboveFloorCm"), 0);
const pressure = (say: Say): string => measure(answerIn(say, "pressureMmHg"), "mmHg");

/** 07a: the pressure of a standing column, from the level in the bag down to the joint. */
export const fluidHead: SumFamily = {
  kind: "sum",
  id: "head",
  code: "07a",
  module: "M07",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m07-head"],
  reads: COLUMN_READS,
  sources: COLUMN_SOURCES,
  cautions: ["C15"],
  givens: [LEVEL, JOINT, DENSITY],
  asks: [{ id: "pressureMmHg", unit: "mmHg", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const { degrees, origins, sources, densityKgPerM3 } = drawSaline(chance);
    const jointAboveFloorCm = chance.onGrid(JOINT);
    const most = Math.min(LEVEL.greatest, jointAboveFloorCm + GREATEST_HEAD_CM);
    const levelAboveFloorCm = chance.onGrid({ ...LEVEL, least: jointAboveFloorCm + LEAST_HEAD_CM, greatest: most });
    return { givens: { levelAboveFloorCm, jointAboveFloorCm, densityKgPerM3 }, about: { degrees, child: chance.pick(CHILDREN), age: chance.pick(AGES) }, origins, sources };
  },
  solve: (givens) => ({ pressureMmHg: pressureOf(givens, headOf(givens)) }),
  slips: [
    { id: "from-the-floor", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens, given(givens, "levelAboveFloorCm")) }) },
    { id: "centimetres-kept", gives: ({ givens }) => ({ pressureMmHg: headOf(givens) }) },
    { id: "factor-upside-down", gives: ({ givens }) => ({ pressureMmHg: heightOf(givens, headOf(givens)) }) },
    { id: "heights-added", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens, given(givens, "levelAboveFloorCm") + given(givens, "jointAboveFloorCm")) }) },
  ],
  inverseOf: "levelAboveFloorCm",
  words: {
    en: {
      title: "Head of pressure",
      stems: [
        (say) => [`The knee of ${childOf(say)} is filled by gravity from ${bagOf(say)}. The outflow is shut and nothing moves in the line.`],
        (say) => [`Gravity alone fills the knee of ${childOf(say)} from ${bagOf(say)}; outflow shut, the drip chamber still. Somebody has measured the two heights from the floor.`],
        (say) => [`Nothing runs: the outflow is shut, and the level in ${bagOf(say)} stands still above the knee of ${childOf(say)}. You want to know what the joint feels.`],
      ],
      question: "What pressure does the column make in the joint, above that of the room? To the nearest mmHg.",
      givens: { levelAboveFloorCm: "Fluid level in the bag, above the floor", jointAboveFloorCm: "Knee joint, above the floor", densityKgPerM3: densityLabel },
      asks: { pressureMmHg: "Pressure in the joint" },
      says: COLUMN_SAYS,
      slips: {
        "from-the-floor": { name: "measured from the floor", because: (say) => [`The joint does not lie on the floor. Only the ${head(say)} cm from the joint up to the level press on it.`] },
        "centimetres-kept": { name: "centimetres read as mmHg", because: (say) => [`${head(say)} cm of saline are not ${head(say)} mmHg. Mercury is heavy: a centimetre of saline makes only ${factorOf(say)} mmHg.`] },
        "factor-upside-down": { name: "factor upside down", because: (say) => [`Divided where it should be multiplied: the figure in mmHg must be smaller than the figure in cm, because a centimetre makes less than one mmHg (${factorOf(say)}).`] },
        "heights-added": { name: "heights added", because: () => ["Both heights start at the floor, so the floor falls out when one is taken from the other. Added, it counts twice."] },
      },
      working: (say) => [
        `From the joint up to the level: ${say.bare("levelAboveFloorCm")} − ${say.bare("jointAboveFloorCm")} = ${head(say)} cm`,
        `One centimetre of this saline makes ${exactFactorOf(say)} mmHg (density × gravity).`,
        `${head(say)} × ${exactFactorOf(say)} = ${answerIn(say, "pressureMmHg").toFixed(2)}, to the nearest mmHg: ${pressure(say)}`,
      ],
      right: (say) => [`${head(say)} cm above the joint make ${pressure(say)}, as long as nothing runs. The level sinks as the bag empties, and the pressure with it. Whether it is right for this child, your sheet must say.`],
      off: () => ["Take the height from the joint up to the level of the fluid, then turn centimetres of saline into mmHg."],
      inverse: (say, { text }) => [`If the level stood ${text} above the floor. Here it stands at ${say.of("levelAboveFloorCm")}.`],
    },
  },
};
