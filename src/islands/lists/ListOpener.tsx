import { useId, useState } from "react";
import { listWordsOf } from "../../facts/list-words.ts";
import { siteHref } from "../site-href.ts";

const words = listWordsOf("en").open;

interface OpenerProps {
  readonly said: string;
  readonly onOpen: (text: string) => void;
  /** Shown where the opener stands for itself, and not on the returns desk. */
  readonly hasWays?: boolean;
}

/** Takes the code or the link of a teaching list. */
export const ListOpener = ({ said, onOpen, hasWays = false }: OpenerProps) => {
  const id = useId();
  const [code, setCode] = useState("");
  const [link, setLink] = useState("");
  return (
    <form className="maker needs-script" onSubmit={(event) => { event.preventDefault(); onOpen(link.trim() === "" ? code : link); }}>
      <h2>{words.legend}</h2>
      <div className="lined">
        <label htmlFor={`${id}c`}>{words.code}</label>
        <input id={`${id}c`} type="text" value={code} autoComplete="off" autoCapitalize="characters" spellCheck={false} aria-describedby={`${id}ch ${id}s`} onChange={(event) => setCode(event.currentTarget.value)} />
        <p className="hint" id={`${id}ch`}>{words.codeHint}</p>
      </div>
      <div className="lined">
        <label htmlFor={`${id}l`}>{words.link}</label>
        <textarea id={`${id}l`} rows={3} value={link} autoComplete="off" spellCheck={false} aria-describedby={`${id}lh ${id}s`} onChange={(event) => setLink(event.currentTarget.value)} />
        <p className="hint" id={`${id}lh`}>{words.linkHint}</p>
      </div>
      <p role="status" className="said" id={`${id}s`}>{said}</p>
      <div className="btns"><button type="submit" className="main">{words.go}</button></div>
      {hasWays ? <><h2>{words.forDirectors}</h2><div className="btns"><a className="btn" href={siteHref("/list/compose/")}>{words.toCompose}</a><a className="btn quiet" href={siteHref("/returns/")}>{words.toReturns}</a></div></> : null}
    </form>
  );
};
