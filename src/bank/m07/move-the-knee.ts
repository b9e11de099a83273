import type { OrderFamily } from "../../engine/question/family.ts";
import { moveTheKneeEdges } from "../../facts/graph-move-the-knee.ts";
import { jointPressure } from "../../facts/joint-pressure.ts";
import { AGES, CHILDREN, childOf } from "./fluid-words.ts";

const BURST = "capsule-bursts.adult@1";
const bursts = (): string => { const { from = "", to = "" } = jointPressure(BURST).value; return `${from}–${to}\u2009mmHg`; };

/** 07i: the order in which a full joint is emptied before the knee is moved, and filled again after it. */
export const moveTheKnee: OrderFamily = {
  kind: "order",
  id: "move-the-knee",
  code: "07i",
  module: "M07",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m07-move"],
  reads: [BURST],
  sources: [{ source: "rupture-1988", entry: BURST }],
  cautions: ["C9", "C15"],
  givens: [],
  edges: moveTheKneeEdges,
  draw: (chance) => {
    const extra = chance.shuffled(["say", "free", "close", "feel"]).slice(0, 2);
    const cards = ["lower", "open", "fallen", "move", "raise", ...extra];
    return {
      givens: {},
      about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), side: chance.pick(["left", "right"]), way: chance.pick(["bent further", "straightened", "put into the figure of four"]) },
      shown: chance.shuffled(cards),
    };
  },
  slips: [
    { id: "moved-unannounced", breaks: ["say", "move"] },
    { id: "moved-with-the-scope-in-the-gap", breaks: ["free", "move"] },
    { id: "moved-under-inflow", breaks: ["lower", "move"] },
    { id: "moved-with-the-outflow-shut", breaks: ["open", "move"] },
    { id: "moved-without-looking", breaks: ["fallen", "move"] },
    { id: "filled-before-it-lay-still", breaks: ["move", "raise"] },
  ],
  words: {
    en: {
      title: "Moving a full knee",
      stems: [
        (say) => [`The ${say.about("side")} knee of ${childOf(say)} is full and the outflow is shut. Now it is to be ${say.about("way")}.`],
        (say) => [`“I want the knee ${say.about("way")},” says the surgeon. The joint of ${childOf(say)} stands under pressure, with nothing running.`],
        (say) => [`Nothing runs: the ${say.about("side")} knee of ${childOf(say)} is filled, outflow shut. The next view needs it ${say.about("way")}.`],
      ],
      question: "In which order, so that the joint is not moved while it is full?",
      givens: {},
      cards: {
        say: "Say aloud that the knee is about to move",
        free: "Draw scope and instruments back from between the bones",
        lower: "Lower the inflow",
        open: "Open the outflow",
        fallen: "See that the pressure has fallen",
        move: (say) => `The knee is ${say.about("way")}, slowly`,
        close: "Set the outflow as it was",
        raise: "Bring the inflow back to what the sheet names",
        feel: "Feel thigh and calf: are they still soft?",
      },
      slips: {
        "moved-unannounced": { name: "moved without a word", because: () => ["Whoever holds the inflow must know before the knee moves. A warning that comes afterwards empties nothing."] },
        "moved-with-the-scope-in-the-gap": { name: "moved with the scope between the bones", because: () => ["A scope between the bones bends or scores them when the knee moves. Draw back first."] },
        "moved-under-inflow": { name: "moved under full inflow", because: () => [`A movement can make the joint smaller while fluid still presses in. Filled adult cadaver knees burst at ${bursts()} when moved; a full joint that moves can burst.`] },
        "moved-with-the-outflow-shut": { name: "moved with the outflow shut", because: () => ["What cannot leave is squeezed. With the outflow shut the pressure in a moving joint can rise far above anything the pump makes."] },
        "moved-without-looking": { name: "moved without looking at the pressure", because: () => ["An open tap may be blocked, and a pump takes a moment. Only a pressure that has been seen to fall has fallen."] },
        "filled-before-it-lay-still": { name: "filled before it lay still", because: () => ["Inflow that is raised before the movement fills the joint that is about to move. First move, then fill."] },
      },
      working: () => ["Empty first: inflow down, outflow open, and see the pressure fall.", "Then move, slowly. Then set the outflow, then the inflow, and feel whether thigh and calf are soft.", `Adult cadaver knees, filled and then moved, burst at ${bursts()}. The order is common practice; your local card comes first.`],
      right: () => ["Emptied, seen to be empty, moved, filled again. The pump’s own limit does not help here, because it is the movement that makes the pressure."],
      off: () => ["Nothing moves before the inflow is down, the outflow is open and the pressure has been seen to fall. Nothing is filled again before the knee lies still."],
      moves: () => ["Inflow before outflow, or outflow before inflow: both are right. What may not move forward is the knee."],
      turns: () => ["Any order in which inflow, outflow and the look at the pressure stand before the movement, and the filling after it."],
    },
  },
};
