import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { bagOf, COLUMN_READS, COLUMN_SAYS, COLUMN_SOURCES, DENSITY, densityLabel, drawSaline, exactFactorOf, factorOf, pressureOf } from "./column.ts";
import { AGES, answerIn, CHILDREN, childOf, given, measure } from "./fluid-words.ts";

const LEVEL = { key: "levelAboveJointCm", unit: "cm", least: 50, greatest: 130, step: 1 } as const;
const MOVED = { key: "movedCm", unit: "cm", least: 5, greatest: 30, step: 1 } as const;

/** A table that goes up brings the joint nearer to the level; one that goes down takes it away. */
const isDown = (about: Draw["about"]): boolean => about["way"] === "down";
const headAfter = (givens: Givens, down: boolean): number => given(givens, "levelAboveJointCm") + (down ? 1 : -1) * given(givens, "movedCm");
const after = (say: Say): string => say.number(say.value("levelAboveJointCm") + (say.about("way") === "down" ? 1 : -1) * say.value("movedCm"), 0);
const pressure = (say: Say): string => measure(answerIn(say, "pressureMmHg"), "mmHg");
const sign = (say: Say): string => (say.about("way") === "down" ? "+" : "−");

/** 07j: the pressure after the table has moved under a bag that has not. */
export const tableUp: SumFamily = {
  kind: "sum",
  id: "table-up",
  code: "07j",
  module: "M07",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m07-head"],
  reads: COLUMN_READS,
  sources: COLUMN_SOURCES,
  cautions: ["C15"],
  givens: [LEVEL, MOVED, DENSITY],
  asks: [{ id: "pressureMmHg", unit: "mmHg", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const { degrees, origins, sources, densityKgPerM3 } = drawSaline(chance);
    return {
      givens: { levelAboveJointCm: chance.onGrid(LEVEL), movedCm: chance.onGrid(MOVED), densityKgPerM3 },
      about: { degrees, way: chance.pick(["up", "up", "down"]), child: chance.pick(CHILDREN), age: chance.pick(AGES), who: chance.pick(["The anaesthetist", "The assistant", "The surgeon", "The practitioner on the floor"]) },
      origins,
      sources,
    };
  },
  solve: (givens, about) => ({ pressureMmHg: pressureOf(givens, headAfter(givens, isDown(about))) }),
  slips: [
    { id: "wrong-way", gives: ({ givens, about }) => ({ pressureMmHg: pressureOf(givens, headAfter(givens, !isDown(about))) }) },
    { id: "no-change", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens, given(givens, "levelAboveJointCm")) }) },
    { id: "centimetres-kept", gives: ({ givens, about }) => ({ pressureMmHg: headAfter(givens, isDown(about)) }) },
    { id: "only-the-change", gives: ({ givens }) => ({ pressureMmHg: pressureOf(givens, given(givens, "movedCm")) }) },
  ],
  inverseOf: "levelAboveJointCm",
  words: {
    en: {
      title: "The table moves",
      stems: [
        (say) => [`Gravity fills the knee of ${childOf(say)} from ${bagOf(say)}, outflow shut. ${say.about("who")} moves the table ${say.about("way")}; nobody touches the stand with the bag.`],
        (say) => [`${say.about("who")} asks for the table to go ${say.about("way")}. The bag over the knee of ${childOf(say)} hangs from its own stand and stays where it is; outflow shut.`],
        (say) => [`The stand with ${bagOf(say)} is not joined to the table. The table with ${childOf(say)} goes ${say.about("way")}, and nothing runs in the line.`],
      ],
      question: "What pressure does the column make in the joint afterwards? To the nearest mmHg.",
      givens: { levelAboveJointCm: "Fluid level above the joint, before", movedCm: (say) => `The table goes ${say.about("way")} by`, densityKgPerM3: densityLabel },
      asks: { pressureMmHg: "Pressure in the joint afterwards" },
      says: COLUMN_SAYS,
      slips: {
        "wrong-way": { name: "the wrong way", because: (say) => [say.about("way") === "down" ? "A knee that goes down moves away from the level of the bag. The column grows, and the pressure with it." : "A knee that goes up comes nearer to the level of the bag. The column shrinks, and the pressure with it."] },
        "no-change": { name: "no change", because: (say) => [`The bag stayed, the joint did not. The column runs from the joint to the level, and that has changed by ${say.of("movedCm")}.`] },
        "centimetres-kept": { name: "centimetres read as mmHg", because: (say) => [`${after(say)} cm is the new column. A centimetre of saline makes ${factorOf(say)} mmHg.`] },
        "only-the-change": { name: "only the change", because: () => ["That is by how much the pressure changes. The question asks what it is afterwards."] },
      },
      working: (say) => [
        `New column: ${say.bare("levelAboveJointCm")} ${sign(say)} ${say.bare("movedCm")} = ${after(say)} cm`,
        `${after(say)} × ${exactFactorOf(say)} = ${answerIn(say, "pressureMmHg").toFixed(2)}, to the nearest mmHg: ${pressure(say)}`,
      ],
      right: (say) => [`${pressure(say)} from a column of ${after(say)} cm. Whoever moves the table moves the pressure: say it aloud, and set the bag again.`],
      off: () => ["Find the new height from the joint to the level, then turn it into mmHg."],
      inverse: (say, { text }) => [`If the level had stood ${text} above the joint before. It stood at ${say.of("levelAboveJointCm")}.`],
    },
  },
};
