import { type Chance, chanceFrom } from "../random/chance.ts";
import { sha256Hex, sha256Words } from "../random/sha256.ts";
import { xoshiro128 } from "../random/xoshiro.ts";
import { canonicalJson } from "./canonical.ts";
import { interleaved } from "./order.ts";
import { packed, readSigns, unpacked, withCheck } from "./signs.ts";
import type { CodeFault } from "./words.ts";

export type SheetKind = "entry" | "practice" | "mixed";

/** A sheet that an edition knows by number: one family is drawn for each slot from the slot's own pool. */
export interface SheetPlan {
  /** 1 to 31. */
  readonly plan: number;
  readonly kind: SheetKind;
  readonly slots: readonly (readonly string[])[];
}

/**
 * What one edition's sheet numbers mean. It is held for ever once the edition is out; a later edition brings one more.
 * So a number typed years later still gives the same questions.
 */
export interface SheetEdition {
  /** 0 to 31. */
  readonly edition: number;
  readonly families: readonly { readonly id: string; readonly version: number; readonly module: string }[];
  readonly plans: readonly SheetPlan[];
}

/** A sheet by number: of a plan, or of families listed in their order by place in the edition's list. */
export interface SheetNumber {
  readonly edition: number;
  /** Plan number; 0 for a list of its own. */
  readonly plan: number;
  /** Tells two sheets of one plan apart; 0 to 1048575. */
  readonly nonce: number;
  readonly picks: readonly number[];
}

export interface SheetItem {
  readonly family: string;
  readonly version: number;
  readonly module: string;
  readonly seed: string;
}

export interface Sheet {
  readonly number: string;
  readonly kind: SheetKind;
  readonly items: readonly SheetItem[];
}

const EDITIONS = 32;
const PLANS = 32;
export const NONCES: number = 1_048_576;
const MOST_FAMILIES = 1024;
const MOST_PICKS = 25;
const GROUP = 4;
const HEAD: readonly number[] = [EDITIONS, PLANS, NONCES];
const HEAD_SIGNS = 6;
const PICK_SIGNS = 2;
const SEED_DIGITS = 32;

/** The typed form: eight signs for a planned sheet, two more for each family of a list of its own; the last two check the rest. */
export const sheetNumberText = ({ edition, plan, nonce, picks }: SheetNumber): string => {
  if ((plan === 0) !== picks.length > 0) throw new RangeError(`picks must be given with plan 0 and with no other, got plan ${plan} and ${picks.length} picks`);
  if (picks.length > MOST_PICKS) throw new RangeError(`picks must be at most ${MOST_PICKS}, got ${picks.length}`);
  const head = packed([[edition, EDITIONS], [plan, PLANS], [nonce, NONCES]]);
  return withCheck([...head, ...picks.flatMap((pick) => packed([[pick, MOST_FAMILIES]]))], { purpose: "sheet", groupOf: GROUP });
};

const picksOf = (values: readonly number[]): readonly number[] | null => {
  if (values.length % PICK_SIGNS !== 0 || values.length > MOST_PICKS * PICK_SIGNS) return null;
  const starts = Array.from({ length: values.length / PICK_SIGNS }, (_, place) => place * PICK_SIGNS);
  return starts.map((start) => unpacked(values.slice(start, start + PICK_SIGNS), [MOST_FAMILIES])?.[0] ?? -1);
};

/** Reads a typed sheet number. Never throws for what was typed. */
export const readSheetNumber = (typed: string): SheetNumber | { readonly fault: CodeFault } => {
  const signs = readSigns(typed, "sheet");
  if ("fault" in signs) return signs;
  const [edition, plan, nonce] = unpacked(signs.values.slice(0, HEAD_SIGNS), HEAD) ?? [];
  const picks = picksOf(signs.values.slice(HEAD_SIGNS));
  if (edition === undefined || plan === undefined || nonce === undefined || picks === null) return { fault: "length" };
  return (plan === 0) === picks.length > 0 ? { edition, plan, nonce, picks } : { fault: "length" };
};

type EditionFamily = SheetEdition["families"][number];

const chanceOf = (number: string): Chance => chanceFrom(xoshiro128(sha256Words(canonicalJson(["sheet", number]))));

/** One family for each slot, none twice where the pools allow it, mixed and then interleaved by module. */
const drawnFrom = ({ slots }: SheetPlan, { families }: SheetEdition, chance: Chance): readonly (EditionFamily | undefined)[] => {
  const taken = new Set<string>();
  const drawn = slots.map((pool) => {
    const free = pool.filter((id) => !taken.has(id));
    const id = chance.pick(free.length > 0 ? free : pool);
    taken.add(id);
    return families.find((family) => family.id === id);
  });
  return interleaved(chance.shuffled(drawn), (family) => family?.module ?? "");
};

/** The seed of one question: from the number, the place on the sheet, the family and its version, so that nobody can choose an easy one. */
const seedAt = (number: string, slot: number, { id, version }: EditionFamily): string =>
  sha256Hex(canonicalJson(["sheet", number, String(slot), id, String(version)])).slice(0, SEED_DIGITS);

/** The sheet of a number: families, versions, seeds and order, the same on any device and in any later edition that keeps this one's list. */
export const sheetOf = (sheet: SheetNumber, editions: readonly SheetEdition[]): Sheet | { readonly fault: CodeFault } => {
  const edition = editions.find((one) => one.edition === sheet.edition);
  if (edition === undefined) return { fault: "unknown-edition" };
  const plan = edition.plans.find((one) => one.plan === sheet.plan);
  if (plan === undefined && sheet.plan !== 0) return { fault: "content" };
  const number = sheetNumberText(sheet);
  const families = plan === undefined ? sheet.picks.map((pick) => edition.families[pick]) : drawnFrom(plan, edition, chanceOf(number));
  const known = families.filter((family) => family !== undefined);
  if (known.length < families.length) return { fault: "content" };
  const items = known.map((family, slot) => ({ family: family.id, version: family.version, module: family.module, seed: seedAt(number, slot, family) }));
  return { number, kind: plan?.kind ?? "practice", items };
};
