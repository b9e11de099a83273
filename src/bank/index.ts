import type { LocalList } from "../engine/kit/local-list.ts";
import { drawItem } from "../engine/question/draw.ts";
import { answerOf, type Explanation, explainItem, slipResponses } from "../engine/question/explain.ts";
import type { Family } from "../engine/question/family.ts";
import type { AskSpec, Givens, GivenSpec, Solution } from "../engine/question/family-head.ts";
import { gradeItem } from "../engine/question/grade.ts";
import type { Item } from "../engine/question/item.ts";
import type { Response } from "../engine/question/response.ts";
import type { SourceMark, Verdict } from "../engine/question/verdict.ts";
import { requireNumber } from "../engine/quantity/require.ts";
import type { Seed } from "../engine/random/seed.ts";
import { CATALOGUE } from "./catalogue.ts";

/** What the catalogue says of one family. */
export interface FamilyEntry {
  readonly id: string;
  readonly code: string;
  readonly module: string;
  readonly kind: Family["kind"];
  readonly version: number;
  readonly versions: readonly number[];
  readonly firstWave: boolean;
  readonly unsafe: boolean;
  readonly objectives: readonly string[];
  readonly sources: readonly SourceMark[];
  /** Every caution that a draw may carry. */
  readonly cautions: readonly string[];
  readonly reads: readonly string[];
  readonly givens: readonly GivenSpec[];
  readonly asks: readonly AskSpec[];
}

const entryOf = (versions: readonly Family[]): FamilyEntry => {
  const [newest] = versions;
  if (!newest) throw new RangeError("versions must hold at least one family, got none");
  const { id, code, module, kind, version, firstWave, unsafe, objectives, sources, cautions, reads, givens } = newest;
  const asks = newest.kind === "sum" ? newest.asks : [];
  return { id, code, module, kind, version, versions: versions.map((one) => one.version), firstWave, unsafe, objectives, sources, cautions, reads, givens, asks };
};

/** Every family, in the order of the curriculum. @example families.map((family) => family.code).includes("10c") // => true */
export const families: readonly FamilyEntry[] = CATALOGUE.map(entryOf);

const BY_ID: ReadonlyMap<string, readonly Family[]> = new Map(CATALOGUE.map((versions) => [versions[0]?.id ?? "", versions]));

const familyOf = (familyId: string, version?: number): Family => {
  const versions = BY_ID.get(familyId);
  if (!versions) throw new RangeError(`familyId must be one of ${families.map(({ id }) => id).join(", ")}, got ${familyId}`);
  const family = version === undefined ? versions[0] : versions.find((one) => one.version === version);
  if (!family) throw new RangeError(`version must be one that ${familyId} has, got ${String(version)}`);
  return family;
};

export interface DrawOptions {
  /** Version of the family; the newest where absent. */
  readonly version?: number;
  /** Language of the sentences; `en` where absent. */
  readonly language?: string;
  /** The local list, for families that read it; the one of the site where absent. */
  readonly local?: LocalList;
}

/**
 * Draws an item: plain JSON, the same for the same family version, seed and local list for ever.
 *
 * @param familyId - Id of a family, such as `greatest-depth`.
 * @param seed - Whole number from 0 to 4294967295, or 32 hexadecimal digits.
 * @throws {RangeError} If the family, version, seed or language is unknown.
 * @example draw("path-width", 7).seed // => "7"
 */
export const draw = (familyId: string, seed: Seed, { version, language = "en", local }: DrawOptions = {}): Item =>
  drawItem(familyOf(familyId, version), { seed, language, local });

/**
 * The answer to given values, unrounded: a number for each ask, or the answer that is not a number.
 *
 * @param givens - Values in the units that their keys end in; finite and greater than 0. A key that the answer does not use may be left out.
 * @throws {RangeError} If the family is unknown, a value is out of range, or one that the answer needs is missing.
 * @example compute("greatest-depth", { entryToJunctionMm: 4, junctionToBundleMm: 5.2, marginMm: 2 }) // => { greatestMm: 7.2 }
 */
export const compute = (familyId: string, givens: Givens): Solution => {
  const family = familyOf(familyId);
  if (family.kind !== "sum" && family.kind !== "range") throw new RangeError(`familyId must name a family of sums or ranges, got ${familyId}`);
  for (const [key, value] of Object.entries(givens)) requireNumber(key, value, { least: 0 });
  const missing = new Set<string>();
  const watched = new Proxy(givens, {
    get: (target, key) => {
      if (typeof key === "string" && !Object.hasOwn(target, key)) missing.add(key);
      return Reflect.get(target, key) as unknown;
    },
  });
  const whole = (): RangeError => new RangeError(`givens must hold ${[...missing].join(", ")}, got ${Object.keys(givens).join(", ") || "none"}`);
  try {
    const solution = family.solve(watched, {});
    if (missing.size === 0) return { ...solution };
  } catch (error) {
    if (missing.size === 0) throw error;
  }
  throw whole();
};

/**
 * The response that is right, typed as asked.
 *
 * @example answerTo(draw("path-width", 7)).kind // => "sum"
 */
export const answerTo = (item: Item): Response => answerOf(familyOf(item.family, item.version), item);

/**
 * What each slip that applies to this item gives, typed as asked, and whether that would be unsafe; at least two.
 *
 * @example slipsOf(draw("path-width", 7)).length >= 2 // => true
 */
export const slipsOf = (item: Item): readonly { readonly id: string; readonly response: Response; readonly unsafe: boolean }[] =>
  slipResponses(familyOf(item.family, item.version), item).map((slip) => ({ ...slip, unsafe: grade(item, slip.response).verdict === "unsafe-side" }));

/**
 * Grades a response by the version that the item names. Never throws for what a learner typed.
 *
 * @example grade(draw("path-width", 7), { kind: "sum", text: "" }).reason // => "empty"
 */
export const grade = (item: Item, response: Response): Verdict => gradeItem(familyOf(item.family, item.version), item, response);

/**
 * The sentences after an answer: what happened, what moves the answer, when the answer would be right.
 *
 * @example explain(draw("path-width", 7), { kind: "sum", text: "1" }).moves.length // => 2
 */
export const explain = (item: Item, response: Response): Explanation => {
  const family = familyOf(item.family, item.version);
  return explainItem(family, item, { response, verdict: gradeItem(family, item, response) });
};

/**
 * Grades by the item's version and by the newest, on the same displayed givens.
 *
 * @example regrade(draw("path-width", 7), { kind: "sum", text: "1" }).changed // => false
 */
export const regrade = (item: Item, response: Response): { readonly before: Verdict; readonly after: Verdict; readonly changed: boolean } => {
  const before = grade(item, response);
  const after = gradeItem(familyOf(item.family), item, response);
  return { before, after, changed: before.verdict !== after.verdict || before.slip !== after.slip };
};
