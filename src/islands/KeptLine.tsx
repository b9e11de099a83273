import { useState } from "react";
import { SITE } from "../facts/site.ts";
import type { Words } from "../facts/words.ts";
import type { Kept } from "./store/record.ts";
import { siteHref } from "./site-href.ts";

/** Says where the answer is kept, and offers the device once; nothing is kept there before somebody asks. */
export const KeptLine = ({ kept: first, words }: { readonly kept: Kept; readonly words: Words }) => {
  const [asked, setAsked] = useState<Kept | null>(null);
  const kept = asked ?? first;
  const keep = async (): Promise<void> => {
    const { keepOnDevice } = await import("./store/record.ts");
    setAsked(await keepOnDevice());
  };
  return (
    <div className="kept no-print">
      <p role="status">{kept.trouble === null ? words.kept[kept.place] : words.kept[kept.trouble]}</p>
      {kept.place === "device" || SITE.isShared ? null : <button type="button" className="quiet" onClick={() => void keep()}>{words.kept.keep}</button>}
      <a className="btn quiet" href={siteHref("/stand/")}>{words.kept.stand}</a>
    </div>
  );
};
