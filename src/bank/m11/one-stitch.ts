import type { OrderFamily } from "../../engine/question/family.ts";
import { oneStitchEdges } from "../../facts/graph-one-stitch.ts";
import { CASE_ABOUT, caseOf } from "./stitch-words.ts";

const ALL_INSIDE = ["measure", "set-stop", "check-stop", "enter", "first-anchor", "withdraw", "second-site", "second-anchor", "slack", "probe", "cut", "recount"] as const;
const ALL_INSIDE_MORE = ["guard", "compare", "look"] as const;
const INSIDE_OUT = ["incise", "retractor", "see", "first-needle", "second-needle", "retrieve", "flex", "tie", "test", "trim", "needles-counted"] as const;

const plan = (about: Readonly<Record<string, string>>, isAllInside: boolean): Readonly<Record<string, string>> => ({ ...about, method: isAllInside ? "all-inside" : "inside-out" });

/** 11e: the order of one stitch, all-inside or inside-out; two graphs of equal rank. */
export const oneStitch: OrderFamily = {
  kind: "order",
  id: "one-stitch",
  code: "11e",
  module: "M11",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m11-order"],
  reads: [],
  sources: [],
  cautions: ["C2", "C6"],
  givens: [],
  edges: oneStitchEdges,
  draw: (chance) => {
    const isAllInside = chance.happens(1, 2);
    const more = chance.shuffled(ALL_INSIDE_MORE).slice(0, chance.below(ALL_INSIDE_MORE.length + 1));
    const cards: readonly string[] = isAllInside ? [...ALL_INSIDE, ...more] : INSIDE_OUT;
    return { givens: {}, about: plan(CASE_ABOUT(chance), isAllInside), shown: chance.shuffled(cards) };
  },
  slips: [
    { id: "stop-not-checked", breaks: ["check-stop", "enter"] },
    { id: "second-before-first", breaks: ["first-anchor", "second-anchor"] },
    { id: "pulled-before-the-second", breaks: ["second-anchor", "slack"] },
    { id: "cut-before-the-probe", breaks: ["probe", "cut"] },
    { id: "needle-before-the-retractor", breaks: ["retractor", "first-needle"] },
    { id: "retractor-not-seen", breaks: ["see", "first-needle"] },
    { id: "tied-before-retrieved", breaks: ["retrieve", "tie"] },
    { id: "tied-at-any-bend", breaks: ["flex", "tie"] },
    { id: "trimmed-before-the-test", breaks: ["test", "trim"] },
  ],
  words: {
    en: {
      title: "One stitch, in order",
      stems: [
        (say) => [`${caseOf(say)} One ${say.about("method")} stitch, from the first step to the count.`],
        (say) => [`${caseOf(say)} You talk a colleague through one ${say.about("method")} stitch before you do it.`],
        (say) => [`The cards of one ${say.about("method")} stitch have fallen on the floor. ${caseOf(say)} Any order that breaks no rule will do.`],
      ],
      question: "In which order?",
      givens: {},
      cards: {
        measure: "Measure from the entry to the meniscocapsular junction",
        "set-stop": "Set the depth stop",
        "check-stop": "Read the stop aloud and have it checked",
        guard: "Guard the cartilage on the way in",
        enter: "Enter the meniscus on the planned line, in view",
        "first-anchor": "Seat the first anchor beyond the capsule",
        withdraw: "Withdraw the needle under sight",
        "second-site": "Go to the second site, at the planned spacing",
        "second-anchor": "Seat the second anchor",
        slack: "Take up the slack, as the device’s instructions say",
        compare: "Compare the edges of the tear",
        probe: "Test the stitch with the probe",
        cut: "Cut the suture",
        look: "Take a final look, cartilage included",
        recount: "Count what stayed and what came back",
        incise: "Make the incision down to the capsule",
        retractor: "Place the retractor in front of what must not be met",
        see: "See the retractor with your own eyes",
        "first-needle": "Pass the first needle of the pair",
        "second-needle": "Pass the second needle of the pair",
        retrieve: "Retrieve both needles at the retractor",
        flex: "Bring the knee to the bend at which it is to be tied",
        tie: "Tie over the capsule",
        test: "Test the stitch with the probe from inside",
        trim: "Trim the suture ends",
        "needles-counted": "Count the needles, tips included",
      },
      slips: {
        "stop-not-checked": { name: "entered before the stop was checked", because: () => ["The stop is the only thing between the plan and the artery. Read aloud and checked after the needle is in, it protects nobody."] },
        "second-before-first": { name: "second anchor before the first", because: () => ["The second anchor has nothing to pull against until the first holds beyond the capsule."] },
        "pulled-before-the-second": { name: "slack taken up too early", because: () => ["With one anchor there is no stitch to tighten yet. The pull only drags that anchor back."] },
        "cut-before-the-probe": { name: "cut before the probe", because: () => ["Once cut, a loose stitch cannot be tightened. It can only be left as it is or taken out. Test first."] },
        "needle-before-the-retractor": { name: "needle before the retractor", because: () => ["Outside the capsule nothing stopped that needle. The retractor stands between it and the nerve, so it comes first."] },
        "retractor-not-seen": { name: "retractor taken on trust", because: () => ["A retractor that nobody has seen may lie in the wrong layer. Look before the first needle, not after it."] },
        "tied-before-retrieved": { name: "tied before both needles were out", because: () => ["A knot needs both ends outside, free of tissue. One needle still inside is a needle lost behind the knot."] },
        "tied-at-any-bend": { name: "tied at any bend", because: () => ["The capsule slides as the knee bends. Tied at another bend, the stitch is slack, or it holds the knee back."] },
        "trimmed-before-the-test": { name: "trimmed before the test", because: () => ["With the ends gone nobody can add a throw. Test from inside while they are still long."] },
      },
      working: (say) => say.about("method") === "all-inside"
        ? ["Plan: measure, set, check aloud.", "First anchor, back under sight, second anchor, slack.", "Test before the cut, count after it.", "Author’s order after common practice, no source; the device’s instructions come first."]
        : ["Protect first: incision, retractor, retractor seen.", "Needles in pairs, both retrieved, knee bent as stated, tied.", "Test before the ends are trimmed, count after.", "Author’s order after common practice, no source; your teacher’s order comes first."],
      right: () => ["Nothing enters before its limit is checked or its guard is seen, and nothing is cut before it is tested. The rest is habit."],
      off: (say) => say.about("method") === "all-inside" ? ["Three moments bind the rest: the stop is checked before the needle enters, the first anchor holds before the second, and the probe comes before the cut."] : ["Three moments bind the rest: the retractor is seen before the first needle, both needles are out before the knot, and the probe comes before the scissors."],
      moves: (say) => [say.about("method") === "inside-out" ? "The bend of the knee is set when the needles are out and before the knot. The retractor before the needles, and the test before the scissors, have no room." : "Guarding the cartilage, comparing the edges and the final look have room to move. The checks of depth, guard and hold have none."],
      turns: () => ["Any order in which each check stands before the step that it protects."],
    },
  },
};
