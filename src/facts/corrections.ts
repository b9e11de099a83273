import corrections from "../../content/corrections.json" with { type: "json" };

/** One correction of something that stood on the site. */
export interface Correction {
  readonly on: string;
  readonly where: string;
  readonly was: string;
  readonly now: string;
  readonly why: string;
  readonly regraded: boolean;
}

/** Every correction, newest first. */
export const CORRECTIONS: readonly Correction[] = (corrections as readonly Correction[]).toSorted((first, second) => second.on.localeCompare(first.on));
