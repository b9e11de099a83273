import { useState } from "react";
import type { ChainItem, ShownStep, SumItem } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import { filled } from "../facts/words.ts";
import type { AskedPart } from "./asked-part.ts";
import { AskedSum } from "./AskedSum.tsx";
import { Valued } from "./Valued.tsx";
import { withUnit } from "../engine/quantity/format.ts";

/** A step as a sum of its own, so that it is asked by the same boxes. */
const sumOf = ({ steps: _, ...item }: ChainItem, { asks, says, question }: ShownStep): SumItem => ({ ...item, kind: "sum", asks, says, question });

/** What was answered in a step, as text. */
const textOf = (step: ShownStep, response: Response): string => {
  if (response.kind !== "sum") return "";
  if ("says" in response) return step.says[response.says];
  const { unit = "mm" } = step.asks[0] ?? {};
  return "text" in response ? withUnit(response.text, unit) : Object.values(response.texts).map((text) => withUnit(text, unit)).join(", ");
};

/** The step that could not be read in the last try; the first one otherwise. */
const firstOpen = ({ item, problems }: Pick<AskedPart<ChainItem>, "item" | "problems">): number =>
  Math.max(0, item.steps.findIndex(({ asks }) => asks.some(({ id }) => problems.some(({ ask }) => ask === id))));

const NOTHING: Response = { kind: "sum", text: "" };

/** Sums one after another: each is written down before the next is asked, and may be taken up again. */
export const AskedChain = ({ item, words, draft, onDraft, onAnswer, ...rest }: AskedPart<ChainItem>) => {
  // Steps that were written down before a reload; the last of them is still open.
  const before = draft?.kind === "chain" ? draft.steps : [];
  const [given, setGiven] = useState<readonly Response[]>(() => before.slice(0, -1));
  const [at, setAt] = useState(given.length);
  const [seen, setSeen] = useState(rest.problems);
  if (seen !== rest.problems) {
    setSeen(rest.problems);
    if (rest.problems.length > 0) setAt(firstOpen({ item, problems: rest.problems }));
  }
  const step = item.steps[at];
  if (!step) return null;
  const isLast = at === item.steps.length - 1;
  const take = (response: Response): void => {
    const steps = [...given.slice(0, at), response];
    setGiven(steps);
    onDraft?.({ kind: "chain", steps: isLast ? steps : [...steps, NOTHING] });
    if (isLast) onAnswer({ kind: "chain", steps });
    else setAt(at + 1);
  };
  return (
    <div className="chain">
      <ol className="found">
        {item.steps.slice(0, at).map((before, index) => (
          <li key={before.id}>
            <span>{before.asks[0]?.label}: <b><Valued text={textOf(before, given[index] ?? { kind: "order", cards: [] })} /></b></span>
            <button type="button" className="quiet needs-script" aria-label={`${words.parts.stepAgain}: ${before.asks[0]?.label ?? ""}`} onClick={() => setAt(index)}>{words.parts.stepAgain}</button>
          </li>
        ))}
      </ol>
      <p className="question" role="status">{filled(words.parts.step, { at: String(at + 1), of: String(item.steps.length) })} {step.question}</p>
      <AskedSum {...rest} key={step.id} item={sumOf(item, step)} words={isLast ? words : { ...words, card: { ...words.card, check: words.parts.nextStep } }} draft={at === before.length - 1 ? before[at] : null} onDraft={(response) => onDraft?.({ kind: "chain", steps: [...given.slice(0, at), response] })} onAnswer={take} />
    </div>
  );
};
