import type { NameFamily } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { BAND_READS, BANDS, bandOf, printedBand } from "./bands.ts";
import { CHILDREN, counted } from "./common.ts";

const MONTHS = 12;
/** Ages of the study of one line, in completed years. */
const LINE_AGES = { first: 10, last: 18 } as const;

type Picks = Readonly<Record<string, string>>;

const lineOf = (years: number): string => (years >= LINE_AGES.first && years <= LINE_AGES.last ? "inside" : "outside");
const truthAt = (years: number): Picks => ({ band: bandOf(years), line: lineOf(years) });
const years = ({ about }: Draw): number => Number(about["years"]);
const months = ({ about }: Draw): number => Number(about["months"]);
const isSame = (first: Picks, second: Picks): boolean => first["band"] === second["band"] && first["line"] === second["line"];

const roundedUp = (draw: Draw): Picks | null => {
  if (months(draw) < MONTHS / 2) return null;
  const next = truthAt(years(draw) + 1);
  return isSame(next, truthAt(years(draw))) ? null : next;
};
/** The same wrong pick as another mistake would not tell the two apart. */
const unlessRounded = (draw: Draw, id: string, pick: string): Picks | null => (roundedUp(draw)?.[id] === pick ? null : { ...truthAt(years(draw)), [id]: pick });
const nearest = (draw: Draw): string => (years(draw) < 5 ? BANDS[0] : (BANDS.at(-1) ?? ""));
const bandBelow = (draw: Draw): string | null => {
  const at = (BANDS as readonly string[]).indexOf(bandOf(years(draw)));
  return at > 0 ? (BANDS[at - 1] ?? null) : null;
};

const ageOf = (say: Say): string => (say.about("months") === "0" ? `exactly ${say.about("years")} years` : `${say.about("years")} years and ${counted(say.about("months"), "month")}`);
const bandText = (band: string): string => (band === "outside" ? "outside the study" : `${printedBand(band)} years`);
const result = (say: Say): string => {
  const at = Number(say.about("years"));
  return `Zone width: ${bandText(bandOf(at))}. Line to the bundle: ${lineOf(at)} its ages.`;
};

/** 01e: the age band of a child, or outside the study. */
export const bandPick: NameFamily = {
  kind: "name",
  id: "band-pick",
  code: "01e",
  module: "M01",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m01-band"],
  reads: [...BAND_READS, "junction-to-bundle.boys@1", "junction-to-bundle.girls@1"],
  sources: [...BAND_READS.map((entry) => ({ source: "beck-2019", entry })), { source: "schachne-2019", entry: "junction-to-bundle.boys@1" }, { source: "schachne-2019", entry: "junction-to-bundle.girls@1" }],
  cautions: ["C3"],
  givens: [],
  attributes: [
    { id: "band", options: [...BANDS, "outside"] },
    { id: "line", options: ["inside", "outside"] },
  ],
  draw: (chance) => ({ givens: {}, about: { child: chance.pick(CHILDREN), years: String(3 + chance.below(16)), months: String(chance.below(MONTHS)) } }),
  truth: (draw) => truthAt(years(draw)),
  slips: [
    { id: "rounded-up", gives: roundedUp },
    { id: "nearest-band", gives: (draw) => (bandOf(years(draw)) === "outside" ? unlessRounded(draw, "band", nearest(draw)) : null) },
    { id: "children-are-children", gives: (draw) => (lineOf(years(draw)) === "outside" ? unlessRounded(draw, "line", "inside") : null) },
    { id: "one-study-for-both", gives: (draw) => (lineOf(years(draw)) === "inside" && bandOf(years(draw)) === "outside" ? unlessRounded(draw, "line", "outside") : null) },
    {
      id: "band-left-behind",
      gives: (draw) => {
        const below = bandBelow(draw);
        return below === null ? null : { ...truthAt(years(draw)), band: below };
      },
    },
  ],
  words: {
    en: {
      title: "Which band, or none",
      stems: [
        (say) => [`${say.about("child")} is ${ageOf(say)} old. One study gives the zone width in bands of 5–7, 8–10, 11–13 and 14–16 years; another measured the line to the bundle in children of 10–18. Both go by completed years.`],
        (say) => [`You look up ${say.about("child")}, ${ageOf(say)}, in two papers: zone width at 5–7, 8–10, 11–13 and 14–16 years, and the line to the bundle at 10–18 years. Completed years count in both.`],
        (say) => [`A number holds for those in whom it was measured. ${say.about("child")} is ${ageOf(say)}. Zone width: bands 5–7, 8–10, 11–13, 14–16. Line to the bundle: 10–18. Completed years.`],
      ],
      question: "Which band of the zone width applies, and does the study of the line cover this child?",
      givens: {},
      attributes: { band: "Zone width", line: "Line to the bundle" },
      options: { "5-7": "5–7 years", "8-10": "8–10 years", "11-13": "11–13 years", "14-16": "14–16 years", outside: "Outside the study", inside: "Inside the study" },
      slips: {
        "rounded-up": { name: "age rounded up", because: (say) => [`Completed years count. Until the next birthday ${say.about("child")} is ${say.about("years")}, however many months have passed.`] },
        "nearest-band": { name: "nearest band taken", because: (say) => [`That is extrapolation: nobody of ${say.about("years")} was measured. The nearest band is not a measurement of this child.`] },
        "children-are-children": { name: "the title taken for the ages", because: () => ["A title that says children does not say all children. The line was measured from 10 to 18."] },
        "one-study-for-both": { name: "one study’s ages for both", because: () => ["Each paper has its own ages. The bands end before the other study does."] },
        "band-left-behind": { name: "a band too young", because: (say) => [`At ${say.about("years")} completed years the child has left that band.`] },
      },
      working: (say) => [`Completed years: ${say.about("years")}.`, result(say)],
      right: (say) => [`${result(say)} Outside means: look for another source or say that nothing is known.`],
      off: (say) => [`Count completed years, ${say.about("years")}, and look at the ages of each paper apart.`],
      moves: (say) => [`On the next birthday: zone width ${bandText(bandOf(Number(say.about("years")) + 1))}, line ${lineOf(Number(say.about("years")) + 1)} its ages.`],
    },
  },
};
