import type { UnitId } from "../quantity/units.ts";
import type { AskSpec, CommonWords, Draw, FamilyHead, Givens, Language, SlipSpec, Solution } from "./family-head.ts";
import type { Says } from "./response.ts";
import type { Say } from "./say.ts";

export interface SumWords extends CommonWords {
  readonly asks: Readonly<Record<string, string>>;
  readonly says: Readonly<Record<Says, string>>;
  /** One sentence for "When would you be right?": the given that would have to change, and to what. */
  readonly inverse: (say: Say, needed: { readonly key: string; readonly text: string }) => readonly string[];
}

type Words<W> = Readonly<Record<Language, W>>;

/** A family of sums: all that an author writes for one kind of question. */
export interface SumFamily extends FamilyHead<"sum"> {
  readonly asks: readonly AskSpec[];
  readonly solve: (givens: Givens, about: Draw["about"]) => Solution;
  readonly slips: readonly SlipSpec[];
  /** Where the unsafe side is not simply above or below: true for values (by ask) that could hurt somebody in this draw. */
  readonly isUnsafe?: (draw: Draw, values: Readonly<Record<string, number>>) => boolean;
  /** The given that "When would you be right?" solves for; absent where none makes sense. */
  readonly inverseOf?: string;
  /** Between what a careful reader expects each answer, by ask; the content check names a draw outside. */
  readonly plausible?: Readonly<Record<string, { readonly least: number; readonly greatest: number }>>;
  readonly words: Words<SumWords>;
}

/** What marking one sum needs, alone or as a step of a chain. */
export type SumRules = Pick<SumFamily, "asks" | "solve" | "slips" | "isUnsafe" | "unsafe">;

/** One sum of a chain. The names of its asks are the names under which later steps are given its values. */
export type ChainStep = Pick<SumFamily, "asks" | "solve" | "isUnsafe"> & { readonly id: string };

export interface ChainStepWords {
  readonly question: string;
  readonly asks: Readonly<Record<string, string>>;
  readonly says: Readonly<Record<Says, string>>;
}

export interface ChainWords extends CommonWords {
  readonly steps: Readonly<Record<string, ChainStepWords>>;
}

/** A family of chains: sums one after another; an error is carried forward and counted once. */
export interface ChainFamily extends FamilyHead<"chain"> {
  readonly steps: readonly ChainStep[];
  /** A slip of one step; what comes after it is worked rightly from there. */
  readonly slips: readonly (SlipSpec & { readonly step: string })[];
  readonly words: Words<ChainWords>;
}

/** One card must stand before another; a critical edge is one that can hurt somebody when broken. */
export interface EdgeSpec {
  readonly before: string;
  readonly after: string;
  readonly critical?: true;
  /** One sentence that says why, and whose rule it is; a learner who breaks the edge reads both. */
  readonly reason?: string;
  readonly whose?: string;
}

export interface OrderWords extends CommonWords {
  readonly cards: Readonly<Record<string, string | ((say: Say) => string)>>;
}

/** A family of orders: cards and the edges between them; every order that breaks no edge is right. The draw's `shown` are the cards. */
export interface OrderFamily extends FamilyHead<"order"> {
  readonly edges: readonly EdgeSpec[];
  /** A slip is an edge that people break, or a card put first. */
  readonly slips: readonly { readonly id: string; readonly breaks: readonly [before: string, after: string] }[];
  readonly words: Words<OrderWords>;
}

export interface Judgement {
  readonly picks: string;
  readonly reasons: readonly string[];
}

export interface JudgeWords extends CommonWords {
  readonly options: Readonly<Record<string, string>>;
  readonly reasons: Readonly<Record<string, string>>;
}

/** A family of judgements: a decision and the reasons for it. */
export interface JudgeFamily extends FamilyHead<"judge"> {
  readonly options: readonly string[];
  readonly reasons: readonly string[];
  readonly decide: (draw: Draw) => Judgement;
  /** Decisions that could hurt somebody in this draw. */
  readonly unsafeOptions?: (draw: Draw) => readonly string[];
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => Judgement | null }[];
  readonly words: Words<JudgeWords>;
}

