import type { OrderFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { pulseAndFootEdges } from "../../facts/graph-pulse-and-foot.ts";
import { AGES, CHILDREN, childIn, childOf } from "./needle-words.ts";

const LOOKS = ["pulse", "move", "feel"] as const;

const secondLook = (say: Say): string => (say.about("change") === "yes" ? "The comparison then shows a change." : "The comparison then shows no change.");

/** 10n: the checks of pulse and foot before the cuff, after its release and in recovery. */
export const pulseAndFoot: OrderFamily = {
  kind: "order",
  id: "pulse-and-foot",
  code: "10n",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-foot"],
  reads: [],
  sources: [],
  cautions: ["C2", "C6"],
  givens: [],
  edges: pulseAndFootEdges,
  draw: (chance) => {
    const change = chance.happens(1, 2);
    const cards = [...LOOKS.map((look) => `first-${look}`), "write", "cuff-up", "cuff-down", ...LOOKS.map((look) => `again-${look}`), "compare", ...(change ? ["call"] : ["dress"]), "recovery"];
    return { givens: {}, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), side: chance.pick(["left", "right"]), change: change ? "yes" : "no" }, shown: chance.shuffled(cards) };
  },
  slips: [
    { id: "no-first-record", breaks: ["write", "cuff-up"] },
    { id: "looked-under-the-cuff", breaks: ["cuff-down", "again-pulse"] },
    { id: "moved-under-the-cuff", breaks: ["cuff-down", "again-move"] },
    { id: "pulse-without-movement", breaks: ["again-move", "compare"] },
    { id: "watched-instead-of-called", breaks: ["call", "recovery"] },
    { id: "nothing-to-compare-with", breaks: ["first-feel", "write"] },
  ],
  words: {
    en: {
      title: "Pulse and foot",
      stems: [
        (say) => [`A needle will pass near vessels and nerves in the ${say.about("side")} knee of ${childIn(say)}. Put the checks into an order that can tell new from old. ${secondLook(say)}`],
        (say) => [`You look after the ${say.about("side")} foot of ${childIn(say)} from before the cuff until recovery.${say.about("change") === "yes" ? " The comparison shows a change." : " The comparison shows no change."}`],
        (say) => [`${childOf(say)}, ${say.about("side")} knee. Nobody can see the popliteal vessels; the foot speaks for them. Order what is done. ${secondLook(say)}`],
      ],
      question: "In which order?",
      givens: {},
      cards: {
        "first-pulse": "First look: the pulse at the foot",
        "first-move": "First look, the child still awake: ankle and toes up and down",
        "first-feel": "First look, the child still awake: feeling on the back and the sole of the foot",
        write: "Write the first record down",
        "cuff-up": "The cuff goes up",
        "cuff-down": "The cuff comes down",
        "again-pulse": "Second look: the pulse at the foot",
        "again-move": "Second look: ankle and toes up and down, as soon as the child can",
        "again-feel": "Second look: feeling on the back and the sole of the foot, as soon as the child can",
        compare: "Compare with the first record",
        call: "Call for help, by the local card",
        dress: "Write down that nothing has changed",
        recovery: "The same looks once more, before the child leaves recovery",
      },
      slips: {
        "no-first-record": { name: "no first record", because: () => ["With the cuff up and nothing written, you cannot tell new from old. The first record is the only one that cannot be made later."] },
        "looked-under-the-cuff": { name: "pulse sought under the cuff", because: () => ["Under a cuff there is no pulse to feel. The second look belongs after its release."] },
        "moved-under-the-cuff": { name: "movement judged under the cuff", because: () => ["A limb under a cuff grows weak and numb by itself. Judge movement after release, when the child can move it."] },
        "pulse-without-movement": { name: "pulse without movement", because: () => ["A nerve can fail with a good pulse. Compare only when movement has been looked at again as well."] },
        "watched-instead-of-called": { name: "watched instead of called", because: () => ["A change that is found means calling at once. Hours spent watching are hours that a leg does not have."] },
        "nothing-to-compare-with": { name: "feeling left out of the record", because: () => ["What was not written is not known. Feeling belongs in the first record, beside pulse and movement."] },
      },
      working: () => ["Everything that is looked at is looked at before the cuff, and written.", "All of it again after release, compared with the first record; where something has changed, call before anything else. A pulse that is gone is called at once, without waiting for the rest.", "Then once more before the child leaves recovery. Order by common practice, no source; your local card comes first."],
      right: () => ["First record before the cuff, all of it again after release, compared, and where something has changed a call at once. That is how new is told from old."],
      off: () => ["Two records and one comparison: before the cuff and after its release. Nothing may stand between finding a change and calling."],
      moves: () => ["Within one look the cards may change places: pulse before movement, or movement before pulse. The record before the cuff, and the call before everything that follows it, may not."],
      turns: () => ["Any order in which the first record stands before the cuff, the second look after its release, and the comparison after that."],
    },
  },
};
