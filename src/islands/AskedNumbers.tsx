import { type KeyboardEvent, useId, useRef } from "react";
import { unitText } from "../engine/quantity/format.ts";
import type { CountItem, RangeItem } from "../engine/question/item.ts";
import { type AskedPart, describedBy, isInvalid } from "./asked-part.ts";

interface Field {
  readonly id: string;
  readonly label: string;
  readonly unit: string;
}

type Texts = Readonly<Record<string, string>>;

type BoxesProps = Pick<AskedPart<CountItem>, "words" | "problems" | "questionId" | "problemId"> & {
  readonly fields: readonly Field[];
  /** What the boxes held before a reload. */
  readonly before: Texts;
  readonly onType: (texts: Texts) => void;
  readonly onCheck: (texts: Texts) => void;
};

/** A row of number boxes with one Check. */
const Boxes = ({ fields, words, before, onType, onCheck, ...rest }: BoxesProps) => {
  const id = useId();
  const boxes = useRef<Record<string, HTMLInputElement | null>>({});
  const texts = (): Texts => Object.fromEntries(fields.map((field) => [field.id, boxes.current[field.id]?.value ?? ""]));
  const check = (): void => onCheck(texts());
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") check();
  };
  return (
    <div className="answer">
      {fields.map((field) => (
        <div className="field" key={field.id}>
          <label htmlFor={`${id}-${field.id}`}>{field.label}</label>
          <div className="box">
            <input
              id={`${id}-${field.id}`}
              ref={(box) => {
                boxes.current[field.id] = box;
              }}
              type="text"
              defaultValue={before[field.id]}
              onInput={() => onType(texts())}
              inputMode="text"
              autoComplete="off"
              aria-describedby={describedBy(rest)}
              aria-invalid={isInvalid(rest.problems, field.id)}
              onKeyDown={onKeyDown}
            />
            <span className="unit">{field.unit}</span>
          </div>
        </div>
      ))}
      <button type="button" className="main needs-script" onClick={check}>{words.card.check}</button>
    </div>
  );
};

/** What is missing or too much in each class. */
export const AskedCount = ({ item, draft, onDraft, onAnswer, ...rest }: AskedPart<CountItem>) => (
  <Boxes {...rest} fields={item.classes.map(({ id, text }) => ({ id, label: text, unit: "" }))} before={draft?.kind === "count" ? draft.byClass : {}} onType={(byClass) => onDraft?.({ kind: "count", byClass })} onCheck={(byClass) => onAnswer({ kind: "count", byClass })} />
);

/** The two ends of a range. */
export const AskedRange = ({ item, draft, onDraft, onAnswer, ...rest }: AskedPart<RangeItem>) => {
  const unit = unitText(item.unit);
  const fields = [{ id: "from", label: rest.words.parts.from, unit }, { id: "to", label: rest.words.parts.to, unit }];
  return <Boxes {...rest} fields={fields} before={draft?.kind === "range" ? { from: draft.from, to: draft.to } : {}} onType={({ from = "", to = "" }) => onDraft?.({ kind: "range", from, to })} onCheck={({ from = "", to = "" }) => onAnswer({ kind: "range", from, to })} />;
};
