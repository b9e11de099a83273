import { fluidBalance } from "../../engine/fluid/fluid-balance.ts";
import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Ends, RangeFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, HOSPITALS, measure } from "./fluid-words.ts";

const IN = { key: "inMl", unit: "mL", least: 3000, greatest: 9000, step: 100 } as const;
const COLLECTED = { key: "collectedMl", unit: "mL", least: 500, greatest: 9000, step: 50 } as const;
const FLOOR_FROM = { key: "floorFromMl", unit: "mL", least: 0, greatest: 1000, step: 50 } as const;
const FLOOR_TO = { key: "floorToMl", unit: "mL", least: 50, greatest: 1500, step: 50 } as const;
const DRAPES_FROM = { key: "drapesFromMl", unit: "mL", least: 0, greatest: 600, step: 50 } as const;
const DRAPES_TO = { key: "drapesToMl", unit: "mL", least: 50, greatest: 900, step: 50 } as const;
const WEIGHT = { key: "weightKg", unit: "kg", least: 15, greatest: 70, step: 1 } as const;
const LIMIT = { key: "limitMlPerKg", unit: "mL/kg", least: 10, greatest: 25, step: 1 } as const;
/** What shall be left at the least, for each kilogram, before it is rounded to what a jug can show. */
const REST_ML_PER_KG = { least: 1, greatest: 16, step: 1 };
const JUG_ML = 50;
const WIDTH = { least: 50, greatest: 200, step: 50 };

/** Invented children with an age and a weight that go together. */
const CHILDREN = [
  { child: "Asta", age: "5", least: 15, greatest: 22 },
  { child: "Finn", age: "7", least: 19, greatest: 28 },
  { child: "Yusra", age: "8", least: 21, greatest: 31 },
  { child: "Piet", age: "10", least: 26, greatest: 38 },
  { child: "Sunniva", age: "12", least: 32, greatest: 48 },
  { child: "Emre", age: "14", least: 40, greatest: 60 },
  { child: "Cosima", age: "16", least: 48, greatest: 70 },
] as const;

const isMeasured = (about: Draw["about"]): boolean => about["drapes"] !== "not-measured";

interface Out {
  readonly least: number;
  readonly greatest: number;
}

/** What is known to have gone to floor and drapes, at least and at most. */
const knownOut = ({ givens, about }: Pick<Draw, "givens" | "about">): Out => ({
  least: sumOnGrid(given(givens, "floorFromMl"), isMeasured(about) ? given(givens, "drapesFromMl") : 0),
  greatest: sumOnGrid(given(givens, "floorToMl"), isMeasured(about) ? given(givens, "drapesToMl") : 0),
});

const balanceOf = (givens: Givens, about: Draw["about"]) =>
  fluidBalance({
    inMl: given(givens, "inMl"),
    collectedMl: given(givens, "collectedMl"),
    estimates: [
      { fromMl: given(givens, "floorFromMl"), toMl: given(givens, "floorToMl") },
      isMeasured(about) ? { fromMl: given(givens, "drapesFromMl"), toMl: given(givens, "drapesToMl") } : null,
    ],
    weightKg: given(givens, "weightKg"),
  });

const solved = (givens: Givens, about: Draw["about"]): Ends => {
  const { leastMlPerKg, greatestMlPerKg } = balanceOf(givens, about);
  return { from: leastMlPerKg, to: greatestMlPerKg };
};

const notCollected = ({ givens }: Draw): number => sumOnGrid(given(givens, "inMl"), -given(givens, "collectedMl"));
const perKg = ({ givens }: Draw, fromMl: number, toMl = fromMl): Ends => ({ from: fromMl / given(givens, "weightKg"), to: toMl / given(givens, "weightKg") });
const middleOut = (draw: Draw): number => (knownOut(draw).least + knownOut(draw).greatest) / 2;

