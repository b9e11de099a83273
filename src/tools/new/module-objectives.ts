import { slugOf } from "./names.ts";
import type { PlannedObjective } from "./module-plan.ts";

/** What a new module needs to know of a family that is there already. */
export interface FamilyOf {
  readonly id: string;
  readonly kind: string;
  readonly module: string;
  readonly objectives: readonly string[];
  readonly words: { readonly en: { readonly title: string } };
}

/** The verb that a kind of question can check. */
const VERBS: Readonly<Record<string, string>> = {
  sum: "calculate", chain: "calculate", range: "estimate", order: "order", judge: "reject", name: "classify", count: "reconcile", tray: "detect", mark: "mark", line: "place",
};

/** True where an objective's id is made of words of its text: "m06-angle" and "calculate the angle between two tools". */
const isMeant = (id: string, { text }: PlannedObjective): boolean => {
  const words = slugOf(text).split("-");
  return id.split("-").slice(1).every((word) => words.includes(word));
};

/**
 * The objectives of a new module, so that every family that is there has one: a planned objective takes the id that its
 * words name, and an id that nobody planned is added with the verb of its questions.
 */
export const withServed = (planned: readonly PlannedObjective[], code: string, families: readonly FamilyOf[]): readonly PlannedObjective[] => {
  const own = families.filter(({ module }) => module === code);
  const ids = [...new Set(own.flatMap(({ objectives }) => objectives))];
  const taken = new Set<string>();
  const named = planned.map((objective) => {
    const id = ids.find((each) => !taken.has(each) && isMeant(each, objective));
    if (id !== undefined) taken.add(id);
    return id === undefined ? objective : { ...objective, id };
  });
  const added = ids.filter((id) => !taken.has(id)).flatMap((id): readonly PlannedObjective[] => {
    const family = own.find(({ objectives }) => objectives.includes(id));
    if (family === undefined) return [];
    const verb = VERBS[family.kind] ?? "calculate";
    return [{ id, verb, text: `${verb} what the question of ${family.id.replaceAll("-", " ")} asks` }];
  });
  return [...named, ...added];
};
