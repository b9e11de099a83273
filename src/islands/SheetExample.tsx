import { useEffect, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import { recordWordsOf } from "../facts/record-words.ts";
import { Stem } from "./Stem.tsx";
import { type Worked, workedBeside } from "./sheet-items.ts";
import { Valued } from "./Valued.tsx";

const words = recordWordsOf("en").sheet;

/** A question of the same kind with other numbers, worked, in front of the first one that the learner meets. */
export const SheetExample = ({ item, onDone }: { readonly item: Item; readonly onDone: () => void }) => {
  const [worked, setWorked] = useState<Worked | null>(null);
  useEffect(() => {
    workedBeside(item).then(setWorked, onDone);
  }, [item, onDone]);
  if (worked === null) return <p role="status">{words.loading}</p>;
  return (
    <div className="worked">
      <p className="l">{words.exampleFirst}</p>
      <h3>{words.example}</h3>
      <Stem item={worked.item} />
      <p><b>{worked.item.question}</b></p>
      <ul className="working">{worked.working.map((text) => <li key={text}><Valued text={text} /></li>)}</ul>
      <div className="btns"><button type="button" className="main" onClick={onDone}>{words.toQuestion}</button></div>
    </div>
  );
};
