import type { LocalList } from "../kit/local-list.ts";
import type { Chance } from "../random/chance.ts";
import type { Rounding } from "../quantity/round.ts";
import type { UnitId } from "../quantity/units.ts";
import type { SafeSide } from "./item.ts";
import type { Kind, Says } from "./response.ts";
import type { SourceMark } from "./verdict.ts";
import type { Say } from "./say.ts";

/** Languages that a family speaks; a second language is a second key of `words`. */
export type Language = "en";
export const LANGUAGES: readonly Language[] = ["en"];

/** A number that the question states. The key ends in its unit; the grid is the precision shown. */
export interface GivenSpec {
  readonly key: string;
  readonly unit: UnitId;
  readonly least: number;
  readonly greatest: number;
  readonly step: number;
}

export interface AskSpec {
  readonly id: string;
  readonly unit: UnitId;
  readonly roundTo: number;
  readonly rounding: Rounding;
  readonly safeSide: SafeSide;
}

export type Givens = Readonly<Record<string, number>>;

/** What a draw decided: the displayed numbers, and in words everything else. */
export interface Draw {
  readonly givens: Givens;
  readonly about: Readonly<Record<string, string>>;
  /** Ids of what lies before the learner, in the order shown: cards, things. */
  readonly shown?: readonly string[];
  /** Sources of this draw, where they are fewer than those of the family. */
  readonly sources?: readonly SourceMark[];
  /** Cautions of this draw, where they are fewer than those of the family. */
  readonly cautions?: readonly string[];
  /** Hash of the local list, where the draw reads one. */
  readonly local?: string;
  /** Where each given comes from; a given that is not named is the case's own. */
  readonly origins?: Readonly<Record<string, { readonly from: "study" | "local"; readonly entry?: string }>>;
}

/** The answer to given values, unrounded, by ask; or the answer that is not a number. */
export type Solution = Readonly<Record<string, number>> | { readonly says: Says };

export const isSays = (solution: Solution): solution is { readonly says: Says } => typeof solution["says"] === "string";

/** A mistake that people make, as a formula. `null` where it does not apply to the draw. */
export interface SlipSpec {
  readonly id: string;
  readonly gives: (draw: Draw) => Solution | null;
}

/** Sentences that families of every kind have in one language, keyed by meaning. `Say` prints the values of the draw with their units. */
export interface CommonWords {
  readonly title: string;
  /** At least three wordings of the case; each gives its sentences in order. */
  readonly stems: readonly ((say: Say) => readonly string[])[];
  readonly question: string;
  /** Label of each given; what stands behind a comma says whose number it is. */
  readonly givens: Readonly<Record<string, string | ((say: Say) => string)>>;
  readonly slips: Readonly<Record<string, { readonly name: string; readonly because: (say: Say) => readonly string[] }>>;
  readonly working: (say: Say) => readonly string[];
  /** What was right, in one sentence, shown after a right answer. */
  readonly right: (say: Say) => readonly string[];
  /** Shown where no slip is named. */
  readonly off: (say: Say) => readonly string[];
  /** "What moves the answer", in words, for kinds whose givens are not numbers. */
  readonly moves?: (say: Say) => readonly string[];
  /** Where the answer turns into another: said where no single given can be solved for. */
  readonly turns?: (say: Say) => readonly string[];
}

/** What families of every kind declare. */
export interface FamilyHead<K extends Kind> {
  readonly kind: K;
  readonly id: string;
  readonly code: string;
  readonly module: string;
  /** 0 is a draft; from 1 the first items are held for ever. */
  readonly version: number;
  readonly firstWave: boolean;
  readonly unsafe: boolean;
  readonly objectives: readonly string[];
  /** Ledger entries with the revision that this version reads. */
  readonly reads: readonly string[];
  readonly sources: readonly SourceMark[];
  readonly cautions: readonly string[];
  readonly givens: readonly GivenSpec[];
  /** Draws a case; a family that reads the local list takes the one of the site where it is given none. */
  readonly draw: (chance: Chance, local?: LocalList) => Draw;
}
