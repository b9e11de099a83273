import type { LocalList } from "../../engine/kit/local-list.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { LOCAL_LIST } from "../../facts/local-list.ts";
import { answerValue, given, HOSPITALS } from "../m01/common.ts";

const WHOLE = { unit: "pieces", step: 1 } as const;
const SINGLES = { key: "singles", ...WHOLE, least: 3, greatest: 9 } as const;
const PAIRS = { key: "pairs", ...WHOLE, least: 1, greatest: 4 } as const;
const CAPS = { key: "caps", ...WHOLE, least: 2, greatest: 6 } as const;
const PACKETS = { key: "packets", ...WHOLE, least: 2, greatest: 6 } as const;
const PER_PACKET = { key: "perPacket", ...WHOLE, least: 2, greatest: 5 } as const;

/** What our own sheet says of caps and lids. */
const capsBy = ({ capsCount }: LocalList): string => (capsCount ? "counted" : "left");

type About = Draw["about"];
/** The local sheet says whether caps and lids are countable. */
const capsCount = (about: About): boolean => about["caps"] !== "left";
const totals = (givens: Givens, withCaps: boolean): Readonly<Record<string, number>> => ({
  instruments: given(givens, "singles") + 2 * given(givens, "pairs") + (withCaps ? given(givens, "caps") : 0),
  needles: given(givens, "packets") * given(givens, "perPacket"),
});
const right = ({ givens, about }: Draw): Readonly<Record<string, number>> => totals(givens, capsCount(about));
const value = (say: Say, id: string): string => String(answerValue(say, id));
const rule = (say: Say): string => (say.about("caps") === "left" ? "The sheet leaves caps and lids out of the count." : "The sheet counts every cap and lid.");

/** 04c: how many pieces of each class must come back. */
export const openingSum: SumFamily = {
  kind: "sum",
  id: "opening-sum",
  code: "04c",
  module: "M04",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m04-count"],
  reads: [],
  sources: [],
  cautions: ["C5"],
  givens: [SINGLES, PAIRS, CAPS, PACKETS, PER_PACKET],
  asks: [
    { id: "instruments", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "needles", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance, local = LOCAL_LIST) => {
    const hospital = chance.pick(HOSPITALS);
    const caps = hospital === local.hospital ? capsBy(local) : chance.pick(["counted", "left"]);
    return {
      givens: { singles: chance.onGrid(SINGLES), pairs: chance.onGrid(PAIRS), caps: chance.onGrid(CAPS), packets: chance.onGrid(PACKETS), perPacket: chance.onGrid(PER_PACKET) },
      about: { hospital, caps },
      origins: { caps: { from: "local" } },
      local: local.hash,
    };
  },
  solve: (givens, about) => totals(givens, capsCount(about)),
  slips: [
    { id: "packets-for-needles", gives: (draw) => ({ ...right(draw), needles: given(draw.givens, "packets") }) },
    { id: "pair-as-one", gives: (draw) => ({ ...right(draw), instruments: (right(draw)["instruments"] ?? 0) - given(draw.givens, "pairs") }) },
    { id: "caps-left-out", gives: (draw) => (capsCount(draw.about) ? totals(draw.givens, false) : null) },
    { id: "caps-counted-anyway", gives: (draw) => (capsCount(draw.about) ? null : totals(draw.givens, true)) },
    { id: "packs-and-pieces-added", gives: (draw) => ({ ...right(draw), needles: given(draw.givens, "packets") + given(draw.givens, "perPacket") }) },
  ],
  words: {
    en: {
      title: "The opening sum",
      stems: [
        (say) => [`At ${say.about("hospital")} the trolley is laid and nothing has been used. You work out how many pieces must come back, class by class. ${rule(say)}`],
        (say) => [`Opening count at ${say.about("hospital")}: each needle counts, not each packet, and a pair is two pieces. ${rule(say)}`],
        (say) => [`What is not counted in cannot be counted out. The content sheet of ${say.about("hospital")} lists singles, pairs, caps and packets of needles. ${rule(say)}`],
      ],
      question: "How many instruments and small parts together, and how many needles, go into the opening count?",
      givens: { singles: "Single instruments", pairs: "Pairs of instruments", caps: "Caps and lids", packets: "Packets of needles", perPacket: "Needles in each packet" },
      asks: { instruments: "Instruments and small parts", needles: "Needles" },
      says: { none: "Nothing to count", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "packets-for-needles": { name: "packets counted for needles", because: (say) => [`${say.bare("packets")} packets hold ${value(say, "needles")} needles. A packet cannot be lost in a knee; a needle can.`] },
        "pair-as-one": { name: "a pair counted as one", because: () => ["The two of a pair part company on the trolley. Each is a piece of its own."] },
        "caps-left-out": { name: "caps left out", because: () => ["This hospital’s sheet counts caps and lids. They are small and they come off, so they are counted."] },
        "caps-counted-anyway": { name: "caps counted against the sheet", because: () => ["This hospital’s sheet leaves caps out. A sum that goes beyond the sheet never agrees at the end."] },
        "packs-and-pieces-added": { name: "packets and needles added", because: (say) => [`${say.bare("packets")} packets of ${say.bare("perPacket")} are multiplied, not added.`] },
      },
      working: (say) => [
        `Instruments and small parts: ${say.bare("singles")} + 2 × ${say.bare("pairs")}${say.about("caps") === "left" ? "" : ` + ${say.bare("caps")}`} = ${value(say, "instruments")}`,
        `Needles: ${say.bare("packets")} × ${say.bare("perPacket")} = ${value(say, "needles")}`,
      ],
      right: (say) => [`${value(say, "instruments")} instruments and small parts, ${value(say, "needles")} needles. Class by class, so that one class never pays for another.`],
      off: () => ["Singles once, pairs twice, packets times what they hold; caps as the local sheet says."],
      inverse: () => [],
      turns: (say) => [`Each packet more adds ${say.bare("perPacket")} needles; each pair more adds two pieces.`],
    },
  },
};
