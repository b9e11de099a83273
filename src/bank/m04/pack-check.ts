import { multisetDifference } from "../../engine/kit/multiset-difference.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { counted, HOSPITALS } from "../m01/common.ts";

interface Line {
  readonly one: string;
  readonly more: string;
  readonly wanted: number;
  readonly size?: readonly [right: string, wrong: string];
}

/** Lines of an invented content list: what a pack for a small scope may hold. */
const LINES: Readonly<Record<string, Line>> = {
  scope: { one: "small straight-ahead scope", more: "small straight-ahead scopes", wanted: 1 },
  sheath: { one: "sheath", more: "sheaths", wanted: 1, size: ["small", "large"] },
  obturator: { one: "blunt obturator", more: "blunt obturators", wanted: 1, size: ["small", "large"] },
  probe: { one: "hook probe", more: "hook probes", wanted: 1 },
  needle: { one: "long needle", more: "long needles", wanted: 2 },
  cap: { one: "portal cap", more: "portal caps", wanted: 2 },
  clamp: { one: "tube clamp", more: "tube clamps", wanted: 2 },
  retriever: { one: "suture retriever", more: "suture retrievers", wanted: 1 },
  cannula: { one: "cannula", more: "cannulas", wanted: 2, size: ["short", "long"] },
  tubing: { one: "inflow tubing", more: "inflow tubings", wanted: 1 },
};
const NAMES = Object.keys(LINES);

/** What the draw did to a line: right, missing, one of a pair, one too many, or the wrong size. */
type State = "right" | "pair" | "missing" | "half" | "extra" | "size";

const line = (id: string): Line => LINES[id] ?? { one: id, more: id, wanted: 1 };
const state = (draw: Pick<Draw, "about">, id: string): State => (draw.about[id] ?? "right") as State;

const namesOf = (id: string, count: number, size: string): readonly string[] => Array.from({ length: count }, () => `${size} ${id}`);
const FOUND: Readonly<Record<State, (line: Line) => number>> = {
  right: ({ wanted }) => wanted,
  pair: ({ wanted }) => wanted,
  size: ({ wanted }) => wanted,
  missing: () => 0,
  half: () => 1,
  extra: ({ wanted }) => wanted + 1,
};
const foundCount = (id: string, how: State): number => FOUND[how](line(id));
const isFaulty = (draw: Pick<Draw, "about">, id: string): boolean => {
  const how = state(draw, id);
  const [right = "", wrong = ""] = line(id).size ?? [];
  const { missing, extra } = multisetDifference(namesOf(id, line(id).wanted, right), namesOf(id, foundCount(id, how), how === "size" ? wrong : right));
  return missing.length + extra.length > 0;
};
const faultsOf = (draw: Draw): readonly string[] => (draw.shown ?? []).filter((id) => isFaulty(draw, id));
const withState = (draw: Draw, ...states: readonly State[]): readonly string[] => (draw.shown ?? []).filter((id) => states.includes(state(draw, id)));
const passing = (draw: Draw, ...states: readonly State[]): readonly string[] | null => {
  const passed = withState(draw, ...states);
  return passed.length === 0 ? null : faultsOf(draw).filter((id) => !passed.includes(id));
};

const amount = (id: string, count: number, size: string): string => {
  const { one, more } = line(id);
  return counted(count, `${size}${one}`, `${size}${more}`);
};
const thingText = (say: Say, id: string): string => {
  const how = say.about(id) as State;
  const [right = "", wrong = ""] = (line(id).size ?? []).map((size) => `${size} `);
  const listed = how === "pair" ? `1 pair of ${right}${line(id).more}` : amount(id, line(id).wanted, right);
  const found = foundCount(id, how);
  return `List: ${listed}. On the trolley: ${found === 0 ? "none" : amount(id, found, how === "size" ? wrong : right)}.`;
};

const faultFor = (chance: Chance, id: string): State => {
  const possible: State[] = ["missing", "extra"];
  if (line(id).wanted > 1) possible.push("half", "half");
  if (line(id).size) possible.push("size", "size");
  return chance.pick(possible);
};

/** 04a: a content list against what lies on the trolley. */
export const packCheck: TrayFamily = {
  kind: "tray",
  id: "pack-check",
  code: "04a",
  module: "M04",
  version: 0,
  firstWave: true,
  unsafe: false,
  objectives: ["m04-check"],
  reads: [],
  sources: [],
  cautions: ["C5", "C7"],
  givens: [],
  draw: (chance) => {
    const shown = chance.shuffled(NAMES).slice(0, 7 + chance.below(3));
    const faulty = new Set(shown.slice(0, 2 + chance.below(3)));
    const about = Object.fromEntries(shown.map((id) => {
      if (faulty.has(id)) return [id, faultFor(chance, id)];
      return [id, line(id).wanted === 2 && chance.happens(1, 2) ? "pair" : "right"];
    }));
    return { givens: {}, about: { ...about, hospital: chance.pick(HOSPITALS) }, shown: chance.shuffled(shown) };
  },
  faults: faultsOf,
  slips: [
    { id: "one-taken-for-the-pair", gives: (draw) => passing(draw, "half") },
    { id: "extra-taken-for-right", gives: (draw) => passing(draw, "extra") },
    { id: "size-not-read", gives: (draw) => passing(draw, "size") },
    { id: "missing-overlooked", gives: (draw) => passing(draw, "missing") },
    {
      id: "pair-taken-for-one",
      gives: (draw) => {
        const pairs = withState(draw, "pair");
        return pairs.length === 0 ? null : [...faultsOf(draw), ...pairs];
      },
    },
  ],
  words: {
    en: {
      title: "The pack against its list",
      stems: [
        (say) => [`The pack of a single-use scope set is open at ${say.about("hospital")}. You read the content list of that hospital aloud, and your colleague answers with what lies on the trolley.`],
        (say) => [`First count at ${say.about("hospital")}, before the child is in the room. Each line of the local content list stands beside what was found.`],
        (say) => [`A pack is complete when every line agrees in number and in size. ${say.about("hospital")} checks against its own list, line by line.`],
      ],
      question: "Which lines do not agree with the list?",
      givens: {},
      thing: thingText,
      nothing: "Every line agrees",
      slips: {
        "one-taken-for-the-pair": { name: "one taken for the pair", because: () => ["The list wants two and one was found. One of a pair that is passed at the start is looked for at the end."] },
        "extra-taken-for-right": { name: "one too many let pass", because: () => ["More than the list says is a mismatch too. What nobody wrote down is not missed when it stays behind."] },
        "size-not-read": { name: "size not read", because: () => ["The number agrees and the size does not. A part that does not fit is found out with the scope in the knee."] },
        "missing-overlooked": { name: "missing line overlooked", because: () => ["A line with none on the trolley was passed. Read each line against the trolley, not the trolley against your memory."] },
        "pair-taken-for-one": { name: "a pair read as one", because: () => ["A pair is two, and two were found. The line agrees."] },
      },
      working: () => ["Line by line: is it there, is it as many, is it that size?", "A missing line never pays for an extra one of another name."],
      right: () => ["Every mismatch found and nothing else flagged. Now it is written down, before anything is used."],
      off: () => ["Take each line by itself: number first, then size. A pair is two pieces."],
      moves: () => ["The list decides what belongs in the pack. With another hospital’s list, the same trolley may be right or wrong."],
    },
  },
};
