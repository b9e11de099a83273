/** Every dash that a mail program, a phone or a hand puts where a hyphen stood: hyphens that do not break, dashes of any length, minus signs. */
export const DASHES = "‐-―−﹘﹣－";
const DASH = new RegExp(`[${DASHES}]`, "g");
const HYPHENS: Readonly<Record<string, string>> = { "–": "--", "—": "--" };
const THREE: Readonly<Record<string, string>> = { ...HYPHENS, "—": "---" };

/** A text with a hyphen for each dash. */
export const withHyphens = (text: string): string => text.replace(DASH, "-");

/**
 * What a text with dashes may have been, likeliest first: one hyphen for each; two, as programs join them, for a dash
 * that is en or em; three for an em dash. Each differs from the others, and a text without dashes is only itself.
 */
export const hyphenated = (text: string): readonly string[] => {
  const readAs = (long: Readonly<Record<string, string>>): string => text.replace(DASH, (dash) => long[dash] ?? "-");
  return [...new Set([withHyphens(text), readAs({ "–": "--" }), readAs({ "—": "--" }), readAs(HYPHENS), readAs({ "—": "---" }), readAs(THREE)])];
};
