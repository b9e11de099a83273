import { compareOnGrid, sumOnGrid } from "../engine/quantity/grid.ts";
import { THIN_SPACE } from "../engine/quantity/format.ts";
import { cautionText } from "../facts/cautions.ts";
import type { LineModel, LinePlaces } from "./line-model.ts";

const mm = (value: number): string => `${value.toFixed(1).replace("-", "−")}${THIN_SPACE}mm`;

/** Words of the line figure, by language. */
export const LINE_WORDS = {
  en: {
    axis: "mm",
    entry: "entry to junction",
    bundle: "junction to bundle",
    edge: "free edge to bundle",
    most: "at most",
    least: "at least",
    width: "width on this path",
    yours: "yours",
    femur: "femur",
    tibia: "tibia",
    meniscus: "meniscus",
    capsule: "capsule and its junction",
    capsuleShort: "capsule",
    artery: "artery",
    vein: "vein",
    nerve: "nerve",
    entryMark: "entry",
    freeEdgeMark: "free edge",
    seen: "The knee cut along the needle, seen from the side; the back of the knee is on the right.",
    zeroEntry: "where the needle enters the meniscus",
    zeroEdge: "the free edge of the meniscus",
  },
} as const;

const words = LINE_WORDS.en;

const lineWords = (model: LineModel, places: LinePlaces): string =>
  model.entryName === "entry"
    ? `Measured along the needle from its entry: the free edge of the meniscus lies ${mm(-places.freeEdgeMm)} before the entry, the meniscocapsular junction ${mm(places.junctionMm)} behind it, the near edge of the bundle at ${mm(places.bundleMm)}.`
    : `Measured along the path from the free edge: the meniscocapsular junction lies at ${mm(places.junctionMm)}, the near edge of the bundle at ${mm(places.bundleMm)}.`;

const limitWords = ({ greatestMm, leastMm, isEmpty }: LinePlaces): string => {
  const most = greatestMm === undefined ? "" : ` The tip may stand at most ${mm(greatestMm)} deep; behind that the ground is hatched.`;
  const least = leastMm === undefined ? "" : ` It must stand at least ${mm(leastMm)} deep to be behind the capsule.`;
  return most + least + (isEmpty ? " What is needed begins behind what is allowed, so no depth is left." : "");
};

/** Where one of the learner's depths ends, against the bundle. */
const ownWords = (depth: number, { bundleMm, junctionMm }: LinePlaces): string => {
  const gap = sumOnGrid(bundleMm, -depth);
  if (compareOnGrid(depth, bundleMm) > 0) return ` Your depth of ${mm(depth)} ends ${mm(-gap)} past the near edge of the bundle.`;
  if (gap === 0) return ` Your depth of ${mm(depth)} ends on the near edge of the bundle.`;
  return ` Your depth of ${mm(depth)} ends ${compareOnGrid(depth, junctionMm) > 0 ? "behind" : "before or at"} the junction, ${mm(gap)} short of the bundle.`;
};

/** Where the learner's own depths end, in words; empty where the answer was no depth. */
export const ownInWords = (model: LineModel, places: LinePlaces): string =>
  model.answered && model.entryName === "entry" ? model.yoursMm.map((depth) => ownWords(depth, places)).join("") : "";

/** The figure in words, from the same numbers as the drawing; it alone is enough to answer. */
export const lineInWords = (model: LineModel, places: LinePlaces): string => {
  const answered = model.answered ? limitWords(places) : "";
  return `${words.seen} ${lineWords(model, places)}${answered}${ownInWords(model, places)} ${cautionText("C8")}`;
};
