import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { MarkFamily } from "../../engine/question/family.ts";
import { numberOf, type PlaceId, regionsOf, shuffledNumbers } from "./knee-marks.ts";

const PLACES: readonly PlaceId[] = ["popliteus", "bundle", "peroneal", "lateral-root", "medial-root", "medial-collateral", "lateral-collateral"];
const TARGETS: readonly PlaceId[] = ["popliteus", "bundle", "peroneal", "lateral-root"];
const BANDS = ["5-7", "8-10", "11-13", "14-16"] as const;

const targetsOf = (draw: Draw): readonly string[] => (draw.about["targets"] ?? "").split(" ").filter((target) => target !== "");
const chosen = (draw: Draw, swap: Partial<Record<PlaceId, PlaceId>> = {}): Readonly<Record<string, string>> =>
  Object.fromEntries(targetsOf(draw).map((target) => [target, numberOf(draw, PLACES, swap[target as PlaceId] ?? (target as PlaceId))]));
const has = (draw: Draw, target: PlaceId): boolean => targetsOf(draw).includes(target);

const words: MarkFamily["words"][Language] = {
  title: "What lies where",
  stems: [
    (say) => [`The axial plane of the model knee at ${say.about("band").replace("-", "–")} years, ${say.about("view")}; the front is at the top. Which side is lateral is for you to find: look for the popliteus tendon.`],
    (say) => [`A cut through the model knee, ${say.about("view")}, front at the top, ${say.about("band").replace("-", "–")} years. Find your side first.`],
    (say) => [`You look at the model knee at ${say.about("band").replace("-", "–")} years, ${say.about("view")}, front at the top. Before any needle: name what lies behind.`],
  ],
  question: "Which numbered place is which?",
  givens: {},
  targets: { popliteus: "Popliteus tendon", bundle: "Popliteal bundle, artery in front", peroneal: "Common peroneal nerve", "lateral-root": "Posterior root of the lateral meniscus" },
  slips: {
    "other-root": { name: "root of the other meniscus", because: () => ["That is the medial root. The side with the popliteus tendon and the peroneal nerve is the lateral one; the rounder meniscus belongs to it."] },
    "ligament-for-tendon": { name: "collateral ligament taken for the popliteus", because: () => ["The collateral ligament stands outside, at the side. The popliteus tendon runs behind it, close to the rim."] },
    "nerve-for-bundle": { name: "nerve taken for the bundle", because: () => ["The bundle lies behind the middle, artery in front. The peroneal nerve lies to the outer side, behind the popliteus tendon."] },
    "bundle-for-nerve": { name: "bundle taken for the nerve", because: () => ["The peroneal nerve has left the middle long before: look to the outer side, behind the popliteus tendon."] },
  },
  working: () => ["Find the popliteus tendon: it marks the lateral side, close to the rim behind.", "The peroneal nerve lies behind it to the outer side, the bundle behind the middle with the artery in front, the roots in the middle between the menisci."],
  right: () => ["The popliteus tendon gives the side away, and everything behind the knee is read from it."],
  off: () => ["Begin with the side: popliteus tendon and peroneal nerve belong together, laterally. Then the middle: bundle behind, roots in front of it."],
  moves: () => ["Mirror the picture and every number moves; what lies beside what does not. Learn the neighbours, not the sides of the page."],
  turns: (say) => [`Seen from below, or in a ${say.about("side") === "left" ? "right" : "left"} knee, left and right change places. The popliteus tendon still marks the lateral side.`],
};

/** 01g: four structures in the axial plane of the model. */
export const structures: MarkFamily = {
  kind: "mark",
  id: "structures",
  code: "01g",
  module: "M01",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m01-structures"],
  reads: [],
  sources: [],
  cautions: ["C8"],
  givens: [],
  targets: targetsOf,
  regions: (draw) => regionsOf(draw, PLACES),
  truth: (draw) => chosen(draw),
  draw: (chance) => {
    const side = chance.pick(["left", "right"]);
    const targets = chance.shuffled(TARGETS).slice(0, 2 + chance.below(2));
    if (!targets.some((target) => target === "bundle" || target === "peroneal")) targets.push("bundle");
    return { givens: {}, about: { band: chance.pick(BANDS), side, view: "seen from above", targets: targets.join(" "), numbers: shuffledNumbers(chance, PLACES) } };
  },
  slips: [
    { id: "other-root", gives: (draw) => (has(draw, "lateral-root") ? chosen(draw, { "lateral-root": "medial-root" }) : null) },
    { id: "ligament-for-tendon", gives: (draw) => (has(draw, "popliteus") ? chosen(draw, { popliteus: "lateral-collateral" }) : null) },
    { id: "nerve-for-bundle", gives: (draw) => (has(draw, "bundle") ? chosen(draw, { bundle: "peroneal" }) : null) },
    { id: "bundle-for-nerve", gives: (draw) => (has(draw, "peroneal") ? chosen(draw, { peroneal: "bundle" }) : null) },
  ],
  words: { en: words },
};
