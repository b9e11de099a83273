import { type KeyboardEvent, useRef, useState } from "react";
import { type Result, searchFor } from "./search-index.ts";
import type { Names } from "./search-words.ts";

interface Found extends Result {
  readonly words: string;
  /** True where lists left pages out. */
  readonly isNarrowed: boolean;
}

/** Longer than any question, and short enough to be said again above the pages found. */
const MOST_TYPED = 120;

const places = (count: number): string => (count === 1 ? "1 page" : `${count} pages`);

const EMPTY = "Type what you look for: one word or several.";
const NO_INDEX = "The index is not there. It is made when the site is built; a preview of single pages has none.";

/** How many pages there are, and which words stand on none. */
const foundText = ({ words, count, missing }: Found): string => {
  if (count === 0) return `Nothing found for “${words}”.`;
  const none = missing.map((word) => `“${word}”`).join(", ");
  return `${places(count)} for “${words}”.${none === "" ? "" : ` No page holds ${none}.`}`;
};

/** What to try where nothing was found. */
const ToTry = ({ isNarrowed, folder }: { readonly isNarrowed: boolean; readonly folder: string }) => (
  <ul className="ruled measure">
    {isNarrowed ? <li>Set the lists above to “all”: they leave pages out.</li> : null}
    <li>Check the spelling. The pages are written in British English: anaesthetic, paediatric.</li>
    <li>Type the beginning of the word, or another word for it. Words in quotes are sought as they stand.</li>
    <li>Look in the <a href={`${folder}modules/`}>list of modules</a>, the <a href={`${folder}glossary/`}>glossary</a> or the <a href={`${folder}numbers/`}>number ledger</a>.</li>
  </ul>
);

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
  const turn = useRef(0);
  const find = async (filters = chosen): Promise<void> => {
    const asked = box.current?.value.trim() ?? "";
    turn.current += 1;
    const own = turn.current;
    const result = asked === "" ? null : await searchFor(folder, { typed: asked, glossary, filters }).catch(() => null);
    // A slow search that was asked earlier must not stand above a later one.
    if (own !== turn.current) return;
    const trouble = asked === "" ? EMPTY : NO_INDEX;
    setTrouble(result === null ? trouble : "");
    setFound(result === null ? null : { words: asked, isNarrowed: Object.keys(filters).length > 0, ...result });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") void find();
  };
  const choose = (name: string, value: string): void => {
    const next = Object.fromEntries(Object.entries({ ...chosen, [name]: value }).filter(([, one]) => one !== ""));
    setChosen(next);
    // Who narrows the lists before typing has not asked for anything yet.
    if (found !== null || box.current?.value.trim() !== "") void find(next);
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
      <p className="or" role="status">{trouble}{found ? foundText(found) : ""}</p>
      {found?.count === 0 ? <ToTry isNarrowed={found.isNarrowed} folder={folder} /> : null}
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
