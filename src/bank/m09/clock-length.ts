import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, CHILDREN, given, SIDES } from "../m01/common.ts";

const RADIUS = { key: "rimRadiusMm", unit: "mm", least: 12, greatest: 22, step: 0.5 } as const;
const AGES = ["8", "10", "11", "12", "14"] as const;
/** A larger knee has a wider ring; these spans are the question’s own, not a study’s. */
const RADIUS_AT = { "8": { least: 12, greatest: 17 }, "10": { least: 13, greatest: 18 }, "11": { least: 14, greatest: 19 }, "12": { least: 14, greatest: 20 }, "14": { least: 16, greatest: 22 } } as const;
const DEGREES_AN_HOUR = 30;
const HALF_TURN = 180;
const CLOCK = 12;

type About = Draw["about"];

/** "half past 2" or "4 o’clock", from half hours after 12. */
const spoken = (halves: number): string => {
  const hour = Math.floor(halves / 2) % CLOCK === 0 ? CLOCK : Math.floor(halves / 2) % CLOCK;
  return halves % 2 === 0 ? `${hour} o’clock` : `half past ${hour}`;
};
const angleDeg = (about: About): number => (Number(about["toHalves"] ?? "6") - Number(about["fromHalves"] ?? "2")) * (DEGREES_AN_HOUR / 2);
const arcMm = (givens: Givens, degrees: number): number => (given(givens, "rimRadiusMm") * degrees * Math.PI) / HALF_TURN;
const degreesOf = (say: Say): number => (Number(say.about("toHalves")) - Number(say.about("fromHalves"))) * (DEGREES_AN_HOUR / 2);
const from = (say: Say): string => spoken(Number(say.about("fromHalves")));
const to = (say: Say): string => spoken(Number(say.about("toHalves")));
const length = { places: 1, unit: "mm" } as const;

const hoursOf = (say: Say): string => (degreesOf(say) === DEGREES_AN_HOUR ? "1 hour" : `${String(degreesOf(say) / DEGREES_AN_HOUR)} hours`);

/** 09b: the length of a tear along the rim, from its place on the clock. */
export const clockLength: SumFamily = {
  kind: "sum",
  id: "clock-length",
  code: "09b",
  module: "M09",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m09-length"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [RADIUS],
  asks: [{ id: "lengthMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const age = chance.pick(AGES);
    const fromHalves = 2 + chance.below(6);
    const toHalves = Math.min(11, fromHalves + 2 + chance.below(5));
    return {
      givens: { rimRadiusMm: chance.onGrid({ ...RADIUS, ...RADIUS_AT[age] }) },
      about: { child: chance.pick(CHILDREN), age, side: chance.pick(SIDES), meniscus: chance.pick(["medial", "lateral"]), fromHalves: String(fromHalves), toHalves: String(toHalves) },
    };
  },
  solve: (givens, about) => ({ lengthMm: arcMm(givens, angleDeg(about)) }),
  slips: [
    { id: "chord", gives: ({ givens, about }) => ({ lengthMm: 2 * given(givens, "rimRadiusMm") * Math.sin((angleDeg(about) * Math.PI) / (2 * HALF_TURN)) }) },
    { id: "degrees-for-radians", gives: ({ givens, about }) => ({ lengthMm: given(givens, "rimRadiusMm") * angleDeg(about) }) },
    { id: "minutes-of-the-dial", gives: ({ givens, about }) => ({ lengthMm: 2 * arcMm(givens, angleDeg(about)) }) },
    { id: "diameter-for-radius", gives: ({ givens, about }) => ({ lengthMm: arcMm(givens, angleDeg(about)) / 2 }) },
  ],
  words: {
    en: {
      title: "A tear on the clock",
      stems: [
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee. The tear of the ${say.about("meniscus")} meniscus runs along the rim from ${from(say)} to ${to(say)}. Twelve is in front, and the clock turns towards the rim of the named side.`],
        (say) => [`The record of ${say.about("child")}, ${say.about("age")}, says: ${say.about("meniscus")} meniscus, ${say.about("side")} knee, from ${from(say)} to ${to(say)}. Twelve is in front and the hours go towards the rim of that meniscus. Take the rim as part of a circle.`],
        (say) => [`A clock gives an angle, not yet a length. ${say.about("meniscus") === "medial" ? "Medial" : "Lateral"} meniscus, ${say.about("side")} knee, ${say.about("age")} years: the tear begins at ${from(say)} and ends at ${to(say)}, with twelve in front and the hours running towards the rim of the named side.`],
      ],
      question: "How long is the tear along the rim? To the nearest tenth of a millimetre.",
      givens: { rimRadiusMm: "Radius of the rim, in the drawing" },
      asks: { lengthMm: "Length along the rim" },
      says: { none: "The tear has no length here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        chord: { name: "chord for arc", because: () => ["That is the straight line between the two ends. Stitches are spread along the rim, so the arc counts, and it is longer."] },
        "degrees-for-radians": { name: "degrees taken for radians", because: (say) => [`Radius times angle holds for radians. ${say.number(degreesOf(say), 0)} degrees are ${say.number((degreesOf(say) * Math.PI) / HALF_TURN, 2)} radians.`] },
        "minutes-of-the-dial": { name: "an hour taken as sixty degrees", because: () => ["Twelve hours make the full circle, so an hour is thirty degrees."] },
        "diameter-for-radius": { name: "radius halved", because: (say) => [`${say.of("rimRadiusMm")} is the radius already. Halved once more, the tear comes out half as long.`] },
      },
      working: (say) => [
        `From ${from(say)} to ${to(say)}: ${hoursOf(say)} of thirty degrees, ${say.number(degreesOf(say), 0)} degrees`,
        `${say.number(degreesOf(say), 0)} × π ÷ 180 = ${say.number((degreesOf(say) * Math.PI) / HALF_TURN, 3)} radians`,
        `${say.bare("rimRadiusMm")} × ${say.number((degreesOf(say) * Math.PI) / HALF_TURN, 3)} = ${answerText(say, "lengthMm", length)}`,
      ],
      right: (say) => [`${answerText(say, "lengthMm", length)} along the rim. A clock is read to half an hour, and half an hour of this rim is ${say.number((say.value("rimRadiusMm") * DEGREES_AN_HOUR * Math.PI) / (2 * HALF_TURN))} mm.`],
      off: () => ["Hours into degrees, degrees into radians, then radius times angle."],
      inverse: (say, { text }) => [`If the rim had a radius of ${text}. Here it is ${say.of("rimRadiusMm")}.`],
    },
  },
  inverseOf: "rimRadiusMm",
};
