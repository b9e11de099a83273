import { multisetDifference } from "../../engine/kit/multiset-difference.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { alike, HOSPITALS, numbered, SIDES } from "../m01/common.ts";

const STATIONS: Readonly<Record<string, string>> = {
  pouch: "pouch above the patella",
  patella: "under the patella",
  gutters: "both gutters",
  "medial-front": "medial meniscus, front and body",
  "medial-back": "medial meniscus, posterior horn",
  notch: "notch",
  "lateral-front": "lateral meniscus, front and body",
  "lateral-back": "lateral meniscus, posterior horn",
  hiatus: "popliteal hiatus",
  behind: "behind, seen through the notch",
};
const ALL = Object.keys(STATIONS);
/** Pictures that show a neighbour of a required station and are taken for it. */
const NEIGHBOURS: Readonly<Record<string, string>> = { "medial-back": "medial-front", "lateral-back": "lateral-front", hiatus: "lateral-back", behind: "notch" };

const strip = (draw: Pick<Draw, "about">): readonly string[] => (draw.about["strip"] ?? "").split(" ").filter((id) => id !== "");
const faultsOf = (draw: Draw): readonly string[] => multisetDifference(draw.shown ?? [], [...new Set(strip(draw))]).missing.map(({ item }) => item);
const doubled = (draw: Draw): readonly string[] => {
  const seen = strip(draw);
  return [...new Set(seen.filter((id, at) => seen.indexOf(id) !== at))];
};
/** Missing stations whose neighbour was taken, and those that only the number of pictures hides. */
const isBeside = (draw: Draw, id: string): boolean => strip(draw).includes(NEIGHBOURS[id] ?? "");
const beside = (draw: Draw, id: string): readonly string[] | null => (faultsOf(draw).includes(id) && isBeside(draw, id) ? faultsOf(draw).filter((one) => one !== id) : null);
const counted = (draw: Draw, at: number): readonly string[] | null => {
  const passed = faultsOf(draw).filter((id) => !isBeside(draw, id))[at];
  return passed === undefined || doubled(draw).length < faultsOf(draw).length ? null : faultsOf(draw).filter((id) => id !== passed);
};
const flagged = (draw: Draw, at: number): readonly string[] | null => {
  const twice = doubled(draw)[at];
  return twice === undefined ? null : [...faultsOf(draw), twice];
};
const MOST_MISSING = 3;
const COUNTED = numbered("picture-for-a-station", MOST_MISSING);
const FLAGGED = numbered("one-of-two-flagged", MOST_MISSING);
const BESIDE = Object.keys(NEIGHBOURS);
const shownStrip = (say: Say): string => say.about("strip").split(" ").map((id, at) => `${at + 1} ${STATIONS[id] ?? id}`).join("; ");

/** 08b: stations of the required list of which no picture exists. */
export const unrecorded: TrayFamily = {
  kind: "tray",
  id: "unrecorded",
  code: "08b",
  module: "M08",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m08-missed"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [],
  draw: (chance) => {
    const required = chance.shuffled(ALL).slice(0, 7 + chance.below(3));
    const missing = required.slice(0, 2 + chance.below(2));
    const taken = required.filter((id) => !missing.includes(id));
    const twice = chance.shuffled(taken).slice(0, missing.length);
    const shown = ALL.filter((id) => required.includes(id));
    return { givens: {}, about: { strip: chance.shuffled([...taken, ...twice]).join(" "), side: chance.pick(SIDES), hospital: chance.pick(HOSPITALS) }, shown };
  },
  faults: faultsOf,
  slips: [
    { id: "pictures-counted", gives: (draw) => (doubled(draw).length < faultsOf(draw).length ? null : []) },
    ...BESIDE.map((station) => ({ id: `beside-${station}`, gives: (draw: Draw) => beside(draw, station) })),
    ...COUNTED.map((id, at) => ({ id, gives: (draw: Draw) => counted(draw, at) })),
    ...FLAGGED.map((id, at) => ({ id, gives: (draw: Draw) => flagged(draw, at) })),
  ],
  words: {
    en: {
      title: "Not in the record",
      stems: [
        (say) => [`The record of a ${say.about("side")} knee at ${say.about("hospital")} holds this strip of pictures: ${shownStrip(say)}.`],
        (say) => [`Before the record of a ${say.about("side")} knee is closed at ${say.about("hospital")}, somebody lays the strip beside the local list. The strip: ${shownStrip(say)}.`],
        (say) => [`As many pictures as stations do not make a whole round. ${say.about("hospital")}, ${say.about("side")} knee, pictures in the order taken: ${shownStrip(say)}.`],
      ],
      question: "Which stations of the local list are not in the record?",
      givens: {},
      thing: (_say, id) => `${(STATIONS[id] ?? id).charAt(0).toUpperCase()}${(STATIONS[id] ?? id).slice(1)}`,
      nothing: "All are recorded",
      slips: {
        ...alike(["pictures-counted", ...COUNTED], { name: "pictures counted", because: () => ["There are as many pictures as stations, but some show the same one. Count places, not pictures."] }),
        ...Object.fromEntries(BESIDE.map((station) => [`beside-${station}`, { name: "neighbour taken for the station", because: () => [`A picture beside it does not show it: ${STATIONS[station] ?? station} is a station of its own.`] }])),
        ...alike(FLAGGED, { name: "a recorded station flagged", because: () => ["That station is there, even twice. Twice is no fault; not at all is one."] }),
      },
      working: () => ["Take the local list line by line and look for each station in the strip. A station shown twice counts once."],
      right: () => ["Found before the scope leaves the knee, a missing station costs a minute. Found afterwards, it stays unknown."],
      off: () => ["Work from the list to the strip, never the other way. What is not in the strip was perhaps seen, but nobody can show it."],
      moves: () => ["A longer local list makes a record incomplete that a shorter one would pass. The list decides, and it is yours."],
    },
  },
};
