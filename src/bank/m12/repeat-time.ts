import type { Draw, Givens } from "../../engine/question/family-head.ts";
import { once } from "../../engine/question/once.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { clockAfter } from "../../engine/theatre/clock-after.ts";
import { repeatTime as repeatAt } from "../../engine/theatre/repeat-time.ts";
import { antibiotic } from "../../facts/antibiotic.ts";
import { dose, DOSE_SAYS, drawPatient, given, sheetOf, WEIGHT, WEIGHT_LABEL, whoIs } from "./dose-words.ts";

const MIN_PER_H = 60;
const INTERVAL = { key: "intervalH", unit: "h", least: 2, greatest: 12, step: 1 } as const;
const LOST = { key: "lostMl", unit: "mL", least: 50, greatest: 2000, step: 10 } as const;
const LIMIT = { key: "lossLimitMlPerKg", unit: "mL/kg", least: 15, greatest: 30, step: 1 } as const;
const SHEETS = [
  { medicine: "cefazolin", interval: "cefazolin-repeat.ashp@1", loss: "blood-loss-repeat.us-sheet@1", other: "blood-loss-repeat.uk-sheet@1" },
  { medicine: "cefazolin", interval: "cefazolin-repeat.ashp@1", loss: "blood-loss-repeat.uk-sheet@1", other: "blood-loss-repeat.us-sheet@1" },
  { medicine: "clindamycin", interval: "clindamycin-repeat.ashp@1", loss: "blood-loss-repeat.us-sheet@1", other: "blood-loss-repeat.uk-sheet@1" },
  { medicine: "clindamycin", interval: "clindamycin-repeat.us-sheet@1", loss: "blood-loss-repeat.us-sheet@1", other: "blood-loss-repeat.uk-sheet@1" },
] as const;
const pinnedValue = (pin: string): number => antibiotic(pin).number.value as number;

interface Clock extends Readonly<Record<string, number>> {
  readonly hourH: number;
  readonly minuteMin: number;
}

const clockSolution = (clock: string): Clock => ({ hourH: Number(clock.slice(0, 2)), minuteMin: Number(clock.slice(3)) });

interface Rule {
  readonly from?: string;
  readonly lossLimitMlPerKg?: number;
  readonly ignoresLoss?: boolean;
}

/** When the dose is due by this sheet, or, as a slip, from another clock or by another rule. */
const dueAt = (givens: Givens, about: Draw["about"], { from, lossLimitMlPerKg, ignoresLoss = false }: Rule = {}): Clock => {
  // Read all givens first, so that a missing one is named.
  const intervalMin = given(givens, "intervalH") * MIN_PER_H;
  const limitMl = (lossLimitMlPerKg ?? given(givens, "lossLimitMlPerKg")) * given(givens, "weightKg");
  const lostMl = given(givens, "lostMl");
  const bloodLoss = ignoresLoss ? null : { seenAt: about["seen"] ?? "", lostMl, limitMl };
  return clockSolution(repeatAt({ startAt: from ?? about["start"] ?? "", intervalMin, bloodLoss }).clock);
};
const same = (first: Clock, second: Clock): boolean => first.hourH === second.hourH && first.minuteMin === second.minuteMin;
/** By the rules of the case's own sheet. */
const ownDue = once((givens, about) => dueAt(givens, about));
const unlessSame = (draw: Draw, solution: Clock): Clock | null => (same(solution, ownDue(draw.givens, draw.about)) ? null : solution);

const clockOf = (chance: Chance, fromHour: number, hours: number): string =>
  clockAfter({ from: `${String(fromHour).padStart(2, "0")}:00`, afterMin: chance.onGrid({ least: 0, greatest: hours * MIN_PER_H, step: 5 }) }).clock;

/** Losses on both sides of the two rules, so that each of them decides now and then. */
const drawLoss = (chance: Chance, weightKg: number): number => {
  const share = chance.pick([8, 14, 18, 22, 23, 27, 30]);
  return Math.min(LOST.greatest, Math.max(LOST.least, Math.round((weightKg * share) / LOST.step) * LOST.step));
};

const drawn = (chance: Chance): Draw => {
  const { about, weightKg } = drawPatient(chance);
  const sheet = chance.pick(SHEETS);
  const start = clockOf(chance, chance.pick([7, 9, 13, 18, 20]), 2);
  const intervalH = pinnedValue(sheet.interval);
  return {
    givens: { weightKg, intervalH, lostMl: drawLoss(chance, weightKg), lossLimitMlPerKg: pinnedValue(sheet.loss) },
    about: {
      ...about,
      medicine: sheet.medicine,
      start,
      incision: clockAfter({ from: start, afterMin: chance.onGrid({ least: 20, greatest: 55, step: 5 }) }).clock,
      seen: clockAfter({ from: start, afterMin: chance.onGrid({ least: 70, greatest: intervalH * MIN_PER_H - 15, step: 5 }) }).clock,
      other: sheet.other,
    },
    origins: { intervalH: { from: "local", entry: sheet.interval }, lossLimitMlPerKg: { from: "local", entry: sheet.loss } },
  };
};

const limitMl = (say: Say): number => say.value("weightKg") * say.value("lossLimitMlPerKg");
const isLoss = (say: Say): boolean => say.value("lostMl") > limitMl(say);
const byInterval = (say: Say): string => clockAfter({ from: say.about("start"), afterMin: say.value("intervalH") * MIN_PER_H }).clock;
const due = (say: Say): string => (isLoss(say) ? say.about("seen") : byInterval(say));

