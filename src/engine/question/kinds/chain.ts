import { withUnit } from "../../quantity/format.ts";
import { asAsked } from "../../quantity/round.ts";
import type { ChainFamily, ChainStep, SumRules } from "../family.ts";
import { type Draw, type Givens, isSays, type Solution } from "../family-head.ts";
import type { ChainItem } from "../item.ts";
import { type Compared, type KindRules, type Marked, missingPart, OTHER_KIND, plainDraw } from "../kind-rules.ts";
import { markSum } from "../mark-sum.ts";
import type { ChainResponse, Response, SumResponse } from "../response.ts";
import { isTypable, slipAt, solvedAt, typedAs } from "../solve.ts";
import { wholeOf } from "../verdict.ts";

const MOST_ERRORS_SHOWN = 1;
/** A step that was left open. */
const OPEN: SumResponse = { kind: "sum", text: "" };

/** What follows from the values found so far; where the formula refuses them or gives no number, nothing can be told. */
const following = (step: ChainStep, { givens, about }: Draw): Solution => {
  const solution = solvedAt(step, givens, about);
  return solution !== null && isTypable(step, solution) ? solution : { says: "cannot-be-told" };
};

const rulesFor = (family: ChainFamily, step: ChainStep): SumRules => ({
  ...step,
  solve: (givens, about) => following(step, { givens, about }),
  unsafe: family.unsafe,
  slips: family.slips.filter((slip) => slip.step === step.id),
});

/** What a step hands on: the typed values under the names of their asks; an answer that is not a number hands on nothing. */
const handedOn = (marked: Marked): Givens =>
  Object.fromEntries(marked.parts.flatMap(({ ask, value }) => (value === undefined ? [] : [[ask, Number(value)]])));

interface Walked {
  readonly step: ChainStep;
  /** The draw as this step met it: the case, and what the learner had found before. */
  readonly draw: Draw;
  readonly response: Response;
  readonly marked: Marked;
}

/** Every step marked on the learner's own earlier values, so that one error is counted once. */
const walk = (family: ChainFamily, draw: Draw, responseAt: (step: ChainStep, own: Draw, index: number) => Response): readonly Walked[] => {
  const walked: Walked[] = [];
  let givens = draw.givens;
  for (const [index, step] of family.steps.entries()) {
    const own = { ...draw, givens };
    const response = responseAt(step, own, index);
    const marked = markSum(rulesFor(family, step), own, response);
    walked.push({ step, draw: own, response, marked });
    givens = { ...givens, ...handedOn(marked) };
  }
  return walked;
};

const typed = (step: ChainStep, draw: Draw): SumResponse => typedAs(step, following(step, draw));

const answer = (family: ChainFamily, draw: Draw): ChainResponse => ({
  kind: "chain",
  steps: walk(family, draw, typed).map(({ response }) => response),
});

/** One slip, with every other step worked rightly from what was found before it. */
const slipResponse = (family: ChainFamily, draw: Draw, slip: ChainFamily["slips"][number]): ChainResponse | null => {
  let applies = false;
  const steps = walk(family, draw, (step, own) => {
    const gives = step.id === slip.step ? slipAt(step, slip, own) : null;
    applies ||= gives !== null;
    return gives === null ? typed(step, own) : typedAs(step, gives);
  });
  return applies ? { kind: "chain", steps: steps.map(({ response }) => response) } : null;
};

const markWhole = (walked: readonly Walked[]): Marked => {
  const parts = walked.flatMap(({ step, marked }) => (marked.parts.length > 0 ? marked.parts : [{ ask: step.asks[0]?.id ?? step.id, verdict: marked.verdict }]));
  const accepted = Object.assign({}, ...walked.map(({ marked }) => marked.accepted ?? {})) as NonNullable<Marked["accepted"]>;
  const wrong = walked.filter(({ marked }) => marked.verdict !== "right");
  const unread = wrong.find(({ marked }) => marked.verdict === "not-recognised");
  if (unread) return { ...unread.marked, accepted: {}, score: 0 };
  if (wrong.length === 0) return { verdict: "right", score: 1, parts, accepted };
  const score = walked.reduce((sum, { marked }) => sum + marked.score, 0) / walked.length;
  const named = wrong.slice(0, MOST_ERRORS_SHOWN).find(({ marked }) => marked.slip !== undefined)?.marked.slip;
  return { verdict: wholeOf(wrong.map(({ marked }) => marked.verdict)), score, parts, accepted, ...(named === undefined ? {} : { slip: named }) };
};

const mark = (family: ChainFamily, draw: Draw, response: Response): Marked => {
  if (response.kind !== "chain") return OTHER_KIND;
  const missing = family.steps[response.steps.length];
  if (missing) return missingPart(missing.asks[0]?.id ?? missing.id);
  return markWhole(walk(family, draw, (_, __, index) => response.steps[index] as Response));
};

const compareStep = (family: ChainFamily, { step, draw, marked, response }: Walked): readonly Compared[] => {
  const { asks, says } = family.words.en.steps[step.id] as ChainFamily["words"]["en"]["steps"][string];
  const solution = following(step, draw);
  return step.asks.map((ask) => {
    const value = marked.parts.find((part) => part.ask === ask.id)?.value;
    const said = response.kind === "sum" && "says" in response ? says[response.says] : undefined;
    const yours = value === undefined ? said : withUnit(value, ask.unit);
    const right = isSays(solution) ? says[solution.says] : withUnit(asAsked(solution[ask.id] as number, ask.roundTo, ask.rounding), ask.unit);
    return { ask: ask.id, label: asks[ask.id] ?? ask.id, ...(yours === undefined ? {} : { yours }), answer: right, accepted: right };
  });
};

/** Chains: sums one after another, each marked on what the learner found in the step before. */
export const chainRules: KindRules<ChainFamily, ChainItem> = {
  drawOf: plainDraw,
  answer,
  slips: (family, draw) => family.slips.flatMap((slip) => {
    const response = slipResponse(family, draw, slip);
    return response === null ? [] : [{ id: slip.id, response }];
  }),
  mark,
  shown: (family) => ({
    steps: family.steps.map(({ id, asks }) => {
      const words = family.words.en.steps[id] as ChainFamily["words"]["en"]["steps"][string];
      return { id, question: words.question, says: words.says, asks: asks.map((ask) => ({ ...ask, roundTo: String(ask.roundTo), label: words.asks[ask.id] ?? ask.id })) };
    }),
  }),
  compare: (family, item, { response }) =>
    response.kind === "chain" ? walk(family, plainDraw(item), (_, __, index) => response.steps[index] ?? OPEN).flatMap((one) => compareStep(family, one)) : [],
};
