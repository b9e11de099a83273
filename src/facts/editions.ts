import held from "../../content/editions.json" with { type: "json" };
import type { CarryPlan } from "../engine/record/carry-code.ts";
import type { SheetEdition, SheetKind, SheetPlan } from "../engine/record/sheet-number.ts";

/** One edition as the file holds it: a slot of a plan names its pool. */
interface HeldEdition {
  readonly edition: number;
  readonly families: readonly (readonly [id: string, version: number, module: string])[];
  readonly pools: Readonly<Record<string, readonly string[]>>;
  readonly plans: readonly { readonly plan: number; readonly kind: string; readonly role: string; readonly slots: readonly string[] }[];
  readonly carry: { readonly modules: readonly string[]; readonly safety: readonly string[] };
}

const KINDS: readonly SheetKind[] = ["entry", "practice", "mixed"];

const kindOf = (kind: string): SheetKind => {
  const known = KINDS.find((one) => one === kind);
  if (known === undefined) throw new RangeError(`kind must be one of ${KINDS.join(", ")}, got ${kind}`);
  return known;
};

const HELD = held as unknown as readonly HeldEdition[];

/** What sheet numbers of each edition mean, oldest first. Held for ever: a number typed years later gives the same questions. */
export const EDITIONS: readonly SheetEdition[] = HELD.map(({ edition, families, pools, plans }) => ({
  edition,
  families: families.map(([id, version, module]) => ({ id, version, module })),
  plans: plans.map(({ plan, kind, slots }): SheetPlan => ({ plan, kind: kindOf(kind), slots: slots.map((name) => pools[name] ?? []) })),
}));

/** What carry codes of each edition speak of. */
export const CARRY_PLANS: readonly CarryPlan[] = HELD.map(({ edition, carry }) => ({ edition, ...carry }));

/** The edition that new sheets and codes are made with. */
export const NEWEST: SheetEdition = EDITIONS.at(-1) ?? { edition: 0, families: [], plans: [] };

/** The plan of the newest edition for a role; null where it has none. */
export const planFor = (kind: "entry" | "mixed", role: string): number | null => HELD.at(-1)?.plans.find((one) => one.kind === kind && one.role === role)?.plan ?? null;
