import { useId } from "react";

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly options: readonly (readonly [T, string])[];
  readonly value: T;
  readonly onChange: (value: T) => void;
}

/** A choice of two or more, all in sight. */
export const Segments = <T extends string>({ legend, options, value, onChange }: ChoiceProps<T>) => {
  const name = useId();
  return (
    <fieldset className="seg">
      <legend>{legend}</legend>
      {options.map(([id, text]) => <label key={id}><input type="radio" name={name} checked={id === value} onChange={() => onChange(id)} /><span>{text}</span></label>)}
    </fieldset>
  );
};
