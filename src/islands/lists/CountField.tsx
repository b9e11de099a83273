import { useId } from "react";

interface CountProps {
  readonly label: string;
  readonly most: number;
  readonly value: number;
  readonly hint?: string;
  readonly onChange: (count: number) => void;
}

/** A whole number from 1, chosen from a list, so that nothing else can be typed. */
export const CountField = ({ label, most, value, hint, onChange }: CountProps) => {
  const id = useId();
  const counts = Array.from({ length: most }, (_, index) => index + 1);
  return (
    <div className="lined">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} aria-describedby={hint === undefined ? undefined : `${id}h`} onChange={(event) => onChange(Number(event.currentTarget.value))}>{counts.map((count) => <option key={count} value={count}>{count}</option>)}</select>
      {hint === undefined ? null : <p className="hint" id={`${id}h`}>{hint}</p>}
    </div>
  );
};
