import type { Draw } from "../../engine/question/family-head.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { alike, numbered } from "../m01/common.ts";
import { childOf, drawPlace } from "./count-words.ts";

/** Each field of the local list: how it reads filled, as a plain "none", half filled, and with a blank. */
interface Field {
  readonly name: string;
  readonly filled: (digit: number) => string;
  /** Where nothing may be a true answer. */
  readonly none?: string;
  readonly half?: (digit: number) => string;
}

const LEFT_DIGIT = 2;
const RIGHT_DIGIT = 1;
/** With the greatest digit still a volume that the lightest of the children could have. */
const LEAST_ML = 4;

const FIELDS: Readonly<Record<string, Field>> = {
  lot: { name: "Lot of each implant", filled: (digit) => `K4${digit}7, two labels kept`, none: "no implant used", half: () => "see packet" },
  count: { name: "Count at closure, signed by two", filled: () => "agrees, both signed", half: () => "agrees, one signed" },
  cuff: { name: "Cuff up and down", filled: (digit) => `up 09:1${digit}, down 09:5${digit}`, none: "not used", half: (digit) => `up 09:1${digit}, down` },
  images: { name: "Consent to images", filled: () => "given, signed before the case", none: "no images taken", half: () => "see folder" },
  "operated-side": { name: "Side operated on", filled: (digit) => (digit === LEFT_DIGIT ? "left" : "right") },
  drains: { name: "Drains", filled: () => "one, still in place", none: "none" },
  specimen: { name: "Specimens", filled: () => "one, sent at 10:05", none: "none", half: () => "sent" },
  events: { name: "Complications", filled: () => "blood in the joint, emptied", none: "none" },
  local: { name: "Local anaesthetic: what, how much, where", filled: (digit) => `bupivacaine 0.25 per cent, ${LEAST_ML + digit}\u2009mL, portals`, none: "none given", half: (digit) => `${LEAST_ML + digit}\u2009mL, portals` },
};
const IDS = Object.keys(FIELDS);
const STATES = ["filled", "none", "blank", "half"] as const;
type State = (typeof STATES)[number];

const stateIn = (draw: Draw, id: string): State => STATES.find((state) => state === (draw.about[id] ?? "").split(":")[0]) ?? "filled";
const where = (draw: Draw, states: readonly State[]): readonly string[] => (draw.shown ?? []).filter((id) => states.includes(stateIn(draw, id)));
const faultsIn = (draw: Draw): readonly string[] => where(draw, ["blank", "half"]);

const statesOf = (id: string, isFaulty: boolean): readonly State[] => {
  const field = FIELDS[id] as Field;
  if (isFaulty) return field.half ? ["blank", "half"] : ["blank"];
  return field.none === undefined ? ["filled"] : ["filled", "none"];
};

const drawn = (chance: Chance): Draw => {
  const ids = chance.shuffled(IDS).slice(0, 7);
  const faulty = 1 + chance.below(3);
  const place = drawPlace(chance);
  // The side that is written down is the side of the case; only a blank is a fault here.
  const ownSide = place["side"] === "left" ? LEFT_DIGIT : RIGHT_DIGIT;
  const fields = ids.map((id, index) => [id, `${chance.pick(statesOf(id, index < faulty))}:${id === "operated-side" ? ownSide : 1 + chance.below(8)}`]);
  return { givens: {}, about: { ...place, ...Object.fromEntries(fields) }, shown: chance.shuffled(ids) };
};

/** One faulty line of a kind passed, and one sound line flagged: the first such line, the second, and so on. */
const passing = (draw: Draw, state: State, at: number): readonly string[] | null => {
  const passed = where(draw, [state])[at];
  return passed === undefined ? null : faultsIn(draw).filter((id) => id !== passed);
};
const flagging = (draw: Draw, at: number): readonly string[] | null => {
  const flagged = where(draw, ["none"])[at];
  return flagged === undefined ? null : [...faultsIn(draw), flagged];
};
const MOST_FAULTS = 3;
const MOST_NONE = 5;
const BLANKS = numbered("blank-for-none", MOST_FAULTS);
const HALVES = numbered("half-a-line", MOST_FAULTS);
const NONES = numbered("none-flagged", MOST_NONE);

const lineOf = (id: string, text: string): string => {
  const [state = "", digit = ""] = text.split(":");
  const { name, filled, none = "", half } = FIELDS[id] as Field;
  const texts: Readonly<Record<string, string>> = { none, blank: "", half: half?.(Number(digit)) ?? "" };
  const value = texts[state] ?? filled(Number(digit));
  return value === "" ? `${name}: (empty)` : `${name}: ${value}`;
};

/** 13h: what is missing in a record. */
export const record: TrayFamily = {
  kind: "tray",
  id: "record",
  code: "13h",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-record"],
  reads: [],
  sources: [],
  cautions: ["C2", "C5"],
  givens: [],
  draw: drawn,
  faults: faultsIn,
  slips: [
    ...BLANKS.map((id, at) => ({ id, gives: (draw: Draw) => passing(draw, "blank", at) })),
    ...HALVES.map((id, at) => ({ id, gives: (draw: Draw) => passing(draw, "half", at) })),
    ...NONES.map((id, at) => ({ id, gives: (draw: Draw) => flagging(draw, at) })),
    { id: "all-sent-back", gives: (draw) => [...(draw.shown ?? [])] },
  ],
  words: {
    en: {
      title: "What is missing in the record?",
      stems: [
        (say) => [`The record of ${childOf(say)}, ${say.about("side")} knee, is about to be closed. The list at ${say.about("hospital")} asks for every line below, each whole in itself. Where there was nothing, it asks for the word.`],
        (say) => [`You read a record at ${say.about("hospital")} before it leaves the theatre: ${childOf(say)}. Each line must be whole in itself, so that somebody who was not there can use it without looking elsewhere.`],
        (say) => [`A year from now somebody opens the record of ${childOf(say)}. The local list at ${say.about("hospital")} wants every field filled: times with beginning and end, a dose with its medicine, a count with its signatures, nothing that sends the reader elsewhere, and “none” where there was none.`],
      ],
      question: "Which lines are missing or not whole?",
      givens: {},
      thing: (say, id) => lineOf(id, say.about(id)),
      nothing: "The record is complete",
      slips: {
        ...alike(BLANKS, { name: "a blank taken for “none”", because: () => ["An empty field may mean none, not asked, or forgotten. Only the word says which."] }),
        ...alike(HALVES, { name: "half a line passed", because: () => ["A line with something in it looks filled. What lacks its end, its medicine or a signature, or sends the reader elsewhere, cannot be used later."] }),
        ...alike(NONES, { name: "“none” flagged", because: () => ["“None” is an answer, and a whole one. Somebody asked and wrote it down."] }),
        "all-sent-back": { name: "the whole record sent back", because: () => ["Sent back as a whole, it comes back unread. Name the lines."] },
      },
      working: () => ["Is there anything in the field? An empty one is missing, whatever it may mean.", "Is it whole: both times, medicine with amount and place, signatures, lots?", "“None” and “not used” are whole answers."],
      right: () => ["Empty and half-filled lines were found, and “none” was left alone, for somebody asked."],
      off: () => ["Go field by field: empty is missing, half is missing, “none” is an answer."],
      moves: () => ["One word turns an empty field into a whole one. No field is whole because it is usually nothing."],
      turns: () => ["The record is complete where a stranger could say for every line what was done, or that nothing was."],
    },
  },
};
