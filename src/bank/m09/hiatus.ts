import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { CHILDREN, SIDES } from "../m01/common.ts";

const FINDS = ["normal", "fascicle", "hypermobile"] as const;
type Find = (typeof FINDS)[number];
type Picks = Readonly<Record<"finding" | "torn", string>>;

const picksFor = (finding: string): Picks => ({ finding, torn: finding === "fascicle" ? "fascicles" : "nothing" });
const found = ({ about }: Draw): string => about["find"] ?? "";
const truth = (draw: Draw): Picks => picksFor(found(draw));
const whenIs = (find: Find, picks: Partial<Picks>) => (draw: Draw): Picks | null => (found(draw) === find ? { ...truth(draw), ...picks } : null);

const NAMES: Readonly<Record<Find, string>> = { normal: "The hiatus as it should be", fascicle: "Fascicles torn at the hiatus", hypermobile: "Hypermobile, nothing seen torn" };
const WHY: Readonly<Record<Find, string>> = {
  normal: "The gap round the tendon is narrow and smooth, and the band stays where it lies when the probe draws it.",
  fascicle: "The gap beside the tendon is wide: what ties the band down there is not in its place.",
  hypermobile: "At rest it looks like any other. Under the probe the whole back of the band comes forwards, away from the tendon.",
};
const why = (say: Say): string => WHY[say.about("find") as Find] ?? "";
const name = (say: Say): string => NAMES[say.about("find") as Find] ?? "";

/** 09l: what lies beside the popliteus tendon, at rest and under the probe. */
export const hiatusFinding: NameFamily = {
  kind: "name",
  id: "hiatus",
  code: "09l",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-pattern"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [],
  attributes: [{ id: "finding", options: FINDS }, { id: "torn", options: ["nothing", "fascicles", "body"] }],
  draw: (chance) => ({
    givens: {},
    about: { find: chance.pick(FINDS), nearer: chance.pick(["0", "2"]), side: chance.pick(SIDES), child: chance.pick(CHILDREN), age: chance.pick(["9", "11", "13", "14"]), complaint: chance.pick(["catching", "pain", "none"]) },
  }),
  truth,
  slips: [
    { id: "gap-called-a-tear", gives: whenIs("normal", picksFor("fascicle")) },
    { id: "gap-called-hypermobile", gives: whenIs("normal", { finding: "hypermobile" }) },
    { id: "nothing-torn-so-normal", gives: whenIs("hypermobile", picksFor("normal")) },
    { id: "loose-so-torn", gives: whenIs("hypermobile", picksFor("fascicle")) },
    { id: "wide-gap-passed", gives: whenIs("fascicle", picksFor("normal")) },
    { id: "gap-in-the-body", gives: (draw) => ({ ...truth(draw), torn: "body" }) },
  ],
  words: {
    en: {
      title: "Beside the popliteus tendon",
      stems: [
        (say) => [`Two stills beside the popliteus tendon in the ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}: one at rest, one while a probe draws the band forwards. ${complaint(say)}`],
        (say) => [`${complaint(say)} In the ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}, the scope stands in front of the popliteus tendon; the second picture was taken with the probe pulling.`],
        (say) => [`${say.about("child")} is ${say.about("age")}. ${complaint(say)} The same place in the ${say.about("side")} knee was photographed twice, before the probe touched the lateral meniscus and while it pulled.`],
      ],
      question: "What do the two pictures show, and what is torn?",
      givens: {},
      attributes: { finding: "Finding", torn: "Torn, as far as it is seen" },
      options: { ...NAMES, nothing: "Nothing", fascicles: "What ties the band down beside the tendon", body: "The body of the meniscus" },
      slips: {
        "gap-called-a-tear": { name: "normal gap called a tear", because: () => ["There is a gap because the tendon needs one. It is narrow, its edge is smooth, and under the probe nothing follows."] },
        "gap-called-hypermobile": { name: "still band called loose", because: () => ["Hypermobile is said of what the probe moves. Here both pictures are alike."] },
        "nothing-torn-so-normal": { name: "not torn, so normal", because: () => ["Nothing is torn, and still the back of the band leaves the tendon under the probe. A look alone cannot find that."] },
        "loose-so-torn": { name: "loose, so torn", because: () => ["At rest the gap is as narrow as in any knee. What is seen is that it moves, not that something is torn."] },
        "wide-gap-passed": { name: "wide gap passed as normal", because: () => ["A gap is normal, but not one of this width: the tendon lies bare and the band ends well short of it."] },
        "gap-in-the-body": { name: "gap looked for in the body", because: () => ["Free edge and body are whole in both pictures. The question is what happens behind, at the tendon."] },
      },
      working: (say) => ["Look at the gap at rest: narrow or wide? Then at the second picture: has the band followed the probe?", why(say)],
      right: (say) => [`${name(say)}. ${why(say)}`],
      off: (say) => [`Two pictures, two questions: how wide at rest, and what moves. ${why(say)}`],
      moves: () => ["Without the second picture a hypermobile meniscus and a sound one cannot be told apart. The probe is what makes the difference."],
    },
  },
};

const COMPLAINTS: Readonly<Record<string, string>> = { catching: "The knee catches when the child gets up.", pain: "The outer side hurts in deep bends.", none: "Nobody suspected this side before the operation." };
const complaint = (say: Say): string => COMPLAINTS[say.about("complaint")] ?? "";
