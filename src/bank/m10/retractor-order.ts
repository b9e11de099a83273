import type { OrderFamily } from "../../engine/question/family.ts";
import { retractorOrderEdges } from "../../facts/graph-retractor-order.ts";
import { AGES, CHILDREN, childOf } from "./needle-words.ts";

/** 10o, first step: the order of the lateral approach with a retractor. */
export const retractorOrder: OrderFamily = {
  kind: "order",
  id: "retractor-order",
  code: "10o",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-fallback"],
  reads: ["nerve-caught.adult-without-retractor@1", "nerve-caught.adult-with-retractor@1"],
  sources: [{ source: "deutsch-1999", entry: "nerve-caught.adult-with-retractor@1" }],
  cautions: ["C2", "C6", "C9"],
  givens: [],
  edges: retractorOrderEdges,
  draw: (chance) => {
    const optional = chance.shuffled(["catch", "count", "in-front-of-gastrocnemius"]).slice(0, 1 + chance.below(3));
    const cards = ["bend", "cut", "in-front-of-biceps", "place", "see", "needles", "tie", ...optional];
    return { givens: {}, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), side: chance.pick(["left", "right"]) }, shown: chance.shuffled(cards) };
  },
  slips: [
    { id: "needles-first", breaks: ["see", "needles"] },
    { id: "placed-not-seen", breaks: ["place", "see"] },
    { id: "behind-the-biceps", breaks: ["in-front-of-biceps", "place"] },
    { id: "knee-left-straight", breaks: ["bend", "cut"] },
    { id: "tied-before-caught", breaks: ["catch", "tie"] },
  ],
  words: {
    en: {
      title: "Inside out, with a retractor",
      stems: [
        (say) => [`No depth was left on the planned line in the ${say.about("side")} knee of ${childOf(say)}. You go inside out on the lateral side, with a retractor in front of what must not be met.`],
        (say) => [`${childOf(say)}, ${say.about("side")} knee, lateral side. Sutures will be passed from inside out. Order the steps so that the first needle meets metal, not a nerve.`],
        (say) => [`The way out when a needle line has no window: a small cut behind, a retractor, and needles that come to you. The ${say.about("side")} knee of ${childOf(say)}, lateral side.`],
      ],
      question: "In which order?",
      givens: {},
      cards: {
        bend: "Bend the knee, so that the peroneal nerve falls back",
        cut: "Cut behind the collateral ligament, along the joint line",
        "in-front-of-biceps": "Go in front of the biceps tendon",
        "in-front-of-gastrocnemius": "Go in front of the lateral head of gastrocnemius",
        place: "Place the retractor against the capsule",
        see: "See the retractor behind the meniscus, with your own eyes",
        needles: "Pass the first pair of needles",
        catch: "Catch both needles on the retractor and bring them out",
        tie: "Tie over the capsule, with the knee as your teacher bends it",
        count: "Count the needles",
      },
      slips: {
        "needles-first": { name: "needles before the retractor is seen", because: () => ["A needle that is passed blind goes where it likes. The retractor must be seen before the first one."] },
        "placed-not-seen": { name: "retractor placed, not seen", because: () => ["A retractor that nobody has seen may lie behind the nerve. Look before you trust it."] },
        "behind-the-biceps": { name: "behind the biceps", because: () => ["Behind the biceps is where the nerve lies. The way in goes in front of it, and stays there."] },
        "knee-left-straight": { name: "cut with the knee straight", because: () => ["In a straight knee the nerve is tight and near. Bent, it falls back before you cut."] },
        "tied-before-caught": { name: "tied before both needles were out", because: () => ["A knot over one needle leaves the other inside. Both come out, then you tie."] },
      },
      working: () => ["Knee bent, cut behind the collateral ligament, in front of biceps, in front of gastrocnemius.", "Retractor in, retractor seen, then the needles, then the knot.", "Order by common practice, no source; adult knees: a nerve branch was caught in 2 of 10 without a retractor and in 0 of 10 with one (Deutsch 1999)."],
      right: () => ["In front of the biceps, retractor in, retractor seen, and only then a needle. In adult knees a branch was caught in 2 of 10 without it and in 0 of 10 with it; 0 of 10 is not never."],
      off: () => ["Everything serves one moment: when the first needle comes through, metal must stand between it and the nerve, and you must have seen it there."],
      moves: () => ["The retractor is seen before the first needle, whatever else changes places. Catching, tying and counting come after the needles."],
      turns: () => ["Any order in which the knee is bent before the cut, the way goes in front of the biceps, and the retractor is seen before the first needle."],
    },
  },
};
