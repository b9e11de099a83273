/** What one run of the simulation takes for granted. Every number here is ours; none was measured on anybody. */
export interface Assumptions {
  readonly name: string;
  /** Chance that one answer with its working teaches what was not known, 0 to 1. */
  readonly learn: number;
  /** Chance of a wrong answer though it is known, 0 to 1. */
  readonly slip: number;
  /** Chance of a right answer though it is not known, 0 to 1. */
  readonly guess: number;
  /** Days after which half of what was just learnt is forgotten; Infinity where nothing is. */
  readonly halfLifeDays: number;
  /** How much a recall lengthens that time: it is multiplied by 1 + gain × the chance that it had been forgotten by then. */
  readonly gain: number;
  /** Share of the wrong answers that lie on the unsafe side, 0 to 1. */
  readonly unsafeOfWrong: number;
  /** How far learners differ: 1 lets learning and forgetting run from half to twice as fast, 0 makes all alike. */
  readonly spread: number;
}

/** Slip and guess keep to the bounds of the workbook's own estimate: 0.10 and 0.30. The guess of 0.25 is that of four options, 0.04 that of a typed length. */
export const SETS: readonly Assumptions[] = [
  { name: "middle", learn: 0.4, slip: 0.08, guess: 0.04, halfLifeDays: 7, gain: 3, unsafeOfWrong: 0.1, spread: 1 },
  { name: "quick and lasting", learn: 0.6, slip: 0.05, guess: 0.04, halfLifeDays: 30, gain: 3, unsafeOfWrong: 0.1, spread: 1 },
  { name: "slow and fleeting, and a recall lengthens nothing", learn: 0.25, slip: 0.1, guess: 0.25, halfLifeDays: 7, gain: 0, unsafeOfWrong: 0.1, spread: 1 },
];

const percent = (share: number): string => `${Math.round(share * 100)} in 100`;

const forgetting = ({ halfLifeDays }: Assumptions): string =>
  Number.isFinite(halfLifeDays) ? `Half of what was just learnt is forgotten after ${halfLifeDays} days.` : "Nothing is ever forgotten.";

const recalling = ({ gain }: Assumptions): string =>
  gain === 0
    ? "Recalling a thing does not make it last longer, so spacing as such earns nothing here."
    : `A recall makes it last longer, by up to ${gain + 1} times when it was nearly lost and not at all on the same day: spacing pays here because we put that in.`;

const differing = ({ spread }: Assumptions): string => (spread === 0 ? "All learners are alike." : "Learners differ: they learn and forget from half to twice as fast.");

/** The assumptions as sentences, to stand above the numbers that follow from them. */
export const inWords = (set: Assumptions): readonly string[] => [
  `An answer with its working teaches what was not known ${percent(set.learn)} times.`,
  `Who knows slips ${percent(set.slip)} times; who does not know is right by chance ${percent(set.guess)} times; ${percent(set.unsafeOfWrong)} wrong answers are unsafe.`,
  forgetting(set),
  recalling(set),
  differing(set),
];
