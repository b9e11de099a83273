import { type KeyboardEvent, useRef, useState } from "react";
import { type Hit, searchFor } from "./search-index.ts";

interface Found {
  readonly words: string;
  readonly count: number;
  readonly hits: readonly Hit[];
}

const places = (count: number): string => (count === 1 ? "1 page" : `${count} pages`);

/** Search over the built site, on this device: the index is a set of files, and no word leaves the page. */
export const SearchDesk = ({ folder }: { readonly folder: string }) => {
  // The box keeps its own text, so that words typed before the page came alive are not lost.
  const box = useRef<HTMLInputElement>(null);
  const [found, setFound] = useState<Found | null>(null);
  const [trouble, setTrouble] = useState("");
  const find = async (): Promise<void> => {
    const asked = box.current?.value.trim() ?? "";
    if (asked === "") return;
    const result = await searchFor(folder, asked).catch(() => null);
    setTrouble(result === null ? "The index is not there. It is made when the site is built; a preview of single pages has none." : "");
    setFound(result === null ? null : { words: asked, ...result });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") void find();
  };
  return (
    <>
      <search className="find needs-script">
        <label className="vh" htmlFor="find-words">Words to find</label>
        <input id="find-words" type="search" autoComplete="off" spellCheck ref={box} onKeyDown={onKeyDown} />
        <button type="button" className="main" onClick={() => void find()}>Find</button>
      </search>
      <p className="or" role="status">{trouble}{found ? `${places(found.count)} for “${found.words}”` : ""}</p>
      {found && found.hits.length > 0 ? (
        <ul className="hits">
          {found.hits.map((hit) => (
            <li key={hit.address}>
              <a href={hit.address}>{hit.title}</a>
              <p>{hit.excerpt.map(({ text, isFound }) => (isFound ? <mark key={text}>{text}</mark> : text))}</p>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
};
