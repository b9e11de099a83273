import { type KeyboardEvent, useId, useRef } from "react";
import { unitText } from "../engine/quantity/format.ts";
import type { SumItem } from "../engine/question/item.ts";
import { SAYS } from "../engine/question/response.ts";
import { type AskedPart, describedBy, isInvalid } from "./asked-part.ts";

/** Number boxes, and the three answers that are not a number: always all three, so that offering them is no hint. */
export const AskedSum = ({ item, words, draft, onDraft, onAnswer, ...rest }: AskedPart<SumItem>) => {
  const id = useId();
  // Boxes keep their own text, so that a number typed before the page came alive is not lost.
  const boxes = useRef<Record<string, HTMLInputElement | null>>({});
  // What was typed before a reload is kept by box, however many there are.
  const before = draft && "texts" in draft ? draft.texts : {};
  const typed = (): Readonly<Record<string, string>> => Object.fromEntries(item.asks.map((ask) => [ask.id, boxes.current[ask.id]?.value ?? ""]));
  const check = (): void => {
    const texts = typed();
    const only = item.asks.length === 1 ? item.asks[0] : undefined;
    onAnswer(only ? { kind: "sum", text: texts[only.id] ?? "" } : { kind: "sum", texts });
    boxes.current[item.asks[0]?.id ?? ""]?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") check();
  };
  return (
    <>
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
                defaultValue={before[ask.id]}
                onInput={() => onDraft?.({ kind: "sum", texts: typed() })}
                inputMode="decimal"
                autoComplete="off"
                enterKeyHint="done"
                aria-describedby={describedBy(rest)}
                aria-invalid={isInvalid(rest.problems, ask.id)}
                onKeyDown={onKeyDown}
              />
              <span className="unit">{unitText(ask.unit)}</span>
            </div>
          </div>
        ))}
        <button type="button" className="main needs-script" onClick={check}>{words.card.check}</button>
      </div>
      <p className="or needs-script">{words.card.orSay}</p>
      <div className="btns needs-script">
        {SAYS.map((says) => <button type="button" className="quiet" key={says} onClick={() => onAnswer({ kind: "sum", says })}>{item.says[says]}</button>)}
      </div>
    </>
  );
};