/** A case whose account closes: what went in, less what is known to have come out, leaves something. */
const drawCase = (chance: Chance): Draw => {
  const { child, age, least, greatest } = chance.pick(CHILDREN);
  const drapes = chance.pick(["estimated", "estimated", "not-measured"]);
  const floorFromMl = chance.onGrid({ least: 0, greatest: 600, step: 50 });
  const floorToMl = floorFromMl + chance.onGrid(WIDTH);
  const drapesFromMl = chance.onGrid({ least: 0, greatest: 300, step: 50 });
  const drapesToMl = drapesFromMl + chance.onGrid(WIDTH);
  const isEstimated = drapes === "estimated";
  const outMl = floorToMl + (isEstimated ? drapesToMl : 0);
  const inMl = chance.onGrid(IN);
  const weightKg = chance.onGrid({ least, greatest, step: 1 });
  const restMl = JUG_ML * Math.max(1, Math.round((weightKg * chance.onGrid(REST_ML_PER_KG)) / JUG_ML));
  const collectedMl = Math.max(COLLECTED.least, inMl - outMl - restMl);
  return {
    givens: { inMl, collectedMl, floorFromMl, floorToMl, ...(isEstimated ? { drapesFromMl, drapesToMl } : {}), weightKg, limitMlPerKg: chance.onGrid(LIMIT) },
    about: { child, age, drapes, hospital: chance.pick(HOSPITALS) },
    origins: { limitMlPerKg: { from: "local" } },
  };
};

const drawOf = (say: Say): Draw => ({
  givens: Object.fromEntries(["inMl", "collectedMl", "floorFromMl", "floorToMl", "weightKg", ...(say.about("drapes") === "estimated" ? ["drapesFromMl", "drapesToMl"] : [])].map((key) => [key, say.value(key)])),
  about: { drapes: say.about("drapes") },
});
const ends = (say: Say) => balanceOf(drawOf(say).givens, drawOf(say).about);
const inMl = (say: Say): string => `${ends(say).leastMl} to ${measure(ends(say).greatestMl, "mL")}`;
const inMlPerKg = (say: Say): string => `${say.number(ends(say).leastMlPerKg)} to ${measure(ends(say).greatestMlPerKg, "mL/kg", 1)}`;
const notCollectedMl = (say: Say): number => say.value("inMl") - say.value("collectedMl");
const allowedMl = (say: Say): string => measure(say.value("limitMlPerKg") * say.value("weightKg"), "mL");
const isOver = (say: Say): boolean => ends(say).greatestMlPerKg > say.value("limitMlPerKg");
const verdict = (say: Say): string => isOver(say) ? `The top end, ${measure(ends(say).greatestMl, "mL")}, lies above the ${allowedMl(say)} that ${say.of("limitMlPerKg")} mean for this child: say so aloud now, to surgeon and anaesthetist.` : `The top end, ${measure(ends(say).greatestMl, "mL")}, stays within the ${allowedMl(say)} that ${say.of("limitMlPerKg")} mean for this child; the count goes on.`;
const drapesWords = (say: Say): string => (say.about("drapes") === "estimated" ? "Floor and drapes were estimated, each from least to most." : "The floor was estimated; the drapes and gowns are wet, and nobody has measured them.");

