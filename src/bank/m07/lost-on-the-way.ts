import { jointPressureMmHg } from "../../engine/fluid/joint-pressure-mm-hg.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import { isSays } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { AGES, answerIn, CHILDREN, childOf, given, measure } from "./fluid-words.ts";

const SET = { key: "setMmHg", unit: "mmHg", least: 40, greatest: 90, step: 1 } as const;
const FLOW = { key: "flowMlPerMin", unit: "mL/min", least: 20, greatest: 150, step: 5 } as const;
const LOSS = { key: "lostPerTenMmHg", unit: "mmHg", least: 1, greatest: 8, step: 0.5 } as const;
const TEN = 10;

const lostOf = (givens: Givens): number => (given(givens, "flowMlPerMin") * given(givens, "lostPerTenMmHg")) / TEN;
/** Flow and loss meet on a grid of quarters, so two decimals say all of it. */
const lost = (say: Say): string => { const mmHg = (say.value("flowMlPerMin") * say.value("lostPerTenMmHg")) / TEN; return measure(mmHg, "mmHg", Number.isInteger(2 * mmHg) ? 1 : 2); };

const solved = (givens: Givens): Solution => {
  const setMmHg = given(givens, "setMmHg");
  const lostMmHg = lostOf(givens);
  const canRun = setMmHg >= 0 && lostMmHg >= 0 && compareOnGrid(lostMmHg, setMmHg) <= 0;
  return canRun ? { jointMmHg: jointPressureMmHg({ setMmHg, flowMlPerMin: given(givens, "flowMlPerMin"), resistanceMmHgMinPerMl: given(givens, "lostPerTenMmHg") / TEN }) } : { says: "none" };
};

const isStuck = (say: Say): boolean => isSays(say.answer);
const joint = (say: Say): string => measure(answerIn(say, "jointMmHg"), "mmHg");

/** 07e: what reaches the joint of a set pressure when liquid runs, or that it cannot run like that. */
export const lostOnTheWay: SumFamily = {
  kind: "sum",
  id: "lost-on-the-way",
  code: "07e",
  module: "M07",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m07-flow"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [SET, FLOW, LOSS],
  asks: [{ id: "jointMmHg", unit: "mmHg", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const setMmHg = chance.onGrid(SET);
    const flowMlPerMin = chance.onGrid(FLOW);
    const isTooMuch = chance.happens(1, 8);
    const atSet = (setMmHg * TEN) / flowMlPerMin;
    const most = Math.floor(2 * atSet) / 2;
    const loss = isTooMuch ? { ...LOSS, least: Math.min(LOSS.greatest, most + 0.5) } : { ...LOSS, greatest: Math.max(LOSS.least, Math.min(LOSS.greatest, most - 0.5)) };
    return {
      givens: { setMmHg, flowMlPerMin, lostPerTenMmHg: chance.onGrid(loss) },
      about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), part: chance.pick(["thin inflow tubing", "a narrow sheath", "two joined lines"]) },
    };
  },
  solve: solved,
  slips: [
    { id: "nothing-lost", gives: ({ givens }) => ({ jointMmHg: given(givens, "setMmHg") }) },
    { id: "loss-added", gives: ({ givens }) => ({ jointMmHg: given(givens, "setMmHg") + lostOf(givens) }) },
    { id: "only-the-loss", gives: ({ givens }) => ({ jointMmHg: lostOf(givens) }) },
    { id: "per-ten-overlooked", gives: ({ givens }) => ({ jointMmHg: given(givens, "setMmHg") - TEN * lostOf(givens) }) },
    { id: "called-stuck", gives: ({ givens }) => (isSays(solved(givens)) || given(givens, "setMmHg") >= TEN * lostOf(givens) ? null : { says: "none" }) },
    { id: "below-nothing", gives: ({ givens }) => (isSays(solved(givens)) ? { jointMmHg: given(givens, "setMmHg") - lostOf(givens) } : null) },
  ],
  inverseOf: "flowMlPerMin",
  words: {
    en: {
      title: "Lost on the way",
      stems: [
        (say) => [`The pump shows what it makes, measured at the height of the knee of ${childOf(say)}. Fluid runs through ${say.about("part")}; what is lost there grows in step with the flow.`],
        (say) => [`Outflow open, fluid running to the knee of ${childOf(say)} through ${say.about("part")}. The set pressure is at the height of the joint, and the line loses pressure in step with the flow.`],
        (say) => [`For ${childOf(say)} the line has been tried out beforehand: ${say.about("part")}, and so much lost for each 10\u2009mL/min. Now it runs, and the set pressure counts at the height of the joint.`],
      ],
      question: "What pressure reaches the joint at this flow? To the nearest mmHg, or say that this flow cannot run.",
      givens: { setMmHg: "Set pressure, at the height of the joint", flowMlPerMin: "Flow", lostPerTenMmHg: "Lost in the line for each 10\u2009mL/min" },
      asks: { jointMmHg: "Pressure in the joint" },
      says: { none: "This flow cannot run", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "nothing-lost": { name: "nothing lost", because: (say) => [`The display shows what is set, not what arrives. At ${say.of("flowMlPerMin")} the line takes ${lost(say)} of it.`] },
        "loss-added": { name: "loss added", because: () => ["Pressure is used up along the line, never gained. The joint lies at the far end, so it has less."] },
        "only-the-loss": { name: "only the loss", because: (say) => [`${lost(say)} is what the line takes. The joint has what is left of the set pressure.`] },
        "per-ten-overlooked": { name: "for each ten overlooked", because: (say) => [`${say.of("lostPerTenMmHg")} are lost for each 10\u2009mL/min. Counted for each mL/min, the loss comes out ten times too large.`] },
        "called-stuck": { name: "called stuck where it runs", because: (say) => [`The line takes ${lost(say)}, less than the ${say.of("setMmHg")} that are set, so it runs. ${say.of("lostPerTenMmHg")} are lost for each 10\u2009mL/min, not for each mL/min.`] },
        "below-nothing": { name: "a pressure below nothing", because: (say) => [`The line would take ${lost(say)} and only ${say.of("setMmHg")} are set. So the flow cannot be ${say.of("flowMlPerMin")}: one of the figures was misread.`] },
      },
      working: (say) => [
        `Lost: ${say.bare("flowMlPerMin")} ÷ 10 × ${say.bare("lostPerTenMmHg")} = ${lost(say)}`,
        isStuck(say) ? `That is more than the ${say.of("setMmHg")} that are set: this flow cannot run.` : `${say.bare("setMmHg")} − ${lost(say)} = ${joint(say)}`,
      ],
      right: (say) => isStuck(say) ? [`The line would need ${lost(say)} and has ${say.of("setMmHg")}. Such a flow cannot run, so look for the figure that was misread.`] : [`${joint(say)} arrive while it runs. Shut the outflow, and the joint stands at the full ${say.of("setMmHg")}: it is the standing joint that is under the most pressure.`],
      off: (say) => [`The line takes ${lost(say)} at this flow. Set that against the ${say.of("setMmHg")} at its start.`],
      inverse: (say, { text }) => [`If ${text.startsWith("0.0") ? "nothing" : text} were running. Here it is ${say.of("flowMlPerMin")}.`],
      turns: (say) => [`The set pressure is used up on the way at ${measure((say.value("setMmHg") * TEN) / say.value("lostPerTenMmHg"), "mL/min")}; no more than that can run.`],
    },
  },
};
