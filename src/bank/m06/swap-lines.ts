import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given, SIDES } from "../m01/common.ts";

export const MARGIN = { unit: "mm", least: 1, greatest: 9, step: 0.5 } as const;
export const ANGLE = { unit: "deg", least: 2, greatest: 70, step: 1 } as const;
export const LEAST = { key: "leastMarginMm", unit: "mm", least: 3, greatest: 5, step: 0.5 } as const;
export const MOST = { key: "mostDeg", unit: "deg", least: 30, greatest: 45, step: 5 } as const;

export type LineName = "here" | "other";
interface Line {
  readonly marginMm: number;
  readonly angleDeg: number;
}
type Lines = Readonly<Record<LineName, Line>>;
interface Sheet {
  readonly leastMm: number;
  readonly mostDeg: number;
}
export const PICK_OF: Readonly<Record<LineName, string>> = { here: "stay", other: "swap" };
export const NAMES: readonly LineName[] = ["here", "other"];

/** Both lines of a draw. */
export const linesOf = ({ givens }: Pick<Draw, "givens">): Lines => ({
  here: { marginMm: given(givens, "hereMarginMm"), angleDeg: given(givens, "hereDeg") },
  other: { marginMm: given(givens, "otherMarginMm"), angleDeg: given(givens, "otherDeg") },
});
/** The limits of the sheet. */
export const sheetOf = ({ givens }: Pick<Draw, "givens">): Sheet => ({ leastMm: given(givens, "leastMarginMm"), mostDeg: given(givens, "mostDeg") });

/** Whether a line keeps the least margin, and whether it comes squarely enough. */
export const keeps = ({ marginMm }: Line, { leastMm }: Sheet): boolean => compareOnGrid(marginMm, leastMm) >= 0;
export const isSquareEnough = ({ angleDeg }: Line, { mostDeg }: Sheet): boolean => compareOnGrid(angleDeg, mostDeg) <= 0;
/** The line that meets the tear more squarely. */
export const straighterOf = ({ here, other }: Lines): LineName => (here.angleDeg <= other.angleDeg ? "here" : "other");
const marginOrder = ({ here, other }: Lines): number => compareOnGrid(here.marginMm, other.marginMm);

/** The line that is taken; null where no line keeps both limits. */
export const takenOf = (draw: Pick<Draw, "givens">): LineName | null => {
  const [lines, sheet] = [linesOf(draw), sheetOf(draw)];
  const fit = NAMES.filter((name) => keeps(lines[name], sheet) && isSquareEnough(lines[name], sheet));
  if (fit.length < NAMES.length) return fit[0] ?? null;
  if (marginOrder(lines) === 0) return straighterOf(lines);
  return marginOrder(lines) > 0 ? "here" : "other";
};
/** The line that is not this one. */
export const rest = (name: LineName): LineName => (name === "here" ? "other" : "here");

/** Everything that holds of the two lines and of the choice between them. */
export const reasonsOf = (draw: Pick<Draw, "givens">): readonly string[] => {
  const [lines, sheet, taken] = [linesOf(draw), sheetOf(draw), takenOf(draw)];
  const order = taken === null ? -1 : compareOnGrid(lines[taken].marginMm, lines[rest(taken)].marginMm);
  const holds: Readonly<Record<string, boolean>> = {
    "larger-margin": taken !== null && order > 0,
    "equal-then-angle": taken !== null && order === 0,
    "below-least": NAMES.some((name) => !keeps(lines[name], sheet)),
    "too-oblique": NAMES.some((name) => keeps(lines[name], sheet) && !isSquareEnough(lines[name], sheet)),
  };
  return Object.keys(holds).filter((reason) => holds[reason]);
};

interface Span {
  readonly from: number;
  readonly to: number;
}
const marginIn = (chance: Chance, { from, to }: Span): number => chance.onGrid({ ...MARGIN, least: from, greatest: to });
const angleIn = (chance: Chance, { from, to }: Span): number => chance.onGrid({ ...ANGLE, least: from, greatest: to });

/** An angle that is not this one: below it, or now and then above it. */
const otherAngle = (chance: Chance, angleDeg: number, greatestDeg: number): number =>
  angleIn(chance, chance.happens(2, 3) ? { from: ANGLE.least, to: angleDeg - 1 } : { from: angleDeg + 1, to: greatestDeg });

