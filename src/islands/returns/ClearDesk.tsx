import { useState } from "react";
import { listWordsOf } from "../../facts/list-words.ts";

const words = listWordsOf("en").desk;

/** Takes everything off the desk, after asking once. */
export const ClearDesk = ({ onClear }: { readonly onClear: () => void }) => {
  const [isAsked, setAsked] = useState(false);
  if (!isAsked) return <div className="btns no-print"><button type="button" className="quiet" onClick={() => setAsked(true)}>{words.clear}</button></div>;
  return (
    <div className="sure no-print">
      <p>{words.clearAsk}</p>
      <div className="btns">
        <button type="button" className="main" onClick={() => { setAsked(false); onClear(); }}>{words.clearSure}</button>
        <button type="button" className="quiet" onClick={() => setAsked(false)}>{words.clearNot}</button>
      </div>
    </div>
  );
};
