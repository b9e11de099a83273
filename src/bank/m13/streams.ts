import { type LocalList, STREAMS, type Stream } from "../../engine/kit/local-list.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { childOf, drawPlace } from "./count-words.ts";

const OPTIONS = STREAMS;

/** Twelve things and where they go on most sheets; what a hospital does otherwise stands in its sheet. */
const USUAL: Readonly<Record<string, Stream>> = {
  needle: "sharps",
  blade: "sharps",
  stylet: "sharps",
  scope: "electronics",
  battery: "electronics",
  drape: "clinical",
  tubing: "clinical",
  swab: "clinical",
  wrap: "recycle",
  "saline-bag": "recycle",
  label: "keep",
  probe: "reprocess",
};
const ITEMS = Object.keys(USUAL);
const SHARP: readonly string[] = ["needle", "blade", "stylet"];

/** Sheets of other hospitals: each states the things for which hospitals differ. */
const SHEETS: Readonly<Record<string, Readonly<Record<string, Stream>>>> = {
  "all-sorted": { wrap: "recycle", "saline-bag": "recycle", tubing: "clinical", scope: "electronics" },
  "no-bags": { wrap: "recycle", "saline-bag": "clinical", tubing: "clinical", scope: "electronics" },
  "nothing-recycled": { wrap: "clinical", "saline-bag": "clinical", tubing: "clinical", scope: "electronics" },
  "wrap-burned": { wrap: "clinical", "saline-bag": "recycle", tubing: "clinical", scope: "electronics" },
  "tubing-recycled": { wrap: "recycle", "saline-bag": "recycle", tubing: "recycle", scope: "electronics" },
  "scope-kept": { wrap: "recycle", "saline-bag": "recycle", tubing: "clinical", scope: "keep" },
  "scope-kept-no-bags": { wrap: "recycle", "saline-bag": "clinical", tubing: "clinical", scope: "keep" },
  "scope-kept-burned": { wrap: "clinical", "saline-bag": "clinical", tubing: "clinical", scope: "keep" },
};

const streamNamed = (word: string | undefined): Stream => STREAMS.find((one) => one === word) ?? "clinical";
const truthIn = ({ about }: Pick<Draw, "about">): Readonly<Record<string, Stream>> => Object.fromEntries(ITEMS.map((item) => [item, streamNamed(about[item])]));

/** Where everything goes at the hospital of the draw: by our own list there, by an invented sheet elsewhere. The question carries the whole map. */
const drawn = (chance: Chance, list: LocalList): Draw => {
  const place = drawPlace(chance);
  const sheet = SHEETS[chance.pick(Object.keys(SHEETS))];
  const map = place["hospital"] === list.hospital ? list.waste : sheet;
  return { givens: {}, about: { ...place, ...USUAL, ...map }, local: list.hash };
};

const STREAM_WORDS: Readonly<Record<Stream, string>> = {
  sharps: "the sharps box",
  clinical: "clinical waste",
  electronics: "the box for electronics",
  recycle: "recycling",
  keep: "the shelf for things that are kept",
  reprocess: "the tray for reprocessing",
};

const localLines = (say: Say): string => {
  const of = (item: string): string => STREAM_WORDS[streamNamed(say.about(item))];
  return `The sheet at ${say.about("hospital")} says: clean paper wrap to ${of("wrap")}; emptied saline bags to ${of("saline-bag")}; tubing with only saline in it to ${of("tubing")}; a used scope of the single-use kit to ${of("scope")}${say.about("scope") === "keep" ? ", for the maker to take back" : ""}; anything with a battery to the box for electronics, never to the sharps box; labels of what was implanted are kept for the record.`;
};

/** Sorting as a hospital without an own sheet would: every local difference missed. */
const byHabit = (draw: Draw): Readonly<Record<string, Stream>> | null => {
  const truth = truthIn(draw);
  const habit = { ...USUAL, ...SHEETS["all-sorted"] };
  return ITEMS.every((item) => truth[item] === habit[item]) ? null : habit;
};