export interface NameWords extends CommonWords {
  readonly attributes: Readonly<Record<string, string>>;
  readonly options: Readonly<Record<string, string>>;
}

/** A family of names: one pick for each attribute. */
export interface NameFamily extends FamilyHead<"name"> {
  readonly attributes: readonly { readonly id: string; readonly options: readonly string[] }[];
  readonly truth: (draw: Draw) => Readonly<Record<string, string>>;
  readonly isUnsafe?: (draw: Draw, picks: Readonly<Record<string, string>>) => boolean;
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => Readonly<Record<string, string>> | null }[];
  readonly words: Words<NameWords>;
}

export interface TrayWords extends CommonWords {
  /** A thing as it lies there; the draw decides what is wrong with it. */
  readonly thing: (say: Say, id: string) => string;
  readonly nothing: string;
}

/** A family of trays: things, some of them faulty. The draw's `shown` are the things. */
export interface TrayFamily extends FamilyHead<"tray"> {
  readonly faults: (draw: Draw) => readonly string[];
  /** Faults that must be found. */
  readonly critical?: (draw: Draw) => readonly string[];
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => readonly string[] | null }[];
  readonly words: Words<TrayWords>;
}

export interface CountWords extends CommonWords {
  readonly classes: Readonly<Record<string, string>>;
}

/** A family of counts: what is missing (below 0) or too much (above 0) in each class. */
export interface CountFamily extends FamilyHead<"count"> {
  readonly classes: readonly string[];
  readonly truth: (draw: Draw) => Readonly<Record<string, number>>;
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => Readonly<Record<string, number>> | null }[];
  readonly words: Words<CountWords>;
}

export interface Ends {
  readonly from: number;
  readonly to: number;
}

/** A family of ranges: the two ends between which the truth lies. */
export interface RangeFamily extends FamilyHead<"range"> {
  readonly unit: UnitId;
  readonly roundTo: number;
  readonly solve: (givens: Givens, about: Draw["about"]) => Ends;
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => Ends | null }[];
  readonly words: Words<CommonWords>;
}

/** A place in a figure that may be pointed at. */
export interface RegionSpec {
  readonly id: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly radiusMm: number;
}

export interface MarkWords extends CommonWords {
  readonly targets: Readonly<Record<string, string>>;
}

/** A family of marks: targets to be found in a figure. */
export interface MarkFamily extends FamilyHead<"mark"> {
  readonly targets: (draw: Draw) => readonly string[];
  /** Every place that can be chosen by list; the figure shows them numbered on request. */
  readonly regions: (draw: Draw) => readonly RegionSpec[];
  /** The region of each target. */
  readonly truth: (draw: Draw) => Readonly<Record<string, string>>;
  /** Where many placements are right: how the regions chosen for the targets keep the rule. `truth` is then one of them. */
  readonly check?: (draw: Draw, chosen: Readonly<Record<string, string>>) => RuleCheck;
  readonly critical?: readonly string[];
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => Readonly<Record<string, string>> | null }[];
  readonly words: Words<MarkWords>;
}

/** What is right about a placement and what is broken. */
export interface RuleCheck {
  readonly isRight: boolean;
  /** Share of what was asked that holds, 0 to 1. */
  readonly score: number;
  readonly slip?: string;
}

/** How a line lies in the model. */
export interface LineCheck extends RuleCheck {
  readonly isUnsafe: boolean;
}

export interface PlacedLine {
  readonly angleDeg: number;
  readonly depthMm: number;
}

/** A family of lines: an angle and a depth in a figure. */
export interface LineFamily extends FamilyHead<"line"> {
  readonly angle: { readonly least: number; readonly greatest: number; readonly step: number };
  readonly depth: { readonly least: number; readonly greatest: number; readonly step: number };
  readonly check: (draw: Draw, line: PlacedLine) => LineCheck;
  readonly answer: (draw: Draw) => PlacedLine;
  readonly slips: readonly { readonly id: string; readonly gives: (draw: Draw) => PlacedLine | null }[];
  readonly words: Words<CommonWords>;
}

/** Families of every kind. */
export type Family = SumFamily | OrderFamily | JudgeFamily | NameFamily | TrayFamily | CountFamily | RangeFamily | MarkFamily | LineFamily | ChainFamily;
