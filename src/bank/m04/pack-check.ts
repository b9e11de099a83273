import type { LocalList } from "../../engine/kit/local-list.ts";
import { multisetDifference } from "../../engine/kit/multiset-difference.ts";
import { amountOf, foundOf, packLineOf, packLineText, type PackLine, type PackState, packStateOf } from "../../engine/kit/pack-line.ts";
import type { TrayFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";

const line = (about: Draw["about"], id: string): PackLine => packLineOf(about[`${id}-line`] ?? "");
const state = (draw: Pick<Draw, "about">, id: string): PackState => packStateOf(draw.about[id]);

const isFaulty = (draw: Pick<Draw, "about">, id: string): boolean => {
  const listed = line(draw.about, id);
  const found = foundOf(listed, state(draw, id));
  const names = (count: number, size: string): readonly string[] => Array.from({ length: count }, () => `${size} ${id}`);
  const { missing, extra } = multisetDifference(names(listed.pieces, listed.size), names(found.count, found.size));
  return missing.length + extra.length > 0;
};
const faultsOf = (draw: Draw): readonly string[] => (draw.shown ?? []).filter((id) => isFaulty(draw, id));
const withState = (draw: Draw, ...states: readonly PackState[]): readonly string[] => (draw.shown ?? []).filter((id) => states.includes(state(draw, id)));
const passing = (draw: Draw, ...states: readonly PackState[]): readonly string[] | null => {
  const passed = withState(draw, ...states);
  return passed.length === 0 ? null : faultsOf(draw).filter((id) => !passed.includes(id));
};

const thingText = (say: Say, id: string): string => {
  const listed = line({ [`${id}-line`]: say.about(`${id}-line`) }, id);
  const how = packStateOf(say.about(id));
  const size = listed.size === "" ? "" : `${listed.size} `;
  const wanted = how === "pair" ? `1 pair of ${size}${listed.more}` : amountOf(listed, { count: listed.pieces, size: listed.size });
  return `List: ${wanted}. On the trolley: ${amountOf(listed, foundOf(listed, how))}.`;
};

const faultFor = (chance: Chance, { pieces, otherSize }: PackLine): PackState => {
  const possible: PackState[] = ["missing", "extra"];
  if (pieces > 1) possible.push("half", "half");
  if (otherSize !== "") possible.push("size", "size");
  return chance.pick(possible);
};

/** Some lines of the local list, two to four of them found otherwise than listed; each line goes into the question whole. */
const drawn = (chance: Chance, list: LocalList): Draw => {
  const lines = chance.shuffled(list.pack).slice(0, 7 + chance.below(3));
  const faulty = 2 + chance.below(3);
  const about = Object.fromEntries(lines.flatMap((one, at): (readonly [string, string])[] => {
    const sound = one.pieces === 2 && chance.happens(1, 2) ? "pair" : "right";
    return [[one.id, at < faulty ? faultFor(chance, one) : sound], [`${one.id}-line`, packLineText(one)]];
  }));
  return { givens: {}, about: { ...about, hospital: list.hospital }, shown: chance.shuffled(lines.map(({ id }) => id)), local: list.hash };
};

/** 04a: a content list against what lies on the trolley. */
export const packCheck: TrayFamily = {
  kind: "tray",
  id: "pack-check",
  code: "04a",
  module: "M04",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m04-check"],
  reads: [],
  sources: [],
  cautions: ["C5", "C7"],
  givens: [],
  draw: (chance, local = LOCAL_LIST) => drawn(chance, local),
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