/** 13d: where each thing goes after the case. */
export const streams: NameFamily = {
  kind: "name",
  id: "streams",
  code: "13d",
  module: "M13",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m13-waste"],
  reads: [],
  sources: [],
  cautions: ["C2", "C7"],
  givens: [],
  attributes: ITEMS.map((id) => ({ id, options: OPTIONS })),
  draw: (chance, local = LOCAL_LIST) => drawn(chance, local),
  truth: truthIn,
  isUnsafe: (_, picks) => picks["scope"] === "reprocess" || picks["battery"] === "sharps" || SHARP.some((item) => picks[item] !== undefined && picks[item] !== "" && picks[item] !== "sharps"),
  slips: [
    { id: "scope-reprocessed", gives: (draw) => ({ ...truthIn(draw), scope: "reprocess" }) },
    { id: "sharp-into-a-bag", gives: (draw) => ({ ...truthIn(draw), needle: "clinical" }) },
    { id: "battery-into-sharps", gives: (draw) => ({ ...truthIn(draw), battery: "sharps" }) },
    { id: "stylet-into-a-bag", gives: (draw) => ({ ...truthIn(draw), stylet: "clinical" }) },
    { id: "label-thrown-away", gives: (draw) => ({ ...truthIn(draw), label: "clinical" }) },
    { id: "by-habit", gives: byHabit },
  ],
  words: {
    en: {
      title: "Where does it go?",
      stems: [
        (say) => [`The case of ${childOf(say)}, is over, the count agrees, and the trolley is emptied. ${localLines(say)}`],
        (say) => [`You empty a trolley at ${say.about("hospital")}. ${localLines(say)}`],
        (say) => [`The count has been settled, so things may leave the room. Streams differ from place to place. ${localLines(say)}`],
      ],
      question: "Into which stream does each thing go here?",
      givens: {},
      attributes: {
        needle: "Suture needle",
        blade: "Scalpel blade",
        stylet: "Stylet with a sharp end, out of its sheath",
        scope: "Scope of the single-use kit, used once",
        battery: "Battery out of a handle",
        drape: "Drape with blood on it",
        tubing: "Tubing with only saline in it",
        swab: "Swab with blood, after the last count",
        wrap: "Clean, dry paper wrap",
        "saline-bag": "Emptied saline bag",
        label: "Label of an anchor that was implanted",
        probe: "Steel probe of the hospital’s own set",
      },
      options: {
        sharps: "Sharps box",
        clinical: "Clinical waste",
        electronics: "Box for electronics",
        recycle: "Recycling",
        keep: "Keep",
        reprocess: "Back for reprocessing",
      },
      slips: {
        "scope-reprocessed": { name: "single-use scope to reprocessing", because: () => ["Single-use means once. Nobody has shown that it can be cleaned inside, and the next child would not know."] },
        "sharp-into-a-bag": { name: "a needle into a bag", because: () => ["A needle goes through a bag and into whoever carries it. Sharps go into the sharps box, whatever else is true of them."] },
        "battery-into-sharps": { name: "battery into the sharps box", because: () => ["Sharps boxes are often burned, and a battery in the fire can burst. It goes to the electronics."] },
        "stylet-into-a-bag": { name: "a stylet into a bag", because: () => ["Out of its sheath the stylet is a sharp like any needle. What it is made for does not count; its end does."] },
        "label-thrown-away": { name: "label thrown away", because: () => ["Without its label nobody can tell which anchor is in the child. It belongs in the record."] },
        "by-habit": { name: "sorted as elsewhere", because: (say) => [`At least one thing goes another way at ${say.about("hospital")} than you sorted it. Streams are local; read the sheet.`] },
      },
      working: (say) => ["Sharps first: needle, blade and stylet, whatever they are made of.", localLines(say), "What is the hospital’s own and made for it goes back for reprocessing; what is single-use never does."],
      right: () => ["Sharps in their box, nothing single-use back into use, the battery with the electronics, and the rest by the local sheet."],
      off: () => ["Ask of each thing: can it cut somebody, was it made for one use, is there a battery in it, and what does the local sheet say?"],
      moves: (say) => [`Another hospital’s sheet can move wrap, bags, tubing and scope. Needles, blades and batteries stay where they are at ${say.about("hospital")} and elsewhere.`],
      turns: () => ["A thing changes its stream with the local sheet; a sharp never does."],
    },
  },
};
