import type { Chance } from "../../engine/random/chance.ts";
import { normalDraw } from "../../engine/random/normal-draw.ts";
import type { Assumptions } from "./assumptions.ts";

/** What one simulated learner holds of one objective. The workbook never sees this; it sees answers. */
export interface Memory {
  readonly isKnown: boolean;
  readonly halfLifeDays: number;
  /** The day on which it was last met. */
  readonly day: number;
}

/** One learner's own speed of learning and forgetting; the rest is that of the set. */
export type Traits = Omit<Assumptions, "name" | "spread">;

export type Outcome = "right" | "wrong" | "unsafe";

const WORD = 2 ** 32;
const LIMIT_SD = 2;
const MOST_LEARN = 0.95;

const happens = (chance: Chance, share: number): boolean => chance.happens(share * WORD, WORD);

/** A factor from a half to two, most often near one. */
const factor = (chance: Chance, spread: number): number => 2 ** ((spread * normalDraw(chance, LIMIT_SD)) / LIMIT_SD);

/** Draws one learner. With no spread, the numbers of the set stand as they are. */
export const traitsOf = (set: Assumptions, chance: Chance): Traits => {
  const learn = set.spread === 0 ? set.learn : Math.min(MOST_LEARN, set.learn * factor(chance, set.spread));
  return { ...set, learn, halfLifeDays: set.halfLifeDays * factor(chance, set.spread) };
};

/** Chance that what was known on the day it was last met is still known; 1 on that same day. */
const keptShare = ({ halfLifeDays, day }: Memory, today: number): number => 2 ** (-(today - day) / halfLifeDays);

/** Chance of a right answer on a day, by what is held, with slip and guess. */
export const rightShare = (memory: Memory, today: number, { slip, guess }: Traits): number => {
  const known = memory.isKnown ? keptShare(memory, today) : 0;
  return known * (1 - slip) + (1 - known) * guess;
};

/** Reading the working, of a question or of an example: it may teach. What is learnt anew starts with the first half-life. */
const taught = (memory: Memory, { learn, halfLifeDays }: Traits, chance: Chance): Memory =>
  memory.isKnown || !happens(chance, learn) ? memory : { ...memory, isKnown: true, halfLifeDays };

/** The memory behind the worked example that stands in front of the first question. */
export const afterExample = (traits: Traits, today: number, chance: Chance): Memory =>
  taught({ isKnown: false, halfLifeDays: traits.halfLifeDays, day: today }, traits, chance);

/** One question on a day: forgets or recalls, answers, reads the working. */
export const answered = (memory: Memory, today: number, { traits, chance }: { readonly traits: Traits; readonly chance: Chance }): { readonly memory: Memory; readonly outcome: Outcome } => {
  const kept = keptShare(memory, today);
  const isKnown = memory.isKnown && happens(chance, kept);
  const isRight = happens(chance, isKnown ? 1 - traits.slip : traits.guess);
  const halfLifeDays = isKnown ? memory.halfLifeDays * (1 + traits.gain * (1 - kept)) : memory.halfLifeDays;
  const missed = !isRight && happens(chance, traits.unsafeOfWrong) ? "unsafe" : "wrong";
  return { memory: taught({ isKnown, halfLifeDays, day: today }, traits, chance), outcome: isRight ? "right" : missed };
};