/** 12e: when the antibiotic is due again. */
export const repeatTime: SumFamily = {
  kind: "sum",
  id: "repeat-time",
  code: "12e",
  module: "M12",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m12-dose"],
  reads: ["cefazolin-repeat.ashp@1", "clindamycin-repeat.ashp@1", "clindamycin-repeat.us-sheet@1", "blood-loss-repeat.us-sheet@1", "blood-loss-repeat.uk-sheet@1"],
  sources: [{ source: "ashp-2013", entry: "cefazolin-repeat.ashp@1" }, { source: "us-sheet", entry: "blood-loss-repeat.us-sheet@1" }, { source: "uk-sheet", entry: "blood-loss-repeat.uk-sheet@1" }],
  cautions: ["C2", "C4"],
  givens: [WEIGHT, INTERVAL, LOST, LIMIT],
  asks: [
    { id: "hourH", unit: "h", roundTo: 1, rounding: "nearest", safeSide: "none" },
    { id: "minuteMin", unit: "min", roundTo: 1, rounding: "nearest", safeSide: "none" },
  ],
  draw: drawn,
  solve: ownDue,
  slips: [
    { id: "from-the-cut", gives: (draw) => unlessSame(draw, dueAt(draw.givens, draw.about, { from: draw.about["incision"] ?? "" })) },
    { id: "other-sheet", gives: (draw) => unlessSame(draw, dueAt(draw.givens, draw.about, { lossLimitMlPerKg: pinnedValue(draw.about["other"] ?? "") })) },
    { id: "loss-ignored", gives: (draw) => (draw.about["other"] === "blood-loss-repeat.uk-sheet@1" && given(draw.givens, "lostMl") <= given(draw.givens, "weightKg") * pinnedValue("blood-loss-repeat.uk-sheet@1") ? null : unlessSame(draw, dueAt(draw.givens, draw.about, { ignoresLoss: true }))) },
    { id: "at-the-loss", gives: (draw) => { const solution = clockSolution(draw.about["seen"] ?? ""); return same(solution, dueAt(draw.givens, draw.about, { lossLimitMlPerKg: pinnedValue(draw.about["other"] ?? "") })) ? null : unlessSame(draw, solution); } },
    { id: "from-the-loss", gives: (draw) => unlessSame(draw, clockSolution(clockAfter({ from: draw.about["seen"] ?? "", afterMin: given(draw.givens, "intervalH") * MIN_PER_H }).clock)) },
  ],
  words: {
    en: {
      title: "When the next dose is due",
      stems: [
        (say) => [`${whoIs(say)} A long open operation on the leg bleeds. The first dose of ${say.about("medicine")} was started at ${say.about("start")}, the skin was cut at ${say.about("incision")}. At ${say.about("seen")} the blood lost is counted. ${sheetOf(say)}`],
        (say) => [`On the board of a long open operation at ${say.about("hospital")} stand three times: ${say.about("medicine")} started ${say.about("start")}, skin ${say.about("incision")}, blood counted ${say.about("seen")}. ${whoIs(say)} ${sheetOf(say)}`],
        (say) => [`Somebody has to say when ${say.about("medicine")} is due again for ${say.about("child")}, ${say.about("age")}, in a long open operation. Started at ${say.about("start")}; skin at ${say.about("incision")}; the count of blood was made at ${say.about("seen")}. ${sheetOf(say)}`],
      ],
      question: "When is the next dose due by this sheet? Give hour and minute of the 24-hour clock.",
      givens: {
        weightKg: WEIGHT_LABEL,
        intervalH: "Interval, from the start of the first dose, this hospital’s sheet",
        lostMl: "Blood lost at that count",
        lossLimitMlPerKg: "Repeat at once beyond this loss, this hospital’s sheet",
      },
      asks: { hourH: "Hour", minuteMin: "Minute" },
      says: DOSE_SAYS,
      slips: {
        "from-the-cut": { name: "counted from the cut", because: (say) => [`The level in the blood falls from the start of the dose, ${say.about("start")}, not from the cut.`] },
        "other-sheet": { name: "another sheet’s loss rule", because: (say) => [`That is the answer by another hospital’s limit of blood loss. Here it is ${say.of("lossLimitMlPerKg")}, which is ${dose(limitMl(say), "mL")} for this child.`] },
        "loss-ignored": { name: "blood loss left out", because: (say) => [`With ${say.of("lostMl")} lost, more than ${dose(limitMl(say), "mL")}, the dose has bled away in part. The sheet says at once, not at the end of the interval.`] },
        "at-the-loss": { name: "repeated for a loss within the rule", because: (say) => [`${say.of("lostMl")} do not go beyond ${dose(limitMl(say), "mL")}. Until then the interval counts.`] },
        "from-the-loss": { name: "interval begun at the count", because: (say) => [`The interval runs from the start of the dose. The count at ${say.about("seen")} does not begin it anew.`] },
      },
      working: (say) => [`Limit of loss: ${say.bare("weightKg")} × ${say.bare("lossLimitMlPerKg")} = ${dose(limitMl(say), "mL")}; lost ${say.of("lostMl")}`, `By the interval: ${say.about("start")} and ${say.bare("intervalH")} h: ${byInterval(say)}`, `Due at ${due(say)}`],
      right: (say) => [isLoss(say) ? `${due(say)}: the loss is beyond the rule, and that comes before the interval.` : `${due(say)}: the interval from the start of the first dose; the loss stays within the rule.`],
      off: (say) => [`Two rules run side by side: the interval from ${say.about("start")}, and a loss beyond ${dose(limitMl(say), "mL")}. Whichever comes first counts.`],
      inverse: () => [],
      turns: (say) => [`The count decides beyond ${dose(limitMl(say), "mL")}; up to that the answer is ${byInterval(say)}.`],
    },
  },
};
