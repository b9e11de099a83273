import { type ReactNode, useId, useRef } from "react";
import type { JudgeItem, NameItem, Option, TrayItem } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import { type AskedPart, describedBy, isInvalid } from "./asked-part.ts";
import { Glyph } from "./Glyph.tsx";

/** Names of the boxes that are ticked in a part of the page. */
const ticked = (root: HTMLElement | null, name: string): readonly string[] =>
  [...(root?.querySelectorAll<HTMLInputElement>("input:checked") ?? [])].filter((box) => box.name === name).map(({ value }) => value);

interface ChoicesProps {
  readonly legend: string;
  readonly type: "radio" | "checkbox";
  readonly name: string;
  readonly options: readonly Option[];
  readonly description?: string;
  readonly invalid?: true | undefined;
  /** What was ticked before a reload. */
  readonly before: readonly (string | undefined)[];
  readonly onTick: () => void;
  /** True where the question above the choices says the same. */
  readonly isRepeated?: boolean;
}

/** Many short options stand side by side, so that twelve things with six bins each do not fill five screens of a phone. */
const MANY = 5;
const SHORT = 22;
const classFor = (options: readonly Option[]): string => (options.length >= MANY && options.every(({ text }) => text.length <= SHORT) ? "choices short" : "choices");

/** A set of choices under its own heading. */
const Choices = ({ legend, type, name, options, description, invalid, before, onTick, isRepeated = false }: ChoicesProps) => (
  <fieldset className={classFor(options)} aria-describedby={description} aria-invalid={invalid}>
    <legend className={isRepeated ? "vh" : undefined}>{invalid ? <Glyph id="v-not-recognised" /> : null}{legend}</legend>
    {options.map(({ id, text }) => (
      <label className="choice" key={id}>
        <input type={type} name={name} value={id} defaultChecked={before.includes(id)} onChange={onTick} />
        <span>{text}</span>
      </label>
    ))}
  </fieldset>
);

const CheckRow = ({ text, onCheck, children }: { readonly text: string; readonly onCheck: () => void; readonly children?: ReactNode }) => (
  <div className="btns needs-script"><button type="button" className="main" onClick={onCheck}>{text}</button>{children}</div>
);

/** A decision and the reasons for it. */
export const AskedJudge = ({ item, words, draft, onDraft, onAnswer, ...rest }: AskedPart<JudgeItem>) => {
  const id = useId();
  const root = useRef<HTMLDivElement>(null);
  const before = draft?.kind === "judge" ? draft : { picks: "", reasons: [] };
  const picked = (): Response => ({ kind: "judge", picks: ticked(root.current, `${id}-picks`)[0] ?? "", reasons: ticked(root.current, `${id}-reasons`) });
  const tick = (): void => onDraft?.(picked());
  return (
    <div ref={root}>
      <Choices legend={words.parts.decision} type="radio" name={`${id}-picks`} options={item.options} description={describedBy(rest)} invalid={isInvalid(rest.problems, "picks")} before={[before.picks]} onTick={tick} />
      <Choices legend={words.parts.reasons} type="checkbox" name={`${id}-reasons`} options={item.reasons} before={before.reasons} onTick={tick} />
      <CheckRow text={words.card.check} onCheck={() => onAnswer(picked())} />
    </div>
  );
};

/** One pick for each attribute. */
export const AskedName = ({ item, words, draft, onDraft, onAnswer, ...rest }: AskedPart<NameItem>) => {
  const id = useId();
  const root = useRef<HTMLDivElement>(null);
  const before = draft?.kind === "name" ? draft.picks : {};
  const picked = (): Response => {
    const picks = item.attributes.map((attribute) => [attribute.id, ticked(root.current, `${id}-${attribute.id}`)[0] ?? ""] as const);
    return { kind: "name", picks: Object.fromEntries(picks) };
  };
  return (
    <div ref={root}>
      {item.attributes.map((attribute) => (
        <Choices key={attribute.id} legend={attribute.text} type="radio" name={`${id}-${attribute.id}`} options={attribute.options} description={describedBy(rest)} invalid={isInvalid(rest.problems, attribute.id)} before={[before[attribute.id]]} onTick={() => onDraft?.(picked())} />
      ))}
      <CheckRow text={words.card.check} onCheck={() => onAnswer(picked())} />
    </div>
  );
};

/** Things of which the faulty ones are ticked. */
export const AskedTray = ({ item, words, draft, onDraft, onAnswer, ...rest }: AskedPart<TrayItem>) => {
  const id = useId();
  const root = useRef<HTMLDivElement>(null);
  const picked = (): Response => ({ kind: "tray", found: ticked(root.current, `${id}-found`) });
  return (
    <div ref={root}>
      <Choices legend={item.question} type="checkbox" name={`${id}-found`} options={item.things} description={describedBy(rest)} before={draft?.kind === "tray" ? draft.found : []} onTick={() => onDraft?.(picked())} isRepeated />
      <CheckRow text={words.card.check} onCheck={() => onAnswer(picked())}>
        <button type="button" className="quiet" onClick={() => onAnswer({ kind: "tray", found: [] })}>{item.nothing}</button>
      </CheckRow>
    </div>
  );
};
