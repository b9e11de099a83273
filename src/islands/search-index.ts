/** One page that search found. */
export interface Hit {
  readonly title: string;
  readonly address: string;
  /** Excerpt as markup of the index: text with `mark` around the words found. */
  readonly excerpt: readonly { readonly text: string; readonly isFound: boolean }[];
}

interface RawHit {
  readonly data: () => Promise<{ readonly url: string; readonly excerpt: string; readonly meta: { readonly title?: string } }>;
}

interface Index {
  readonly options: (options: { readonly baseUrl: string }) => Promise<void>;
  readonly init: () => Promise<void>;
  readonly search: (words: string) => Promise<{ readonly results: readonly RawHit[] }>;
}

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
  excerpt.split(/<mark>(.*?)<\/mark>/).map((text, index) => ({ text: plain(text), isFound: index % 2 === 1 })).filter(({ text }) => text !== "");

/** Pages that hold the words, best first. Rejects where the site was not built with an index. */
export const searchFor = async (folder: string, words: string): Promise<{ readonly count: number; readonly hits: readonly Hit[] }> => {
  const index = await open(folder);
  const { results } = await index.search(words);
  const data = await Promise.all(results.slice(0, MOST_HITS).map((one) => one.data()));
  return { count: results.length, hits: data.map(({ url, excerpt, meta }) => ({ title: meta.title ?? url, address: url, excerpt: piecesOf(excerpt) })) };
};
