import type { PackLine } from "./pack-line.ts";

/** Classes into which a local sheet sorts what it counts; whatever else a pack holds is named and not counted. */
export const COUNT_CLASSES = ["instruments", "small parts", "needles", "blades", "tips", "swabs", "not counted"] as const;
export type CountClass = (typeof COUNT_CLASSES)[number];

/** Streams into which a trolley is emptied. */
export const STREAMS = ["sharps", "clinical", "electronics", "recycle", "keep", "reprocess"] as const;
export type Stream = (typeof STREAMS)[number];

/** One thing of the hospital's own pack. */
export interface LocalThing extends PackLine {
  readonly id: string;
  readonly class: CountClass;
  readonly stock: string;
  /** True for what is kept until the count is closed. */
  readonly keep: boolean;
}

/** How a class usually comes and grows in a case, from least to greatest in steps of what one packet holds. */
export interface LocalCount {
  readonly comesIn: number;
  readonly opened: readonly [least: number, greatest: number];
  readonly added: readonly [least: number, greatest: number];
  readonly handedOffAtMost: number;
}

export interface LocalLimit {
  readonly value: number;
  readonly unit: string;
  /** The sheet of the hospital on which it stands. */
  readonly sheet: string;
}

/** What is in our pack, what we count, where it goes, and our limits. */
export interface LocalList {
  readonly hospital: string;
  /** Names this state of the list, so that a question can say from which it was drawn. */
  readonly hash: string;
  readonly pack: readonly LocalThing[];
  readonly counts: Readonly<Record<string, LocalCount>>;
  readonly capsCount: boolean;
  readonly waste: Readonly<Record<string, Stream>>;
  readonly limits: Readonly<Record<string, LocalLimit>>;
}

/** The limit of the list's own hospital; undefined for another hospital, whose sheet the question invents. */
export const ownLimit = ({ hospital, limits }: LocalList, asked: string, limit: string): number | undefined => (asked === hospital ? limits[limit]?.value : undefined);

/** Lines to count that one side of a trolley card holds at eleven points, as measured in print. */
export const MOST_COUNTED = { a4: 17, a5: 12 } as const;

/** The id of a thing: its name in small letters with hyphens. */
export const idOfThing = (thing: string): string => thing.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");
