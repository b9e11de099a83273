import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { backFactorOf, bagOf, COLUMN_READS, COLUMN_SAYS, COLUMN_SOURCES, DENSITY, densityLabel, drawSaline, heightOf, pressureOf } from "./column.ts";
import { AGES, answerIn, CHILDREN, childOf, given, HOSPITALS, measure } from "./fluid-words.ts";

const WANTED = { key: "wantedMmHg", unit: "mmHg", least: 30, greatest: 70, step: 1 } as const;
const TABLE = { key: "tableAboveFloorCm", unit: "cm", least: 70, greatest: 100, step: 1 } as const;
const JOINT = { key: "jointAboveTableCm", unit: "cm", least: 6, greatest: 20, step: 1 } as const;

const height = (givens: Givens): number => heightOf(givens, given(givens, "wantedMmHg"));
const fromFloor = (givens: Givens, heightCm: number): number => given(givens, "tableAboveFloorCm") + given(givens, "jointAboveTableCm") + heightCm;
const at = (givens: Givens, aboveJointCm: number) => ({ aboveJointCm, aboveFloorCm: fromFloor(givens, aboveJointCm) });
const ofSay = (say: Say, ask: string): string => measure(answerIn(say, ask), "cm");

/** 07b: how high the level must stand for a wanted pressure, and from where that height is measured. */
export const hangAt: SumFamily = {
  kind: "sum",
  id: "hang-at",
  code: "07b",
  module: "M07",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m07-head"],
  reads: COLUMN_READS,
  sources: COLUMN_SOURCES,
  cautions: ["C15"],
  givens: [WANTED, TABLE, JOINT, DENSITY],
  asks: [
    { id: "aboveJointCm", unit: "cm", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "aboveFloorCm", unit: "cm", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const { degrees, origins, sources, densityKgPerM3 } = drawSaline(chance);
    return {
      givens: { wantedMmHg: chance.onGrid(WANTED), tableAboveFloorCm: chance.onGrid(TABLE), jointAboveTableCm: chance.onGrid(JOINT), densityKgPerM3 },
      about: { degrees, child: chance.pick(CHILDREN), age: chance.pick(AGES), hospital: chance.pick(HOSPITALS) },
      sources,
      origins: { ...origins, wantedMmHg: { from: "local" } },
    };
  },
  solve: (givens) => at(givens, height(givens)),
  slips: [
    { id: "factor-upside-down", gives: ({ givens }) => at(givens, pressureOf(givens, given(givens, "wantedMmHg"))) },
    { id: "mmhg-kept", gives: ({ givens }) => at(givens, given(givens, "wantedMmHg")) },
    { id: "from-the-table", gives: ({ givens }) => ({ aboveJointCm: height(givens), aboveFloorCm: given(givens, "tableAboveFloorCm") + height(givens) }) },
    { id: "from-the-floor", gives: ({ givens }) => ({ aboveJointCm: height(givens), aboveFloorCm: height(givens) }) },
  ],
  words: {
    en: {
      title: "Where to hang the bag",
      stems: [
        (say) => [`The sheet of ${say.about("hospital")} hospital names the pressure for ${childOf(say)}. You hang ${bagOf(say)}, outflow shut.`],
        (say) => [`${childOf(say)} lies on the table, the thigh in its holder. Gravity is to make the pressure that the sheet of ${say.about("hospital")} hospital names; ${bagOf(say)}, and nothing running.`],
        (say) => [`No pump today: ${bagOf(say)}, hung on a stand. For ${childOf(say)} the sheet of ${say.about("hospital")} hospital asks for the pressure below, with the outflow shut.`],
      ],
      question: "How high must the fluid level stand, above the joint and above the floor? Both to the nearest centimetre.",
      givens: { wantedMmHg: (say) => `Pressure wanted, sheet of ${say.about("hospital")} hospital`, tableAboveFloorCm: "Table top, above the floor", jointAboveTableCm: "Knee joint, above the table top", densityKgPerM3: densityLabel },
      asks: { aboveJointCm: "Level above the joint", aboveFloorCm: "Level above the floor" },
      says: COLUMN_SAYS,
      slips: {
        "factor-upside-down": { name: "factor upside down", because: (say) => [`Saline is light: one mmHg needs ${backFactorOf(say)} cm of it. The height in cm must come out larger than the pressure in mmHg.`] },
        "mmhg-kept": { name: "mmHg read as centimetres", because: (say) => [`${say.of("wantedMmHg")} are not ${say.bare("wantedMmHg")}\u2009cm of saline; that column would be too low.`] },
        "from-the-table": { name: "measured from the table edge", because: (say) => [`The knee lies ${say.of("jointAboveTableCm")} above the table top. A bag hung from the table edge is too low by just that.`] },
        "from-the-floor": { name: "joint taken to be on the floor", because: () => ["The height counts from the joint. To find it from the floor, the table and what lies under the knee come on top."] },
      },
      working: (say) => [
        `One mmHg needs ${backFactorOf(say)} cm of this saline: ${say.bare("wantedMmHg")} × ${backFactorOf(say)} = ${ofSay(say, "aboveJointCm")} above the joint`,
        `Above the floor: ${say.bare("tableAboveFloorCm")} + ${say.bare("jointAboveTableCm")} + ${answerIn(say, "aboveJointCm").toFixed(2)} = ${ofSay(say, "aboveFloorCm")}`,
      ],
      right: (say) => [`${ofSay(say, "aboveJointCm")} from the joint to the level, not to the hook of the bag. Raise the table, and the sum starts again.`],
      off: () => ["Turn mmHg into centimetres of saline; that height starts at the joint. Then add what lies between joint and floor."],
      inverse: () => [],
      turns: (say) => [`Each mmHg more lifts the bag by ${backFactorOf(say)} cm, and each centimetre that the table goes up lifts it by one. Only the height above the joint decides the pressure.`],
    },
  },
};
