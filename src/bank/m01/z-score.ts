import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { BAND_READS, BANDS, bandOf, pinOf, printedBand, widthOf } from "./bands.ts";
import { answerValue, CHILDREN, counted, given, SIDES } from "./common.ts";

const DISTANCE = { key: "distanceMm", unit: "mm", least: 7, greatest: 26, step: 0.1 } as const;
const MEAN = { unit: "mm", least: 14, greatest: 18, step: 0.1 } as const;
const SPREAD = { unit: "mm", least: 2, greatest: 4, step: 0.1 } as const;
const MONTHS = 12;
/** A zone on the mean has no side, and one that both bands rate alike hides which band was taken. */
const LEAST_SCORE = 0.1;
const LEAST_GAP = 0.05;
const TENTHS = 10;

type About = Draw["about"];
const isOlder = (about: About): boolean => about["older"] === bandOf(Number(about["years"]));
const scoreIn = (givens: Givens, which: "younger" | "older"): number =>
  sumOnGrid(given(givens, "distanceMm"), -given(givens, `${which}MeanMm`)) / given(givens, `${which}SdMm`);
const own = (about: About): "younger" | "older" => (isOlder(about) ? "older" : "younger");
const other = (about: About): "younger" | "older" => (isOlder(about) ? "younger" : "older");

const ownOf = (say: Say): "younger" | "older" => (say.about("older") === bandOf(Number(say.about("years"))) ? "older" : "younger");
const ageOf = (say: Say): string => (say.about("months") === "0" ? `exactly ${say.about("years")} years` : `${say.about("years")} years and ${counted(say.about("months"), "month")}`);
const score = (say: Say): string => say.number(answerValue(say, "score"), 2);

interface Band {
  readonly meanMm: number;
  readonly sdMm: number;
}

const findWidths = (own: Band, other: Band): readonly number[] => {
  const score = (tenths: number, { meanMm, sdMm }: Band): number => (tenths / TENTHS - meanMm) / sdMm;
  const from = Math.ceil((own.meanMm - 2 * own.sdMm) * TENTHS);
  const to = Math.floor((own.meanMm + 2 * own.sdMm) * TENTHS);
  return Array.from({ length: to - from + 1 }, (_, at) => from + at)
    .filter((tenths) => Math.abs(score(tenths, own)) >= LEAST_SCORE && Math.abs(score(tenths, own) - score(tenths, other)) >= LEAST_GAP)
    .map((tenths) => tenths / TENTHS);
};

const WIDTHS = new Map<string, readonly number[]>();

/** Widths within two spreads of the own mean, where the neighbour's band gives another score; looked for once a pair of bands. */
const tellingWidths = (ownBand: string, otherBand: string): readonly number[] => {
  const pair = `${ownBand} ${otherBand}`;
  const known = WIDTHS.get(pair) ?? findWidths(widthOf(ownBand), widthOf(otherBand));
  WIDTHS.set(pair, known);
  return known;
};

