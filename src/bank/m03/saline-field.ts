import { fieldInLiquidDeg } from "../../engine/optics/field-in-liquid-deg.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import { isSays } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { optics } from "../../facts/optics.ts";
import { answerIn, given, HOSPITALS, isField, measure, radians } from "./optics-words.ts";

const SALINE = "refractive-index.saline-20@1";
const PRINTED = { key: "printedDeg", unit: "deg", least: 60, greatest: 120, step: 1 } as const;
const INDEX = { key: "refractiveIndex", unit: "pieces", least: 1.3, greatest: 1.4, step: 0.001 } as const;

const refracted = (givens: Givens): number => {
  const [fieldInAirDeg, refractiveIndex] = [given(givens, "printedDeg"), given(givens, "refractiveIndex")];
  return isField(fieldInAirDeg) && refractiveIndex >= 1 ? fieldInLiquidDeg({ fieldInAirDeg, refractiveIndex }) : Number.NaN;
};

/** Without the medium or the shape of the window there is no telling. */
const isTold = (about: Draw["about"]): boolean => about["told"] !== "medium" && about["told"] !== "window";

const TOLD: Readonly<Record<string, readonly string[]>> = {
  all: ["The front window of the scope is flat and square to the view, and the angle was measured in air."],
  medium: ["The front window of the scope is flat and square to the view; in what the angle was measured is not said."],
  window: ["The angle was measured in air; the front window of the scope is domed, and the curve is not given."],
};
const told = (say: Say): string => (TOLD[say.about("told")] ?? []).join(" ");
const sine = (say: Say): string => Math.sin(radians(say.value("printedDeg") / 2)).toFixed(4);
const inSaline = (say: Say): string => (Math.sin(radians(say.value("printedDeg") / 2)) / say.value("refractiveIndex")).toFixed(4);
const field = (say: Say): string => measure(answerIn(say, "salineDeg"), "deg");
const isUntold = (say: Say): boolean => isSays(say.answer);
const lacking = (say: Say): string => (say.about("told") === "window" ? "A domed window bends the edge rays less or not at all, and its curve is not given." : "An angle that was measured in water is already the narrow one; in air it would narrow further. Which it was, is not said.");

/** 03e: the field that is left in saline of one measured in air. */
export const salineField: SumFamily = {
  kind: "sum",
  id: "saline-field",
  code: "03e",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-field"],
  reads: [SALINE],
  sources: [{ source: "tilton-taylor", entry: SALINE }],
  cautions: [],
  givens: [PRINTED, INDEX],
  asks: [{ id: "salineDeg", unit: "deg", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({
    givens: { printedDeg: chance.onGrid(PRINTED), refractiveIndex: optics(SALINE).number.value ?? 0 },
    about: { told: chance.pick(["all", "all", "all", "all", "medium", "window"]), hospital: chance.pick(HOSPITALS), paper: chance.pick(["leaflet", "data sheet", "purchase list"]) },
    origins: { refractiveIndex: { from: "study", entry: SALINE } },
  }),
  solve: (givens, about) => {
    const salineDeg = refracted(givens);
    return isTold(about) ? { salineDeg } : { says: "cannot-be-told" };
  },
  slips: [
    { id: "angle-divided", gives: ({ givens }) => ({ salineDeg: given(givens, "printedDeg") / given(givens, "refractiveIndex") }) },
    { id: "angle-multiplied", gives: ({ givens }) => ({ salineDeg: given(givens, "printedDeg") * given(givens, "refractiveIndex") }) },
    { id: "half-left-standing", gives: ({ givens, about }) => (isTold(about) ? { salineDeg: refracted(givens) / 2 } : null) },
    { id: "worked-out-all-the-same", gives: ({ givens, about }) => (isTold(about) ? null : { salineDeg: refracted(givens) }) },
  ],
  inverseOf: "printedDeg",
  words: {
    en: {
      title: "The field in saline",
      stems: [
        (say) => [`The ${say.about("paper")} of a scope at ${say.about("hospital")} hospital prints a full angle of view. ${told(say)} The scope will look into a knee full of saline.`],
        (say) => [`A scope is to be bought by ${say.about("hospital")} hospital, and the ${say.about("paper")} prints its angle of view. ${told(say)} You ask what is left of it in saline.`],
        (say) => [`“That is a wide angle,” says a colleague at ${say.about("hospital")} hospital over the ${say.about("paper")} of a scope. ${told(say)} In the joint it stands in saline.`],
      ],
      question: "How wide is the field in saline, full angle? To the nearest tenth of a degree, or say that it cannot be told.",
      givens: { printedDeg: (say) => `Full angle of view, ${say.about("paper")}`, refractiveIndex: "Refractive index of saline against air" },
      asks: { salineDeg: "Field in saline" },
      says: { none: "No field is left", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "angle-divided": { name: "angle divided instead of its sine", because: () => ["The law of refraction holds for the sine of the angle, not for the angle, and for half the field, measured from the middle."] },
        "angle-multiplied": { name: "made wider", because: () => ["In a liquid a flat window makes the field narrower. A diver’s mask does the same."] },
        "half-left-standing": { name: "half left standing", because: () => ["That is from the middle to the edge. The full angle is twice as much."] },
        "worked-out-all-the-same": { name: "worked out all the same", because: (say) => [`The sum is right for a flat window and an angle in air. ${lacking(say)}`] },
      },
      working: (say) => isUntold(say) ? [lacking(say), "The sum needs a flat window and an angle measured in air."] : [
        `Half the angle: sin ${measure(say.value("printedDeg") / 2, "deg")} = ${sine(say)}`,
        `÷ ${say.bare("refractiveIndex")} = ${inSaline(say)}`,
        `The angle with this sine, twice: ${field(say)}`,
      ],
      right: (say) => isUntold(say) ? [`${lacking(say)} Ask for the field in saline, or measure it in a bowl.`] : [`${field(say)} are left of ${say.of("printedDeg")}. The price of a flat window in water is paid at the edge of the picture.`],
      off: (say) => isUntold(say) ? [lacking(say)] : ["Half the angle, its sine, divided by the index, back to an angle, twice."],
      inverse: (say, { text }) => [`If the printed angle were ${text}. It is ${say.of("printedDeg")}.`],
    },
  },
};
