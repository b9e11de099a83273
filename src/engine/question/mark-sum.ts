import { isPlain, parseQuantity } from "../quantity/parse.ts";
import { acceptedGrid, type GridSpan, type Span, spanText } from "../quantity/round.ts";
import { type Typed, typedNumber, typedPlain, typedText, typedValue } from "../quantity/typed.ts";
import { slipOf } from "./diagnose.ts";
import type { SumRules } from "./family.ts";
import { type AskSpec, type Draw, isSays, type Solution } from "./family-head.ts";
import { type Marked, OTHER_KIND } from "./kind-rules.ts";
import type { Response, SumResponse } from "./response.ts";
import { solutionOf } from "./solve.ts";
import { codeOf } from "./value-code.ts";
import { type AskVerdict, wholeOf, type VerdictCode } from "./verdict.ts";

/** Text of one ask out of a response, or null where that part was left out. */
const textFor = (response: SumResponse, ask: AskSpec, only: boolean): string | null => {
  if ("text" in response) return only ? response.text : null;
  return "texts" in response ? (response.texts[ask.id] ?? null) : null;
};

const readAsk = (response: SumResponse, ask: AskSpec, only: boolean): AskVerdict | Typed => {
  const text = textFor(response, ask, only);
  if (text === null) return { ask: ask.id, verdict: "not-recognised", reason: "part-missing" };
  if (isPlain(text)) return typedPlain(text);
  const reading = parseQuantity(text, ask.unit);
  if ("value" in reading) return typedValue(reading.value);
  const { reason, found } = reading;
  return { ask: ask.id, verdict: "not-recognised", reason, ...(found === undefined ? {} : { found }) };
};

const saysVerdict = (response: SumResponse, solution: Solution): VerdictCode =>
  "says" in response && isSays(solution) && response.says === solution.says ? "right" : "safe-side";

type Spans = Readonly<Record<string, GridSpan>>;

/** Accepted span of every ask; empty where the answer is not a number. */
const gridSpansOf = ({ asks }: SumRules, solution: Solution): Spans => {
  const spans: Record<string, GridSpan> = {};
  if (isSays(solution)) return spans;
  for (const { id, roundTo, rounding } of asks) spans[id] = acceptedGrid(solution[id] as number, roundTo, rounding);
  return spans;
};

const acceptedOf = ({ asks }: SumRules, spans: Spans): Readonly<Record<string, Span>> => {
  const accepted: Record<string, Span> = {};
  for (const { id, roundTo, rounding } of asks) {
    const span = spans[id];
    if (span !== undefined) accepted[id] = spanText(span, roundTo, rounding);
  }
  return accepted;
};

interface ReadParts {
  readonly parts: readonly AskVerdict[];
  readonly values: Readonly<Record<string, Typed>>;
}

const NOTHING_READ: ReadParts = { parts: [], values: {} };

const codeFor = (value: Typed, ask: AskSpec, { family, solution, spans }: { family: SumRules; solution: Solution; spans: Spans }): VerdictCode => {
  const span = spans[ask.id];
  if (isSays(solution) || span === undefined) return family.unsafe ? "unsafe-side" : "safe-side";
  return codeOf(value, ask, { span, exact: solution[ask.id] as number, unsafe: family.unsafe });
};

const markParts = (response: SumResponse, marking: { family: SumRules; solution: Solution; spans: Spans }): ReadParts => {
  const { asks } = marking.family;
  const values: Record<string, Typed> = {};
  const parts = asks.map((ask): AskVerdict => {
    const value = readAsk(response, ask, asks.length === 1);
    if ("ask" in value) return value;
    values[ask.id] = value;
    return { ask: ask.id, value: typedText(value), verdict: codeFor(value, ask, marking) };
  });
  return { parts, values };
};

const rightIn = (parts: readonly AskVerdict[]): number => {
  let right = 0;
  for (const { verdict } of parts) if (verdict === "right") right += 1;
  return right;
};

/** An overall verdict is right only where every part is; otherwise the gravest of the others decides. */
const overall = (parts: readonly AskVerdict[]): VerdictCode => {
  const [only] = parts;
  if (parts.length === 1 && only) return only.verdict;
  return rightIn(parts) === parts.length ? "right" : wholeOf(parts.flatMap(({ verdict }) => (verdict === "right" ? [] : [verdict])));
};

/** True where the family itself says that these values could hurt somebody. */
const isHarmful = ({ family, draw, values }: { family: SumRules; draw: Draw; values: ReadParts["values"] }, typed: VerdictCode): boolean => {
  if (!family.unsafe || !family.isUnsafe || typed === "right" || typed === "not-recognised") return false;
  const numbers = Object.fromEntries(Object.entries(values).map(([id, value]) => [id, typedNumber(value)]));
  return Object.keys(numbers).length > 0 && family.isUnsafe(draw, numbers);
};

/** Marks one response to a sum: every ask by itself, the whole by the gravest of them. */
export const markSum = (family: SumRules, draw: Draw, response: Response): Marked => {
  if (response.kind !== "sum") return OTHER_KIND;
  const solution = solutionOf(family, draw);
  const spans = gridSpansOf(family, solution);
  const accepted = acceptedOf(family, spans);
  const base = isSays(solution) ? { accepted, acceptedSays: solution.says } : { accepted };
  const isSaid = "says" in response;
  const { parts, values } = isSaid ? NOTHING_READ : markParts(response, { family, solution, spans });
  const typed = isSaid ? saysVerdict(response, solution) : overall(parts);
  const verdict = isHarmful({ family, draw, values }, typed) ? "unsafe-side" : typed;
  if (verdict === "right") return { ...base, verdict, score: 1, parts };
  const score = parts.length === 0 ? 0 : rightIn(parts) / parts.length;
  const reason = parts.find((part) => part.verdict === "not-recognised")?.reason;
  if (verdict === "not-recognised") return { ...base, verdict, score: 0, parts, ...(reason === undefined ? {} : { reason }) };
  const slip = slipOf({ family, draw, response, values });
  return { ...base, verdict, score, parts, ...(slip === undefined ? {} : { slip }) };
};
