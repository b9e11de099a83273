import { LEAST_PERSONS } from "./figure.ts";
import { firstAnswers, groupedBy, isRight } from "./first-marks.ts";
import type { Paper } from "./paper.ts";

/** How far apart the draws of one family lie: a wide spread means that some had easier numbers than others. */
export interface VariantSpread {
  readonly family: string;
  readonly version: number;
  /** Draws that at least five learners answered; only these are compared. */
  readonly draws: number;
  readonly leastShare: number | null;
  readonly greatestShare: number | null;
}

const distinct = (learners: readonly { readonly learner: string }[]): number => new Set(learners.map(({ learner }) => learner)).size;

/** Spread between the draws of each family; shares are null where fewer than two draws can be compared. */
export const variantSpreads = (papers: readonly Paper[]): readonly VariantSpread[] =>
  [...groupedBy(firstAnswers(papers), ({ mark }) => `${mark.family} ${mark.version}`).values()].map((answers) => {
    const draws = [...groupedBy(answers, ({ mark }) => mark.seed).values()].filter((own) => distinct(own) >= LEAST_PERSONS);
    const shares = draws.map((own) => own.filter(({ mark }) => isRight(mark)).length / own.length);
    const isCompared = shares.length >= 2;
    const { family = "", version = 0 } = answers[0]?.mark ?? {};
    return { family, version, draws: draws.length, leastShare: isCompared ? Math.min(...shares) : null, greatestShare: isCompared ? Math.max(...shares) : null };
  });