/** Two lines in each way in which they can differ; where both keep the least margin, the first has no smaller one. */
const SORTS: readonly ((chance: Chance, sheet: Sheet) => readonly [Line, Line])[] = [
  // Both keep both limits.
  (chance, { leastMm, mostDeg }) => {
    const marginMm = marginIn(chance, { from: leastMm + 1, to: MARGIN.greatest });
    const angleDeg = angleIn(chance, { from: 10, to: mostDeg - 1 });
    return [{ marginMm, angleDeg }, { marginMm: marginIn(chance, { from: leastMm, to: marginMm - MARGIN.step }), angleDeg: otherAngle(chance, angleDeg, mostDeg) }];
  },
  // The margins are equal.
  (chance, { leastMm, mostDeg }) => {
    const marginMm = marginIn(chance, { from: leastMm, to: MARGIN.greatest });
    const angleDeg = angleIn(chance, { from: 10, to: mostDeg });
    return [{ marginMm, angleDeg }, { marginMm, angleDeg: angleIn(chance, { from: ANGLE.least, to: angleDeg - 1 }) }];
  },
  // Only one keeps the margin.
  (chance, { leastMm, mostDeg }) => {
    const angleDeg = angleIn(chance, { from: 10, to: mostDeg });
    return [{ marginMm: marginIn(chance, { from: leastMm, to: MARGIN.greatest }), angleDeg }, { marginMm: marginIn(chance, { from: MARGIN.least, to: leastMm - MARGIN.step }), angleDeg: otherAngle(chance, angleDeg, ANGLE.greatest) }];
  },
  // The larger margin lies on a line that comes too obliquely.
  (chance, { leastMm, mostDeg }) => {
    const marginMm = marginIn(chance, { from: leastMm + 1, to: MARGIN.greatest });
    return [{ marginMm, angleDeg: angleIn(chance, { from: mostDeg + 1, to: ANGLE.greatest }) }, { marginMm: marginIn(chance, { from: leastMm, to: marginMm - MARGIN.step }), angleDeg: angleIn(chance, { from: ANGLE.least, to: mostDeg }) }];
  },
  // Neither keeps the margin.
  (chance, { leastMm, mostDeg }) => {
    const poor = { from: MARGIN.least, to: leastMm - MARGIN.step };
    const angleDeg = angleIn(chance, { from: 10, to: mostDeg });
    return [{ marginMm: marginIn(chance, poor), angleDeg }, { marginMm: marginIn(chance, poor), angleDeg: angleIn(chance, { from: ANGLE.least, to: angleDeg - 1 }) }];
  },
  // One fails the margin and one the angle.
  (chance, { leastMm, mostDeg }) => [
    { marginMm: marginIn(chance, { from: leastMm, to: MARGIN.greatest }), angleDeg: angleIn(chance, { from: mostDeg + 1, to: ANGLE.greatest }) },
    { marginMm: marginIn(chance, { from: MARGIN.least, to: leastMm - MARGIN.step }), angleDeg: angleIn(chance, { from: ANGLE.least, to: mostDeg }) },
  ],
];

/** Two lines, the portals that they come from, and the two limits of the sheet. */
export const drawLines = (chance: Chance): Draw => {
  const sheet: Sheet = { leastMm: chance.onGrid(LEAST), mostDeg: chance.onGrid(MOST) };
  const [larger, smaller] = chance.pick(SORTS)(chance, sheet);
  const [here, other] = chance.happens(1, 2) ? [larger, smaller] : [smaller, larger];
  const portals = chance.shuffled(["anterolateral", "anteromedial"]);
  return {
    givens: { hereMarginMm: here.marginMm, hereDeg: here.angleDeg, otherMarginMm: other.marginMm, otherDeg: other.angleDeg, leastMarginMm: sheet.leastMm, mostDeg: sheet.mostDeg },
    about: { here: portals[0] ?? "", other: portals[1] ?? "", side: chance.pick(SIDES), target: chance.pick(["posterior horn of the lateral meniscus", "posterior horn of the medial meniscus", "body of the lateral meniscus", "body of the medial meniscus"]) },
    origins: { leastMarginMm: { from: "local" }, mostDeg: { from: "local" } },
  };
};
