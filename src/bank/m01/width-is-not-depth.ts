import { withUnit } from "../../engine/quantity/format.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { BAND_READS, BANDS, bandOf, pinOf, printedBand, widthOf } from "./bands.ts";
import { CHILDREN } from "./common.ts";

type Use = "depth" | "sideways" | "half" | "other-age";

const USES: Readonly<Record<Use, { readonly text: (say: Say) => string; readonly judgement: Judgement }>> = {
  depth: { text: () => "“So from the junction the needle may go that far before it meets the bundle.”", judgement: { picks: "reject", reasons: ["sideways"] } },
  half: { text: () => "“To be careful we set half of it as the greatest depth beyond the junction.”", judgement: { picks: "reject", reasons: ["sideways"] } },
  sideways: { text: () => "“So along the junction, from the popliteus tendon to the bundle, the zone is about that wide on average.”", judgement: { picks: "accept", reasons: ["same-direction"] } },
  "other-age": { text: (say) => `“So that is about how wide the zone is in ${say.about("child")}.”`, judgement: { picks: "reject", reasons: ["other-age"] } },
};
const purposeOf = (draw: Pick<Draw, "about">): Use => (draw.about["use"] ?? "depth") as Use;
const judgement = (draw: Pick<Draw, "about">): Judgement => USES[purposeOf(draw)].judgement;
const isDepth = (draw: Pick<Draw, "about">): boolean => purposeOf(draw) === "depth" || purposeOf(draw) === "half";
const figure = (say: Say): string => `zone width along the meniscocapsular junction, mean at ${printedBand(say.about("band"))} years, ${withUnit(widthOf(say.about("band")).meanMm.toFixed(1), "mm")}`;
const childOf = (say: Say): string => `${say.about("child")} is ${say.about("age")}`;
const saidUse = (say: Say): string => USES[say.about("use") as Use].text(say);

/** 01h: a zone width offered as something else. */
export const widthIsNotDepth: JudgeFamily = {
  kind: "judge",
  id: "width-is-not-depth",
  code: "01h",
  module: "M01",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m01-width"],
  reads: BAND_READS,
  sources: BAND_READS.map((entry) => ({ source: "beck-2019", entry })),
  cautions: ["C3"],
  givens: [],
  options: ["accept", "reject"],
  reasons: ["same-direction", "sideways", "other-age", "too-old"],
  draw: (chance) => {
    const use = chance.pick<Use>(["depth", "depth", "half", "sideways", "sideways", "other-age"]);
    const band = chance.pick(BANDS);
    const inBand = BANDS.indexOf(band) * 3 + 5 + chance.below(3);
    const outside = chance.pick([5, 6, 8, 9, 11, 12, 14, 15].filter((years) => bandOf(years) !== band));
    return { givens: {}, sources: [{ source: "beck-2019", entry: pinOf(band) }], about: { use, band, child: chance.pick(CHILDREN), age: String(use === "other-age" ? outside : inBand), who: chance.pick(["A colleague", "A visitor", "A teacher", "Somebody at the table"]) } };
  },
  decide: judgement,
  unsafeOptions: (draw) => (isDepth(draw) ? ["accept"] : []),
  slips: [
    { id: "width-taken-for-depth", gives: (draw) => (isDepth(draw) ? { picks: "accept", reasons: ["same-direction"] } : null) },
    { id: "another-age-accepted", gives: (draw) => (purposeOf(draw) === "other-age" ? { picks: "accept", reasons: ["same-direction"] } : null) },
    { id: "width-refused-as-width", gives: (draw) => (purposeOf(draw) === "sideways" ? { picks: "reject", reasons: ["sideways"] } : null) },
    { id: "paper-called-old", gives: (draw) => ({ picks: judgement(draw).picks, reasons: ["too-old"] }) },
  ],
  words: {
    en: {
      title: "A width is not a depth",
      stems: [
        (say) => [`${childOf(say)}. ${say.about("who")} quotes a paper: ${figure(say)} (knee nearly straight). What follows: ${saidUse(say)}`],
        (say) => [`A millimetre has a direction. ${childOf(say)}. The printed figure: ${figure(say)} (knee nearly straight). ${say.about("who")} says: ${saidUse(say)}`],
        (say) => [`${say.about("who")} says of ${say.about("child")}, ${say.about("age")}: ${saidUse(say)} The figure behind it: ${figure(say)} (knee nearly straight).`],
      ],
      question: "Accept or reject what is made of the figure, and for which reason?",
      givens: {},
      options: { accept: "Accept", reject: "Reject" },
      reasons: { "same-direction": "It is used in the direction and age in which it was measured", sideways: "It was measured along the capsule, not through it", "other-age": "It was measured at another age", "too-old": "The paper is not recent enough" },
      slips: {
        "width-taken-for-depth": { name: "width taken for depth", because: () => ["That millimetre figure is measured sideways, along the capsule. It says nothing about how far a needle may go through it; the bundle may lie much nearer."] },
        "another-age-accepted": { name: "another age’s figure", because: (say) => [`The mean is of ${printedBand(say.about("band"))} years, and ${childOf(say)}. The zone grows with the child.`] },
        "width-refused-as-width": { name: "refused where it fits", because: () => ["Here it is used as what it is: a width along the junction, at this age, on average. That may be said."] },
        "paper-called-old": { name: "paper called old", because: () => ["The year of the paper is not the point. The direction and the age of the measurement are."] },
      },
      working: (say) => ["Ask of a millimetre: from where to where, in which direction, at which age?", figure(say).charAt(0).toUpperCase() + figure(say).slice(1)],
      right: () => ["A figure holds in its own direction and at its own age, and a mean holds for no single child."],
      off: (say) => [say.about("use") === "sideways" ? "Direction and age agree with the paper, so it may be said, as a mean." : "Direction or age do not agree with the paper. Reject it, and say which."],
      moves: () => ["The same figure is right along the junction and useless through it. What changes is the direction, not the number."],
    },
  },
};
