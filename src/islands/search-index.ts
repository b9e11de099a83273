import { goesOn, type Names, phraseIn, tellingWords, wordings } from "./search-words.ts";

/** One page that search found. */
export interface Hit {
  readonly title: string;
  readonly address: string;
  /** Excerpt as markup of the index: text with `mark` around the words found. */
  readonly excerpt: readonly { readonly text: string; readonly isFound: boolean; /** Which piece it is; a word may be found twice. */ readonly at: number }[];
}

interface RawHit {
  readonly id: string;
  readonly score: number;
  readonly data: () => Promise<{ readonly url: string; readonly excerpt: string; readonly meta: { readonly title?: string }; readonly filters: Readonly<Record<string, readonly string[]>> }>;
}

interface Index {
  readonly options: (options: { readonly baseUrl: string }) => Promise<void>;
  readonly init: () => Promise<void>;
  readonly search: (words: string, options: { readonly filters: Filters }) => Promise<{ readonly results: readonly RawHit[] }>;
}

/** What a page must be to be shown: its kind, its module, one of its readers. An empty list of names asks for nothing. */
export type Filters = Readonly<Record<string, string>>;

const MOST_HITS = 10;

let opened: Promise<Index> | null = null;

/** Opens the index of the built site on first use; the address is computed, so that no bundler looks for it. */
const open = (folder: string): Promise<Index> => {
  opened ??= (async () => {
    const index = (await import(/* @vite-ignore */ `${folder}pagefind/pagefind.js`)) as Index;
    await index.options({ baseUrl: folder });
    await index.init();
    return index;
  })();
  return opened;
};

const ENTITIES: Readonly<Record<string, string>> = { "&lt;": "<", "&gt;": ">", "&amp;": "&", "&quot;": '"', "&#39;": "'" };
const plain = (text: string): string => text.replace(/&(?:lt|gt|amp|quot|#39);/g, (entity) => ENTITIES[entity] ?? entity);

const piecesOf = (excerpt: string): Hit["excerpt"] =>
  excerpt.split(/<mark>(.*?)<\/mark>/).map((text, at) => ({ text: plain(text), isFound: at % 2 === 1, at })).filter(({ text }) => text !== "");

interface Ranked {
  readonly raw: RawHit;
  readonly score: number;
}

/** Adds up what several searches say of the same page, each with its weight. */
const joined = (lists: readonly { readonly results: readonly RawHit[]; readonly weight: number }[]): readonly Ranked[] => {
  const all = new Map<string, Ranked>();
  for (const { results, weight } of lists) {
    for (const raw of results) all.set(raw.id, { raw, score: (all.get(raw.id)?.score ?? 0) + weight * raw.score });
  }
  return [...all.values()].toSorted((first, second) => second.score - first.score);
};

/** A page that holds every word comes before pages that hold one of them. */
const WHOLE = 10;

/** Who searches wants to be taught first; the list of works cited holds every word and answers nothing. */
const BY_KIND: Readonly<Record<string, number>> = { Module: 4, Path: 2, Glossary: 1.5, Sources: 0.2 };

/** Pages that are read for their kind before the order is settled. */
const MOST_READ = 25;

export interface Search {
  /** What was typed. */
  readonly typed: string;
  /** Names of the same thing, from the glossary. */
  readonly glossary: readonly Names[];
  readonly filters: Filters;
}

interface Asked {
  readonly text: string;
  readonly weight: number;
}

/** True where some page holds the word, or one that begins with it. For any other word the index would bring pages by an ever shorter beginning. */
const isHeld = async (index: Index, word: string): Promise<boolean> => {
  if ((await index.search(`"${word}"`, { filters: {} })).results.length > 0) return true;
  const [first] = (await index.search(word, { filters: {} })).results;
  return first !== undefined && goesOn(word, piecesOf((await first.data()).excerpt).filter(({ isFound }) => isFound).map(({ text }) => text));
};

/** Of these words those that a page holds; of a word with hyphens that none holds, its parts. */
const heldOf = async (index: Index, words: readonly string[]): Promise<ReadonlyMap<string, readonly string[]>> => {
  const among = async (some: readonly string[]): Promise<readonly string[]> => (await Promise.all(some.map(async (word) => ((await isHeld(index, word)) ? [word] : [])))).flat();
  return new Map(await Promise.all(words.map(async (word) => {
    const whole = await among([word]);
    return [word, whole.length > 0 || !word.includes("-") ? whole : await among(word.split("-").filter((part) => part !== ""))] as const;
  })));
};

interface Asking {
  readonly searches: readonly Asked[];
  /** Words that no page holds, and for which the glossary has no other name. */
  readonly missing: readonly string[];
}

/** The searches that a question is made of: the phrase alone where it is quoted, else all wordings and their words that a page holds. */
const askingOf = async (index: Index, { typed, glossary }: Search): Promise<Asking> => {
  const phrase = phraseIn(typed);
  if (phrase !== null) return { searches: [{ text: `"${phrase}"`, weight: WHOLE }], missing: [] };
  const all = wordings(typed, glossary);
  const held = await heldOf(index, [...new Set(all.flatMap((text) => text.split(" ")))]);
  const whole = [...new Set(all.map((text) => text.split(" ").flatMap((word) => held.get(word) ?? []).join(" ")))].filter((text) => text !== "");
  const single = [...new Set([...held.values()].flat())];
  const missing = all.length > 1 ? [] : tellingWords(typed).split(" ").filter((word) => held.get(word)?.length === 0);
  return { searches: [...whole.map((text) => ({ text, weight: WHOLE })), ...single.map((text) => ({ text, weight: 1 }))], missing };
};

/** What a search brought. */
export interface Result {
  readonly count: number;
  readonly hits: readonly Hit[];
  readonly missing: readonly string[];
}

/** Pages that hold the words, or their other names, best first. Rejects where the site was not built with an index. */
export const searchFor = async (folder: string, search: Search): Promise<Result> => {
  const index = await open(folder);
  const { searches, missing } = await askingOf(index, search);
  const lists = await Promise.all(searches.map(async ({ text, weight }) => ({ weight, ...(await index.search(text, { filters: search.filters })) })));
  const ranked = joined(lists);
  const read = await Promise.all(ranked.slice(0, MOST_READ).map(async ({ raw, score }) => ({ data: await raw.data(), score })));
  const weighed = read.map(({ data, score }) => ({ data, score: score * (BY_KIND[data.filters["kind"]?.[0] ?? ""] ?? 1) })).toSorted((first, second) => second.score - first.score);
  return { count: ranked.length, missing, hits: weighed.slice(0, MOST_HITS).map(({ data: { url, excerpt, meta } }) => ({ title: meta.title ?? url, address: url, excerpt: piecesOf(excerpt) })) };
};