/** 01c: how many spreads a child's zone lies from the mean of its age band. */
export const zScore: SumFamily = {
  kind: "sum",
  id: "z-score",
  code: "01c",
  module: "M01",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m01-share"],
  reads: BAND_READS,
  sources: BAND_READS.map((entry) => ({ source: "beck-2019", entry })),
  cautions: ["C3"],
  givens: [
    DISTANCE,
    { key: "youngerMeanMm", ...MEAN },
    { key: "youngerSdMm", ...SPREAD },
    { key: "olderMeanMm", ...MEAN },
    { key: "olderSdMm", ...SPREAD },
  ],
  asks: [{ id: "score", unit: "pieces", roundTo: 0.01, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const at = chance.below(BANDS.length - 1);
    const [younger = "", older = ""] = BANDS.slice(at, at + 2);
    const firstYear = 5 + 3 * at;
    const years = chance.pick([firstYear, firstYear + 1, firstYear + 2, firstYear + 2, firstYear + 3, firstYear + 3, firstYear + 4, firstYear + 5]);
    const [low, high] = [widthOf(younger), widthOf(older)];
    const widths = bandOf(years) === older ? tellingWidths(older, younger) : tellingWidths(younger, older);
    const from = (band: string) => ({ from: "study" as const, entry: pinOf(band) });
    return {
      givens: { distanceMm: chance.pick(widths), youngerMeanMm: low.meanMm, youngerSdMm: low.sdMm, olderMeanMm: high.meanMm, olderSdMm: high.sdMm },
      about: { child: chance.pick(CHILDREN), side: chance.pick(SIDES), years: String(years), months: String(chance.below(MONTHS)), younger, older },
      sources: [younger, older].map((band) => ({ source: "beck-2019", entry: pinOf(band) })),
      origins: { youngerMeanMm: from(younger), youngerSdMm: from(younger), olderMeanMm: from(older), olderSdMm: from(older) },
    };
  },
  solve: (givens, about) => ({ score: scoreIn(givens, own(about)) }),
  slips: [
    { id: "neighbour-band", gives: ({ givens, about }) => ({ score: scoreIn(givens, other(about)) }) },
    { id: "squared-spread", gives: ({ givens, about }) => ({ score: scoreIn(givens, own(about)) / given(givens, `${own(about)}SdMm`) }) },
    { id: "left-in-millimetres", gives: ({ givens, about }) => ({ score: sumOnGrid(given(givens, "distanceMm"), -given(givens, `${own(about)}MeanMm`)) }) },
    { id: "sign-turned", gives: ({ givens, about }) => ({ score: -scoreIn(givens, own(about)) }) },
  ],
  words: {
    en: {
      title: "Narrow or wide for this age",
      stems: [
        (say) => [`${say.about("child")} is ${ageOf(say)} old. On the scan of the ${say.about("side")} knee, nearly straight, you measure the zone along the meniscocapsular junction, from the popliteus tendon to the bundle, as the study did. Bands go by completed years.`],
        (say) => [`The zone between the popliteus tendon and the bundle, along the meniscocapsular junction, was measured in the ${say.about("side")} knee of ${say.about("child")}, ${ageOf(say)}. Two neighbouring age bands of the study are printed below; bands go by completed years.`],
        (say) => [`Is this zone narrow or wide for the age? ${say.about("child")}, ${ageOf(say)}, ${say.about("side")} knee; measured along the junction as in the study, knee nearly straight. Bands go by completed years.`],
      ],
      question: "How many standard deviations does this zone lie from the mean of the right band? Two decimals, negative below the mean.",
      givens: {
        distanceMm: "Width of this zone, on the scan",
        youngerMeanMm: (say) => `Mean at ${printedBand(say.about("younger"))} years`,
        youngerSdMm: (say) => `Standard deviation at ${printedBand(say.about("younger"))} years`,
        olderMeanMm: (say) => `Mean at ${printedBand(say.about("older"))} years`,
        olderSdMm: (say) => `Standard deviation at ${printedBand(say.about("older"))} years`,
      },
      asks: { score: "Standard deviations from the mean" },
      says: { none: "No band fits this child", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "neighbour-band": { name: "neighbour’s band", because: (say) => [`Completed years count. At ${ageOf(say)} the band is ${printedBand(say.about(ownOf(say)))}.`] },
        "squared-spread": { name: "divided by the variance", because: (say) => [`${say.of(`${ownOf(say)}SdMm`)} is the standard deviation already. Squared, it is no longer in millimetres.`] },
        "left-in-millimetres": { name: "left in millimetres", because: (say) => [`That is how many millimetres lie between the zone and the mean. One standard deviation is ${say.of(`${ownOf(say)}SdMm`)}: divide by it.`] },
        "sign-turned": { name: "sign turned", because: () => ["Negative means narrower than the mean, positive means wider. The mean is taken away from the child, not the child from the mean."] },
      },
      working: (say) => {
        const which = ownOf(say);
        return [
          `Band of ${say.about("years")} completed years: ${printedBand(say.about(which))}`,
          `(${say.of("distanceMm")} − ${say.of(`${which}MeanMm`)}) ÷ ${say.of(`${which}SdMm`)} = ${score(say)}`,
        ];
      },
      right: (say) => [`${score(say)}: this zone is ${answerValue(say, "score") < 0 ? "narrower" : "wider"} than the mean of its band. It is a width along the capsule and says nothing about a depth.`],
      off: () => ["Find the band by completed years, take its mean away from the child’s width, and divide by its standard deviation."],
      inverse: (say, { text }) => [`If the zone were ${text} wide. Here it is ${say.of("distanceMm")}.`],
    },
  },
  inverseOf: "distanceMm",
};
