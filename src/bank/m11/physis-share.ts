import { physisShare as lossOf } from "../../engine/growth/physis-share.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { growth } from "../../facts/growth.ts";
import { answerText, CHILDREN, given, isSaid, PERCENT, SIDES } from "../m01/common.ts";

const DRILL = { key: "drillMm", unit: "mm", least: 5, greatest: 10, step: 0.5 } as const;
const ANGLE = { key: "angleDeg", unit: "deg", least: 40, greatest: 80, step: 5 } as const;
const PLATE = { key: "plateMm2", unit: "mm2", least: 1000, greatest: 3000, step: 50 } as const;
const RIGHT_ANGLE = 90;

const SHEEP = growth("arrest-threshold.sheep@1").number.value ?? 0;
const RABBIT = growth("arrest-threshold.rabbit@1").number.from ?? 0;

const at = (givens: Givens) => ({ drillMm: given(givens, "drillMm"), angleDeg: given(givens, "angleDeg"), plateMm2: given(givens, "plateMm2") });
const numbers = (givens: Givens, angleDeg = at(givens).angleDeg): Solution => {
  const { drillMm, plateMm2 } = at(givens);
  if (!(drillMm > 0 && angleDeg > 0 && angleDeg <= RIGHT_ANGLE && plateMm2 > drillMm ** 2 * 4)) return { says: "none" };
  const { holeMm2, share } = lossOf({ drillMm, angleDeg, plateMm2 });
  return { holeMm2, sharePercent: PERCENT * share };
};
/** A hole of twice the width is four times as large, and so is its share. */
const asRadius = (givens: Givens): Solution => {
  const { drillMm, angleDeg, plateMm2 } = at(givens);
  const { holeMm2, share } = lossOf({ drillMm, angleDeg, plateMm2 });
  return { holeMm2: 4 * holeMm2, sharePercent: 4 * PERCENT * share };
};
const isLimit = (about: Draw["about"]): boolean => about["asks"] === "limit";
const threshold = (givens: Givens, percent: number): Solution => ({ holeMm2: (at(givens).plateMm2 * percent) / PERCENT, sharePercent: percent });
const unlessLimit = (draw: Draw, gives: Solution): Solution | null => (isLimit(draw.about) ? null : gives);
const task = (say: Say): string =>
  say.about("asks") === "limit"
    ? `The parents ask how large a hole, and which share of the plate, may be drilled in ${say.about("child")} without harm to growth.`
    : "You want the size of the hole as the plate sees it, and its share of the plate.";
const square = { places: 1, unit: "mm2" } as const;

