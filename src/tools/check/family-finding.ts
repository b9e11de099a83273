import type { FamilyFacts } from "./course.ts";
import type { Finding, Level } from "./finding.ts";
import { placeOfFamily } from "./rules/served-objectives.ts";

export interface FamilyFault {
  /** A word that stands in quotes in the family's file, to point at. */
  readonly near: string;
  readonly rule: string;
  readonly found: string;
  readonly expected: string;
  readonly write: string;
  readonly level?: Level;
}

/** A fault of a family as a finding: its place is looked up in the family's own file. */
export const familyFinding = (family: FamilyFacts, { near, found, ...rest }: FamilyFault): Finding => ({
  ...placeOfFamily(family, near),
  found: `family "${family.id}": ${found}`,
  ...rest,
});

/** A list of names as it stands in a family's file. */
export const namesText = (names: readonly string[]): string => `[${names.map((name) => `"${name}"`).join(", ")}]`;
