import { useId } from "react";
import type { Words } from "../facts/words.ts";
import { LIMITS, limited, type NumberKey } from "./use-needle.ts";

interface TwinProps {
  readonly of: NumberKey;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly words: Words;
  readonly onChange: (value: number) => void;
}

/** A number with a button on either side: the keyboard's twin of a drag. */
export const NumberTwin = ({ of, label, unit, value, words, onChange }: TwinProps) => {
  const id = useId();
  const { step } = LIMITS[of];
  const text = String(value);
  const set = (typed: string): void => {
    const number = Number(typed.replace(",", ".").replace("−", "-"));
    if (typed.trim() !== "" && Number.isFinite(number)) onChange(limited(of, number));
  };
  return (
    <div className="twin">
      <label htmlFor={id}>{label}</label>
      <span className="twin-box">
        <button type="button" className="step needs-script" aria-label={`${label}: ${words.needle.less}`} onClick={() => onChange(limited(of, value - step))}>−</button>
        <input key={text} id={id} type="text" inputMode="decimal" autoComplete="off" defaultValue={text} onBlur={(event) => set(event.target.value)} onKeyDown={(event) => {
          if (event.key === "Enter") set(event.currentTarget.value);
        }} />
        <span className="unit">{unit}</span>
        <button type="button" className="step needs-script" aria-label={`${label}: ${words.needle.more}`} onClick={() => onChange(limited(of, value + step))}>+</button>
      </span>
    </div>
  );
};
