import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw, Givens, Language } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, withPlaces } from "../m01/common.ts";
import { CASE_ABOUT } from "./stitch-words.ts";

const FIRST = { key: "firstFromRimMm", unit: "mm", least: 1, greatest: 8, step: 0.5 } as const;
const SECOND = { ...FIRST, key: "secondFromRimMm" } as const;
const ALONG = { key: "apartAlongMm", unit: "mm", least: 0, greatest: 6, step: 0.5 } as const;

const NEAR_RIM = { least: 1, greatest: 3, step: 0.5 } as const;
const LONG = { least: 3, greatest: 5, step: 0.5 } as const;
const NONE_OR_LITTLE = { least: 0, greatest: 0.5, step: 0.5 } as const;
const SLANTED = { least: 3, greatest: 4, step: 0.5 } as const;
/** Twice as far one way as the other: the draws stay well clear of it. */
const CLEAR_RATIO = 2;

type Picks = Readonly<Record<string, string>>;
type Lie = "vertical" | "horizontal" | "oblique";

const FIBRES: Readonly<Record<Lie, string>> = { vertical: "across", horizontal: "among", oblique: "slant" };
const OTHER: Readonly<Record<Lie, Lie>> = { vertical: "horizontal", horizontal: "vertical", oblique: "vertical" };

const acrossMm = (givens: Givens): number => Math.abs(given(givens, "firstFromRimMm") - given(givens, "secondFromRimMm"));
const lieOf = (givens: Givens): Lie => {
  const [across, along] = [acrossMm(givens), given(givens, "apartAlongMm")];
  if (across > CLEAR_RATIO * along) return "vertical";
  return along > CLEAR_RATIO * across ? "horizontal" : "oblique";
};
const truth = ({ givens }: Pick<Draw, "givens">): Picks => ({ lies: lieOf(givens), fibres: FIBRES[lieOf(givens)] });
/** Seen from above, what lies across the fibres of the body lies sideways on the page. */
const isSideways = ({ about }: Draw): boolean => about["place"] === "body";
const isStraight = ({ givens }: Draw): boolean => lieOf(givens) !== "oblique";

const drawLie = (chance: Chance): Givens => {
  const lie = chance.pick(["vertical", "horizontal", "oblique"]);
  const across = chance.onGrid({ vertical: LONG, horizontal: NONE_OR_LITTLE, oblique: SLANTED }[lie] ?? SLANTED);
  const apartAlongMm = chance.onGrid({ vertical: NONE_OR_LITTLE, horizontal: LONG, oblique: SLANTED }[lie] ?? SLANTED);
  const near = chance.onGrid(NEAR_RIM);
  const [firstFromRimMm, secondFromRimMm] = chance.happens(1, 2) ? [near, near + across] : [near + across, near];
  return { firstFromRimMm, secondFromRimMm, apartAlongMm };
};

const PLACES: Readonly<Record<string, string>> = { front: "anterior horn", body: "body", back: "posterior horn" };
const where = (say: Say): string => `the ${PLACES[say.about("place")] ?? ""} of the ${say.about("meniscus")} meniscus, ${say.about("side")} knee`;
const across = (say: Say): number => acrossMm({ firstFromRimMm: say.value("firstFromRimMm"), secondFromRimMm: say.value("secondFromRimMm") });
const lie = (say: Say): Lie => lieOf({ firstFromRimMm: say.value("firstFromRimMm"), secondFromRimMm: say.value("secondFromRimMm"), apartAlongMm: say.value("apartAlongMm") });
const SUMMED: Readonly<Record<Lie, string>> = {
  vertical: "It stands across the fibres that run round, and catches a bundle of them in its loop.",
  horizontal: "It lies among the fibres that run round and catches few of them; what holds it are the thin ones that tie the bundles together.",
  oblique: "It goes at a slant and catches some of the fibres that run round.",
};

