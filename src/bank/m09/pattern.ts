import { TEAR_VIEWS, tearViewOf } from "../../engine/knee/scope/tear-views.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

const FINDS = ["longitudinal", "bucket-handle", "radial", "horizontal", "flap", "complex", "root", "hiatus"] as const;
type Find = (typeof FINDS)[number];
type Picks = Readonly<Record<"pattern" | "displaced", string>>;

const found = ({ about }: Draw): string => about["find"] ?? "";
/** Only these two have left their bed. */
const LEFT_BED: readonly string[] = ["bucket-handle", "flap"] satisfies readonly Find[];
const picksFor = (pattern: string): Picks => ({ pattern, displaced: LEFT_BED.includes(pattern) ? "yes" : "no" });
const truth = (draw: Draw): Picks => picksFor(found(draw));

/** What each finding is taken for, by the name of the thought behind it. */
const TAKEN_FOR: Readonly<Record<string, Readonly<Partial<Record<Find, Find>>>>> = {
  "across-for-along": { longitudinal: "radial" },
  "along-for-across": { radial: "longitudinal", root: "longitudinal" },
  "rings-for-leaves": { longitudinal: "horizontal" },
  "leaves-for-rings": { horizontal: "longitudinal" },
  "still-in-place": { "bucket-handle": "longitudinal" },
  "strip-for-flap": { "bucket-handle": "flap" },
  "gape-for-flap": { radial: "flap", horizontal: "flap" },
  "slant-for-radial": { flap: "radial" },
  "one-of-two-cut": { complex: "radial" },
  "one-of-two-split": { complex: "horizontal" },
  "end-left-out": { root: "radial" },
  "hiatus-as-tear": { hiatus: "longitudinal" },
  "gap-as-radial": { hiatus: "radial" },
};

const takenFor = (id: string) => (draw: Draw): Picks | null => {
  const other = TAKEN_FOR[id]?.[found(draw) as Find];
  return other === undefined ? null : picksFor(other);
};

const NAMES: Readonly<Record<Find, string>> = {
  longitudinal: "Longitudinal, in place", "bucket-handle": "Bucket-handle", radial: "Radial", horizontal: "Horizontal", flap: "Flap", complex: "Complex", root: "Root", hiatus: "No tear: the popliteal hiatus",
};
const WHY: Readonly<Record<Find, string>> = {
  longitudinal: "The opening runs along the fibres, and the strip beside it still lies in line.",
  "bucket-handle": "The opening runs along the fibres, and the strip has left its bed; both its ends hold.",
  radial: "The gap leads from the free edge across the fibres, short of the rim.",
  horizontal: "The cleft lies level, between an upper leaf and a lower one.",
  flap: "The cut runs slantwise from the free edge, and the piece beside it stands up on one side.",
  complex: "A cut across the fibres and a level split: two directions at once.",
  root: "The gap crosses the whole band beside its anchor in the bone.",
  hiatus: "Free edge and surface are whole. The gap behind belongs to the popliteus tendon.",
};
const why = (say: Say): string => WHY[say.about("find") as Find] ?? "";
const name = (say: Say): string => NAMES[say.about("find") as Find] ?? "";

