import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { childOf, drawPlace } from "./count-words.ts";

const pieces = { unit: "pieces", step: 1 } as const;
const PAIRED = { key: "pairedPacketsPieces", least: 1, greatest: 6, ...pieces };
const PER_PAIRED = { key: "perPairedPacketPieces", least: 2, greatest: 2, ...pieces };
const OTHER = { key: "otherPacketsPieces", least: 1, greatest: 4, ...pieces };
const PER_OTHER = { key: "perOtherPacketPieces", least: 1, greatest: 8, ...pieces };
const USED = { key: "usedPieces", least: 1, greatest: 30, ...pieces };
/** A single needle, or a packet that holds several. */
const OTHER_SIZES = [1, 1, 4, 5, 8] as const;

const of = (givens: Givens, key: string): number => givens[key] as number;
const expected = (givens: Givens): number =>
  of(givens, PAIRED.key) * of(givens, PER_PAIRED.key) + of(givens, OTHER.key) * of(givens, PER_OTHER.key);
const answer = (say: Say): string => say.number((say.answer as Readonly<Record<string, number>>)["needlesPieces"] ?? 0, 0);

/** 13b: how many needles must be there when packets have been opened. */
export const needles: SumFamily = {
  kind: "sum",
  id: "needles",
  code: "13b",
  module: "M13",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m13-reconcile"],
  reads: [],
  sources: [],
  cautions: ["C2", "C5"],
  givens: [PAIRED, PER_PAIRED, OTHER, PER_OTHER, USED],
  asks: [{ id: "needlesPieces", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const givens = { [PAIRED.key]: chance.onGrid(PAIRED), [PER_PAIRED.key]: PER_PAIRED.least, [OTHER.key]: chance.onGrid(OTHER), [PER_OTHER.key]: chance.pick(OTHER_SIZES) };
    const most = expected(givens) - 1;
    return { givens: { ...givens, [USED.key]: chance.onGrid({ ...USED, greatest: Math.min(USED.greatest, most) }) }, about: drawPlace(chance) };
  },
  solve: (givens) => ({ needlesPieces: expected(givens) }),
  slips: [
    { id: "packets-counted", gives: ({ givens }) => ({ needlesPieces: of(givens, PAIRED.key) + of(givens, OTHER.key) }) },
    { id: "used-taken-off", gives: ({ givens }) => ({ needlesPieces: expected(givens) - of(givens, USED.key) }) },
    { id: "only-used", gives: ({ givens }) => ({ needlesPieces: of(givens, USED.key) }) },
    { id: "pairs-as-one", gives: ({ givens }) => (of(givens, PER_OTHER.key) === 1 ? null : { needlesPieces: of(givens, PAIRED.key) + of(givens, OTHER.key) * of(givens, PER_OTHER.key) }) },
  ],
  words: {
    en: {
      title: "Needles, not packets",
      stems: [
        (say) => [`${childOf(say)}, a repair in the ${say.about("side")} knee. Before closure somebody asks for the number of needles that must be accounted for, used or not. Nothing has been handed off.`],
        (say) => [`At ${say.about("hospital")} you write the needles of a case on the board as packets are opened. Now the case ends, and the board is read out. Nothing has left the field.`],
        (say) => [`The suture packets of ${childOf(say)}, lie open beside the sheet. Some needles have been used, the others are still clean; all of them are on the field or the trolley.`],
      ],
      question: "How many needles must be accounted for at the closing count?",
      givens: {
        pairedPacketsPieces: "Packets of double-armed sutures opened",
        perPairedPacketPieces: "Needles in each of these packets",
        otherPacketsPieces: "Other suture packets opened",
        perOtherPacketPieces: "Needles in each of the other packets",
        usedPieces: "Needles used in the knee",
      },
      asks: { needlesPieces: "Needles" },
      says: { none: "No needle must be there", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "packets-counted": { name: "packets counted", because: () => ["These are the packets. Each needle counts, not each packet."] },
        "used-taken-off": { name: "used needles taken off", because: (say) => [`A used needle has not gone away. The ${say.bare("usedPieces")} that went through the knee must come back to the count.`] },
        "only-used": { name: "only used needles counted", because: () => ["A clean needle can be lost as easily as a used one. All that was opened is counted."] },
        "pairs-as-one": { name: "a pair counted as one", because: (say) => [`A double-armed suture has a needle at each end, so the number of packets, ${say.bare("pairedPacketsPieces")}, is doubled.`] },
      },
      working: (say) => [`Double-armed: ${say.bare("pairedPacketsPieces")} × ${say.bare("perPairedPacketPieces")} = ${say.value("pairedPacketsPieces") * say.value("perPairedPacketPieces")}`, `Others: ${say.bare("otherPacketsPieces")} × ${say.bare("perOtherPacketPieces")} = ${say.value("otherPacketsPieces") * say.value("perOtherPacketPieces")}`, `Together ${answer(say)}, used or not`],
      right: (say) => [`${answer(say)} needles. What was opened must be there, used or not.`],
      off: (say) => [`Multiply packets by the needles in each and add up: ${answer(say)}. Whether a needle was used does not matter.`],
      inverse: () => [],
      turns: () => ["One further packet of double-armed sutures adds two. A needle used adds nothing and takes nothing away."],
    },
  },
};
