import type { Givens, Solution } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { cuffSettingMmHg } from "../../engine/theatre/cuff-setting-mm-hg.ts";
import { AGES, CHILDREN, childOf, given, HOSPITALS, measure } from "./theatre-words.ts";

const MEASURED = { key: "occlusionMmHg", unit: "mmHg", least: 90, greatest: 190, step: 1 } as const;
const SYSTOLIC = { key: "systolicMmHg", unit: "mmHg", least: 80, greatest: 125, step: 1 } as const;
const MARGIN = { key: "marginMmHg", unit: "mmHg", least: 30, greatest: 60, step: 5 } as const;
const SHOWN = { key: "shownMmHg", unit: "mmHg", least: 250, greatest: 300, step: 50 } as const;
const STEP = 5;
/** Under an anaesthetic a small child’s systolic pressure is not drawn as high as a big one’s; plausibility only, from memory. */
const HIGHEST_MMHG = { atBirth: 95, aYear: 2 } as const;

const sumOf = (givens: Givens): number => {
  const [occlusionMmHg, marginMmHg] = [given(givens, "occlusionMmHg"), given(givens, "marginMmHg")];
  return occlusionMmHg > 0 && marginMmHg >= 0 ? cuffSettingMmHg({ occlusionMmHg, bands: [{ fromMmHg: 0, marginMmHg }] }) : Number.NaN;
};
const setting = (givens: Givens): number => STEP * Math.floor(sumOf(givens) / STEP);
const bySystolic = (givens: Givens): Solution | null => {
  const settingMmHg = given(givens, "systolicMmHg") + given(givens, "marginMmHg");
  return settingMmHg < setting(givens) ? { settingMmHg } : null;
};
const roundedUp = (givens: Givens): Solution | null => (sumOf(givens) % STEP === 0 ? null : { settingMmHg: setting(givens) + STEP });

const sum = (say: Say): string => say.number(say.value("occlusionMmHg") + say.value("marginMmHg"), 0);
const rounded = (say: Say): string => measure(STEP * Math.floor((say.value("occlusionMmHg") + say.value("marginMmHg")) / STEP), "mmHg");
const sheet = (say: Say): string => `The sheet of ${say.about("hospital")} hospital says: measured occlusion pressure plus its margin, rounded down to a multiple of ${STEP}`;

/** 05b: the setting from the measured occlusion pressure and the margin of a local sheet. */
export const pressure: SumFamily = {
  kind: "sum",
  id: "pressure",
  code: "05b",
  module: "M05",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m05-pressure"],
  reads: [],
  sources: [],
  cautions: ["C15"],
  givens: [MEASURED, SYSTOLIC, MARGIN, SHOWN],
  asks: [{ id: "settingMmHg", unit: "mmHg", roundTo: STEP, rounding: "down", safeSide: "down" }],
  draw: (chance) => {
    const age = chance.pick(AGES);
    const systolicMmHg = chance.onGrid({ ...SYSTOLIC, greatest: Math.min(SYSTOLIC.greatest, HIGHEST_MMHG.atBirth + HIGHEST_MMHG.aYear * Number(age)) });
    const occlusionMmHg = Math.max(MEASURED.least, systolicMmHg + chance.onGrid({ least: 3, greatest: 60, step: 1 }));
    return {
      givens: { occlusionMmHg, systolicMmHg, marginMmHg: chance.onGrid(MARGIN), shownMmHg: chance.onGrid(SHOWN) },
      about: { child: chance.pick(CHILDREN), age, hospital: chance.pick(HOSPITALS) },
      origins: { marginMmHg: { from: "local" } },
    };
  },
  solve: (givens) => ({ settingMmHg: sumOf(givens) }),
  slips: [
    { id: "habit", gives: ({ givens }) => ({ settingMmHg: given(givens, "shownMmHg") }) },
    { id: "systolic-instead", gives: ({ givens }) => bySystolic(givens) },
    { id: "margin-left-out", gives: ({ givens }) => ({ settingMmHg: given(givens, "occlusionMmHg") }) },
    { id: "rounded-up", gives: ({ givens }) => roundedUp(givens) },
  ],
  inverseOf: "occlusionMmHg",
  words: {
    en: {
      title: "Setting of the cuff",
      stems: [
        (say) => [`The occlusion pressure of ${childOf(say)} has been measured with the cuff in place. ${sheet(say)}. The machine still shows what the last case had.`],
        (say) => [`${sheet(say)}. For ${childOf(say)} it has been measured; the machine starts with the last setting.`],
        (say) => [`“Leave it as it is, it always worked,” says a colleague, and means what the machine shows. ${childOf(say)} has just been measured. ${sheet(say)}.`],
      ],
      question: "What setting does the sheet give? In mmHg, rounded down to a multiple of 5.",
      givens: { occlusionMmHg: "Measured occlusion pressure", systolicMmHg: "Systolic blood pressure", marginMmHg: (say) => `Margin, sheet of ${say.about("hospital")} hospital`, shownMmHg: "Still on the machine from the last case" },
      asks: { settingMmHg: "Setting" },
      says: { none: "No setting is allowed here", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        habit: { name: "the habit kept", because: (say) => [`${say.of("shownMmHg")} belonged to another limb. The measured value replaces the habit; here the sheet gives ${rounded(say)}.`] },
        "systolic-instead": { name: "systolic pressure taken", because: () => ["Systolic pressure plus a margin is another published rule. This sheet asks for the measured pressure plus its margin."] },
        "margin-left-out": { name: "margin left out", because: (say) => [`At ${say.of("occlusionMmHg")} the flow just stops. The first rise of the blood pressure would let it through, into a limb that cannot drain. The sheet adds ${say.of("marginMmHg")}.`] },
        "rounded-up": { name: "rounded up", because: (say) => [`The sum is ${sum(say)}. A pressure on a child’s limb is rounded down; the sheet says so, and the margin allows for it.`] },
      },
      working: (say) => [`${say.bare("occlusionMmHg")} + ${say.bare("marginMmHg")} = ${sum(say)} mmHg`, `Rounded down to a multiple of ${STEP}: ${rounded(say)}`],
      right: (say) => [`${rounded(say)} by this sheet, for this limb, with this cuff. If the blood pressure changes much, it is measured again.`],
      off: (say) => [`This sheet builds on the measured ${say.of("occlusionMmHg")}: add its margin, round down. Nothing else on the list belongs in the sum.`],
      inverse: (say, { text }) => [`If the occlusion pressure had been ${text}. It was measured as ${say.of("occlusionMmHg")}.`],
    },
  },
};
