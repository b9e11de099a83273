import { leastTiltDeg } from "../../engine/optics/least-tilt-deg.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import { isSays } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { answerIn, CHILDREN, FIELD_LABEL, given, HOSPITALS, measure } from "./optics-words.ts";

const FIELD = { key: "fieldDeg", unit: "deg", least: 60, greatest: 110, step: 10 } as const;
const TARGET = { key: "targetDeg", unit: "deg", least: 20, greatest: 100, step: 1 } as const;
const ROOM = { key: "roomDeg", unit: "deg", least: 10, greatest: 45, step: 1 } as const;
const HALF_TURN_DEG = 180;

const tiltOf = (givens: Givens): number => {
  const [targetDeg, fieldDeg] = [given(givens, "targetDeg"), given(givens, "fieldDeg")];
  const holds = targetDeg >= 0 && targetDeg <= HALF_TURN_DEG && fieldDeg > 0 && fieldDeg <= HALF_TURN_DEG;
  return holds ? leastTiltDeg({ targetDeg, fieldDeg }) : Number.NaN;
};
const solved = (givens: Givens): Solution => {
  const tiltDeg = tiltOf(givens);
  return tiltDeg <= given(givens, "roomDeg") ? { tiltDeg } : { says: "none" };
};
const isStuck = (givens: Givens): boolean => isSays(solved(givens));
const sideways = (givens: Givens): number => given(givens, "targetDeg") - given(givens, "fieldDeg") / 2;

const half = (say: Say): string => say.number(say.value("fieldDeg") / 2, 0);
const need = (say: Say): number => Math.max(0, say.value("targetDeg") - say.value("fieldDeg") / 2);
const isNone = (say: Say): boolean => isSays(say.answer);
const isSeen = (say: Say): boolean => !isNone(say) && answerIn(say, "tiltDeg") === 0;

