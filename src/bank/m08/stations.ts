import type { OrderFamily } from "../../engine/question/family.ts";
import { stationsEdges } from "../../facts/graph-stations.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

const ALWAYS = ["pouch", "patella", "gutters", "medial", "notch", "lateral", "behind-lateral", "popliteus", "record", "instruments"] as const;
const MORE = ["behind-medial", "trochlea"] as const;

/** 08a: the round of the knee, by the local graph. */
export const stations: OrderFamily = {
  kind: "order",
  id: "stations",
  code: "08a",
  module: "M08",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m08-stations"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [],
  edges: stationsEdges,
  draw: (chance) => {
    const more = chance.shuffled(MORE).slice(0, chance.below(MORE.length + 1));
    const without = chance.pick(["gutters", "popliteus", "none"]);
    const cards = [...ALWAYS.filter((card) => card !== without), ...more];
    return { givens: {}, about: { child: chance.pick(CHILDREN), age: chance.pick(["8", "10", "12", "13", "15"]), side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) }, shown: chance.shuffled(cards) };
  },
  slips: [
    { id: "back-left-for-later", breaks: ["behind-lateral", "instruments"] },
    { id: "recorded-after-the-work", breaks: ["record", "instruments"] },
    { id: "straight-to-the-tear", breaks: ["medial", "lateral"] },
    { id: "notch-passed-by", breaks: ["notch", "lateral"] },
    { id: "front-left-out", breaks: ["patella", "medial"] },
  ],
  words: {
    en: {
      title: "The round of the knee",
      stems: [
        (say) => [`${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee, at ${say.about("hospital")}. The round there goes from the pouch above the patella downwards, medial before notch, notch before lateral, the back before any instrument.`],
        (say) => [`The local round at ${say.about("hospital")}: from above, medial side first, then the notch, then lateral, then the back of the joint; instruments last. ${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee.`],
        (say) => [`A round that is always the same finds what nobody was looking for. ${say.about("hospital")}, ${say.about("side")} knee of ${say.about("child")}, ${say.about("age")}; the sheet asks for the front from above downwards, then medial, notch, lateral and back, all before the first instrument.`],
      ],
      question: "In which order does this round go? Any order that keeps the local rule will do.",
      givens: {},
      cards: {
        pouch: "Pouch above the patella",
        patella: "Under the patella",
        trochlea: "Trochlea",
        gutters: "Both gutters",
        medial: "Medial compartment, meniscus probed",
        notch: "Notch, ligaments probed",
        "behind-medial": "Behind, medial, seen through the notch",
        lateral: "Lateral compartment, meniscus probed",
        popliteus: "Popliteal hiatus",
        "behind-lateral": "Behind, lateral, seen through the notch",
        record: "Record a picture of every station",
        instruments: "First instrument that cuts or stitches",
      },
      slips: {
        "back-left-for-later": { name: "back of the joint left for later", because: () => ["After instruments there is swelling, bleeding and less time, and the look behind is given up. It comes before them."] },
        "recorded-after-the-work": { name: "recorded after the work", because: () => ["After the work the picture shows the work. The record is of what was found."] },
        "straight-to-the-tear": { name: "straight to the expected tear", because: () => ["The lateral side came before the medial, as it does when a tear is expected there. The medial side is then looked at by someone who has already found something."] },
        "notch-passed-by": { name: "notch passed by", because: () => ["The local round goes through the notch on its way to the lateral side. Passed by, it is the station that is forgotten."] },
        "front-left-out": { name: "front left for later", because: () => ["From above downwards, says this sheet. What is under the patella is easily left out on the way back."] },
      },
      working: () => ["From above: pouch, patella, then medial, notch, lateral, then behind, then the record, then instruments.", "A local graph; author’s order after common practice, no source."],
      right: () => ["A whole round, seen and recorded before anything was changed."],
      off: () => ["Follow the sheet: from above, medial, notch, lateral, behind. The record closes the round, and instruments come after the record."],
      moves: () => ["The gutters, the trochlea and the hiatus have room to move within their stretch of the round."],
      turns: () => ["Any order that begins above, keeps medial before notch before lateral, and has everything before the record and the instruments."],
    },
  },
};
