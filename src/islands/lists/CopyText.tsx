import { useId, useRef, useState } from "react";
import { listWordsOf } from "../../facts/list-words.ts";

const words = listWordsOf("en").handIn;

interface CopyProps {
  readonly label: string;
  readonly text: string;
  readonly rows: number;
  readonly copy: string;
}

/** A text that is read, and copied with one button; selected where the browser refuses to copy. */
export const CopyText = ({ label, text, rows, copy }: CopyProps) => {
  const id = useId();
  const field = useRef<HTMLTextAreaElement>(null);
  const [said, setSaid] = useState("");
  const take = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      setSaid(words.copied);
    } catch {
      // Over plain http there is no clipboard to write to.
      field.current?.focus();
      field.current?.select();
      setSaid(words.copyNot);
    }
  };
  return (
    <div className="lined">
      <label htmlFor={id}>{label}</label>
      <textarea id={id} ref={field} className="code-text" rows={rows} readOnly value={text} spellCheck={false} />
      <div className="btns no-print"><button type="button" onClick={() => void take()}>{copy}</button></div>
      <p role="status" className="hint">{said}</p>
    </div>
  );
};
