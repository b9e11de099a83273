import { type ChangeEvent, type DragEvent, useId, useState } from "react";
import type { Arrival } from "../../engine/cohort/returns.ts";
import { listWordsOf } from "../../facts/list-words.ts";
import { filled } from "../../facts/words.ts";
import { readFiles } from "./read-files.ts";

const words = listWordsOf("en").desk;

interface InProps {
  readonly done: number;
  readonly all: number;
  readonly counted: string;
  readonly onTake: (arrivals: readonly Arrival[]) => void;
}

const Progress = ({ done, all }: Pick<InProps, "done" | "all">) => {
  const id = useId();
  if (all === 0 || done === all) return null;
  return <div><label htmlFor={id}>{filled(words.progress, { done: String(done), all: String(all) })}</label><progress id={id} value={done} max={all} /></div>;
};

/** Where things come in: dropped or chosen files, pictures of square codes, and pasted text. */
export const ReturnsIn = ({ done, all, counted, onTake }: InProps) => {
  const id = useId();
  const [pasted, setPasted] = useState("");
  const [pastes, setPastes] = useState(0);
  const [isOver, setOver] = useState(false);
  const [said, setSaid] = useState<readonly string[]>([]);
  const takeFiles = async (files: readonly File[]): Promise<void> => {
    const { arrivals, troubles } = await readFiles(files);
    setSaid(troubles);
    onTake(arrivals);
  };
  const choose = (event: ChangeEvent<HTMLInputElement>): void => {
    const files = [...(event.currentTarget.files ?? [])];
    event.currentTarget.value = "";
    void takeFiles(files);
  };
  const drop = (event: DragEvent): void => {
    event.preventDefault();
    setOver(false);
    void takeFiles([...event.dataTransfer.files]);
  };
  const paste = (): void => {
    onTake([{ name: filled(words.pasted, { at: String(pastes + 1) }), text: pasted }]);
    setPastes(pastes + 1);
    setPasted("");
  };
  return (
    <section className={`drop no-print${isOver ? " over" : ""}`} aria-label={words.came} onDragOver={(event) => { event.preventDefault(); setOver(true); }} onDragLeave={() => setOver(false)} onDrop={drop}>
      <p role="status" className="counted">{counted}</p>
      <Progress done={done} all={all} />
      <p>{words.drop}</p>
      <div className="btns">
        <label className="btn file main">{words.choose}<input type="file" multiple accept=".json,.txt,application/json,text/plain" onChange={choose} /></label>
        <label className="btn file">{words.squares}<input type="file" multiple accept="image/*" onChange={choose} /></label>
      </div>
      <div className="lined">
        <label htmlFor={id}>{words.paste}</label>
        <textarea id={id} rows={4} className="code-text" value={pasted} spellCheck={false} autoComplete="off" onChange={(event) => setPasted(event.currentTarget.value)} />
        <div className="btns"><button type="button" disabled={pasted.trim() === ""} onClick={paste}>{words.read}</button></div>
      </div>
      <div role="status">{said.map((text) => <p className="said" key={text}>{text}</p>)}</div>
    </section>
  );
};
