import type { OrderFamily } from "../../engine/question/family.ts";
import { beforeSkinEdges } from "../../facts/graph-before-skin.ts";
import { AGES, CHILDREN, childOf, HOSPITALS, SIDES } from "./theatre-words.ts";

/** 05h: from the table to the skin, in the order of a local sheet. */
export const beforeSkin: OrderFamily = {
  kind: "order",
  id: "before-skin",
  code: "05h",
  module: "M05",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m05-prepare"],
  reads: [],
  sources: [],
  cautions: ["C2", "C15"],
  givens: [],
  edges: beforeSkinEdges,
  draw: (chance) => {
    const left = chance.shuffled(["pad", "alarm", "dose"]).slice(0, 2);
    return {
      givens: {},
      about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) },
      shown: chance.shuffled(["position", "cuff", "prep", "drape", "pause", "up", "cut", ...left]),
    };
  },
  slips: [
    { id: "cuff-before-the-position", breaks: ["position", "cuff"] },
    { id: "padded-under-the-drapes", breaks: ["pad", "drape"] },
    { id: "prepared-before-the-cuff", breaks: ["cuff", "prep"] },
    { id: "pause-before-draping", breaks: ["drape", "pause"] },
    { id: "up-without-alarm", breaks: ["alarm", "up"] },
    { id: "up-before-the-dose", breaks: ["dose", "up"] },
    { id: "up-before-the-pause", breaks: ["pause", "up"] },
  ],
  words: {
    en: {
      title: "From table to skin",
      stems: [
        (say) => [`The ${say.about("side")} knee of ${childOf(say)}. At ${say.about("hospital")} hospital the team pause stands after draping and before the cuff goes up.`],
        (say) => [`${childOf(say)} is asleep; the ${say.about("side")} knee comes next. The sheet of ${say.about("hospital")} hospital puts the team pause between draping and the cuff.`],
        (say) => [`You read the steps for ${childOf(say)} from the sheet of ${say.about("hospital")} hospital: draped, then the team pause, then the cuff up. Put the rest in its place.`],
      ],
      question: "In which order?",
      givens: {},
      cards: {
        position: (say) => `Position ${say.about("child")}, the ${say.about("side")} thigh where the holder will be`,
        pad: "Pad heels, elbows and the other leg",
        cuff: "Lay the cuff over soft padding",
        alarm: "Set pressure and time alarm of the cuff by the sheet",
        dose: "The antibiotic is in",
        prep: "Prepare the skin",
        drape: "Drape the leg",
        pause: "Team pause",
        up: "The cuff goes up",
        cut: "Cut the skin",
      },
      slips: {
        "cuff-before-the-position": { name: "cuff before the position", because: () => ["A cuff laid on first turns and slips while the child is positioned. Position, then cuff."] },
        "padded-under-the-drapes": { name: "padded under the drapes", because: () => ["Under drapes nobody sees a heel. What presses for an hour is padded while it can be seen."] },
        "prepared-before-the-cuff": { name: "skin prepared before the cuff", because: () => ["A cuff laid on wet skin keeps the fluid under it, and whoever lays it on touches prepared skin."] },
        "pause-before-draping": { name: "pause before draping", because: (say) => [`Elsewhere that may be the rule. The sheet of ${say.about("hospital")} hospital puts the pause after draping, when the field that will be cut is what everybody sees.`] },
        "up-without-alarm": { name: "cuff up without an alarm", because: () => ["A cuff without an alarm is counted by memory. Set it before it is needed."] },
        "up-before-the-dose": { name: "cuff up before the dose", because: () => ["What is given once the cuff is up cannot reach the field. Your own sheet says how long before the cuff it must be in."] },
        "up-before-the-pause": { name: "cuff up before the pause", because: () => ["The pause asks whether this is the child and the side. With the cuff up, the minutes already run, perhaps on the wrong leg."] },
      },
      working: (say) => ["Position, pad, cuff; then skin and drapes.", `Then the team pause, by the sheet of ${say.about("hospital")} hospital, and only then the cuff and the skin. The alarm is set at any time before the cuff goes up; the antibiotic is in as long before it as your own sheet says.`, "Common practice, no source; your own sheet comes first."],
      right: () => ["What can only be done while the child can be seen comes first; what starts a clock comes last."],
      off: () => ["First what needs the uncovered child, then skin and drapes, then the pause, then the cuff, then the skin."],
      moves: () => ["Padding the heels and laying the cuff may change places. Antibiotic and alarm fit in several places before the cuff goes up, but not behind it."],
      turns: (say) => [`Any order with the pause between draping and cuff, as the sheet of ${say.about("hospital")} hospital has it. Another hospital may place it elsewhere.`],
    },
  },
};
