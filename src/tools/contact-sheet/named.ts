import { families, type FamilyEntry } from "../../bank/index.ts";
import { nearest } from "../check/nearest.ts";

const MOST_NAMES = 5;

/** Families whose names resemble what was written, the nearest first. */
const nearTo = (written: string): readonly string[] => {
  const ids = families.map(({ id }) => id);
  const inside = ids.filter((id) => written.length > 2 && (id.includes(written) || written.includes(id)));
  const left = (found: readonly string[]): readonly string[] => ids.filter((id) => !found.includes(id));
  const found = [...inside];
  for (let next = nearest(written, left(found)); next !== null && found.length < MOST_NAMES; next = nearest(written, left(found))) found.push(next);
  return found.slice(0, MOST_NAMES);
};

/** The family of an id or a code, or a sentence that says what could have been meant. */
export const familyNamed = (written: string): FamilyEntry | { readonly sentence: string } => {
  const family = families.find(({ id, code }) => id === written || code === written);
  if (family) return family;
  const near = nearTo(written);
  const meant = near.length === 0 ? "The catalogue stands in src/bank/catalogue.ts." : `Near it: ${near.join(", ")}.`;
  return { sentence: written === "" ? "Name a family, for example: npm run contact-sheet -- greatest-depth" : `No family is called "${written}". ${meant}` };
};
