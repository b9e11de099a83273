import type { OrderFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { drillEdges } from "../../facts/graph-drill.ts";
import { childOf, drawPlace } from "./count-words.ts";

interface DrillCase {
  readonly told: string;
  /** What is looked for, with its article. */
  readonly what: string;
  /** Cards beyond those that every case has. */
  readonly cards: readonly string[];
}

const SEARCH = ["field", "call-help", "floor"] as const;

/** Cases that differ in what is short, in when it is noticed, and in whether the search ends with it. */
const CASES: Readonly<Record<string, DrillCase>> = {
  "needle-first-count": { told: "At the first closing count a suture needle is short.", what: "the needle", cards: [...SEARCH, "image", "record"] },
  "needle-found": { told: "At the closing count a needle is short. It will turn up on the floor, stuck to a shoe cover.", what: "the needle", cards: [...SEARCH, "found", "record"] },
  swab: { told: "The swab count is short by one, and the cuff is still up.", what: "the swab", cards: [...SEARCH, "image", "record"] },
  "tip-broken": { told: "A grasper comes back without its tip.", what: "the tip", cards: ["keep-piece", "field", "image", "record"] },
  blade: { told: "One blade too few is on the magnet. The room has been tidied already.", what: "the blade", cards: [...SEARCH, "bags-stay", "image", "record"] },
  anchor: { told: "An anchor has slipped off its needle inside the joint, and the trolley is one short.", what: "the anchor", cards: ["field", "image", "record"] },
  "shift-change": { told: "At the hand-over between two shifts the needle count does not agree with the board.", what: "the needle", cards: ["both-stay", ...SEARCH, "image", "record"] },
  "family-waiting": { told: "The skin is half closed when somebody says that a needle is missing. The next child is in the anteroom.", what: "the needle", cards: [...SEARCH, "image", "record", "parents"] },
  "found-in-bin": { told: "At the closing count a swab is short. It will be found in a waste bag.", what: "the swab", cards: [...SEARCH, "bags-stay", "found", "record"] },
};

const caseOf = (say: Say): DrillCase => CASES[say.about("case")] as DrillCase;

/** 13c: what is done when a count does not agree. */
export const drill: OrderFamily = {
  kind: "order",
  id: "drill",
  code: "13c",
  module: "M13",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m13-drill"],
  reads: ["count-moments.uk@1"],
  sources: [{ source: "count-uk", entry: "count-moments.uk@1" }],
  cautions: ["C2", "C5", "C6"],
  givens: [],
  edges: drillEdges,
  draw: (chance) => {
    const id = chance.pick(Object.keys(CASES));
    const { cards } = CASES[id] as DrillCase;
    return { givens: {}, about: { ...drawPlace(chance), case: id }, shown: chance.shuffled(["tell", "stop", "recount", "close", ...cards]) };
  },
  slips: [
    { id: "closed-before-recount", breaks: ["recount", "close"] },
    { id: "closed-before-image", breaks: ["image", "close"] },
    { id: "searched-alone", breaks: ["call-help", "floor"] },
    { id: "recounted-in-silence", breaks: ["tell", "recount"] },
    { id: "closed-before-found", breaks: ["found", "close"] },
    { id: "image-before-search", breaks: ["field", "image"] },
    { id: "bags-gone", breaks: ["bags-stay", "floor"] },
  ],
  words: {
    en: {
      title: "The count does not agree",
      stems: [
        (say) => [`${childOf(say)}, ${say.about("side")} knee. ${caseOf(say).told}`],
        (say) => [`You are at the count in a theatre at ${say.about("hospital")}. ${caseOf(say).told}`],
        (say) => [`${caseOf(say).told} The child is ${childOf(say)}. Order what is done now.`],
      ],
      question: "In which order? Where your local card differs, it comes first.",
      givens: {},
      cards: {
        tell: "Tell the surgeon aloud, at once",
        stop: "Closure stops",
        recount: "Two people recount together, aloud",
        field: (say) => `The surgeon searches the field and the joint for ${caseOf(say).what}`,
        "call-help": "Call a further pair of hands to the search",
        floor: "Search floor, drapes and bins",
        image: (say) => `An image is taken and read, for ${caseOf(say).what} is still not there`,
        found: (say) => `${caseOf(say).what.replace(/^t/, "T")} is found, and the count is made again and agrees`,
        close: "Close the wound",
        record: "Write down what happened and report it",
        "keep-piece": "Keep what came back, with its broken end, beside the count",
        "bags-stay": "No bag and no bin leaves the room",
        "both-stay": "Both shifts stay in the room",
        parents: "Tell the family what happened",
      },
      slips: {
        "closed-before-recount": { name: "closed before the recount", because: () => ["Whatever is left inside is then under the skin. Closure waits until the recount is settled."] },
        "closed-before-image": { name: "closed before the image", because: (say) => [`${caseOf(say).what.replace(/^t/, "T")} has not been found. Closing first means opening again if the image shows it.`] },
        "searched-alone": { name: "searched alone", because: () => ["Whoever searches alone leaves the field or the floor unwatched and is believed by nobody. Call first, then search."] },
        "recounted-in-silence": { name: "recounted in silence", because: () => ["A quiet recount costs the minutes in which the wound is closed. Say it aloud first; being wrong about it harms nobody."] },
        "closed-before-found": { name: "closed before it was found", because: () => ["At that moment nobody knew where it was. The wound stays open until the count has been made again and agrees."] },
        "image-before-search": { name: "image before the search", because: () => ["An image costs radiation and time, and small things are missed on it. Search the field first."] },
        "bags-gone": { name: "bins searched after they may have left", because: () => ["What has left the room cannot be searched. Keep every bag and bin before the search begins."] },
      },
      working: () => ["Say it aloud, stop closure, recount together.", "Search the field, then with help floor, drapes and bins; an image where it is still not there.", "Close only when that is settled; then write and report. Common practice, no source; your local card comes first."],
      right: () => ["Said aloud, stopped, recounted together, searched with help, settled, closed, recorded. Nothing was closed over an open question."],
      off: () => ["Two things may not change places: telling before anything else, and settling before closing."],
      moves: () => ["Field and floor may be searched at the same time once somebody else has come. Closing may not move forward."],
      turns: () => ["Any order in which the surgeon knows first, two people recount, nobody searches alone, and the wound is closed after the question is."],
    },
  },
};
