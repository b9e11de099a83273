import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { JudgeFamily, Judgement } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { ANGLE, drawLines, isSquareEnough, keeps, LEAST, type LineName, linesOf, MARGIN, MOST, NAMES, PICK_OF, reasonsOf, rest, sheetOf, straighterOf, takenOf } from "./swap-lines.ts";

const pickOf = (name: LineName | null): string => (name === null ? "technique" : PICK_OF[name]);
const decide = (draw: Pick<Draw, "givens">): Judgement => ({ picks: pickOf(takenOf(draw)), reasons: reasonsOf(draw) });

/** Lines that keep less than the sheet asks, or less than the line that is taken. */
const unsafeOptions = (draw: Draw): readonly string[] => {
  const [lines, sheet, taken] = [linesOf(draw), sheetOf(draw), takenOf(draw)];
  const isPoorer = (name: LineName): boolean => taken !== null && compareOnGrid(lines[name].marginMm, lines[taken].marginMm) < 0;
  return NAMES.filter((name) => !keeps(lines[name], sheet) || isPoorer(name)).map((name) => PICK_OF[name]);
};

const squarer = (draw: Draw): Judgement => ({ picks: PICK_OF[straighterOf(linesOf(draw))], reasons: ["straighter"] });
const byHabit = (draw: Draw): Judgement | null => {
  const right = takenOf(draw);
  return right === null || (right === "other" && squarer(draw).picks === "stay") ? null : { picks: "stay", reasons: ["already-there"] };
};
const fromTwoPoor = (draw: Draw): Judgement | null => (takenOf(draw) === null ? { picks: PICK_OF[rest(straighterOf(linesOf(draw)))], reasons: ["larger-margin"] } : null);
const tooSoon = (draw: Draw): Judgement | null => (takenOf(draw) === null ? null : { picks: "technique", reasons: ["below-least"] });

const KEYS = ["hereMarginMm", "hereDeg", "otherMarginMm", "otherDeg", "leastMarginMm", "mostDeg"] as const;
const shown = (say: Say): Draw => ({ givens: Object.fromEntries(KEYS.map((key) => [key, say.value(key)])), about: {} });
const lineIn = (say: Say, name: LineName): string => `the line from the ${say.about(name)} portal`;
const numbers = (say: Say): string => `${say.of("hereMarginMm")} at ${say.of("hereDeg")} from the ${say.about("here")} portal, ${say.of("otherMarginMm")} at ${say.of("otherDeg")} from the ${say.about("other")}; the sheet asks for at least ${say.of("leastMarginMm")} and at most ${say.of("mostDeg")}`;
const passes = (say: Say, name: LineName): string => {
  const [line, sheet] = [linesOf(shown(say))[name], sheetOf(shown(say))];
  const failed = [keeps(line, sheet) ? "" : "the margin", isSquareEnough(line, sheet) ? "" : "the approach limit"].filter((one) => one !== "");
  return `${lineIn(say, name).charAt(0).toUpperCase()}${lineIn(say, name).slice(1)}: ${failed.length === 0 ? "keeps both limits" : `does not keep ${failed.join(" or ")}`}.`;
};
const outcome = (say: Say): string => {
  const [taken, reasons] = [takenOf(shown(say)), reasonsOf(shown(say))];
  if (taken === null) return "No line keeps both limits. Another technique is the answer, from inside out with a retractor, or another place for the work.";
  const line = `${PICK_OF[taken] === "stay" ? "Stay" : "Swap"}: ${lineIn(say, taken)}`;
  if (reasons.includes("equal-then-angle")) return `${line}. Both lines keep both limits with equal margins, so the angle may choose.`;
  return reasons.includes("larger-margin") ? `${line} keeps both limits and has the larger margin.` : `${line} is the only one that keeps both limits.`;
};
const straightSentence = (say: Say): string => {
  const straight = straighterOf(linesOf(shown(say)));
  if (takenOf(shown(say)) === straight) return `The pick is right, and the reason would be wrong in the next knee. ${outcome(say)}`;
  return `It looks better on the screen. But the margin counts first: ${numbers(say)}.`;
};

