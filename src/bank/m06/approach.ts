import { dot, lengthOf } from "../../engine/geometry/vec2.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Givens, Solution } from "../../engine/question/family-head.ts";
import { once } from "../../engine/question/once.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, isSaid, SIDES, withPlaces } from "../m01/common.ts";

const FRONT = { key: "frontMm", unit: "mm", least: 44, greatest: 60, step: 1 } as const;
const ASIDE = { unit: "mm", least: 2, greatest: 36, step: 1 } as const;
/** The portal on the side of the tear lies nearly in line with it, the other one well to the middle. */
const NEAR_GREATEST_MM = 14;
const FAR_LEAST_MM = 20;
const NORMAL = { key: "normalDeg", unit: "deg", least: 4, greatest: 40, step: 1 } as const;
const MARGIN = { unit: "mm", least: 2, greatest: 9, step: 0.5 } as const;
const LEAST = { key: "leastMarginMm", unit: "mm", least: 3, greatest: 5, step: 0.5 } as const;
const DEGREES = 180 / Math.PI;
const RIGHT_ANGLE_DEG = 90;

interface Line {
  readonly angleDeg: number;
  readonly marginMm: number;
}
type Portal = "al" | "am";
type Lines = Readonly<Record<Portal, Line>>;
/** How the angle of a line is reckoned from its sideways and its forward part. */
type Angle = (asideMm: number, frontMm: number, normalDeg: number) => number;

/** Degrees outward from straight back; below 0 where the tear's normal leans to the middle. */
const leanOf = ({ givens, about }: Draw): number => given(givens, "normalDeg") * (about["lean"] === "outward" ? 1 : -1);

/** Between two lines without a direction, never more than a right angle. */
const toNormal: Angle = (asideMm, frontMm, normalDeg) => {
  const line = { xMm: asideMm, yMm: frontMm };
  const normal = { xMm: Math.sin(normalDeg / DEGREES), yMm: Math.cos(normalDeg / DEGREES) };
  return DEGREES * Math.acos(Math.min(1, Math.abs(dot(line, normal)) / lengthOf(line)));
};

const reckonedBy = (draw: Draw, angle: Angle): Lines => {
  const { givens } = draw;
  const line = (name: Portal): Line => ({ angleDeg: angle(given(givens, `${name}AsideMm`), given(givens, "frontMm"), leanOf(draw)), marginMm: given(givens, `${name}MarginMm`) });
  return { al: line("al"), am: line("am") };
};

const rightLines = once((givens, about): Lines => reckonedBy({ givens, about }, toNormal));
const linesOf = ({ givens, about }: Draw): Lines => rightLines(givens, about);

const straighterOf = ({ al, am }: Lines): Portal => (al.angleDeg <= am.angleDeg ? "al" : "am");
/** The portal with the larger margin, and of two equal ones the straighter. */
const takenOf = (lines: Lines): Portal => {
  const order = compareOnGrid(lines.al.marginMm, lines.am.marginMm);
  if (order === 0) return straighterOf(lines);
  return order > 0 ? "al" : "am";
};
const values = (lines: Lines, taken: Portal): Solution => ({ alDeg: lines.al.angleDeg, amDeg: lines.am.angleDeg, takenDeg: lines[taken].angleDeg });

const isKept = ({ givens, about }: Draw): boolean => {
  const lines = linesOf({ givens, about });
  return compareOnGrid(lines[takenOf(lines)].marginMm, given(givens, "leastMarginMm")) >= 0;
};
const solved = (givens: Givens, about: Draw["about"]): Solution => {
  const lines = linesOf({ givens, about });
  return isKept({ givens, about }) ? values(lines, takenOf(lines)) : { says: "none" };
};
/** The right portal, with angles that were reckoned in another way. */
const reckoned = (angle: Angle) => (draw: Draw): Solution => values(reckonedBy(draw, angle), takenOf(linesOf(draw)));
const squarer = (draw: Draw): Solution | null => {
  const lines = linesOf(draw);
  return isKept(draw) && straighterOf(lines) === takenOf(lines) ? null : values(lines, straighterOf(lines));
};

