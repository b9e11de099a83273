import terms from "../../content/glossary.json" with { type: "json" };

/** A word of the trade, with its meaning in a line and its other names. */
export interface Term {
  readonly term: string;
  readonly id: string;
  readonly meaning: string;
  /** What each side of the Atlantic calls it, where they differ. */
  readonly british?: string;
  readonly american?: string;
  /** Other words that people type for it. */
  readonly also: readonly string[];
}

/** The glossary in the order of its letters. */
export const GLOSSARY: readonly Term[] = (terms as readonly Term[]).toSorted((first, second) => first.term.localeCompare(second.term, "en-GB"));

/** A term by its id; throws a RangeError for one that the glossary does not hold. */
export const termNamed = (id: string): Term => {
  const found = GLOSSARY.find((one) => one.id === id);
  if (!found) throw new RangeError(`of must be one of ${GLOSSARY.map((one) => one.id).join(", ")}, got ${id}`);
  return found;
};

/** Every name of a term, its own first, each once whatever its capitals. */
export const namesOf = ({ term, british, american, also }: Term): readonly string[] => {
  const all = [term, british, american, ...also].flatMap((name) => (name === undefined ? [] : [name]));
  return all.filter((name, index) => all.findIndex((other) => other.toLowerCase() === name.toLowerCase()) === index);
};
