import type { Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { dilutionMl } from "../../engine/theatre/dilution-ml.ts";
import { answerNumber, dose, DOSE_SAYS, drawPatient, given, isWrittenSafely, plain, whoIs } from "./dose-words.ts";

const STEP = 0.1;
const STOCK = { key: "stockMgPerMl", unit: "mg/mL", least: 4, greatest: 60, step: 1 } as const;
const WANTED = { key: "wantedMgPerMl", unit: "mg/mL", least: 1, greatest: 20, step: 1 } as const;
const MADE = { key: "madeUpToMl", unit: "mL", least: 5, greatest: 50, step: 1 } as const;
const STOCKS = [4, 5, 8, 10, 20, 25, 40, 50, 60] as const;

const part = (givens: Givens) => dilutionMl({ stockMgPerMl: given(givens, "stockMgPerMl"), wantedMgPerMl: given(givens, "wantedMgPerMl"), madeUpToMl: given(givens, "madeUpToMl") });

/** A stock at least two steps stronger than what is wanted, and an answer that needs no zero behind the point. */
const drawGivens = (chance: Chance): Givens => {
  for (;;) {
    const givens = { stockMgPerMl: chance.pick(STOCKS), wantedMgPerMl: chance.onGrid(WANTED), madeUpToMl: chance.onGrid(MADE) };
    if (givens.wantedMgPerMl > givens.stockMgPerMl - 2) continue;
    const { stockMl } = part(givens);
    const tenths = stockMl / STEP;
    if (Math.abs(tenths - Math.round(tenths)) * 1000 < 1 && isWrittenSafely(Math.round(tenths) * STEP, STEP)) return givens;
  }
};

const stock = (say: Say): string => dose(answerNumber(say, "stockMl"), "mL");
const mg = (say: Say): string => dose(say.value("wantedMgPerMl") * say.value("madeUpToMl"), "mg");

/** 12f: how much of a stock is drawn up. */
export const dilute: SumFamily = {
  kind: "sum",
  id: "dilute",
  code: "12f",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m12-volume"],
  reads: [],
  sources: [],
  cautions: ["C2", "C4"],
  givens: [STOCK, WANTED, MADE],
  asks: [{ id: "stockMl", unit: "mL", roundTo: STEP, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => ({ givens: drawGivens(chance), about: { ...drawPatient(chance).about, who: chance.pick(["two nurses", "a nurse and the anaesthetist"]) }, origins: { wantedMgPerMl: { from: "local" }, madeUpToMl: { from: "local" } } }),
  solve: (givens) => ({ stockMl: part(givens).stockMl }),
  slips: [
    { id: "added-instead-of-made-up-to", gives: ({ givens }) => ({ stockMl: (given(givens, "wantedMgPerMl") * given(givens, "madeUpToMl")) / (given(givens, "stockMgPerMl") - given(givens, "wantedMgPerMl")) }) },
    { id: "diluent-drawn-up", gives: ({ givens }) => ({ stockMl: part(givens).diluentMl }) },
    { id: "strengths-turned", gives: ({ givens }) => ({ stockMl: (given(givens, "stockMgPerMl") * given(givens, "madeUpToMl")) / given(givens, "wantedMgPerMl") }) },
  ],
  words: {
    en: {
      title: "Made up to, not added to",
      stems: [
        (say) => [`${whoIs(say)} The stock is too strong to be given as it is. The sheet at ${say.about("hospital")} names a strength and a volume to which the syringe is made up; ${say.about("who")} prepare it.`],
        (say) => [`At ${say.about("hospital")} ${say.about("who")} prepare a syringe for ${say.about("child")}, ${say.about("age")}. The sheet says: made up to the volume below, with saline.`],
        (say) => [`A syringe is mixed from a strong stock and saline, for ${say.about("child")}, ${say.about("age")}. Strength and final volume stand in the sheet of ${say.about("hospital")}. First the stock is drawn up, then saline is added up to the mark.`],
      ],
      question: "How much of the stock is drawn up? To the nearest tenth of a millilitre.",
      givens: { stockMgPerMl: "Strength of the stock", wantedMgPerMl: "Strength wanted, this hospital’s sheet", madeUpToMl: "Made up to, this hospital’s sheet" },
      asks: { stockMl: "Stock" },
      says: DOSE_SAYS,
      slips: {
        "added-instead-of-made-up-to": { name: "added instead of made up to", because: (say) => [`That would be right if ${say.of("madeUpToMl")} of saline were added to the stock. “Made up to” counts the stock within the ${say.of("madeUpToMl")}.`] },
        "diluent-drawn-up": { name: "saline for stock", because: () => ["This is how much saline is needed. Drawn up as stock it gives another strength than the label of the syringe will say."] },
        "strengths-turned": { name: "strengths turned over", because: (say) => [`More than ${say.of("madeUpToMl")} cannot fit into ${say.of("madeUpToMl")}. The weaker the wanted strength, the less stock.`] },
      },
      working: (say) => [`In the finished syringe: ${say.bare("wantedMgPerMl")} × ${say.bare("madeUpToMl")} = ${mg(say)}`, `Stock that holds them: ${plain(say.value("wantedMgPerMl") * say.value("madeUpToMl"))} ÷ ${say.bare("stockMgPerMl")} = ${stock(say)}`, `Saline up to ${say.of("madeUpToMl")}: ${dose(say.value("madeUpToMl") - answerNumber(say, "stockMl"), "mL")}`],
      right: (say) => [`${stock(say)} of stock, then saline up to ${say.of("madeUpToMl")}. The milligrams stay, whatever is added.`],
      off: (say) => [`The milligrams stay: ${mg(say)} in the end are ${mg(say)} of stock at the start. Divide by the strength of the stock.`],
      inverse: () => [],
      turns: () => ["Twice the strength wanted takes twice the stock; twice the strength of the stock takes half."],
    },
  },
};
