import names from "../../content/curriculum.json" with { type: "json" };

/** A module of the curriculum, written or still to be written. */
export interface ModuleName {
  readonly code: string;
  readonly name: string;
}

/** Modules in the order in which they are learned. */
export const CURRICULUM: readonly ModuleName[] = Object.entries(names).map(([code, name]) => ({ code, name }));

/** The name of a module by its code. */
export const moduleName = (code: string): string => {
  const found = CURRICULUM.find((one) => one.code === code);
  if (!found) throw new RangeError(`code must be one of ${CURRICULUM.map((one) => one.code).join(", ")}, got ${code}`);
  return found.name;
};
