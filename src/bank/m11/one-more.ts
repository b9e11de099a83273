import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import { given } from "../m01/common.ts";
import { CASE_ABOUT, caseOf } from "./stitch-words.ts";

const DONE = { key: "done", unit: "pieces", least: 3, greatest: 7, step: 1 } as const;
const PLANNED = { key: "planned", unit: "pieces", least: 4, greatest: 6, step: 1 } as const;
const WIDEST = { key: "widestGapMm", unit: "mm", least: 2.5, greatest: 7, step: 0.5 } as const;
const SHEET = { key: "sheetGapMm", unit: "mm", least: 4, greatest: 6, step: 1 } as const;
/** A gap that is exactly the sheet's, or too wide by next to nothing, is an argument and not a question. */
const CLEARLY_MM = 1;
const NTH = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh"] as const;

/** What the probe finds, and what follows from it by the sheet of the stem. */
const FINDINGS: Readonly<Record<string, { readonly picks: string; readonly reason: string }>> = {
  holds: { picks: "stop", reason: "holds" },
  opens: { picks: "between", reason: "opens" },
  below: { picks: "face", reason: "below" },
  cut: { picks: "technique", reason: "cut" },
  reach: { picks: "technique", reason: "reach" },
};

const findingOf = ({ about }: Draw) => FINDINGS[about["finding"] ?? ""] ?? { picks: "stop", reason: "holds" };
const isTooWide = ({ givens }: Draw): boolean => given(givens, "widestGapMm") > given(givens, "sheetGapMm");
const isPlanDone = ({ givens }: Draw): boolean => given(givens, "done") >= given(givens, "planned");
/** Held everywhere, and still a gap that the sheet does not allow. */
const isGapAlone = (draw: Draw): boolean => isTooWide(draw) && findingOf(draw).reason === "holds";

const decide = (draw: Draw): Judgement => {
  const { picks, reason } = findingOf(draw);
  if (!isTooWide(draw)) return { picks, reasons: [reason] };
  return isGapAlone(draw) ? { picks: "between", reasons: ["gap"] } : { picks, reasons: [reason, "gap"] };
};
const instead = (picks: string, applies: (draw: Draw) => boolean) => (draw: Draw): Judgement | null => (applies(draw) ? { picks, reasons: decide(draw).reasons } : null);
const opensStill = (draw: Draw): boolean => decide(draw).picks !== "stop" && !isGapAlone(draw);

const SHEET_TEXT = "Your hospital’s sheet: when the stitches are in, the probe goes along the whole tear, above and below. Everything holds and no gap is too wide: stop, whatever the plan was. Edges that open between two stitches, or a gap above the sheet’s widest: one more there. The other face opens: one more on that face. A stitch that has cut through, or a place that this way cannot reach: another technique, and the senior surgeon is told.";
const FOUND: Readonly<Record<string, (say: Say) => string>> = {
  holds: () => "The probe lifts neither edge anywhere, above or below.",
  opens: (say) => `Between the ${say.about("pair")} stitch the probe opens the edges.`,
  below: () => "All stitches lie on the upper face. From above nothing moves; from below the probe opens the edges.",
  cut: () => "One thread has cut through the tissue, and the edge beside it hangs free.",
  reach: () => "Beyond the last stitch the edges open, at a place that the needle cannot come at from here.",
};
const found = (say: Say): string => FOUND[say.about("finding")]?.(say) ?? "";
const asDraw = (say: Say): Draw => ({ givens: Object.fromEntries([DONE, PLANNED, WIDEST, SHEET].map(({ key }) => [key, say.value(key)])), about: { finding: say.about("finding") } });
const REST: Readonly<Record<string, string>> = { stop: "Stop", between: "One more in that gap", face: "One more on the other face", technique: "Another technique" };

