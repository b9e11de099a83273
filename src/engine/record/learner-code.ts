/** The code that a learner works under instead of a name: small letters, digits and hyphens, 3 to 24 of them, as the learner or the programme chose it. */

const MOST_TYPED = 80;
const FORM = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const LEAST = 3;
const MOST = 24;

export const isLearnerCode = (value: unknown): value is string => typeof value === "string" && value.length >= LEAST && value.length <= MOST && FORM.test(value);

/** What was typed as a code: capitals, spaces and long dashes do not matter. Null where it is none. */
export const learnerCode = (typed: string): string | null => {
  if (typed.length > MOST_TYPED) return null;
  const bare = typed.trim().toLowerCase().replace(/[\s_‐-―−]+/g, "-");
  return isLearnerCode(bare) ? bare : null;
};
