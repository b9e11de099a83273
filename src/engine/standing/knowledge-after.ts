import { requireNumber } from "../quantity/require.ts";

export interface KnowledgeModel {
  readonly known: number;
  readonly learn: number;
  readonly slip: number;
  readonly guess: number;
  readonly forget?: number;
}

/** The estimate after one answer, before and after the step of learning and forgetting. */
export interface KnowledgeStep {
  readonly posterior: number;
  readonly next: number;
}

const requireModel = ({ known, learn, slip, guess, forget = 0 }: KnowledgeModel): void => {
  for (const [name, value] of Object.entries({ known, learn, slip, guess, forget })) {
    requireNumber(name, value, { least: 0, leastIncluded: true, greatest: 1, greatestIncluded: true });
  }
  if (slip + guess >= 1) throw new RangeError(`slip + guess must be less than 1, got ${slip + guess}`);
};

const posteriorOf = (known: number, isRight: boolean, { slip, guess }: KnowledgeModel): number => {
  const whenKnown = known * (isRight ? 1 - slip : slip);
  const whenNot = (1 - known) * (isRight ? guess : 1 - guess);
  return whenKnown + whenNot === 0 ? known : whenKnown / (whenKnown + whenNot);
};

/**
 * Knowledge tracing with four parameters and a step of forgetting (Corbett and Anderson 1995, Knowledge tracing, User
 * Model User-Adap Interact 4:253–278, 10.1007/BF01099821). It orders practice; it never decides a level or a date.
 * An answer that the parameters hold impossible (0 chance) leaves the estimate where it was.
 *
 * @param known - Chance that it is known at the start; 0 to 1, both included.
 * @param learn - Chance to learn it at each answer; 0 to 1, both included.
 * @param slip - Chance of a wrong answer though known; 0 to 1, slip + guess less than 1.
 * @param guess - Chance of a right answer though not known; 0 to 1, slip + guess less than 1.
 * @param forget - Chance to forget it at each answer; 0 to 1, both included, 0 where left out.
 * @param answers - True for right, false for wrong, oldest first. May be empty.
 * @returns One step per answer: `posterior` after the answer alone, `next` after learning and forgetting.
 * @throws {RangeError} If a chance is outside its range or an answer is neither true nor false.
 * @example knowledgeAfter({ known: 0.5, learn: 0, slip: 0.1, guess: 0.2 }, [true]) // => [{ posterior: 0.8182, next: 0.8182 }]
 */
export const knowledgeAfter = (model: KnowledgeModel, answers: readonly boolean[]): KnowledgeStep[] => {
  requireModel(model);
  const { learn, forget = 0 } = model;
  let { known } = model;
  return answers.map((isRight, index) => {
    if (typeof isRight !== "boolean") throw new RangeError(`answers[${index}] must be true or false, got ${String(isRight)}`);
    const posterior = posteriorOf(known, isRight, model);
    known = posterior * (1 - forget) + (1 - posterior) * learn;
    return { posterior, next: known };
  });
};
