import { requireShares } from "../evidence/share.ts";
import { compareOnGrid, sumOnGrid } from "../quantity/grid.ts";
import { conditionalErrorPoints } from "./conditional-error.ts";
import { type Figure, given, refused } from "./figure.ts";
import { sum } from "./score-matrix.ts";

/** What judges gave: for each item one share per judge, the chance that a borderline learner answers it rightly. */
export interface JudgedItem {
  readonly family: string;
  readonly shares: readonly number[];
}

export interface CutScore {
  /** Sum of the estimates of each judge, in points. */
  readonly sums: readonly number[];
  readonly items: number;
  /** Mean of the sums: a score at or above it reaches the standard. Not rounded. */
  readonly cutPoints: Figure;
  /** Standard deviation between the judges, a sample of those who could have been asked. */
  readonly spreadPoints: Figure;
  /** Standard error of the cut: how far another panel of this size would move it. */
  readonly errorPoints: Figure;
}

const meanOf = (values: readonly number[]): number => sum(values) / values.length;

const none = (reason: "no-judges" | "items-not-judged"): CutScore => ({ sums: [], items: 0, cutPoints: refused(reason), spreadPoints: refused(reason), errorPoints: refused(reason) });

/**
 * Cut score from the judges' estimates: for each judge the sum over the items, over all judges the mean (Angoff's method as
 * Shulruf and others 2016 describe it, BMC Med Educ 16:134, 10.1186/s12909-016-0656-7). Items that must be right are no
 * part of it: a mean would hide them. Refused where an item of the sheet was not judged by every judge.
 */
export const cutScoreOf = (judged: readonly JudgedItem[], families: readonly string[]): CutScore => {
  for (const { family, shares } of judged) requireShares(Object.fromEntries(shares.map((share, index) => [`${family}[${index}]`, share])));
  if (judged.length === 0) return none("no-judges");
  const rows = families.map((family) => judged.find((one) => one.family === family)?.shares ?? []);
  const judges = rows[0]?.length ?? 0;
  if (judges === 0 || rows.some((shares) => shares.length !== judges)) return none("items-not-judged");
  const sums = Array.from({ length: judges }, (_, judge) => sumOnGrid(...rows.map((shares) => shares[judge] ?? 0)));
  const cut = meanOf(sums);
  if (judges < 2) return { sums, items: rows.length, cutPoints: given(cut), spreadPoints: refused("one-judge"), errorPoints: refused("one-judge") };
  const spread = Math.sqrt(sum(sums.map((one) => (one - cut) ** 2)) / (judges - 1));
  return { sums, items: rows.length, cutPoints: given(cut), spreadPoints: given(spread), errorPoints: given(spread / Math.sqrt(judges)) };
};

/** From where to where a score lies too near the cut to be told from it. */
export interface CutBand {
  readonly low: number;
  readonly high: number;
}

/** One standard error of a single score on either side of the cut; null where there are fewer than two items. */
export const cutBand = (cutPoints: number, items: number): CutBand | null => {
  if (items < 2) return null;
  const error = conditionalErrorPoints({ points: cutPoints, items });
  return { low: Math.max(0, cutPoints - error), high: Math.min(items, cutPoints + error) };
};

/** Where a score stands; on the edge of the band it is undecided, since the sheet cannot tell it from the cut. */
export const placeByCut = (points: number, { low, high }: CutBand): "above" | "below" | "undecided" => {
  if (compareOnGrid(points, high) > 0) return "above";
  return compareOnGrid(points, low) < 0 ? "below" : "undecided";
};
