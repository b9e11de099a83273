import sources from "../../content/sources.json" with { type: "json" };

export interface PersonName {
  readonly family?: string;
  readonly given?: string;
  readonly literal?: string;
}

/** One cited work, in the names of CSL-JSON. */
export interface SourceData {
  readonly id: string;
  readonly type: string;
  readonly title: string;
  readonly author?: readonly PersonName[];
  readonly issued?: { readonly "date-parts": readonly (readonly number[])[] };
  readonly "container-title"?: string;
  readonly publisher?: string;
  readonly volume?: string;
  readonly issue?: string;
  readonly page?: string;
  readonly DOI?: string;
  readonly URL?: string;
  readonly note?: string;
}

/** Every cited work, in the order of its file. */
export const SOURCES: readonly SourceData[] = sources;

/** A cited work by its key; throws a RangeError for one that the list does not hold. */
export const sourceNamed = (id: string): SourceData => {
  const source = SOURCES.find((one) => one.id === id);
  if (!source) throw new RangeError(`id must be a key of content/sources.json, got ${id}`);
  return source;
};

const nameOf = ({ family, literal }: PersonName): string => family ?? literal ?? "";

/** Year of a work, or "no year". */
export const yearOf = ({ issued }: SourceData): string => String(issued?.["date-parts"][0]?.[0] ?? "no year");

/** First author, "and others" where there are more, and the year: enough to find the work in a list. */
export const shortCite = (source: SourceData): string => {
  const [first, ...others] = source.author ?? [];
  const who = first ? nameOf(first) : (source.publisher ?? source.title);
  const rest = others.length > 0 ? " and others" : "";
  return `${who}${rest}, ${yearOf(source)}`;
};

const placeOf = (source: SourceData): string => {
  const volume = source.volume ? ` ${source.volume}` : "";
  const issue = source.issue ? `(${source.issue})` : "";
  const page = source.page ? `:${source.page}` : "";
  const where = source["container-title"] ?? source.publisher ?? "";
  return `${where}${volume}${issue}${page}`.trim();
};

/** The parts of a full citation, ready to set: who, when, what, where, and a link if there is one. */
export const fullCite = (source: SourceData): { who: string; year: string; title: string; place: string; link?: string } => {
  const who = (source.author ?? []).map((one) => [nameOf(one), one.given].filter(Boolean).join(" ")).join(", ");
  const link = source.DOI ? `https://doi.org/${source.DOI}` : source.URL;
  return { who, year: yearOf(source), title: source.title, place: placeOf(source), ...(link ? { link } : {}) };
};