/** 11l: what a drill takes from a growth plate; a limit for a child is nobody's to print. */
export const physisShare: SumFamily = {
  kind: "sum",
  id: "physis-share",
  code: "11l",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-physis"],
  reads: ["arrest-threshold.sheep@1", "arrest-threshold.rabbit@1"],
  sources: [{ source: "knapik-sheep-2018", entry: "arrest-threshold.sheep@1" }, { source: "rabbit-physis", entry: "arrest-threshold.rabbit@1" }],
  cautions: [],
  givens: [DRILL, ANGLE, PLATE],
  asks: [
    { id: "holeMm2", unit: "mm2", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "sharePercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => ({
    givens: { drillMm: chance.onGrid(DRILL), angleDeg: chance.onGrid(ANGLE), plateMm2: chance.onGrid(PLATE) },
    about: { child: chance.pick(CHILDREN), age: chance.pick(["9", "10", "11", "12"]), side: chance.pick(SIDES), bone: chance.pick(["tibia", "femur"]), asks: chance.happens(1, 4) ? "limit" : "share" },
  }),
  solve: (givens, about) => {
    const solution = numbers(givens);
    return isLimit(about) ? { says: "ask-locally" } : solution;
  },
  slips: [
    { id: "tilt-left-out", gives: (draw) => unlessLimit(draw, numbers(draw.givens, RIGHT_ANGLE)) },
    { id: "cosine-for-sine", gives: (draw) => unlessLimit(draw, numbers(draw.givens, RIGHT_ANGLE - at(draw.givens).angleDeg)) },
    { id: "diameter-for-radius", gives: (draw) => unlessLimit(draw, asRadius(draw.givens)) },
    { id: "sheep-for-children", gives: ({ givens, about }) => (isLimit(about) ? threshold(givens, SHEEP) : null) },
    { id: "rabbits-for-children", gives: ({ givens, about }) => (isLimit(about) ? threshold(givens, RABBIT) : null) },
  ],
  words: {
    en: {
      title: "A hole in a growth plate",
      stems: [
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee. A drill will cross the open growth plate of the ${say.about("bone")} at an angle. Take the plate as flat, its area from the drawing. ${task(say)}`],
        (say) => [`A round drill cuts a flat plate in an ellipse, longer the flatter it goes. ${say.about("side").charAt(0).toUpperCase()}${say.about("side").slice(1)} ${say.about("bone")} of ${say.about("child")}, ${say.about("age")}, growth plate open. ${task(say)}`],
        (say) => [`The plan for ${say.about("child")}, ${say.about("age")}, crosses the growth plate of the ${say.about("side")} ${say.about("bone")}. The angle is between drill and plate; area and angle come from the drawing. ${task(say)}`],
      ],
      question: "How large is the hole in the plane of the plate and which share of the plate is it, both to one decimal? Where no number can be given, choose the answer in words.",
      givens: { drillMm: "Diameter of the drill", angleDeg: "Angle between drill and plate", plateMm2: "Area of the plate, in the drawing" },
      asks: { holeMm2: "Hole", sharePercent: "Share of the plate" },
      says: { none: "No hole at all", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "tilt-left-out": { name: "tilt left out", because: (say) => [`That is the round drill itself. At ${say.of("angleDeg")} the plate is cut in an ellipse, and the hole is larger.`] },
        "cosine-for-sine": { name: "cosine for sine", because: () => ["The angle is between drill and plate, so the sine belongs below the line. With the cosine a steep drill would make the largest hole."] },
        "diameter-for-radius": { name: "diameter taken for the radius", because: (say) => [`${say.of("drillMm")} is the width of the drill. Taken as the radius it makes the hole four times as large.`] },
        "sheep-for-children": { name: "a threshold of sheep", because: () => ["One experiment in sheep. Between animals and methods the thresholds in print differ, and none was measured in children."] },
        "rabbits-for-children": { name: "a threshold of rabbits", because: () => ["One experiment in rabbits. An animal threshold is not a limit for a child."] },
      },
      working: (say) => isSaid(say) ? ["The sum of hole and share can be done; the limit cannot be read from it.", "Thresholds in print are of animals and differ. Ask the surgeon who follows growing knees where you work."] : [
        `Hole: π × ${say.bare("drillMm")}² ÷ (4 × sin ${say.of("angleDeg")}) = ${answerText(say, "holeMm2", square)}`,
        `Share: ${answerText(say, "holeMm2", square)} ÷ ${say.of("plateMm2")} = ${answerText(say, "sharePercent", { places: 1, unit: "%" })}`,
      ],
      right: (say) => isSaid(say) ? ["Right not to give a number. Nobody has printed one for children, and the animals do not agree."] : [`${answerText(say, "holeMm2", square)}, ${answerText(say, "sharePercent", { places: 1, unit: "%" })} of a plate taken as flat. A steeper drill and a smaller one take less.`],
      off: (say) => isSaid(say) ? ["The question is about a limit in a child, and no such limit was found. Say so, and ask locally."] : ["Diameter squared times π, over four times the sine of the angle between drill and plate; then its share of the area."],
      inverse: () => [],
      turns: (say) => isSaid(say) ? ["If the question were how large the hole is, it would be a sum."] : ["If the question were how much is harmless in this child, the answer would be in words: ask locally."],
    },
  },
};