const words: JudgeFamily["words"][Language] = {
  title: "Swap or stay",
  stems: [
    (say) => [`You work from the ${say.about("here")} portal on a tear of the ${say.about("target")}, in a model of a ${say.about("side")} knee. Two lines to it were tried with a needle. Of lines that keep the least margin and the approach limit of your hospital’s sheet, the sheet takes the one with the larger margin, and of equal ones the straighter.`],
    (say) => [`Swap the portals, or stay? The tool is in the ${say.about("here")} portal of a ${say.about("side")} model knee, and the tear is in the ${say.about("target")}. Your hospital’s sheet asks for a least margin and an approach limit; of lines that keep both it takes the larger margin, and of equal ones the straighter.`],
    (say) => [`“Would the other portal be the better one?” A ${say.about("side")} model knee, a tear of the ${say.about("target")}, the tool in the ${say.about("here")} portal. By your hospital’s sheet a line must keep the least margin and the approach limit; of two that do, the larger margin is taken, and of equal ones the straighter.`],
  ],
  question: "Stay, swap, or another technique? Name every reason that holds by the sheet.",
  givens: {
    hereMarginMm: (say) => `Margin behind the line from the ${say.about("here")} portal, where you are`,
    hereDeg: "Its angle to the tear’s normal",
    otherMarginMm: (say) => `Margin behind the line from the ${say.about("other")} portal`,
    otherDeg: "Angle of that line to the tear’s normal",
    leastMarginMm: "Least margin, by your hospital’s sheet",
    mostDeg: "Approach limit, by your hospital’s sheet: greatest angle to the normal",
  },
  options: { stay: "Stay: the line from where I am", swap: "Swap: the line from the other portal", technique: "Neither line: another technique" },
  reasons: {
    "larger-margin": "The line that is taken has the larger margin",
    "equal-then-angle": "The margins are equal, and the line that is taken comes more squarely",
    "below-least": "A line keeps less than the least margin",
    "too-oblique": "A line that keeps the margin comes beyond the approach limit",
    straighter: "How squarely a line comes counts before its margin",
    "already-there": "What is already in a portal stays there",
  },
  slips: {
    "straight-over-margin": { name: "straightness over margin", because: (say) => [straightSentence(say)] },
    "stayed-by-habit": { name: "stayed by habit", because: (say) => [`That the tool is already there is no reason. ${outcome(say)}`] },
    "other-of-two-poor": { name: "the other of two lines that fail", because: (say) => [`One line fails, and so does the other: ${numbers(say)}. A third hole in front will not mend it; another technique may.`] },
    "technique-too-soon": { name: "technique changed too soon", because: (say) => [`A line is left that keeps both limits. ${outcome(say)}`] },
  },
  working: (say) => [passes(say, "here"), passes(say, "other"), outcome(say)],
  right: (say) => [outcome(say)],
  off: (say) => [`Limits first, then the margin, and only then the angle: ${numbers(say)}. ${outcome(say)}`],
  moves: () => ["Half a millimetre of margin can turn the answer; a few degrees cannot, as long as they stay within the approach limit and the margins differ."],
  turns: (say) => [takenOf(shown(say)) === null ? "When a line keeps both limits: another bend of the knee, another portal, another target point." : `When ${lineIn(say, rest(takenOf(shown(say)) ?? "here"))} keeps both limits and has the larger margin.`],
};

/** 06g: stay, swap or change the technique, by margin first and angle second. */
export const swapOrStay: JudgeFamily = {
  kind: "judge",
  id: "swap-or-stay",
  code: "06g",
  module: "M06",
  version: 1,
  firstWave: false,
  unsafe: true,
  objectives: ["m06-portal"],
  reads: [],
  sources: [],
  cautions: ["C2", "C6"],
  givens: [{ key: "hereMarginMm", ...MARGIN }, { key: "hereDeg", ...ANGLE }, { key: "otherMarginMm", ...MARGIN }, { key: "otherDeg", ...ANGLE }, LEAST, MOST],
  options: ["stay", "swap", "technique"],
  reasons: ["larger-margin", "equal-then-angle", "below-least", "too-oblique", "straighter", "already-there"],
  draw: drawLines,
  decide,
  unsafeOptions,
  slips: [
    { id: "straight-over-margin", gives: squarer },
    { id: "stayed-by-habit", gives: byHabit },
    { id: "other-of-two-poor", gives: fromTwoPoor },
    { id: "technique-too-soon", gives: tooSoon },
  ],
  words: { en: words },
};
