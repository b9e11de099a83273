import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import { answerText, given, SIDES } from "../m01/common.ts";

const HEIGHT = { key: "heightMm", unit: "mm", least: 5, greatest: 16, step: 0.5 } as const;
const AWAY = { key: "awayMm", unit: "mm", least: 18, greatest: 40, step: 1 } as const;
/** Of a lower bulge sine and tangent are the same, to a tenth of a degree or two. */
const MOST_AWAY_PER_HEIGHT = 4;
const DEGREES = 180 / Math.PI;

const ratio = (givens: Givens): number => given(givens, "heightMm") / given(givens, "awayMm");
const tenth = { places: 1, unit: "deg" } as const;

/** 06d: the least tilt with which a straight instrument passes over the condyle. */
export const overTheHump: SumFamily = {
  kind: "sum",
  id: "over-the-hump",
  code: "06d",
  module: "M06",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m06-angle"],
  reads: [],
  sources: [],
  cautions: ["C6"],
  givens: [HEIGHT, AWAY],
  asks: [{ id: "tiltDeg", unit: "deg", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const heightMm = chance.onGrid(HEIGHT);
    return {
      givens: { heightMm, awayMm: chance.onGrid({ ...AWAY, greatest: Math.min(AWAY.greatest, MOST_AWAY_PER_HEIGHT * heightMm) }) },
      about: { side: chance.pick(SIDES), condyle: chance.pick(["medial", "lateral"]), tool: chance.pick(["straight probe", "straight needle", "small scope"]) },
    };
  },
  solve: (givens) => ({ tiltDeg: DEGREES * Math.atan(ratio(givens)) }),
  slips: [
    { id: "sine-for-tangent", gives: ({ givens }) => ({ tiltDeg: DEGREES * Math.asin(Math.min(1, ratio(givens))) }) },
    { id: "upside-down", gives: ({ givens }) => ({ tiltDeg: DEGREES * Math.atan(1 / ratio(givens)) }) },
    { id: "radians-left", gives: ({ givens }) => ({ tiltDeg: Math.atan(ratio(givens)) }) },
  ],
  inverseOf: "heightMm",
  words: {
    en: {
      title: "Over the condyle",
      stems: [
        (say) => [`In a model of a ${say.about("side")} knee the ${say.about("condyle")} condyle bulges between portal and target. A ${say.about("tool")} must pass over its top. The height is measured straight up from the level of the portal, the distance along that level.`],
        (say) => [`Cartilage that is scraped on the way in does not grow back. Model of a ${say.about("side")} knee, ${say.about("condyle")} condyle, ${say.about("tool")}: the top of the bulge stands above the level of the portal, some way behind it.`],
        (say) => [`A ${say.about("tool")} cannot bend. Over the top of the ${say.about("condyle")} condyle in this ${say.about("side")} model knee it goes only with enough tilt at the portal.`],
      ],
      question: "With which tilt, at least, does the straight line just clear the top? To the nearest tenth of a degree.",
      givens: { heightMm: "Top of the bulge above the level of the portal", awayMm: "Portal to the top, along that level" },
      asks: { tiltDeg: "Least tilt" },
      says: { none: "No tilt clears it", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "sine-for-tangent": { name: "sine for tangent", because: (say) => [`${say.of("awayMm")} lie along the level, not along the instrument. Height over level distance is the tangent.`] },
        "upside-down": { name: "upside down", because: () => ["Distance over height gives the angle from the vertical. The tilt counts from the level."] },
        "radians-left": { name: "left in radians", because: () => ["Your calculator answered in radians. One radian is some 57 degrees."] },
      },
      working: (say) => [`Tangent of the tilt: ${say.bare("heightMm")} ÷ ${say.bare("awayMm")} = ${say.number(say.value("heightMm") / say.value("awayMm"), 3)}`, `Tilt: ${answerText(say, "tiltDeg", tenth)}`],
      right: (say) => [`${answerText(say, "tiltDeg", tenth)} and the line touches the top. The instrument has a thickness, so it needs more.`],
      off: () => ["Draw the right angle: height up, distance along, line over the top. The tilt is the angle whose tangent is height over distance."],
      inverse: (say, { text }) => [`If the bulge were ${text} high. Here it is ${say.of("heightMm")}.`],
    },
  },
};