/** 03h: how far a straight-ahead scope must tilt, and whether the portal lets it. */
export const tiltNeeded: SumFamily = {
  kind: "sum",
  id: "tilt-needed",
  code: "03h",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-move"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [FIELD, TARGET, ROOM],
  asks: [{ id: "tiltDeg", unit: "deg", roundTo: 1, rounding: "up", safeSide: "none" }],
  draw: (chance) => ({
    givens: { fieldDeg: chance.onGrid(FIELD), targetDeg: chance.onGrid(TARGET), roomDeg: chance.onGrid(ROOM) },
    about: { child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(["the root", "the back of the condyle", "the edge of the tear", "the popliteus tendon"]) },
    origins: { fieldDeg: { from: "local" } },
  }),
  solve: solved,
  slips: [
    { id: "target-for-tilt", gives: ({ givens }) => ({ tiltDeg: given(givens, "targetDeg") }) },
    { id: "whole-field-taken-off", gives: ({ givens }) => { const tiltDeg = given(givens, "targetDeg") - given(givens, "fieldDeg"); return tiltDeg > 0 ? { tiltDeg } : null; } },
    { id: "turned-instead", gives: ({ givens }) => (!isStuck(givens) && tiltOf(givens) > 0 ? { tiltDeg: 0 } : null) },
    { id: "sign-lost", gives: ({ givens }) => (sideways(givens) < 0 ? { tiltDeg: -sideways(givens) } : null) },
    { id: "portal-left-out", gives: ({ givens }) => (isStuck(givens) ? { tiltDeg: sideways(givens) } : null) },
    { id: "as-far-as-it-goes", gives: ({ givens }) => (isStuck(givens) ? { tiltDeg: given(givens, "roomDeg") } : null) },
    { id: "all-the-tilt", gives: ({ givens }) => (isStuck(givens) || tiltOf(givens) === given(givens, "roomDeg") ? null : { tiltDeg: given(givens, "roomDeg") }) },
    { id: "target-for-the-limit", gives: ({ givens }) => (!isStuck(givens) && given(givens, "targetDeg") > given(givens, "roomDeg") ? { says: "none" } : null) },
  ],
  inverseOf: "targetDeg",
  words: {
    en: {
      title: "How far to tilt",
      stems: [
        (say) => [`A straight-ahead scope stands in the knee of ${say.about("child")}. From its tip, ${say.about("thing")} lies off the shaft as printed. Bone and skin allow the shaft only so much tilt from this portal.`],
        (say) => [`You look for ${say.about("thing")} in the knee of ${say.about("child")} with a straight-ahead scope. It can tilt about its tip until bone or the portal stops it.`],
        (say) => [`“Just turn it,” says somebody. The scope in the knee of ${say.about("child")} looks straight ahead, and ${say.about("thing")} lies to one side. The portal sets a bound to tilting.`],
      ],
      question: "What is the least tilt that brings it to the edge of the picture? In whole degrees; 0 if it is seen already; if this portal does not allow it, say so.",
      givens: { fieldDeg: FIELD_LABEL, targetDeg: "Target, off the shaft, seen from the tip", roomDeg: "Tilt that the portal allows towards that side, at most" },
      asks: { tiltDeg: "Least tilt" },
      says: { none: "Not from this portal", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "target-for-tilt": { name: "target taken for the tilt", because: (say) => [`That would bring it to the middle of the picture. Its edge is enough, and the picture reaches ${half(say)}° to each side.`] },
        "whole-field-taken-off": { name: "whole field taken off", because: (say) => [`${say.of("fieldDeg")} is from edge to edge. Towards the target the picture reaches only half of it, ${half(say)}°.`] },
        "turned-instead": { name: "turned instead of tilted", because: () => ["A straight-ahead scope that is turned shows the same round again. Only tilting brings in what lies outside it."] },
        "sign-lost": { name: "sign lost", because: (say) => [`The picture reaches ${half(say)}° to the side and the target lies at ${say.of("targetDeg")}. It is seen already.`] },
        "portal-left-out": { name: "portal left out", because: (say) => [`So much tilt would be needed, but this portal allows ${say.of("roomDeg")} only. Levering further presses on cartilage and on the scope.`] },
        "as-far-as-it-goes": { name: "as far as it goes", because: (say) => [`At ${say.of("roomDeg")} the target is still ${measure(need(say) - say.value("roomDeg"), "deg", 0)} outside the picture.`] },
        "all-the-tilt": { name: "all the tilt that there is", because: (say) => [`It would be in the picture then, but the least was asked: ${measure(need(say), "deg", 0)}. Every degree more brings the shaft nearer to the bone.`] },
        "target-for-the-limit": { name: "target held against the limit", because: (say) => [`The target lies at ${say.of("targetDeg")}, but the picture reaches ${half(say)}° towards it. ${isSeen(say) ? "It is seen without any tilt." : `A tilt of ${measure(need(say), "deg", 0)} is enough, and the portal allows ${say.of("roomDeg")}.`}`] },
      },
      working: (say) => [
        `Half the field: ${half(say)}°`,
        isSeen(say) ? `${say.of("targetDeg")} is not beyond that: it is seen without tilting. 0°` : `${say.bare("targetDeg")} − ${half(say)} = ${measure(need(say), "deg", 0)}`,
        isNone(say) ? `The portal allows ${say.of("roomDeg")}: not from here.` : `The portal allows ${say.of("roomDeg")}.`,
      ],
      right: (say) => {
        if (isNone(say)) return [`It would need ${measure(need(say), "deg", 0)} and this portal allows ${say.of("roomDeg")}. Change the portal, or take a scope with a tilted view.`];
        return isSeen(say) ? ["It is in the picture already. A shaft that is not tilted presses on nothing."] : [`${measure(answerIn(say, "tiltDeg"), "deg", 0)}, and the portal allows it. Tilt slowly: the tip swings against cartilage.`];
      },
      off: (say) => [`Half the field, ${half(say)}°, is seen without moving. What the target lies beyond that must be tilted, as far as the portal allows.`],
      inverse: (say, { text }) => [`If the target lay ${text} off the shaft. It lies at ${say.of("targetDeg")}.`],
      turns: (say) => [`Without tilting, the picture ends at ${half(say)}°; with all the tilt that the portal allows it ends at ${measure(say.value("fieldDeg") / 2 + say.value("roomDeg"), "deg", 0)}.`],
    },
  },
};
