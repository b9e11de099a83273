import { useId } from "react";

export interface RangeLimits {
  readonly least: number;
  readonly greatest: number;
  readonly step: number;
}

interface RangeProps extends RangeLimits {
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** A slider and the same number to type. */
export const RangeTwin = ({ label, unit, value, least, greatest, step, onChange }: RangeProps) => {
  const id = useId();
  const set = (typed: string): void => {
    const number = Number(typed.replace(",", ".").replace("−", "-"));
    if (typed.trim() !== "" && Number.isFinite(number)) onChange(Math.min(greatest, Math.max(least, Math.round(number / step) * step)));
  };
  return (
    <div className="rangetwin">
      <label htmlFor={id}>{label}</label>
      <input type="range" aria-label={`${label}, ${unit}`} min={least} max={greatest} step={step} value={value} onChange={(event) => onChange(Number(event.target.value))} />
      <span><input key={value} id={id} type="text" inputMode="decimal" autoComplete="off" defaultValue={String(value)} onBlur={(event) => set(event.target.value)} onKeyDown={(event) => {
        if (event.key === "Enter") set(event.currentTarget.value);
      }} /><span className="unit">{unit}</span></span>
    </div>
  );
};