/** 11k: stop, one more, or another way, after the probe. */
export const oneMore: JudgeFamily = {
  kind: "judge",
  id: "one-more",
  code: "11k",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-stitch"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [DONE, PLANNED, WIDEST, SHEET],
  options: ["stop", "between", "face", "technique"],
  reasons: ["holds", "opens", "gap", "below", "cut", "reach", "planned", "more"],
  draw: (chance) => {
    const [planned, sheetGapMm] = [chance.onGrid(PLANNED), chance.onGrid(SHEET)];
    const finding = chance.pick(["holds", "holds", "holds", "opens", "opens", "below", "cut", "reach"]);
    const isWide = (finding === "holds" || finding === "opens") && chance.happens(1, 3);
    const widestGapMm = chance.onGrid(isWide ? { ...WIDEST, least: sheetGapMm + CLEARLY_MM } : { ...WIDEST, greatest: sheetGapMm - CLEARLY_MM });
    const done = planned + chance.pick([-1, 0, 0, 1]);
    const at = 1 + chance.below(done - 1);
    const pair = `${NTH[at - 1]} and the ${NTH[at]}`;
    return { givens: { done, planned, widestGapMm, sheetGapMm }, about: { ...CASE_ABOUT(chance), finding, pair }, origins: { sheetGapMm: { from: "local" } } };
  },
  decide,
  slips: [
    { id: "stopped-at-the-plan", gives: instead("stop", (draw) => opensStill(draw) && isPlanDone(draw)) },
    { id: "stopped-too-early", gives: instead("stop", (draw) => opensStill(draw) && !isPlanDone(draw)) },
    { id: "gap-not-looked-at", gives: instead("stop", isGapAlone) },
    { id: "went-on-to-the-plan", gives: instead("between", (draw) => decide(draw).picks === "stop" && !isPlanDone(draw)) },
    { id: "one-more-to-be-safe", gives: instead("between", (draw) => decide(draw).picks === "stop" && isPlanDone(draw)) },
    { id: "more-of-the-same", gives: instead("between", (draw) => decide(draw).picks === "technique") },
    { id: "same-face-again", gives: instead("between", (draw) => decide(draw).picks === "face") },
    { id: "other-face-first", gives: instead("face", (draw) => decide(draw).picks !== "face") },
    { id: "technique-too-soon", gives: instead("technique", (draw) => decide(draw).picks !== "technique") },
    { id: "plan-as-the-reason", gives: (draw) => ({ picks: decide(draw).picks, reasons: ["planned"] }) },
  ],
  words: {
    en: {
      title: "One more, or enough",
      stems: [
        (say) => [SHEET_TEXT, `${caseOf(say)} ${found(say)}`],
        (say) => [`${caseOf(say)} ${found(say)}`, SHEET_TEXT],
        (say) => ["A plan is a guess that the probe corrects.", SHEET_TEXT, `${caseOf(say)} ${found(say)}`],
      ],
      question: "What does the sheet ask for now, and why? Tick every reason of the sheet that applies.",
      givens: { done: "Stitches in", planned: "Stitches planned", widestGapMm: "Widest gap, measured with the probe", sheetGapMm: "Widest gap allowed, your hospital’s sheet" },
      options: REST,
      reasons: { holds: "Everything holds, and no gap is too wide", opens: "The edges open between two stitches", gap: "A gap is wider than the sheet allows", below: "The other face opens", cut: "A stitch has cut through", reach: "This way does not reach the place", planned: "The planned number decides", more: "One more is always safer" },
      slips: {
        "stopped-at-the-plan": { name: "stopped because the plan was met", because: (say) => [`${say.bare("planned")} were planned before anybody had probed. ${found(say)} The sheet asks for more than the plan.`] },
        "stopped-too-early": { name: "stopped before it holds", because: (say) => [`${found(say)} The plan is not even done.`] },
        "gap-not-looked-at": { name: "gap not looked at", because: (say) => [`It holds today. The widest gap is ${say.of("widestGapMm")}, and the sheet allows ${say.of("sheetGapMm")}.`] },
        "went-on-to-the-plan": { name: "went on to the planned number", because: (say) => [`${say.bare("done")} hold, and the sheet says stop. Each further one is two holes more and perhaps an implant.`] },
        "one-more-to-be-safe": { name: "one more to be safe", because: () => ["Everything holds. One more is two holes, minutes of cuff, and another pass toward what lies behind."] },
        "more-of-the-same": { name: "more of the same", because: (say) => [`${found(say)} Another stitch of the same kind meets the same trouble.`] },
        "same-face-again": { name: "same face again", because: () => ["It is the other face that opens. One more on this face holds what already holds."] },
        "other-face-first": { name: "the other face without a finding", because: (say) => [`${found(say)} Nothing of that is a finding on the other face alone, and only then does the sheet ask for one more there.`] },
        "technique-too-soon": { name: "technique changed too soon", because: (say) => [`${found(say)} No stitch has cut through, and no place is out of reach: the sheet stays with this technique.`] },
        "plan-as-the-reason": { name: "plan given as the reason", because: () => ["The number was a plan. What the probe finds and what the gap measures are reasons; the plan is not."] },
      },
      working: (say) => [
        found(say),
        `Widest gap ${say.of("widestGapMm")}, allowed ${say.of("sheetGapMm")}: ${isTooWide(asDraw(say)) ? "too wide" : "within the sheet"}.`,
        `By the sheet: ${(REST[decide(asDraw(say)).picks] ?? "").toLowerCase()}. Where your hospital’s sheet differs, it decides.`,
      ],
      right: (say) => [decide(asDraw(say)).picks === "stop" ? "It holds, and it was measured. Write down how many there are, not how many were planned." : "The probe decides, and the plan follows. Say the new number aloud, for the count and for the record."],
      off: () => ["First what the probe finds, above and below. Then the widest gap beside the sheet. The planned number is neither."],
      moves: (say) => [isTooWide(asDraw(say)) ? "With a narrower gap, only what the probe finds would count." : `A gap above ${say.of("sheetGapMm")} would be a reason of its own.`],
      turns: () => ["The same number of stitches is enough in one tear and too few in the next. That is why the probe comes before the cut."],
    },
  },
};