const tenth = (value: number): string => withPlaces(value, 1, "deg");
const PORTALS: Readonly<Record<Portal, string>> = { al: "anterolateral portal", am: "anteromedial portal" };
const lines = (say: Say): Lines => linesOf(say.draw);
const taken = (say: Say): string => PORTALS[takenOf(lines(say))];
const takenDeg = (say: Say): string => tenth(lines(say)[takenOf(lines(say))].angleDeg);
const bearingDeg = (say: Say, name: Portal): number => DEGREES * Math.atan(say.value(`${name}AsideMm`) / say.value("frontMm"));
const workedLine = (say: Say, name: Portal): string => {
  const bearing = tenth(bearingDeg(say, name));
  return `Line from the ${PORTALS[name]}: ${bearing} outward of straight back, since the tangent is ${say.bare(`${name}AsideMm`)} ÷ ${say.bare("frontMm")}. To the normal: ${bearing} ${say.about("lean") === "outward" ? "−" : "+"} ${say.of("normalDeg")}, without a sign ${tenth(lines(say)[name].angleDeg)}`;
};
const RULE = "Margin comes before angle: the line with the larger margin is taken, and of two equal ones the straighter.";
const areEqual = (say: Say): boolean => compareOnGrid(say.value("alMarginMm"), say.value("amMarginMm")) === 0;
const whyTaken = (say: Say): string => {
  if (areEqual(say)) return "The margins are equal, so the angle may choose.";
  return straighterOf(lines(say)) === takenOf(lines(say)) ? "The margin chose it, and it is the straighter one as well." : "The margin chose it; the angle is what it costs.";
};
const margins = (say: Say): string => `${say.of("alMarginMm")} from the anterolateral portal, ${say.of("amMarginMm")} from the anteromedial`;

const drawLines = (chance: Chance): Draw => {
  const meniscus = chance.pick(["lateral", "medial"]);
  const leastMarginMm = chance.onGrid(LEAST);
  const isHopeless = chance.happens(1, 6);
  const span = isHopeless ? { ...MARGIN, greatest: leastMarginMm - MARGIN.step } : { ...MARGIN, least: leastMarginMm };
  const oneMm = chance.onGrid(span);
  const otherMm = chance.happens(1, 5) ? oneMm : chance.onGrid(isHopeless ? span : MARGIN);
  const [nearMm, farMm] = [chance.onGrid({ ...ASIDE, greatest: NEAR_GREATEST_MM }), chance.onGrid({ ...ASIDE, least: FAR_LEAST_MM })];
  const [alAsideMm, amAsideMm] = meniscus === "lateral" ? [nearMm, farMm] : [farMm, nearMm];
  const [alMarginMm, amMarginMm] = chance.happens(1, 2) ? [oneMm, otherMm] : [otherMm, oneMm];
  return {
    givens: { frontMm: chance.onGrid(FRONT), alAsideMm, amAsideMm, normalDeg: chance.onGrid(NORMAL), alMarginMm, amMarginMm, leastMarginMm },
    about: { meniscus, side: chance.pick(SIDES), lean: chance.pick(["outward", "outward", "to the middle"]) },
    origins: { leastMarginMm: { from: "local" } },
  };
};

