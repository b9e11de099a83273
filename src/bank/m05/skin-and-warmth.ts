import type { OrderFamily } from "../../engine/question/family.ts";
import { skinAndWarmthEdges } from "../../facts/graph-skin-and-warmth.ts";
import { CHILDREN, childOf, HOSPITALS } from "./theatre-words.ts";

/** 05i: keeping skin and warmth of a small child, from padding to the last look. */
export const skinAndWarmth: OrderFamily = {
  kind: "order",
  id: "skin-and-warmth",
  code: "05i",
  module: "M05",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m05-prepare"],
  reads: [],
  sources: [],
  cautions: ["C2", "C15"],
  givens: [],
  edges: skinAndWarmthEdges,
  draw: (chance) => {
    const early = chance.shuffled(["pad", "soft", "cover", "dry"]).slice(0, 2);
    const warmth = chance.shuffled(["warm", "first-temperature", "next-temperature"]).slice(0, 2);
    return {
      givens: {},
      about: { child: chance.pick(CHILDREN), age: chance.pick(["4", "5", "6", "7", "8", "9"]), hospital: chance.pick(HOSPITALS) },
      shown: chance.shuffled(["seal", "prep", "run", "release", "look", "leave", ...early, ...warmth]),
    };
  },
  slips: [
    { id: "padded-too-late", breaks: ["pad", "prep"] },
    { id: "soft-layer-too-late", breaks: ["soft", "prep"] },
    { id: "prepared-before-sealed", breaks: ["seal", "prep"] },
    { id: "uncovered", breaks: ["cover", "prep"] },
    { id: "no-first-temperature", breaks: ["first-temperature", "run"] },
    { id: "cold-irrigation", breaks: ["warm", "run"] },
    { id: "temperature-never-again", breaks: ["next-temperature", "release"] },
    { id: "skin-never-looked-at", breaks: ["look", "leave"] },
  ],
  words: {
    en: {
      title: "Skin and warmth",
      stems: [
        (say) => [`${childOf(say)} is small, and fluid will run for an hour. Put the steps of the sheet of ${say.about("hospital")} hospital into an order that keeps skin and warmth.`],
        (say) => [`Two things are easily forgotten under drapes: the skin and the temperature. You go through the sheet of ${say.about("hospital")} hospital for ${childOf(say)}.`],
        (say) => [`A knee arthroscopy in ${childOf(say)}, at ${say.about("hospital")} hospital. Order what is done for skin and warmth, from the table to the door.`],
      ],
      question: "In which order?",
      givens: {},
      cards: {
        pad: "Pad heels and elbows",
        soft: "Lay soft padding under the cuff",
        seal: "Seal the edge of the cuff",
        cover: "Cover the child, all but the leg",
        prep: "Prepare the skin",
        dry: "See that no preparation fluid has run under the cuff",
        "first-temperature": "Read the temperature before the irrigation runs",
        warm: "Have the irrigation as warm as the sheet says",
        run: "The irrigation runs",
        "next-temperature": "Read the temperature while the irrigation runs",
        release: "The cuff comes down",
        look: "Look at the skin under and below the cuff",
        leave: (say) => `${say.about("child")} leaves the theatre`,
      },
      slips: {
        "padded-too-late": { name: "padded too late", because: () => ["Once the skin is prepared, nobody lifts a heel. Pad before."] },
        "soft-layer-too-late": { name: "soft layer too late", because: () => ["The soft layer belongs under the cuff, and the cuff is sealed before the skin is prepared. Afterwards it cannot be put there."] },
        "prepared-before-sealed": { name: "skin prepared before the edge was sealed", because: () => ["Fluid that runs under a cuff burns. It lies there under pressure for as long as the cuff is up, and nobody sees it. Seal first."] },
        uncovered: { name: "left uncovered", because: () => ["A small child cools while the skin is prepared, before any irrigation runs. Cover what is not needed first."] },
        "no-first-temperature": { name: "no first temperature", because: () => ["Without a temperature from before, a later one says little. Read it before the irrigation runs."] },
        "cold-irrigation": { name: "cold irrigation", because: () => ["Small bodies cool fast, and litres of cold fluid take the heat with them. Have the fluid as warm as your sheet says before it runs."] },
        "temperature-never-again": { name: "temperature not read again", because: () => ["One reading is not a course. Read it while the irrigation runs, when something can still be done."] },
        "skin-never-looked-at": { name: "skin never looked at", because: () => ["A mark or a burn under the cuff is found by looking, and the place to look is here, before the child leaves."] },
      },
      working: () => ["Before the skin is prepared: padding, soft layer, sealed edge, covered child.", "Before the irrigation runs: its warmth and a first temperature. While it runs: another.", "After release: look at the skin, before the child leaves. Common practice, no source; your own sheet comes first."],
      right: () => ["Sealed before prepared, warm and measured before it runs, looked at before the child leaves."],
      off: () => ["Three moments close the door on something: the skin is prepared, the irrigation runs, the child leaves. Ask of each card which of them is the last that it may come before."],
      moves: () => ["Between two of these moments the cards may change places: padding before covering or after it. Past such a moment they may not go."],
      turns: () => ["Any order in which padding and seal stand before the preparation, warmth and a first temperature before the irrigation, and the look at the skin before the child leaves."],
    },
  },
};
