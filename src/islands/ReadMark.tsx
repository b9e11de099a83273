import { useState } from "react";
import { wordsOf } from "../facts/words.ts";
import { siteHref } from "./site-href.ts";
import type { Kept } from "./store/record.ts";

const words = wordsOf("en").kept;

/** Notes in the record that a module was read, when the learner says so: nobody is watched while reading. */
export const ReadMark = ({ module }: { readonly module: string }) => {
  const [kept, setKept] = useState<Kept | null>(null);
  const note = async (): Promise<void> => {
    const [{ keepEvent }, { readEvent }] = await Promise.all([import("./store/record.ts"), import("./new-event.ts")]);
    setKept(await keepEvent(readEvent({ module })));
  };
  return (
    <p className="read-mark no-print needs-script" role="status">
      {kept === null ? <button type="button" className="quiet" onClick={() => void note()}>{words.read}</button> : <>{kept.trouble === null ? words[kept.place] : words[kept.trouble]} <a href={siteHref("/stand/")}>{words.stand}</a></>}
    </p>
  );
};