const words: NameFamily["words"][Language] = {
  title: "Which way it lies",
  stems: [
    (say) => [`${say.about("child")}, ${say.about("age")}. A stitch has been placed in ${where(say)}. Its thread lies on the upper face between two points.`],
    (say) => [`The record asks how the stitch lies. It is in ${where(say)}, and its thread runs over the upper face from a first point to a second. ${say.about("child")} is ${say.about("age")}.`],
    (say) => [`Names of stitches follow the fibres, not the screen. ${say.about("child")}, ${say.about("age")}: one stitch in ${where(say)}; its thread lies on the upper face between two points.`],
  ],
  question: "How does the stitch lie, and which of the fibres that run round the meniscus does it cross?",
  givens: { firstFromRimMm: "First point to the rim", secondFromRimMm: "Second point to the rim", apartAlongMm: "Between the two points, along the rim" },
  attributes: { lies: "The stitch is", fibres: "It crosses" },
  options: { vertical: "Vertical", horizontal: "Horizontal", oblique: "Oblique", across: "A whole bundle of them", among: "Hardly any: it lies among them", slant: "Some of them, at a slant" },
  slips: {
    "named-by-the-page": { name: "named by the page", because: () => ["In the body the fibres run from front to back, so what stands across them lies sideways on the page. The fibres give the name, wherever the picture is held."] },
    exchanged: { name: "vertical and horizontal exchanged", because: (say) => [`Across, from rim to free edge, the points lie ${withPlaces(across(say), 1, "mm")} apart, and ${say.of("apartAlongMm")} along the rim. Across the fibres is vertical, along them horizontal.`] },
    "fibres-exchanged": { name: "fibres exchanged", because: () => ["Most fibres run round like hoops. A stitch that goes from rim to free edge crosses them; one that goes along the rim lies among them."] },
    "called-oblique": { name: "called oblique", because: (say) => [`${withPlaces(across(say), 1, "mm")} across and ${say.of("apartAlongMm")} along: one of the two is next to nothing. Oblique is something of both.`] },
    "slant-called-vertical": { name: "slant called vertical", because: (say) => [`The points lie ${say.of("apartAlongMm")} apart along the rim as well. A vertical stitch has both at the same place along it.`] },
    "slant-crosses-all": { name: "slant taken for a whole bundle", because: () => ["A thread at a slant crosses fewer fibres than one of the same length that stands straight across them."] },
  },
  working: (say) => [
    `Across, from rim to free edge: ${say.bare("firstFromRimMm")} and ${say.of("secondFromRimMm")} from the rim, ${withPlaces(across(say), 1, "mm")} apart. Along the rim: ${say.of("apartAlongMm")}.`,
    { vertical: "Nearly all of it across: vertical.", horizontal: "Nearly all of it along: horizontal.", oblique: "Much of both: oblique." }[lie(say)],
    "Most fibres run round the meniscus; textbook knowledge, no source. Names by common practice.",
  ],
  right: (say) => [SUMMED[lie(say)]],
  off: () => ["First how far apart the points lie across, from rim to free edge; then how far along the rim. Across the fibres is vertical, along them horizontal, much of both oblique."],
  moves: (say) => [lie(say) === "oblique" ? "Bring both points to the same place along the rim, and the stitch is vertical." : "Turn the camera as you like: on the screen the stitch turns, against the fibres it does not."],
  turns: () => ["Move the second point along the rim and a vertical stitch becomes oblique. How far it has to go for that, nobody has drawn a line."],
};

/** 11g: the lie of a stitch against the fibres. */
export const orientation: NameFamily = {
  kind: "name",
  id: "orientation",
  code: "11g",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-stitch"],
  reads: [],
  sources: [],
  cautions: ["C8"],
  givens: [FIRST, SECOND, ALONG],
  attributes: [
    { id: "lies", options: ["vertical", "horizontal", "oblique"] },
    { id: "fibres", options: ["across", "among", "slant"] },
  ],
  draw: (chance) => ({ givens: drawLie(chance), about: { ...CASE_ABOUT(chance), place: chance.pick(Object.keys(PLACES)) } }),
  truth,
  slips: [
    { id: "named-by-the-page", gives: (draw) => (isStraight(draw) && isSideways(draw) ? { ...truth(draw), lies: OTHER[lieOf(draw.givens)] } : null) },
    { id: "exchanged", gives: (draw) => (isStraight(draw) && !isSideways(draw) ? { ...truth(draw), lies: OTHER[lieOf(draw.givens)] } : null) },
    { id: "fibres-exchanged", gives: (draw) => (isStraight(draw) ? { ...truth(draw), fibres: FIBRES[OTHER[lieOf(draw.givens)]] } : null) },
    { id: "called-oblique", gives: (draw) => (isStraight(draw) ? { lies: "oblique", fibres: "slant" } : null) },
    { id: "slant-called-vertical", gives: (draw) => (isStraight(draw) ? null : { ...truth(draw), lies: "vertical" }) },
    { id: "slant-crosses-all", gives: (draw) => (isStraight(draw) ? null : { ...truth(draw), fibres: "across" }) },
  ],
  words: { en: words },
};
