import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { tear } from "../../facts/tear.ts";
import { CHILDREN, given, SIDES } from "../m01/common.ts";

const FROM_RIM = { key: "fromRimMm", unit: "mm", least: 0.5, greatest: 9, step: 0.1 } as const;
const FROM_EDGE = { key: "fromFreeEdgeMm", unit: "mm", least: 0.5, greatest: 14, step: 0.1 } as const;
const WIDTH = { least: 5.5, greatest: 14, step: 0.1 } as const;

const INNER = tear("rim-zone.1@1").number.value ?? 0;
const OUTER = tear("rim-zone.2@1").number.value ?? 0;
const THIRDS = 3;

type Picks = Readonly<Record<string, string>>;

const zoneAt = (millimetres: number): string => {
  if (millimetres < INNER) return "1";
  return millimetres <= OUTER ? "2" : "3";
};
const zone = (givens: Givens): string => zoneAt(given(givens, "fromRimMm"));
const thirdOf = (givens: Givens): string => {
  const whole = given(givens, "fromRimMm") + given(givens, "fromFreeEdgeMm");
  return String(Math.min(THIRDS, Math.floor((THIRDS * given(givens, "fromRimMm")) / whole) + 1));
};
const truth = ({ givens }: Draw): Picks => ({ zone: zone(givens), decides: "no" });
const withZone = (draw: Draw, other: string, taken: readonly string[] = []): Picks | null =>
  other === zone(draw.givens) || taken.includes(other) ? null : { ...truth(draw), zone: other };
const zoneOf = (say: Say): string => zoneAt(say.value("fromRimMm"));

/** 09a: the rim zone of a tear, and what a zone does not decide. */
export const rimZone: NameFamily = {
  kind: "name",
  id: "rim-zone",
  code: "09a",
  module: "M09",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m09-pattern"],
  reads: ["rim-zone.1@1", "rim-zone.2@1"],
  sources: [{ source: "isakos-table", entry: "rim-zone.1@1" }, { source: "isakos-table", entry: "rim-zone.2@1" }],
  cautions: ["C3", "C9"],
  givens: [FROM_RIM, FROM_EDGE],
  attributes: [
    { id: "zone", options: ["1", "2", "3"] },
    { id: "decides", options: ["no", "yes"] },
  ],
  draw: (chance) => {
    const widthMm = chance.onGrid(WIDTH);
    const greatest = Math.min(FROM_RIM.greatest, Math.floor((widthMm - 0.5) * 10) / 10);
    const drawn = chance.onGrid({ ...FROM_RIM, greatest });
    // A tear that lies on the border of two zones is nobody's to argue about.
    const onBorder = compareOnGrid(drawn, INNER) === 0 || compareOnGrid(drawn, OUTER) === 0;
    const fromRimMm = Number((onBorder ? drawn - FROM_RIM.step : drawn).toFixed(1));
    return {
      givens: { fromRimMm, fromFreeEdgeMm: Number((widthMm - fromRimMm).toFixed(1)) },
      about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), age: chance.pick(["9", "10", "11", "12", "13"]), place: chance.pick(["body", "posterior horn", "anterior horn"]) },
    };
  },
  truth,
  slips: [
    { id: "from-the-free-edge", gives: (draw) => withZone(draw, zoneAt(given(draw.givens, "fromFreeEdgeMm"))) },
    { id: "thirds-of-the-width", gives: (draw) => withZone(draw, thirdOf(draw.givens), [zoneAt(given(draw.givens, "fromFreeEdgeMm"))]) },
    { id: "map-of-healing", gives: (draw) => ({ ...truth(draw), decides: "yes" }) },
  ],
  words: {
    en: {
      title: "Which rim zone",
      stems: [
        (say) => [`A longitudinal tear in the ${say.about("place")} of the medial meniscus, ${say.about("side")} knee. ${say.about("child")} is ${say.about("age")}. The zone is for the record: classification only, in the millimetres of an adult table.`],
        (say) => [`You write down a tear of the medial ${say.about("place")} for ${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee. The record asks for the rim zone: below ${INNER}, ${INNER} to ${OUTER}, above ${OUTER} millimetres, as for adults.`],
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee: the tear runs along the ${say.about("place")} of the medial meniscus. The table of rim zones was made for adults, and counts from the rim at the capsule.`],
      ],
      question: "Which rim zone is it, and does the zone alone decide against a repair in this child?",
      givens: { fromRimMm: "Tear to the rim, at the capsule", fromFreeEdgeMm: "Tear to the free edge" },
      attributes: { zone: "Rim zone", decides: "Decides against a repair" },
      options: { "1": "Zone 1", "2": "Zone 2", "3": "Zone 3", no: "No", yes: "Yes" },
      slips: {
        "from-the-free-edge": { name: "measured from the free edge", because: (say) => [`Zones count from the capsule, where the vessels come in. That is ${say.of("fromRimMm")} here; ${say.of("fromFreeEdgeMm")} is the way to the free edge.`] },
        "thirds-of-the-width": { name: "thirds of the width", because: () => ["You took the third of the width in which the tear lies. The table is in millimetres, whatever the width; in a small meniscus the two differ."] },
        "map-of-healing": { name: "zone read as a map of healing", because: (say) => [zoneOf(say) === "1" ? "Zone 1 is the last that would speak against a repair." : "These are adult millimetres, a larger share of a small meniscus. Even repairs into the inner zone are in print, for patients under twenty.", "Two readers agree on the rim width in little more than half of the readings, so the label itself is not firm."] },
      },
      working: (say) => [`From the rim: ${say.of("fromRimMm")}, so zone ${zoneOf(say)}.`, "The zone classifies. Age, pattern, stability and the bed of the tear decide about a repair, with your own sheet and a senior colleague."],
      right: (say) => [`Zone ${zoneOf(say)}, and a zone is a label. It goes into the record, not in place of a decision.`],
      off: () => [`Measure from the rim at the capsule: below ${INNER} millimetres zone 1, up to ${OUTER} zone 2, beyond zone 3. Then remember whose millimetres they are.`],
      moves: (say) => [`Half a millimetre ${zoneAt(say.value("fromRimMm") + 0.5) === zoneOf(say) ? "further in leaves the zone as it is" : "further in makes it another zone"}. Ask yourself whether you measured it to half a millimetre.`],
    },
  },
};