/** 06c: how squarely two lines meet a tear, and which of them is taken. */
export const approach: SumFamily = {
  kind: "sum",
  id: "approach",
  code: "06c",
  module: "M06",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m06-angle"],
  reads: [],
  sources: [],
  cautions: ["C6"],
  givens: [FRONT, { key: "alAsideMm", ...ASIDE }, { key: "amAsideMm", ...ASIDE }, NORMAL, { key: "alMarginMm", ...MARGIN }, { key: "amMarginMm", ...MARGIN }, LEAST],
  asks: ["alDeg", "amDeg", "takenDeg"].map((id) => ({ id, unit: "deg", roundTo: 0.1, rounding: "nearest", safeSide: "none" })),
  draw: drawLines,
  solve: solved,
  slips: [
    { id: "angle-to-the-tear", gives: reckoned((...line) => RIGHT_ANGLE_DEG - toNormal(...line)) },
    { id: "lean-turned-round", gives: reckoned((asideMm, frontMm, normalDeg) => toNormal(asideMm, frontMm, -normalDeg)) },
    { id: "tangent-upside-down", gives: reckoned((asideMm, frontMm, normalDeg) => toNormal(frontMm, asideMm, normalDeg)) },
    { id: "square-at-any-price", gives: squarer },
  ],
  words: {
    en: {
      title: "How squarely, and which line",
      stems: [
        (say) => [`A tear at the back of the ${say.about("meniscus")} meniscus, in a model of a ${say.about("side")} knee. Both front portals lie nearer to the middle than the tear, so both lines run back and outward. The tear’s normal, the line that stands square to it, leans ${say.about("lean")} from straight back.`, RULE],
        (say) => [`Two lines reach the same tear of the ${say.about("meniscus")} meniscus in a ${say.about("side")} model knee; both run back and outward from their portals. The normal of the tear leans ${say.about("lean")} from straight back. What lies behind each line was measured too.`, RULE],
        (say) => [`“Which hole do I use?” The tear is at the back of the ${say.about("meniscus")} meniscus of a ${say.about("side")} model knee, and its normal leans ${say.about("lean")} from straight back. Seen from the tear, both portals lie in front and towards the middle.`, RULE],
      ],
      question: "At what angle to the tear’s normal does each line come, and what is it for the line that you take? To the nearest tenth of a degree.",
      givens: {
        frontMm: "Both portals, in front of the tear",
        alAsideMm: "Anterolateral portal, towards the middle as seen from the tear",
        amAsideMm: "Anteromedial portal, towards the middle as seen from the tear",
        normalDeg: (say) => `Normal of the tear, ${say.about("lean")} from straight back`,
        alMarginMm: "Margin behind the line from the anterolateral portal",
        amMarginMm: "Margin behind the line from the anteromedial portal",
        leastMarginMm: "Least margin, by your hospital’s sheet",
      },
      asks: { alDeg: "Line from the anterolateral portal", amDeg: "Line from the anteromedial portal", takenDeg: "The line that you take" },
      says: { none: "Neither line: another technique", "cannot-be-told": "Cannot be told from this", "ask-locally": "Ask locally" },
      slips: {
        "angle-to-the-tear": { name: "angle to the tear", because: () => ["That is the angle to the tear itself. To its normal it is what is left of a right angle: the straighter line has the smaller one."] },
        "lean-turned-round": { name: "lean turned round", because: (say) => [`The lines run outward, and the normal leans ${say.about("lean")}. ${say.about("lean") === "outward" ? "They lean to the same side, so the two angles are taken from each other." : "They lean to opposite sides, so the two angles add up."}`] },
        "tangent-upside-down": { name: "tangent upside down", because: () => ["The angle counts from straight back: what lies sideways stands above, what lies in front below. Upside down it counts from the side."] },
        "square-at-any-price": { name: "square at any price", because: (say) => [isSaid(say) ? `Neither line keeps ${say.of("leastMarginMm")}: ${margins(say)}. However squarely it comes, it is not taken; needles from inside out are an answer, and so is another knee position.` : `Margin first, then angle: ${margins(say)}. The line from the ${taken(say)} has the larger one, and a needle that looks better on the screen does not buy it back.`] },
      },
      working: (say) => [
        workedLine(say, "al"),
        workedLine(say, "am"),
        isSaid(say) ? `Margins: ${margins(say)}. The sheet asks for ${say.of("leastMarginMm")}, so neither line is taken.` : `Margins: ${margins(say)}; the sheet asks for ${say.of("leastMarginMm")}. Taken: the line from the ${taken(say)}, ${takenDeg(say)}`,
      ],
      right: (say) => [isSaid(say) ? "Neither line keeps the margin, so no angle matters. Another technique, from inside out with a retractor, is an answer." : `The line from the ${taken(say)}, ${takenDeg(say)} off square. ${whyTaken(say)}`],
      off: (say) => [`A line’s own angle from straight back is the arc tangent of sideways over in front; then count to the normal, which leans ${say.about("lean")}. And before any angle: ${margins(say)}, with ${say.of("leastMarginMm")} as the least.`],
      inverse: () => [],
      turns: (say) => [isSaid(say) ? `As soon as one of the margins reaches ${say.of("leastMarginMm")}: another bend of the knee, or another portal.` : "Where the other line has the larger margin. The angle decides only between equals."],
    },
  },
};
