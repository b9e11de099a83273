import { type KeyboardEvent, useId, useRef } from "react";
import { unitText } from "../engine/quantity/format.ts";
import type { ShownAsk, SumItem } from "../engine/question/item.ts";
import { SAYS, type SumResponse } from "../engine/question/response.ts";
import type { AskVerdict } from "../engine/question/verdict.ts";
import { filled, type Words } from "../facts/words.ts";
import { Glyph } from "./Glyph.tsx";
import { Stem } from "./Stem.tsx";

interface AskedProps {
  readonly item: SumItem;
  readonly words: Words;
  /** Parts that could not be read in the last try. */
  readonly problems: readonly AskVerdict[];
  readonly trouble: string;
  readonly onAnswer: (response: SumResponse) => void;
}

const sentenceFor = (problem: AskVerdict, ask: ShownAsk, words: Words): string =>
  filled(words.reasons[problem.reason ?? "no-number"], { found: problem.found ?? "", unit: unitText(ask.unit), label: ask.label });

/** The question as it is asked: case, givens, number box, and the three answers that are not a number. */
export const Asked = ({ item, words, problems, trouble, onAnswer }: AskedProps) => {
  const id = useId();
  // Boxes keep their own text, so that a number typed before the page came alive is not lost.
  const boxes = useRef<Record<string, HTMLInputElement | null>>({});
  const check = (): void => {
    const typed = Object.fromEntries(item.asks.map((ask) => [ask.id, boxes.current[ask.id]?.value ?? ""]));
    const only = item.asks.length === 1 ? item.asks[0] : undefined;
    onAnswer(only ? { kind: "sum", text: typed[only.id] ?? "" } : { kind: "sum", texts: typed });
    boxes.current[item.asks[0]?.id ?? ""]?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") check();
  };
  const hasProblem = problems.length > 0 || trouble !== "";
  return (
    <>
      <Stem item={item} />
      <p className="question" id={`${id}-q`}>{item.question}</p>
      <div className="answer">
        {item.asks.map((ask) => (
          <div className="field" key={ask.id}>
            <label htmlFor={`${id}-${ask.id}`}>{ask.label}</label>
            <div className="box">
              <input
                id={`${id}-${ask.id}`}
                ref={(box) => {
                  boxes.current[ask.id] = box;
                }}
                type="text"
                inputMode="decimal"
                autoComplete="off"
                enterKeyHint="done"
                aria-describedby={hasProblem ? `${id}-q ${id}-p` : `${id}-q`}
                aria-invalid={problems.some((problem) => problem.ask === ask.id) || undefined}
                onKeyDown={onKeyDown}
              />
              <span className="unit">{unitText(ask.unit)}</span>
            </div>
          </div>
        ))}
        <button type="button" className="main needs-script" onClick={check}>{words.card.check}</button>
      </div>
      <div id={`${id}-p`} role="status" className="needs-script">
        {problems.map((problem) => {
          const ask = item.asks.find((one) => one.id === problem.ask);
          return ask ? <p className="problem" key={problem.ask}><Glyph id="v-not-recognised" /><span><b>{words.verdicts["not-recognised"]}.</b> {sentenceFor(problem, ask, words)} {words.nothingCounted}</span></p> : null;
        })}
        {trouble === "" ? null : <p className="problem">{trouble}</p>}
      </div>
      <p className="or needs-script">{words.card.orSay}</p>
      <div className="btns needs-script">
        {SAYS.map((says) => <button type="button" className="quiet" key={says} onClick={() => onAnswer({ kind: "sum", says })}>{item.says[says]}</button>)}
      </div>
    </>
  );
};
