import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { carbon } from "../../facts/carbon.ts";
import { drawPlace } from "./count-words.ts";

/** Devices for which single use and reuse were compared. */
const DEVICES: Readonly<Record<string, { readonly name: string; readonly single: string; readonly reused: string }>> = {
  cystoscope: { name: "cystoscopes", single: "carbon-single.cystoscope@1", reused: "carbon-reused.cystoscope@1" },
  gastroscope: { name: "gastroscopes", single: "carbon-single.gastroscope@1", reused: "carbon-reused.gastroscope@1" },
  "knee-tools": { name: "tools for knee replacement, the reused ones kept in stock,", single: "carbon-single.knee-tools@1", reused: "carbon-reused.knee-tools@1" },
  ureteroscope: { name: "ureteroscopes", single: "carbon-single.ureteroscope@1", reused: "carbon-reused.ureteroscope@1" },
};

/** What somebody makes of the study, and what can be said of it. */
const CLAIMS: Readonly<Record<string, { readonly told: (isSingleLighter: boolean) => string; readonly judgement: Judgement }>> = {
  "kit-by-one": { told: () => "“So we know how our needle kit compares with a reused scope: read it off there.”", judgement: { picks: "nothing-here", reasons: ["other-device", "both-ways"] } },
  "kit-by-mean": { told: () => "“Take the mean of all such devices, and you have our needle kit.”", judgement: { picks: "nothing-here", reasons: ["other-device", "both-ways"] } },
  always: { told: (lighter) => `“So it is with every device that has been compared: ${lighter ? "single use" : "reuse"} weighs less.”`, judgement: { picks: "nothing-here", reasons: ["both-ways"] } },
  "that-device": { told: (lighter) => `“In that study, for that device, ${lighter ? "single use" : "reuse"} weighed less.”`, judgement: { picks: "holds-there", reasons: ["as-measured"] } },
  turned: { told: (lighter) => `“In that study, for that device, ${lighter ? "reuse" : "single use"} weighed less.”`, judgement: { picks: "contradicts", reasons: ["as-measured"] } },
};

const pinnedValue = (pin: string): string => carbon(pin).value.value ?? "";
const judgementOf = (draw: Draw): Judgement => CLAIMS[draw.about["claim"] ?? ""]?.judgement ?? { picks: "nothing-here", reasons: [] };
const claimOf = (say: Say) => CLAIMS[say.about("claim")] as (typeof CLAIMS)[string];
const deviceOf = (say: Say) => DEVICES[say.about("device")] as (typeof DEVICES)[string];
const study = (say: Say): string => {
  const { name, single, reused } = deviceOf(say);
  return `A study of ${name} found ${pinnedValue(single)} kg of CO₂ equivalent a case for single use and ${pinnedValue(reused)} kg for reuse.`;
};
const claimText = (say: Say): string => claimOf(say).told(Number(pinnedValue(deviceOf(say).single)) < Number(pinnedValue(deviceOf(say).reused)));
const told = (say: Say): string => `${study(say)} Somebody says: ${claimText(say)}`;
const OPTIONS = { "holds-there": "It holds for that device, as measured", contradicts: "It contradicts the study", "nothing-here": "It cannot be said from this", proven: "It holds for our kit as well" } as const;
const decided = (say: Say): string => OPTIONS[claimOf(say).judgement.picks as keyof typeof OPTIONS];

const words: JudgeFamily["words"][Language] = {
  title: "What does that study say about us?",
  stems: [
    (say) => [`At a meeting at ${say.about("hospital")} the needle kit is discussed. ${told(say)}`],
    (say) => [`${study(say)} No study of needle kits was found. At ${say.about("hospital")} somebody says: ${claimText(say)}`],
    (say) => [`You read a letter before it goes to the board of ${say.about("hospital")}. ${told(say)}`],
  ],
  question: "What can be said of that sentence, and why? Name every reason that holds.",
  givens: {},
  options: OPTIONS,
  reasons: {
    "as-measured": "The sentence is about what was measured",
    "other-device": "None of the studies is about a needle kit",
    "both-ways": "Results of other devices go both ways",
    "bigger-sample": "Many devices together prove it for one more",
    obvious: "Common sense says so",
  },
  slips: {
    "carried-over": { name: "carried over to another device", because: () => ["For cystoscopes single use weighed less, for gastroscopes reuse did. From another device nothing follows for ours."] },
    "denied-altogether": { name: "denied where it holds", because: () => ["A sentence that stays with the device that was measured may be taken at its word. Look whether it reads the two numbers rightly."] },
    "contradiction-seen": { name: "a contradiction seen", because: () => ["The study does not speak of that, so it cannot contradict it either. It says nothing for the sentence and nothing against it."] },
    "read-the-wrong-way": { name: "sentence not set beside the numbers", because: (say) => [`${study(say)} Set the sentence beside these two numbers before anything else: is it about them, and does it say what they say?`] },
  },
  working: (say) => ["Is the sentence about the device that was measured? Then compare it with the numbers.", "Is it about a needle kit? No study is. Is it about other devices, or about all? Results go both ways.", `Here: ${decided(say).toLowerCase()}.`],
  right: (say) => [`${decided(say)}. A number belongs to the thing that was measured.`],
  off: (say) => [`Here: ${decided(say).toLowerCase()}. First ask what the sentence is about, then whether the numbers agree.`],
  moves: () => ["Case load, current, transport and cleaning move such results more than the device itself. A study of this kit, here, would be needed."],
  turns: () => ["Such a sentence holds where it stays with the measured device and reads its two numbers the right way round."],
};

/** 13i: what a comparison of other devices says about the own one. */
export const evidenceBothWays: JudgeFamily = {
  kind: "judge",
  id: "evidence-both-ways",
  code: "13i",
  module: "M13",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m13-cost"],
  reads: Object.values(DEVICES).flatMap(({ single, reused }) => [single, reused]),
  sources: [{ source: "cystoscope-2021", entry: "carbon-single.cystoscope@1" }, { source: "pioche-2024", entry: "carbon-single.gastroscope@1" }, { source: "tka-sets", entry: "carbon-single.knee-tools@1" }, { source: "davis-2018", entry: "carbon-single.ureteroscope@1" }],
  cautions: ["C2", "C7", "C9"],
  givens: [],
  options: ["holds-there", "contradicts", "nothing-here", "proven"],
  reasons: ["as-measured", "other-device", "both-ways", "bigger-sample", "obvious"],
  draw: (chance) => {
    const claim = chance.pick(Object.keys(CLAIMS));
    // Two numbers that hardly differ carry no sentence about which is smaller.
    const devices = Object.keys(DEVICES).filter((id) => id !== "ureteroscope" || CLAIMS[claim]?.judgement.picks === "nothing-here");
    return { givens: {}, about: { ...drawPlace(chance), device: chance.pick(devices), claim } };
  },
  decide: judgementOf,
  slips: [
    { id: "carried-over", gives: () => ({ picks: "proven", reasons: ["bigger-sample"] }) },
    { id: "denied-altogether", gives: (draw) => (judgementOf(draw).picks === "nothing-here" ? null : { picks: "nothing-here", reasons: ["other-device"] }) },
    { id: "contradiction-seen", gives: (draw) => (judgementOf(draw).picks === "nothing-here" ? { picks: "contradicts", reasons: judgementOf(draw).reasons } : null) },
    { id: "read-the-wrong-way", gives: (draw) => { const { picks } = judgementOf(draw); return { picks: picks === "holds-there" ? "contradicts" : "holds-there", reasons: ["obvious"] }; } },
  ],
  words: { en: words },
};
