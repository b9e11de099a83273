import type { Rounding } from "../quantity/round.ts";
import type { UnitId } from "../quantity/units.ts";
import type { Kind } from "./response.ts";
import type { SourceMark } from "./verdict.ts";

/** The side on which rounding or erring does no harm: too much (`up`), too little (`down`), or none named. */
export type SafeSide = "up" | "down" | "none";

/** A given as the page shows it and as the answer is computed from it. */
export interface ShownGiven {
  /** Ends in its unit: `junctionToBundleMm`. */
  readonly key: string;
  readonly label: string;
  readonly unit: UnitId;
  /** Plain decimal text with the digits of its grid. */
  readonly text: string;
  /** Whose number this is: a published study, this question's case, or a local figure. */
  readonly from: "study" | "case" | "local";
  /** Ledger entry and revision, where the number comes from a study. */
  readonly entry?: string;
}

export interface ShownAsk {
  readonly id: string;
  readonly label: string;
  readonly unit: UnitId;
  /** Step of the answer as decimal text: `0.5`. */
  readonly roundTo: string;
  readonly rounding: Rounding;
  readonly safeSide: SafeSide;
}

export interface ItemHead<K extends Kind> {
  readonly kind: K;
  readonly family: string;
  readonly code: string;
  readonly module: string;
  readonly version: number;
  readonly seed: string;
  readonly language: string;
  readonly unsafe: boolean;
  readonly objectives: readonly string[];
  readonly title: string;
  /** Sentences of the case, in order. */
  readonly stem: readonly string[];
  readonly question: string;
  readonly cautions: readonly string[];
  readonly sources: readonly SourceMark[];
  readonly givens: readonly ShownGiven[];
  /** Everything else that the draw decided: child, side, whose mean. Plain words, for pictures and sentences. */
  readonly about: Readonly<Record<string, string>>;
  /** Hash of the local list that the draw read; all that grading needs of it stands in `about`. */
  readonly local?: string;
}

export interface SumItem extends ItemHead<"sum"> {
  readonly asks: readonly ShownAsk[];
  /** How the three answers that are not a number read for this question. */
  readonly says: Readonly<Record<"none" | "cannot-be-told" | "ask-locally", string>>;
}

export interface Option {
  readonly id: string;
  readonly text: string;
}

export interface RangeItem extends ItemHead<"range"> { readonly unit: UnitId; readonly roundTo: string }
/** A numbered place of a figure; its number says nothing of what lies there. */
export interface ShownRegion { readonly id: string; readonly xMm: string; readonly yMm: string }
export interface MarkItem extends ItemHead<"mark"> { readonly targets: readonly Option[]; readonly regions: readonly ShownRegion[] }
export interface LineItem extends ItemHead<"line"> { readonly angle: LineGrid; readonly depth: LineGrid }
export interface OrderItem extends ItemHead<"order"> { readonly cards: readonly Option[] }
export interface TrayItem extends ItemHead<"tray"> { readonly things: readonly Option[]; readonly nothing: string }
export interface NameItem extends ItemHead<"name"> { readonly attributes: readonly (Option & { readonly options: readonly Option[] })[] }
export interface CountItem extends ItemHead<"count"> { readonly classes: readonly Option[] }
export interface JudgeItem extends ItemHead<"judge"> { readonly options: readonly Option[]; readonly reasons: readonly Option[] }

/** One sum of a chain as the page shows it. */
export interface ShownStep extends Pick<SumItem, "asks" | "says"> { readonly id: string; readonly question: string }
export interface ChainItem extends ItemHead<"chain"> { readonly steps: readonly ShownStep[] }

export interface LineGrid {
  readonly least: string;
  readonly greatest: string;
  readonly step: string;
}

/** One drawn question: plain JSON, all that the page shows, never the answer. */
export type Item = SumItem | RangeItem | MarkItem | LineItem | OrderItem | TrayItem | NameItem | CountItem | JudgeItem | ChainItem;
