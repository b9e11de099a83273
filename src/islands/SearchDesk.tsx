import { type KeyboardEvent, useRef, useState } from "react";
import { type Hit, searchFor } from "./search-index.ts";
import type { Names } from "./search-words.ts";

interface Found {
  readonly words: string;
  readonly count: number;
  readonly hits: readonly Hit[];
}

/** Longer than any question, and short enough to be said again above the pages found. */
const MOST_TYPED = 120;

const places = (count: number): string => (count === 1 ? "1 page" : `${count} pages`);

/** A list of which one may be chosen, and its names by value. */
interface Facet {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
}

interface SearchDeskProps {
  readonly folder: string;
  readonly glossary: readonly Names[];
  readonly facets: readonly Facet[];
}

/** Search over the built site, on this device: the index is a set of files, and no word leaves the page. */
export const SearchDesk = ({ folder, glossary, facets }: SearchDeskProps) => {
  // The box keeps its own text, so that words typed before the page came alive are not lost.
  const box = useRef<HTMLInputElement>(null);
  const [found, setFound] = useState<Found | null>(null);
  const [trouble, setTrouble] = useState("");
  const [chosen, setChosen] = useState<Readonly<Record<string, string>>>({});
  const find = async (filters = chosen): Promise<void> => {
    const asked = box.current?.value.trim() ?? "";
    if (asked === "") return;
    const result = await searchFor(folder, { typed: asked, glossary, filters }).catch(() => null);
    setTrouble(result === null ? "The index is not there. It is made when the site is built; a preview of single pages has none." : "");
    setFound(result === null ? null : { words: asked, ...result });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") void find();
  };
  const choose = (name: string, value: string): void => {
    const next = Object.fromEntries(Object.entries({ ...chosen, [name]: value }).filter(([, one]) => one !== ""));
    setChosen(next);
    void find(next);
  };
  return (
    <>
      <search className="find needs-script">
        <label className="vh" htmlFor="find-words">Words to find</label>
        <input id="find-words" type="search" maxLength={MOST_TYPED} autoComplete="off" spellCheck ref={box} onKeyDown={onKeyDown} />
        <button type="button" className="main" onClick={() => void find()}>Find</button>
      </search>
      <div className="facets needs-script">
        {facets.map(({ name, label, options }) => (
          <label key={name}>{label} <select value={chosen[name] ?? ""} onChange={(event) => choose(name, event.currentTarget.value)}><option value="">all</option>{options.map(({ value, text }) => <option key={value} value={value}>{text}</option>)}</select></label>
        ))}
      </div>
      <p className="or" role="status">{trouble}{found ? `${places(found.count)} for “${found.words}”` : ""}</p>
      {found && found.hits.length > 0 ? (
        <ul className="hits">
          {found.hits.map((hit) => (
            <li key={hit.address}>
              <a href={hit.address}>{hit.title}</a>
              <p>{hit.excerpt.map(({ text, isFound, at }) => (isFound ? <mark key={at}>{text}</mark> : text))}</p>
            </li>
          ))}
        </ul>
      ) : null}
    </>
  );
};
