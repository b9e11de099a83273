import type { OrderFamily } from "../../engine/question/family.ts";
import { teamPauseEdges } from "../../facts/graph-team-pause.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

const ALWAYS = ["allergy", "consent", "marked", "read-aloud", "antibiotic", "skin", "final-count"] as const;
const MORE = ["introduced", "images", "sterility", "name-asked", "labelled"] as const;

/** 04j: the three stages around an operation, with allergy, consent and side. */
export const teamPause: OrderFamily = {
  kind: "order",
  id: "team-pause",
  code: "04j",
  module: "M04",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m04-pause"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [],
  edges: teamPauseEdges,
  draw: (chance) => {
    const more = chance.shuffled(MORE).slice(0, 1 + chance.below(MORE.length));
    return { givens: {}, about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) }, shown: chance.shuffled([...ALWAYS, ...more]) };
  },
  slips: [
    { id: "skin-before-consent", breaks: ["consent", "skin"] },
    { id: "skin-before-the-side", breaks: ["read-aloud", "skin"] },
    { id: "allergy-after-the-drug", breaks: ["allergy", "antibiotic"] },
    { id: "side-from-memory", breaks: ["marked", "read-aloud"] },
    { id: "counted-before-the-cut", breaks: ["skin", "final-count"] },
  ],
  words: {
    en: {
      title: "The team pause",
      stems: [
        (say) => [`${say.about("child")} comes to theatre at ${say.about("hospital")} for the ${say.about("side")} knee. Three stages lie ahead: before the anaesthetic, before the skin, before anybody leaves.`],
        (say) => [`${say.about("hospital")}, one child, one ${say.about("side")} knee. Put the checks of the three stages in an order in which each can still change something.`],
        (say) => [`A check that comes after what it protects is only a record. ${say.about("child")}, ${say.about("side")} knee, ${say.about("hospital")}.`],
      ],
      question: "In which order? Any order that breaks no rule will do.",
      givens: {},
      cards: {
        "name-asked": "Ask child or parent for name and date of birth",
        allergy: "Ask about allergy, latex included",
        consent: "Read the consent: operation and side",
        marked: "See the mark on the leg, with the child or parent",
        introduced: "Everybody says name and task",
        images: "Show the images, with name and side",
        sterility: "Say that the set is sterile and complete",
        antibiotic: "Give the antibiotic",
        "read-aloud": "Read name, operation and side aloud from consent and mark",
        skin: "Make the first cut",
        "final-count": "Close the final count",
        labelled: "Read the labels of the implants into the record",
      },
      slips: {
        "skin-before-consent": { name: "skin before consent", because: () => ["What was agreed, and on which side, stands in the consent. After the cut, reading it changes nothing."] },
        "skin-before-the-side": { name: "skin before the side was read aloud", because: () => ["A side that is wrong is found by the one who hears it read. After the cut, hearing it changes nothing."] },
        "allergy-after-the-drug": { name: "allergy asked after the drug", because: () => ["The drug is in. The answer to the question can now only name the reaction."] },
        "side-from-memory": { name: "side read from memory", because: () => ["The side is read from the mark on the leg and from the consent. What was not yet looked at can only be remembered."] },
        "counted-before-the-cut": { name: "final count before the cut", because: () => ["The final count closes what was opened. Before the cut there is only an opening count."] },
      },
      working: () => ["Before the anaesthetic: identity, consent, mark, allergy. Before the skin: side read aloud, antibiotic given, images and sterility. Before anybody leaves: count and labels.", "The three stages are those of the surgical safety checklist of the World Health Organization; the order inside a stage is the author’s."],
      right: () => ["Every check comes while it can still change something."],
      off: () => ["Ask of each card what it protects. Allergy protects from the drug and is asked before the anaesthetic, mark and consent from the wrong side, the pause from the first cut."],
      moves: () => ["Names, images and sterility may change places before the skin. Side, consent and allergy may not move behind what they protect."],
      turns: () => ["Any order in which consent, mark and allergy come before reading aloud, reading aloud before the skin, and allergy before the drug."],
    },
  },
};