/** 07g: what cannot be accounted for, as a range in millilitres for each kilogram. */
export const balance: RangeFamily = {
  kind: "range",
  id: "balance",
  code: "07g",
  module: "M07",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m07-balance"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [IN, COLLECTED, FLOOR_FROM, FLOOR_TO, DRAPES_FROM, DRAPES_TO, WEIGHT, LIMIT],
  unit: "mL/kg",
  roundTo: 0.1,
  draw: drawCase,
  solve: solved,
  slips: [
    { id: "not-measured-as-nothing", gives: (draw) => (isMeasured(draw.about) ? null : perKg(draw, notCollected(draw) - knownOut(draw).greatest, notCollected(draw) - knownOut(draw).least)) },
    { id: "not-measured-as-all", gives: (draw) => (isMeasured(draw.about) ? null : perKg(draw, 0)) },
    { id: "middle-only", gives: (draw) => perKg(draw, notCollected(draw) - middleOut(draw)) },
    { id: "estimates-left-out", gives: (draw) => perKg(draw, notCollected(draw)) },
    { id: "millilitres-kept", gives: ({ givens, about }) => ({ from: balanceOf(givens, about).leastMl, to: balanceOf(givens, about).greatestMl }) },
    { id: "ends-exchanged", gives: ({ givens, about }) => ({ from: solved(givens, about).to, to: solved(givens, about).from }) },
    { id: "estimates-added", gives: (draw) => perKg(draw, notCollected(draw) + knownOut(draw).least, notCollected(draw) + knownOut(draw).greatest) },
  ],
  words: {
    en: {
      title: "Fluid that is not accounted for",
      stems: [
        (say) => [`${say.about("child")}, ${say.about("age")}, near the end of the case. The pump has counted what went in; suction and bags were measured. ${drapesWords(say)}`, `The sheet of ${say.about("hospital")} hospital names a limit for what is not accounted for.`],
        (say) => [`The circulating practitioner adds up the fluid of ${say.about("child")}, ${say.about("age")}. ${drapesWords(say)}`, `On the sheet of ${say.about("hospital")} hospital the limit counts by weight.`],
        (say) => [`“How much is still in the child?” asks the anaesthetist. ${say.about("child")} is ${say.about("age")}. ${drapesWords(say)}`, `The limit is that of ${say.about("hospital")} hospital.`],
      ],
      question: "How much is not accounted for, at least and at most, in mL for each kilogram? Both ends to the nearest tenth, to be held against the limit.",
      givens: {
        inMl: "Given in",
        collectedMl: "Measured in suction and bags",
        floorFromMl: "On the floor, at least",
        floorToMl: "On the floor, at most",
        drapesFromMl: "In drapes and gowns, at least",
        drapesToMl: "In drapes and gowns, at most",
        weightKg: "Body weight",
        limitMlPerKg: (say) => `Limit for what is not accounted for, sheet of ${say.about("hospital")} hospital`,
      },
      slips: {
        "not-measured-as-nothing": { name: "not measured taken for nothing", because: () => ["Not measured is not nothing. The drapes may hold any part of the rest, so the lower end falls to 0; the upper end stays."] },
        "not-measured-as-all": { name: "not measured taken for everything", because: () => ["That lets the drapes explain it all. They may, or they may hold nothing: then all the rest may be in the child. The upper end must say so."] },
        "middle-only": { name: "the middle of the estimates", because: (say) => [`An estimate from least to most has two ends, and so has the answer: ${inMlPerKg(say)}. The middle hides the end that counts.`] },
        "estimates-left-out": { name: "estimates left out", because: () => ["What lies on the floor and in the drapes was left out, as if all of it could be in the child. Each counts, at least with its lower estimate."] },
        "millilitres-kept": { name: "millilitres for mL/kg", because: (say) => [`${inMl(say)} is right as a volume. The limit counts by weight: divide by ${say.of("weightKg")}.`] },
        "ends-exchanged": { name: "ends exchanged", because: () => ["Both ends are right, and stand in each other’s place. The top end is the one that is held against the limit, so it must not be the smaller."] },
        "estimates-added": { name: "estimates added", because: () => ["What lies on the floor is out of the child. It is taken away from what went in, not added to it."] },
      },
      working: (say) => [
        `Not collected: ${say.bare("inMl")} − ${say.bare("collectedMl")} = ${measure(notCollectedMl(say), "mL")}`,
        `At most, with the least that went elsewhere: ${notCollectedMl(say)} − ${knownOut(drawOf(say)).least} = ${measure(ends(say).greatestMl, "mL")}`,
        say.about("drapes") === "estimated" ? `At least, with the most that went elsewhere: ${notCollectedMl(say)} − ${knownOut(drawOf(say)).greatest} = ${measure(ends(say).leastMl, "mL")}` : "At least 0\u2009mL: the drapes were not measured and may hold all the rest",
        `Each divided by ${say.of("weightKg")}: ${inMlPerKg(say)}`,
      ],
      right: (say) => [`${inMlPerKg(say)}. ${verdict(say)}`],
      off: (say) => [`The least comes from the highest estimates and the most from the lowest: ${inMlPerKg(say)}. ${verdict(say)}`],
      moves: () => ["A wider estimate opens the range at both ends. Measuring the drapes narrows it, and that is worth more than arguing about it."],
      turns: (say) => [`The top end meets the limit at ${allowedMl(say)} for this child. It is the top end that is held against it.`],
    },
  },
};
