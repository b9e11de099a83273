import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { meniscusSize } from "../../facts/meniscus-size.ts";
import { answerText, given, PERCENT } from "./common.ts";

const AREA = { key: "areaMm2", unit: "mm2", least: 250, greatest: 900, step: 10 } as const;
/** Shares with the digits that were printed: hundredths of the small children, whole per cent of the adults. */
const SHARE = { unit: "%", least: 40, greatest: 70 } as const;
const COVERS = [
  { key: "infantMedialPercent", ...SHARE, step: 0.01 },
  { key: "infantLateralPercent", ...SHARE, step: 0.01 },
  { key: "adultMedialPercent", ...SHARE, step: 1 },
  { key: "adultLateralPercent", ...SHARE, step: 1 },
] as const;
const SOURCES = {
  infant: [{ source: "coverage-infant", entry: "medial-cover.infant@1" }, { source: "coverage-infant", entry: "lateral-cover.infant@1" }],
  adult: [{ source: "bloecker-2011", entry: "medial-cover.adult@1" }, { source: "bloecker-2011", entry: "lateral-cover.adult@1" }],
} as const;

const areasOf = (areaMm2: number, coverPercent: number): Readonly<Record<string, number>> => {
  const coveredMm2 = (areaMm2 * coverPercent) / PERCENT;
  return { coveredMm2, bareMm2: areaMm2 - coveredMm2 };
};
type About = Draw["about"];
const keyFor = (who: string | undefined, side: string | undefined): string => `${who === "infant" ? "infant" : "adult"}${side === "lateral" ? "Lateral" : "Medial"}Percent`;
const coverOf = (givens: Givens, about: About, side: string | undefined): number => given(givens, keyFor(about["who"], side));
const coverText = (say: Say, side: string): string => say.of(keyFor(say.about("who"), side));
const otherSide = (side: string | undefined): string => (side === "lateral" ? "medial" : "lateral");
const whose = (say: Say): string => (say.about("who") === "infant" ? "children of 1–36 months" : "healthy adults");
const square = { places: 0, unit: "mm2" } as const;

/** 01a: how much of a compartment the meniscus covers, and how much stays bare. */
export const coverArea: SumFamily = {
  kind: "sum",
  id: "cover-area",
  code: "01a",
  module: "M01",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m01-share"],
  reads: ["medial-cover.infant@1", "lateral-cover.infant@1", "medial-cover.adult@1", "lateral-cover.adult@1"],
  sources: [...SOURCES.infant, ...SOURCES.adult],
  cautions: ["C3", "C9"],
  givens: [AREA, ...COVERS],
  asks: [
    { id: "coveredMm2", unit: "mm2", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "bareMm2", unit: "mm2", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const who = chance.pick(["infant", "adult"] as const);
    const covers = ["medial", "lateral"].map((side) => ({ key: keyFor(who, side), entry: `${side}-cover.${who}@1` }));
    const area = who === "infant" ? { ...AREA, greatest: 450 } : { ...AREA, least: 700 };
    return {
      givens: { areaMm2: chance.onGrid(area), ...Object.fromEntries(covers.map(({ key, entry }) => [key, meniscusSize(entry).number.value ?? 0])) },
      about: { who, side: chance.pick(["medial", "lateral"]) },
      origins: Object.fromEntries(covers.map(({ key, entry }) => [key, { from: "study" as const, entry }])),
      sources: SOURCES[who],
      cautions: who === "adult" ? ["C3", "C9"] : ["C3"],
    };
  },
  solve: (givens, about) => areasOf(given(givens, "areaMm2"), coverOf(givens, about, about["side"])),
  slips: [
    { id: "other-compartment", gives: ({ givens, about }) => areasOf(given(givens, "areaMm2"), coverOf(givens, about, otherSide(about["side"]))) },
    { id: "whole-plateau", gives: ({ givens, about }) => areasOf(2 * given(givens, "areaMm2"), coverOf(givens, about, about["side"])) },
    {
      id: "share-as-a-number",
      gives: ({ givens, about }) => areasOf(given(givens, "areaMm2"), PERCENT * coverOf(givens, about, about["side"])),
    },
    {
      id: "exchanged",
      gives: ({ givens, about }) => {
        const { coveredMm2 = 0, bareMm2 = 0 } = areasOf(given(givens, "areaMm2"), coverOf(givens, about, about["side"]));
        // Where one half is covered, exchanging the two changes nothing.
        return coveredMm2 === bareMm2 ? null : { coveredMm2: bareMm2, bareMm2: coveredMm2 };
      },
    },
  ],
  words: {
    en: {
      title: "Covered and bare",
      stems: [
        (say) => [`The ${say.about("side")} compartment of a tibia has the area below. Shares of the compartment that the menisci cover were published for ${whose(say)}.`],
        (say) => [`On a generated drawing you outline the ${say.about("side")} compartment of the tibia. Take the shares published for ${whose(say)}: each is a share of its own compartment.`],
        (say) => [`A meniscus spreads load because it covers cartilage. This is the ${say.about("side")} compartment; the shares are those of ${whose(say)}.`],
      ],
      question: "How much of this compartment does its meniscus cover, and how much stays bare? In whole square millimetres.",
      givens: {
        areaMm2: (say) => `Area of the ${say.about("side")} compartment`,
        infantMedialPercent: (say) => `Covered by the medial meniscus, ${whose(say)}`,
        infantLateralPercent: (say) => `Covered by the lateral meniscus, ${whose(say)}`,
        adultMedialPercent: (say) => `Covered by the medial meniscus, ${whose(say)}`,
        adultLateralPercent: (say) => `Covered by the lateral meniscus, ${whose(say)}`,
      },
      asks: { coveredMm2: "Covered", bareMm2: "Bare" },
      says: { none: "No area is covered here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "other-compartment": { name: "the other compartment’s share", because: (say) => [`You used the ${otherSide(say.about("side"))} share on the ${say.about("side")} side. The lateral meniscus covers more of its compartment than the medial one.`] },
        "whole-plateau": { name: "whole plateau", because: (say) => [`${say.of("areaMm2")} is one compartment already. The share belongs to that compartment, not to the plateau.`] },
        "share-as-a-number": { name: "per cent taken for a number", because: (say) => [`${coverText(say, say.about("side"))} are so many of a hundred: divide by 100. A part is never larger than the whole.`] },
        exchanged: { name: "covered and bare exchanged", because: (say) => [`The share says what is covered: ${coverText(say, say.about("side"))}. What is left of a hundred stays bare.`] },
      },
      working: (say) => [
        `Covered: ${say.of("areaMm2")} × ${say.bare(keyFor(say.about("who"), say.about("side")))} ÷ 100 = ${answerText(say, "coveredMm2", square)}`,
        `Bare: ${say.of("areaMm2")} less that, ${answerText(say, "bareMm2", square)}`,
      ],
      right: (say) => [`${answerText(say, "coveredMm2", square)} covered, ${answerText(say, "bareMm2", square)} bare. Between the third year and adult life nothing was found; do not draw a line between the two groups.`],
      off: () => ["One compartment, its own share: area times share is covered, the rest is bare."],
      inverse: () => [],
      turns: (say) => [`On the ${otherSide(say.about("side"))} side, with the same area, the answer would use ${coverText(say, otherSide(say.about("side")))}.`],
    },
  },
};
