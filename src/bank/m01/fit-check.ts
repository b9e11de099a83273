import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerText, CHILDREN, given, isSaid, SIDES, withPlaces } from "./common.ts";

const OPENING = { key: "openingMm", unit: "mm", least: 2, greatest: 8, step: 0.1 } as const;
const SHEATH = { key: "sheathOuterMm", unit: "mm", least: 1.7, greatest: 5, step: 0.1 } as const;
const BORE = { key: "sheathInnerMm", unit: "mm", least: 1.3, greatest: 4.8, step: 0.1 } as const;
const SCOPE = { key: "scopeMm", unit: "mm", least: 1, greatest: 4.7, step: 0.1 } as const;
/** The opening is drawn near the sheath, where the question is a real one. */
const NEAR = { below: 1.5, above: 2.5 } as const;
const THINNER = { wall: { least: 0.2, greatest: 0.4, step: 0.1 }, gap: { least: 0.1, greatest: 0.3, step: 0.1 } } as const;

const room = (givens: Givens, key: string): number => sumOnGrid(given(givens, "openingMm"), -given(givens, key));
/** Where nothing is left, it does not fit. */
const orNone = (clearanceMm: number): Solution => (clearanceMm > 0 ? { clearanceMm } : { says: "none" });
const above = (clearanceMm: number): Solution | null => (clearanceMm > 0 ? { clearanceMm } : null);
const left = { places: 1, unit: "mm" } as const;
/** By how much the sheath is too thick. */
const missing = (say: Say): string => withPlaces(sumOnGrid(say.value("sheathOuterMm"), -say.value("openingMm")), left.places, left.unit);
const roomHere = (say: Say): string => withPlaces(sumOnGrid(say.value("openingMm"), -say.value("sheathOuterMm")), left.places, left.unit);

/** 01f: what a joint opening leaves around a sheath. */
export const fitCheck: SumFamily = {
  kind: "sum",
  id: "fit-check",
  code: "01f",
  module: "M01",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m01-fit"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [OPENING, SHEATH, BORE, SCOPE],
  asks: [{ id: "clearanceMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const sheathOuterMm = chance.onGrid(SHEATH);
    const sheathInnerMm = sumOnGrid(sheathOuterMm, -chance.onGrid(THINNER.wall));
    const scopeMm = sumOnGrid(sheathInnerMm, -chance.onGrid(THINNER.gap));
    const opening = { ...OPENING, least: Math.max(OPENING.least, sumOnGrid(sheathOuterMm, -NEAR.below)), greatest: Math.min(OPENING.greatest, sumOnGrid(sheathOuterMm, NEAR.above)) };
    return {
      givens: { openingMm: chance.onGrid(opening), sheathOuterMm, sheathInnerMm, scopeMm },
      about: { child: chance.pick(CHILDREN), age: chance.pick(["5", "7", "9", "11"]), side: chance.pick(SIDES), place: chance.pick(["medial", "lateral"]) },
    };
  },
  solve: (givens) => {
    const clearanceMm = room(givens, "sheathOuterMm");
    return Number.isNaN(clearanceMm) ? { clearanceMm } : orNone(clearanceMm);
  },
  slips: [
    { id: "bore-for-outside", gives: ({ givens }) => above(room(givens, "sheathInnerMm")) },
    { id: "scope-without-sheath", gives: ({ givens }) => above(room(givens, "scopeMm")) },
    { id: "radius-for-diameter", gives: ({ givens }) => above(sumOnGrid(given(givens, "openingMm"), -given(givens, "sheathOuterMm") / 2)) },
    { id: "less-than-nothing", gives: ({ givens }) => (room(givens, "sheathOuterMm") < 0 ? { clearanceMm: room(givens, "sheathOuterMm") } : null) },
    { id: "sign-dropped", gives: ({ givens }) => (room(givens, "sheathOuterMm") < 0 ? { clearanceMm: -room(givens, "sheathOuterMm") } : null) },
  ],
  words: {
    en: {
      title: "Does the sheath fit",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")}. On the drawing of the ${say.about("side")} knee, under the pull that your teacher allows, the ${say.about("place")} joint line opens as printed. How far a child’s joint opens has not been published.`],
        (say) => [`Cartilage above and below, steel between them. ${say.about("side").charAt(0).toUpperCase()}${say.about("side").slice(1)} knee of ${say.about("child")}, ${say.about("age")}, ${say.about("place")} compartment; the opening is of this drawing.`],
        (say) => [`Before the sheath goes into the ${say.about("place")} compartment of ${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee: does it fit between the cartilages, as drawn?`],
      ],
      question: "How much is left between the cartilages, above and below together, or does it not fit? To the nearest tenth of a millimetre.",
      givens: { openingMm: "Opening of the joint line, in the drawing", sheathOuterMm: "Sheath, outer diameter", sheathInnerMm: "Sheath, inner diameter", scopeMm: "Scope without sheath" },
      asks: { clearanceMm: "Room, above and below together" },
      says: { none: "It does not fit", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "bore-for-outside": { name: "inner diameter taken", because: (say) => [`${say.of("sheathInnerMm")} is the hole in the sheath. What meets cartilage is the outside, ${say.of("sheathOuterMm")}.`] },
        "scope-without-sheath": { name: "scope without its sheath", because: () => ["The sheath is what enters. The scope alone never touches the joint line."] },
        "radius-for-diameter": { name: "half of the sheath", because: () => ["The whole diameter must pass, not the half of it."] },
        "less-than-nothing": { name: "room less than nothing", because: () => ["The sum is right, and what it says is that the sheath does not fit. There is no room below nothing: give that answer."] },
        "sign-dropped": { name: "sign dropped", because: (say) => [`The sheath is thicker than the opening by ${missing(say)}. That is missing, not left.`] },
      },
      working: (say) => [`${say.of("openingMm")} − ${say.of("sheathOuterMm")} = ${roomHere(say)}`, isSaid(say) ? "Nothing is left: it does not fit." : "What is left is above and below together."],
      right: (say) => isSaid(say) ? ["It does not fit. A smaller sheath, another compartment first, or another way to look; not more force."] : [`${answerText(say, "clearanceMm", left)} together, half of it on each side at best. The drawing does not move; a knee does.`],
      off: () => ["Opening less the outer diameter of the sheath. Where that is nothing or less, it does not fit."],
      inverse: () => [],
      turns: (say) => [`It fits from an opening of more than ${say.of("sheathOuterMm")} on.`],
    },
  },
};
