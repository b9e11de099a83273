import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { SourceMark } from "../../engine/question/verdict.ts";
import type { Say } from "../../engine/question/say.ts";
import { simulatedLine } from "../../facts/simulated-line.ts";
import { answerText, answerValue, given, PERCENT, SIDES } from "../m01/common.ts";

const SHARE = { unit: "%", least: 5, greatest: 75, step: 0.1 } as const;
const LINES = { key: "lines", unit: "pieces", least: 20, greatest: 400, step: 20 } as const;

interface Study {
  readonly anterolateral: string;
  readonly anteromedial: string;
  readonly whom: string;
  readonly touched: string;
}

/** Studies that drew the same line from both portals. */
const STUDIES: Readonly<Record<string, Study>> = {
  child: { anterolateral: "line-touches-peroneal.al-lateral-edge@1", anteromedial: "line-touches-peroneal.am-lateral-edge@1", whom: "scans of children", touched: "the common peroneal nerve, from the lateral edge of the popliteus tendon" },
  adult: { anterolateral: "line-touches-bundle.adult-al-root@1", anteromedial: "line-touches-bundle.adult-am-root@1", whom: "scans of adults", touched: "artery, vein or nerve behind the root of the lateral meniscus, when carried beyond the capsule" },
};
const sourcesOf = (source: string, { anterolateral, anteromedial }: Study): readonly SourceMark[] => [{ source, entry: anterolateral }, { source, entry: anteromedial }];
const SOURCES = { child: sourcesOf("houston-2025", STUDIES["child"] as Study), adult: sourcesOf("chuaychoosakoon-2023", STUDIES["adult"] as Study) } as const;
const study = (about: Draw["about"]): Study => STUDIES[about["study"] ?? ""] ?? (STUDIES["child"] as Study);
const studied = (say: Say): Study => study({ study: say.about("study") });

/** A published share in per cent, whether printed as such or as events of a total. */
const percentOf = (pin: string): number => {
  const { value, events = 0, total = 1 } = simulatedLine(pin).number;
  return Number((value ?? (PERCENT * events) / total).toFixed(1));
};
const pair = (givens: Givens): readonly [less: number, more: number] => {
  const [one, other] = [given(givens, "anterolateralPercent"), given(givens, "anteromedialPercent")];
  return [Math.min(one, other), Math.max(one, other)];
};
const solved = (givens: Givens): Readonly<Record<string, number>> => {
  const [less, more] = pair(givens);
  const differencePoints = sumOnGrid(more, -less);
  return { lessPercent: less, differencePoints, fewerLines: (given(givens, "lines") * differencePoints) / PERCENT };
};
const better = (say: Say): string => (say.value("anterolateralPercent") < say.value("anteromedialPercent") ? "anterolateral" : "anteromedial");

