import { flowRatio } from "../../engine/fluid/flow-ratio.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, given, HOSPITALS, measure } from "./fluid-words.ts";

const FROM = { key: "fromBoreMm", unit: "mm", least: 1.6, greatest: 4.5, step: 0.1 } as const;
const TO = { key: "toBoreMm", unit: "mm", least: 1.9, greatest: 6, step: 0.1 } as const;
const MORE = { least: 0.3, greatest: 1.5, step: 0.1 } as const;

const ratioOf = (givens: Givens, power = 4): number => (given(givens, "toBoreMm") / given(givens, "fromBoreMm")) ** power;
const plain = (say: Say): number => say.value("toBoreMm") / say.value("fromBoreMm");
const answer = (say: Say): string => measure(answerIn(say, "ratioTimes"), "times", 1);

/** 07c: how the flow grows with the bore of a tube, by the ideal law. */
export const tubePower: SumFamily = {
  kind: "sum",
  id: "tube-power",
  code: "07c",
  module: "M07",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m07-flow"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [FROM, TO],
  asks: [{ id: "ratioTimes", unit: "times", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const fromBoreMm = chance.onGrid(FROM);
    return {
      givens: { fromBoreMm, toBoreMm: Number((fromBoreMm + chance.onGrid(MORE)).toFixed(1)) },
      about: { hospital: chance.pick(HOSPITALS), part: chance.pick(["cannula", "inflow sheath", "outflow tube"]) },
    };
  },
  solve: (givens) => {
    const [fromBoreMm, toBoreMm] = [given(givens, "fromBoreMm"), given(givens, "toBoreMm")];
    return fromBoreMm > 0 && toBoreMm > 0 ? { ratioTimes: flowRatio({ fromBoreMm, toBoreMm }) } : { says: "cannot-be-told" };
  },
  slips: [
    { id: "area-only", gives: ({ givens }) => ({ ratioTimes: ratioOf(givens, 2) }) },
    { id: "diameter-only", gives: ({ givens }) => ({ ratioTimes: ratioOf(givens, 1) }) },
    { id: "upside-down", gives: ({ givens }) => ({ ratioTimes: ratioOf(givens, -4) }) },
  ],
  inverseOf: "toBoreMm",
  words: {
    en: {
      title: "Bore and flow",
      stems: [
        (say) => [`${say.about("hospital")} hospital keeps two bores of the same ${say.about("part")}, equally long. Nothing stands inside, and the pressure and the liquid are the same.`],
        (say) => [`The flow is poor. Somebody hands you the wider ${say.about("part")} of the same length; nothing else changes.`],
        (say) => [`Two open tubes of one length, one pressure, one liquid: the narrow ${say.about("part")} and the wider one.`],
      ],
      question: "How many times as much would flow through the wider one by the ideal law of a long tube (laminar)? To the nearest tenth.",
      givens: { fromBoreMm: "Inner diameter, narrow", toBoreMm: "Inner diameter, wider" },
      asks: { ratioTimes: "Flow of the wider over the narrow" },
      says: { none: "No flow at all", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "area-only": { name: "area only", because: () => ["The square gives the area, and area is not enough: in a wider tube the liquid also runs faster, because less of it drags along the wall. Together that is the fourth power."] },
        "diameter-only": { name: "diameter only", because: () => ["That is how much wider it is. Flow grows far more steeply than width, with the fourth power."] },
        "upside-down": { name: "upside down", because: () => ["Below 1 would mean less through the wider tube. Put the wider one on top."] },
      },
      working: (say) => [`${say.bare("toBoreMm")} ÷ ${say.bare("fromBoreMm")} = ${plain(say).toFixed(3)}`, `To the fourth power: ${answer(say)}`],
      right: (say) => [`${answer(say)} by the ideal law. Short tubes do less, because much of the pressure is lost at their ends; read it as the most you can hope for.`],
      off: () => ["Divide the diameters, then take the fourth power. It is the ideal law: long tube, laminar flow."],
      inverse: (say, { text }) => [`If the wider one measured ${text}. It measures ${say.of("toBoreMm")}.`],
    },
  },
};
