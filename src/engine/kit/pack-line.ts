/** One line of a content list: what belongs in the pack, how many of it, and in which size. */
export interface PackLine {
  readonly thing: string;
  /** The thing when there are several. */
  readonly more: string;
  readonly pieces: number;
  /** The size that belongs in the pack; empty where there is only one. */
  readonly size: string;
  /** A size that is kept beside it and taken for it. */
  readonly otherSize: string;
  /** How the thing is drawn. */
  readonly shape: string;
}

/** How a line was found: as listed, as one pair, not at all, one of two, one too many, or in the other size. */
export type PackState = "right" | "pair" | "missing" | "half" | "extra" | "size";
export const PACK_STATES: readonly PackState[] = ["right", "pair", "missing", "half", "extra", "size"];

const COUNT: Readonly<Record<PackState, (pieces: number) => number>> = {
  right: (pieces) => pieces,
  pair: (pieces) => pieces,
  size: (pieces) => pieces,
  missing: () => 0,
  half: () => 1,
  extra: (pieces) => pieces + 1,
};

/** A line as one text, so that a question can carry it; no name may hold the mark between its parts. */
export const packLineText = ({ thing, more, pieces, size, otherSize, shape }: PackLine): string => [thing, more, String(pieces), size, otherSize, shape].join("|");

/** The line that a text of `packLineText` holds. */
export const packLineOf = (text: string): PackLine => {
  const [thing = "", more = "", pieces = "", size = "", otherSize = "", shape = ""] = text.split("|");
  return { thing, more, pieces: Number(pieces), size, otherSize, shape };
};

/** The state that a word names; as listed where it names none. */
export const packStateOf = (word: string | undefined): PackState => PACK_STATES.find((state) => state === word) ?? "right";

/** What lies there of a line in some state: how many, and in which size. */
export const foundOf = ({ pieces, size, otherSize }: PackLine, state: PackState): { readonly count: number; readonly size: string } => ({
  count: COUNT[state](pieces),
  size: state === "size" ? otherSize : size,
});

/** So many of the thing in words: "2 short cannulas", "none". */
export const amountOf = ({ thing, more }: PackLine, { count, size }: { readonly count: number; readonly size: string }): string =>
  count === 0 ? "none" : `${count} ${size === "" ? "" : `${size} `}${count === 1 ? thing : more}`;
