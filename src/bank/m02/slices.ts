import { sliceLength } from "../../engine/evidence/slice-length.ts";
import type { Ends, RangeFamily } from "../../engine/question/family.ts";
import type { Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { given, SIDES } from "../m01/common.ts";

const SLICES = { key: "slices", unit: "pieces", least: 3, greatest: 7, step: 1 } as const;
const THICKNESS = { key: "sliceMm", unit: "mm", least: 3, greatest: 5, step: 0.5 } as const;
const GAP = { key: "gapMm", unit: "mm", least: 0, greatest: 1, step: 0.5 } as const;

/** More slices than this would make a tear longer than a child’s meniscus is. */
const LONGEST_MM = 22;

const at = (givens: Givens) => ({ slices: given(givens, "slices"), thicknessMm: given(givens, "sliceMm"), gapMm: given(givens, "gapMm") });
const endsOf = (givens: Givens): Ends => {
  const { moreThanMm, lessThanMm } = sliceLength(at(givens));
  return { from: moreThanMm, to: lessThanMm };
};
const ends = (say: Say): Ends => endsOf({ slices: say.value("slices"), sliceMm: say.value("sliceMm"), gapMm: say.value("gapMm") });

/** 02h: between which lengths a tear lies that is seen on a number of slices. */
export const slices: RangeFamily = {
  kind: "range",
  id: "slices",
  code: "02h",
  module: "M02",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m02-slices"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [SLICES, THICKNESS, GAP],
  unit: "mm",
  roundTo: 0.5,
  draw: (chance) => {
    const sliceMm = chance.onGrid(THICKNESS);
    const greatest = Math.min(SLICES.greatest, Math.floor(LONGEST_MM / sliceMm));
    return {
      givens: { slices: chance.onGrid({ ...SLICES, greatest }), sliceMm, gapMm: chance.onGrid(GAP) },
      about: { side: chance.pick(SIDES), meniscus: chance.pick(["medial", "lateral"]), plane: chance.pick(["sagittal", "coronal"]) },
    };
  },
  solve: (givens) => endsOf(givens),
  slips: [
    {
      id: "gaps-left-out",
      gives: ({ givens }) => {
        const { slices: count, thicknessMm, gapMm } = at(givens);
        return gapMm === 0 ? null : { from: (count - 2) * thicknessMm, to: count * thicknessMm };
      },
    },
    {
      id: "outer-slices-taken-whole",
      gives: ({ givens }) => {
        const { slices: count, thicknessMm, gapMm } = at(givens);
        const length = count * thicknessMm + (count - 1) * gapMm;
        return { from: length, to: length };
      },
    },
    {
      id: "outer-gaps-left-out",
      gives: ({ givens }) => {
        const { slices: count, thicknessMm, gapMm } = at(givens);
        return gapMm === 0 ? null : { from: endsOf(givens).from, to: count * thicknessMm + (count - 1) * gapMm };
      },
    },
    { id: "ends-exchanged", gives: ({ givens }) => ({ from: endsOf(givens).to, to: endsOf(givens).from }) },
    { id: "from-nothing", gives: ({ givens }) => ({ from: 0, to: endsOf(givens).to }) },
  ],
  words: {
    en: {
      title: "A length out of slices",
      stems: [
        (say) => [`A tear of the ${say.about("meniscus")} meniscus, ${say.about("side")} knee, is seen on neighbouring ${say.about("plane")} slices and runs straight across them. On the next slice at either end it is not seen.`],
        (say) => [`Slices show a tear as yes or no. ${say.about("meniscus") === "medial" ? "Medial" : "Lateral"} meniscus, ${say.about("side")} knee, ${say.about("plane")} slices: seen on some neighbours, not on the ones beyond.`],
        (say) => [`How long is a tear that is seen on so many ${say.about("plane")} slices? ${say.about("side").charAt(0).toUpperCase()}${say.about("side").slice(1)} knee, ${say.about("meniscus")} meniscus, straight across the slices; the neighbours beyond show nothing.`],
      ],
      question: "Between which lengths does the tear lie? Two ends, to half a millimetre.",
      givens: { slices: "Neighbouring slices that show it", sliceMm: "Thickness of a slice", gapMm: "Gap between two slices" },
      slips: {
        "gaps-left-out": { name: "gaps left out", because: () => ["The gaps are tissue too. The tear runs through every one between the slices that show it."] },
        "outer-slices-taken-whole": { name: "outer slices taken whole", because: () => ["The outer two may be cut through or only touched. Nobody can say, so there are two ends and not one length."] },
        "outer-gaps-left-out": { name: "outer gaps left out", because: () => ["Beyond the last slice comes a gap that shows nothing to anybody. The tear may reach through it."] },
        "ends-exchanged": { name: "ends exchanged", because: () => ["Both ends are right, and stand in each other’s place. The shorter one comes first."] },
        "from-nothing": { name: "began at nothing", because: () => ["The inner slices and the gaps between them are filled for sure. The shorter end is not nothing."] },
      },
      working: (say) => [
        `More than (${say.bare("slices")} − 2) × ${say.bare("sliceMm")} + (${say.bare("slices")} − 1) × ${say.bare("gapMm")} = ${say.number(ends(say).from)} mm`,
        `Less than ${say.bare("slices")} × ${say.bare("sliceMm")} + (${say.bare("slices")} + 1) × ${say.bare("gapMm")} = ${say.number(ends(say).to)} mm`,
      ],
      right: (say) => [`Between ${say.number(ends(say).from)} and ${say.number(ends(say).to)} mm. Thinner slices would narrow it; a probe may settle it.`],
      off: () => ["At least: the inner slices with every gap between the outer two. At most: all slices, and one gap more at either end."],
      moves: () => ["The range is about twice a slice wide, whatever the length. Thinner slices narrow it, more of them do not."],
    },
  },
};