/** 09e: the pattern of a tear in a picture computed from the model. */
export const tearPattern: NameFamily = {
  kind: "name",
  id: "pattern",
  code: "09e",
  module: "M09",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m09-pattern"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [],
  attributes: [{ id: "pattern", options: FINDS }, { id: "displaced", options: ["yes", "no"] }],
  draw: (chance) => {
    const find = chance.pick(FINDS);
    const view = chance.below(TEAR_VIEWS[find]?.length ?? 1);
    const { of } = tearViewOf({ find, view: String(view) });
    return { givens: {}, about: { find, view: String(view), meniscus: of, side: chance.pick(SIDES), child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS) } };
  },
  truth,
  slips: [
    ...Object.keys(TAKEN_FOR).map((id) => ({ id, gives: takenFor(id) })),
    { id: "lifted-overlooked", gives: (draw: Draw) => (found(draw) === "flap" ? { ...truth(draw), displaced: "no" } : null) },
    { id: "lift-imagined", gives: (draw: Draw) => (["longitudinal", "complex", "root", "hiatus"].includes(found(draw)) ? { ...truth(draw), displaced: "yes" } : null) },
  ],
  words: {
    en: {
      title: "What pattern is this",
      stems: [
        (say) => [`A still from the ${say.about("side")} knee of ${say.about("child")}, taken from the front. The band in it is the ${say.about("meniscus")} meniscus.`],
        (say) => [`The film of ${say.about("child")} stops here: ${say.about("side")} knee, ${say.about("meniscus")} meniscus, seen through a front portal. Before anybody talks of stitches, the finding needs its name.`],
        (say) => [`${say.about("hospital")} sends one picture and no words. It is the ${say.about("meniscus")} meniscus of a ${say.about("side")} knee, with the horizon level.`],
      ],
      question: "What does the picture show, and has a part left its bed?",
      givens: {},
      attributes: { pattern: "Finding", displaced: "A part has left its bed" },
      options: { ...NAMES, yes: "Yes", no: "No" },
      slips: {
        "across-for-along": { name: "along taken for across", because: () => ["Along or across the fibres? They run round with the band, and so does this opening."] },
        "along-for-across": { name: "across taken for along", because: () => ["Along or across the fibres? They run round with the band, and this gap crosses them."] },
        "rings-for-leaves": { name: "inner and outer taken for upper and lower", because: () => ["A longitudinal tear parts an outer ring from an inner one. A horizontal one parts an upper leaf from a lower."] },
        "leaves-for-rings": { name: "upper and lower taken for outer and inner", because: () => ["The cleft is seen from the free edge and lies level: it parts an upper leaf from a lower. A longitudinal tear parts rings."] },
        "still-in-place": { name: "displaced strip not noticed", because: () => ["The band behind is narrower than it was, and the strip beside it is the rest. It has moved."] },
        "strip-for-flap": { name: "strip taken for a flap", because: () => ["A flap hangs by one side. This strip holds at both its ends, as a handle does."] },
        "gape-for-flap": { name: "a gape taken for a flap", because: () => ["Nothing hangs by one side here. The two sides of the gap face each other and lie where they lay."] },
        "slant-for-radial": { name: "slanting cut taken for a radial one", because: () => ["A radial gap leads straight across. This one slants, and leaves a tongue that stands up."] },
        "one-of-two-cut": { name: "the split left out", because: () => ["The cut is there. Beside it the edge has two lips: a level split as well."] },
        "one-of-two-split": { name: "the cut left out", because: () => ["The level split is there. Besides, a gap leads from the free edge into the band."] },
        "end-left-out": { name: "place left out", because: () => ["It does cross the fibres. But it lies beside the bone that the band is anchored in, and goes from edge to edge."] },
        "hiatus-as-tear": { name: "hiatus taken for a tear", because: () => ["The popliteal hiatus is normal: a smooth gap, with the tendon in it. Nothing is torn here."] },
        "gap-as-radial": { name: "hiatus taken for a radial tear", because: () => ["A radial tear begins at the free edge, and here the free edge is whole. The gap lies behind, round the tendon."] },
        "lifted-overlooked": { name: "lifted piece not noticed", because: () => ["The tongue beside the cut stands above the surface. It has left its bed."] },
        "lift-imagined": { name: "a displaced part seen where none is", because: () => ["Every part lies in line with the rest. Gaping is not leaving."] },
      },
      working: (say) => ["First: along the fibres, across them, or level between two leaves? Then: what lies out of line?", why(say)],
      right: (say) => [`${name(say)}. ${why(say)}`],
      off: (say) => [`Follow the free edge, then the surface, then what lies behind. ${why(say)}`],
      moves: () => ["The same tear looks different through the other portal. A pattern that cannot be read is looked at again from there, with the probe."],
    },
  },
};