/** 06e: which of two portals lets fewer simulated lines touch, and by how much. */
export const linesThatTouch: SumFamily = {
  kind: "sum",
  id: "lines-that-touch",
  code: "06e",
  module: "M06",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m06-portal"],
  reads: Object.values(STUDIES).flatMap(({ anterolateral, anteromedial }) => [anterolateral, anteromedial]),
  sources: [...SOURCES.child, ...SOURCES.adult],
  cautions: ["C6", "C9", "C14"],
  givens: [{ key: "anterolateralPercent", ...SHARE }, { key: "anteromedialPercent", ...SHARE }, LINES],
  asks: [
    { id: "lessPercent", unit: "%", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "differencePoints", unit: "points", roundTo: 0.1, rounding: "nearest", safeSide: "none" },
    { id: "fewerLines", unit: "pieces", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: (chance) => {
    const name = chance.pick(["child", "child", "adult"] as const);
    const { anterolateral, anteromedial } = study({ study: name });
    return {
      givens: { anterolateralPercent: percentOf(anterolateral), anteromedialPercent: percentOf(anteromedial), lines: chance.onGrid(LINES) },
      about: { study: name, side: chance.pick(SIDES) },
      sources: SOURCES[name],
      cautions: name === "adult" ? ["C6", "C9", "C14"] : ["C6", "C14"],
      origins: { anterolateralPercent: { from: "study", entry: anterolateral }, anteromedialPercent: { from: "study", entry: anteromedial } },
    };
  },
  solve: solved,
  isUnsafe: ({ givens }, values) => {
    const [less, more] = pair(givens);
    return Math.abs((values["lessPercent"] ?? less) - more) < Math.abs((values["lessPercent"] ?? less) - less);
  },
  slips: [
    { id: "the-worse-line", gives: ({ givens }) => ({ ...solved(givens), lessPercent: pair(givens)[1] }) },
    { id: "ratio-for-difference", gives: ({ givens }) => ({ ...solved(givens), differencePoints: pair(givens)[1] / pair(givens)[0] }) },
    { id: "lines-for-patients", gives: ({ givens }) => ({ ...solved(givens), fewerLines: solved(givens)["differencePoints"] ?? 0 }) },
    { id: "touching-for-spared", gives: ({ givens }) => ({ ...solved(givens), fewerLines: (given(givens, "lines") * pair(givens)[1]) / PERCENT }) },
  ],
  words: {
    en: {
      title: "Lines that touch",
      stems: [
        (say) => [`On ${studied(say).whom}, straight lines were drawn from two portals. The share that touches ${studied(say).touched}, is printed for each. Now the same lines are drawn again in a model of a ${say.about("side")} knee, as many from either portal.`],
        (say) => [`A simulated line is not a needle and not a patient. ${studied(say).whom.charAt(0).toUpperCase()}${studied(say).whom.slice(1)}: the shares of lines from two portals that touch ${studied(say).touched}. You draw the number below from each portal of a ${say.about("side")} model knee.`],
        (say) => [`Two portals, one target, one structure. Published for ${studied(say).whom}: the share of straight lines that touches ${studied(say).touched}. Suppose the shares hold in your model of a ${say.about("side")} knee.`],
      ],
      question: "What share touches from the better portal, how many percentage points are between the two, and how many fewer lines would touch in your model? One decimal for the shares, whole lines.",
      givens: { anterolateralPercent: "Touching, from the anterolateral portal", anteromedialPercent: "Touching, from the anteromedial portal", lines: "Lines drawn from each portal, in the model" },
      asks: { lessPercent: "Share from the better portal", differencePoints: "Difference", fewerLines: "Fewer lines that touch" },
      says: { none: "There is no such share", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "the-worse-line": { name: "the worse line picked", because: (say) => [`${answerText(say, "lessPercent", { places: 1, unit: "%" })} from the ${better(say)} portal is the smaller share. For this target and this structure the other portal touches more often.`] },
        "ratio-for-difference": { name: "ratio for difference", because: () => ["A ratio says how many times as often. Percentage points are what is left when one share is taken from the other."] },
        "lines-for-patients": { name: "out of a hundred, whatever was drawn", because: (say) => [`The difference is per hundred lines. You drew ${say.bare("lines")} from each portal; and a line is not a patient.`] },
        "touching-for-spared": { name: "all touching lines counted", because: () => ["That is how many touch from the worse portal. Fewer means the difference between the two."] },
      },
      working: (say) => [
        `Difference: ${answerText(say, "differencePoints", { places: 1, unit: "points" })}`,
        `${say.bare("lines")} × ${say.number(answerValue(say, "differencePoints"))} ÷ 100 = ${say.number(answerValue(say, "fewerLines"), 0)} fewer lines`,
      ],
      right: (say) => [`From the ${better(say)} portal fewer of these lines touch this structure. Still missing: other structures, other knee positions, other targets, and any harm at all; a line that touches is not an injury rate.`],
      off: () => ["Find the smaller share first: it belongs to the better portal for this target. Then take the smaller from the larger, and that share of your own lines."],
      inverse: () => [],
      turns: () => ["At another target the better portal may be the other one. No portal is better as such."],
    },
  },
};
