import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { tear } from "../../facts/tear.ts";
import { alike, CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";

/** What a local list wants looked at in a knee with a torn cruciate ligament, and in which words. */
const LOOKS: Readonly<Record<string, string>> = {
  "medial-back": "medial meniscus, posterior horn, from the front",
  "medial-root": "medial root, from the front",
  "behind-medial": "behind the medial posterior horn, through the notch",
  "lateral-back": "lateral meniscus, posterior horn, from the front",
  "lateral-root": "lateral root, from the front",
  hiatus: "popliteal hiatus, from the front",
  "behind-lateral": "behind the lateral posterior horn, through the notch",
  notch: "both cruciate ligaments in the notch",
};
const ALL = Object.keys(LOOKS);
/** A look that is taken for another which it does not replace. */
const TAKEN_FOR: Readonly<Record<string, string>> = { "behind-medial": "medial-back", "behind-lateral": "lateral-back", "medial-root": "medial-back", "lateral-root": "lateral-back", hiatus: "lateral-back" };
/** Through the notch, medial: the one that hides a ramp tear. */
const RAMP = "behind-medial";
const [NOTCH_PIN, FRONT_PIN] = ["ramp-seen.notch@1", "ramp-seen.front@1"] as const;
const [byNotch, byFront] = [tear(NOTCH_PIN).value, tear(FRONT_PIN).value];
const PRINTED = `In ${byNotch.total ?? ""} knees of 12–17 years with a torn cruciate ligament a tear behind the medial horn was seen through the notch in ${byNotch.events ?? ""}, and from the front in ${byFront.events ?? ""}.`;

const strip = (draw: Pick<Draw, "about">): readonly string[] => (draw.about["strip"] ?? "").split(" ").filter((id) => id !== "");
const missing = (draw: Draw): readonly string[] => (draw.shown ?? []).filter((id) => !strip(draw).includes(id));
const without = (draw: Draw, ids: readonly string[]): readonly string[] | null => {
  const left = missing(draw).filter((id) => !ids.includes(id));
  return left.length === missing(draw).length ? null : left;
};
/** Looks that are passed because their neighbour was taken: behind, and from the front. */
const isTaken = (draw: Draw, id: string): boolean => strip(draw).includes(TAKEN_FOR[id] ?? "");
const BEHIND = Object.keys(TAKEN_FOR).filter((id) => id.startsWith("behind"));
const BESIDE = Object.keys(TAKEN_FOR).filter((id) => !id.startsWith("behind"));
const shownStrip = (say: Say): string => say.about("strip").split(" ").map((id, at) => `${at + 1} ${LOOKS[id] ?? id}`).join("; ");

/** 09k: what was not looked at in a knee with a torn cruciate ligament. */
export const notchLook: TrayFamily = {
  kind: "tray",
  id: "notch-look",
  code: "09k",
  module: "M09",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m09-notch"],
  reads: [NOTCH_PIN, FRONT_PIN],
  sources: [{ source: "malatray-2018", entry: NOTCH_PIN }],
  cautions: ["C2", "C3"],
  givens: [],
  draw: (chance) => {
    // The two looks from the front are always taken: they are what the looks behind are mistaken for.
    const others = chance.shuffled(ALL.filter((id) => id !== RAMP && id !== "medial-back" && id !== "lateral-back"));
    const absent = [...(chance.below(4) === 0 ? [] : [RAMP]), ...others.slice(0, 1 + chance.below(2))];
    const taken = ALL.filter((id) => !absent.includes(id));
    const again = chance.pick(taken.filter((id) => id !== RAMP));
    return {
      givens: {},
      about: { strip: chance.shuffled([...taken, again]).join(" "), again, side: chance.pick(SIDES), child: chance.pick(CHILDREN), age: chance.pick(["12", "13", "15", "16"]), hospital: chance.pick(HOSPITALS) },
      shown: ALL,
    };
  },
  faults: missing,
  slips: [
    ...Object.keys(TAKEN_FOR).map((look) => ({ id: `${look}-passed`, gives: (draw: Draw) => (isTaken(draw, look) ? without(draw, [look]) : null) })),
    { id: "notch-passed", gives: (draw) => without(draw, ["notch"]) },
    { id: "second-look-flagged", gives: (draw) => [...missing(draw), draw.about["again"] ?? ""] },
    { id: "ramp-flagged-though-seen", gives: (draw) => (strip(draw).includes(RAMP) ? [...missing(draw), RAMP] : null) },
  ],
  words: {
    en: {
      title: "What was not looked at",
      stems: [
        (say) => [`${say.about("child")} is ${say.about("age")} and has torn the anterior cruciate ligament of the ${say.about("side")} knee. These looks are in the record, in the order taken: ${shownStrip(say)}.`],
        (say) => [`Before the graft is prepared at ${say.about("hospital")}, somebody lays the record of the ${say.about("side")} knee beside the local list. ${say.about("child")}, ${say.about("age")}, torn anterior cruciate ligament. Taken: ${shownStrip(say)}.`],
        (say) => [`A torn anterior cruciate ligament, ${say.about("side")} knee, ${say.about("child")}, ${say.about("age")}. The round is said to be complete. The pictures say: ${shownStrip(say)}.`],
      ],
      question: "Which looks of the local list were not taken?",
      givens: {},
      thing: (_say, id) => `${(LOOKS[id] ?? id).charAt(0).toUpperCase()}${(LOOKS[id] ?? id).slice(1)}`,
      nothing: "All were taken",
      slips: {
        ...alike(BEHIND.map((look) => `${look}-passed`), { name: "front view taken as enough", because: () => [`The posterior horn from the front is one look, and what lies behind it is another. ${PRINTED}`] }),
        ...Object.fromEntries(BESIDE.map((look) => [`${look}-passed`, { name: "neighbour taken as enough", because: () => [`A picture of the posterior horn is not this one: ${LOOKS[look] ?? look}. Each is a look of its own.`] }])),
        "notch-passed": { name: "the torn ligament taken as known", because: () => ["That a ligament is torn is known. How both look in the notch stands in no picture."] },
        "second-look-flagged": { name: "a look taken twice was flagged", because: () => ["That one was taken, and even twice. Twice is no fault."] },
        "ramp-flagged-though-seen": { name: "flagged although taken", because: () => ["Behind the medial horn was looked at, through the notch. It stands in the strip."] },
      },
      working: (say) => [`Take the list line by line. Missing: ${missingOf(say).map((id) => LOOKS[id] ?? id).join("; ")}.`],
      right: () => [`What is not looked at is not found. ${PRINTED}`],
      off: () => [`Go from the list to the strip. From the front and through the notch are two looks, even of one place. ${PRINTED}`],
      moves: () => ["A list that does not ask for the look through the notch would pass most of these records. Which looks it asks for is for your hospital to settle."],
    },
  },
};

const drawOf = (say: Say): Draw => ({ givens: {}, about: { strip: say.about("strip") }, shown: ALL });
const missingOf = (say: Say): readonly string[] => missing(drawOf(say));
