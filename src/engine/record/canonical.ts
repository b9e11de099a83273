/** The one text of a JSON value, so that the same event has the same hash on every device (RFC 8785, JSON Canonicalization Scheme, 2020). */

type Fields = Readonly<Record<string, unknown>>;

const textOf = (text: string): string => {
  if (!text.isWellFormed()) throw new RangeError("value must be well-formed Unicode, got half of a pair");
  return JSON.stringify(text);
};

const numberOf = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`value must be a finite number, got ${value}`);
  return JSON.stringify(value);
};

const fieldsOf = (fields: Fields): string => {
  // The default order of texts in JavaScript is that of UTF-16 units, which the standard asks for.
  const keys = Object.keys(fields).filter((key) => fields[key] !== undefined).sort();
  return `{${keys.map((key) => `${textOf(key)}:${canonicalJson(fields[key])}`).join(",")}}`;
};

/** A JSON value as canonical text: keys in order, no spaces. A key whose value is undefined is left out. Throws a RangeError for what JSON cannot hold. */
export const canonicalJson = (value: unknown): string => {
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "string") return textOf(value);
  if (typeof value === "number") return numberOf(value);
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value === "object") return fieldsOf(value as Fields);
  throw new RangeError(`value must be JSON, got ${typeof value}`);
};

/** The same JSON value with half pairs of signs replaced, so that nothing a learner pastes can stop a line from being kept. */
export const wellFormed = <T>(value: T): T => {
  const kept = (one: unknown): unknown => {
    if (typeof one === "string") return one.toWellFormed();
    if (Array.isArray(one)) return one.map(kept);
    if (typeof one !== "object" || one === null) return one;
    return Object.fromEntries(Object.entries(one).map(([key, entry]) => [key.toWellFormed(), kept(entry)]));
  };
  return kept(value) as T;
};
