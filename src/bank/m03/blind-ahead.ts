import { blindCircleMm } from "../../engine/optics/blind-circle-mm.ts";
import { fieldWidthMm } from "../../engine/optics/field-width-mm.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, FIELD_LABEL, given, HOSPITALS, isField, measure, PICTURE_SAYS, radians } from "./optics-words.ts";

const VIEW = { key: "viewDeg", unit: "deg", least: 30, greatest: 70, step: 5 } as const;
const FIELD = { key: "fieldDeg", unit: "deg", least: 45, greatest: 115, step: 5 } as const;
const DISTANCE = { key: "distanceMm", unit: "mm", least: 5, greatest: 20, step: 0.5 } as const;
const RIGHT_ANGLE_DEG = 90;

/** A blind circle that is wider than this lies outside a small knee. */
const WIDEST_MM = 25;
/** The distance at which the blind circle is still inside the knee, on the grid. */
const farthestMm = (blindAtDeg: number): number =>
  blindAtDeg <= 0 ? DISTANCE.greatest : Math.min(DISTANCE.greatest, Math.floor(WIDEST_MM / Math.tan(radians(blindAtDeg))) / 2);

const onPlane = (givens: Givens, halfDeg: number): Solution => ({ circleMm: fieldWidthMm({ distanceMm: given(givens, "distanceMm"), fieldDeg: 2 * halfDeg }) });
const blindDeg = (givens: Givens): number => given(givens, "viewDeg") - given(givens, "fieldDeg") / 2;
const solved = (givens: Givens): Solution => {
  const [distanceMm, viewDeg, fieldDeg] = [given(givens, "distanceMm"), given(givens, "viewDeg"), given(givens, "fieldDeg")];
  const holds = isField(fieldDeg) && distanceMm > 0 && viewDeg >= 0 && blindDeg(givens) < RIGHT_ANGLE_DEG && viewDeg + fieldDeg / 2 <= 2 * RIGHT_ANGLE_DEG;
  return holds ? { circleMm: blindCircleMm({ distanceMm, viewDeg, fieldDeg }) } : { says: "cannot-be-told" };
};
const half = (say: Say): string => measure(say.value("fieldDeg") / 2, "deg");
const rest = (say: Say): number => say.value("viewDeg") - say.value("fieldDeg") / 2;
const circle = (say: Say): string => measure(answerIn(say, "circleMm"), "mm");
const isOpen = (say: Say): boolean => rest(say) > 0;

/** 03d: the circle straight ahead that an angled scope does not see, however it is turned. */
export const blindAhead: SumFamily = {
  kind: "sum",
  id: "blind-ahead",
  code: "03d",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-field"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [VIEW, FIELD, DISTANCE],
  asks: [{ id: "circleMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const [viewDeg, fieldDeg] = [chance.pick([30, 30, 45, 70, 70, 70]), chance.onGrid(FIELD)];
    return {
      givens: { viewDeg, fieldDeg, distanceMm: chance.onGrid({ ...DISTANCE, greatest: farthestMm(viewDeg - fieldDeg / 2) }) },
      about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), way: chance.pick(["through the notch", "along the gutter", "behind the condyle"]) },
      origins: { fieldDeg: { from: "local" } },
    };
  },
  solve: solved,
  slips: [
    { id: "view-angle-alone", gives: ({ givens }) => onPlane(givens, given(givens, "viewDeg")) },
    { id: "whole-field-taken-off", gives: ({ givens }) => { const leftDeg = given(givens, "viewDeg") - given(givens, "fieldDeg"); return leftDeg > 0 ? onPlane(givens, leftDeg) : null; } },
    { id: "one-side-only", gives: ({ givens }) => (blindDeg(givens) > 0 ? { circleMm: given(givens, "distanceMm") * Math.tan(radians(blindDeg(givens))) } : null) },
    { id: "nothing-is-missed", gives: ({ givens }) => (blindDeg(givens) > 0 ? { circleMm: 0 } : null) },
    { id: "sign-lost", gives: ({ givens }) => (blindDeg(givens) < 0 ? onPlane(givens, -blindDeg(givens)) : null) },
  ],
  inverseOf: "distanceMm",
  words: {
    en: {
      title: "Blind straight ahead",
      stems: [
        (say) => [`The scope goes ${say.about("way")} in the knee of ${say.about("child")}. It is turned once about its own shaft, the tip standing still, before a surface square to the shaft.`],
        (say) => [`A scope whose view is tilted is pushed ${say.about("way")}. In the knee of ${say.about("child")} something lies straight ahead of the shaft. You turn the scope once round and leave the tip where it is.`],
        (say) => [`“I turned it all the way round, so I have seen everything.” The scope stands ${say.about("way")} in the knee of ${say.about("child")}, before a surface square to its shaft.`],
      ],
      question: "How wide is the circle straight ahead that stays unseen? To the nearest tenth of a millimetre; write 0 where nothing straight ahead is missed.",
      givens: { viewDeg: "View, off the shaft", fieldDeg: FIELD_LABEL, distanceMm: "Distance to the surface" },
      asks: { circleMm: "Circle that stays unseen" },
      says: PICTURE_SAYS,
      slips: {
        "view-angle-alone": { name: "field left out", because: (say) => [`The middle of the view is ${say.of("viewDeg")} off the shaft, but the picture reaches ${half(say)} back from there. That much is seen.`] },
        "whole-field-taken-off": { name: "whole field taken off", because: (say) => [`Only half of the field, ${half(say)}, reaches towards the shaft. The other half looks away from it.`] },
        "one-side-only": { name: "one side only", because: () => ["That is from the line of the shaft to the edge of what is seen. The blind circle has two such halves."] },
        "nothing-is-missed": { name: "blind circle denied", because: (say) => [`The view is tilted by ${say.of("viewDeg")} and reaches back only ${half(say)}. ${measure(rest(say), "deg")} on every side of the shaft stay dark, however you turn.`] },
        "sign-lost": { name: "sign lost", because: (say) => [`The picture reaches ${measure(-rest(say), "deg")} past the line of the shaft. That overlap is seen twice; nothing is missed.`] },
      },
      working: (say) => [
        `View less half the field: ${say.bare("viewDeg")} − ${say.number(say.value("fieldDeg") / 2)} = ${measure(rest(say), "deg")}`,
        isOpen(say) ? `2 × ${say.bare("distanceMm")} × tan ${measure(rest(say), "deg")} = ${circle(say)}` : "Not above 0: the picture reaches the line of the shaft, and nothing is missed. 0 mm.",
      ],
      right: (say) => isOpen(say) ? [`${circle(say)} straight ahead stay unseen, however the scope is turned. Before pushing on, look with another scope or from another portal.`] : [`With a field of ${say.of("fieldDeg")} a view of ${say.of("viewDeg")} still covers the line of the shaft: no blind circle. With a narrower field it would have one.`],
      off: (say) => [`Half of the field reaches back towards the shaft. What the view is tilted beyond that stays blind on every side: ${isOpen(say) ? measure(rest(say), "deg") : "here nothing"}.`],
      inverse: (say, { text }) => [`If the surface were ${text} away. It is ${say.of("distanceMm")}.`],
      turns: (say) => [`The blind circle begins where the field is narrower than ${measure(2 * say.value("viewDeg"), "deg", 0)}, twice the tilt of the view.`],
    },
  },
};
