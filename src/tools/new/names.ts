/** Words that a name in a program may not be, and a few that would hide something that is always there. */
const TAKEN = new Set(["break", "case", "catch", "class", "const", "continue", "default", "delete", "do", "else", "enum", "export", "false", "finally", "for", "function", "if", "import", "in", "new", "null", "return", "super", "switch", "this", "throw", "true", "try", "typeof", "var", "void", "while", "with", "let", "static", "yield", "await", "name", "window", "document", "process", "number", "string"]);

/** A file's or a heading's name from a title: small letters and hyphens. */
export const slugOf = (text: string): string =>
  text.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");

/** A name for a program from one with hyphens: `least-depth` is `leastDepth`. */
export const camelOf = (slug: string): string => {
  const camel = slug.replace(/-([a-z0-9])/g, (_, letter: string) => letter.toUpperCase());
  return TAKEN.has(camel) || /^\d/.test(camel) ? `${camel}Family`.replace(/^\d/, (digit) => `of${digit}`) : camel;
};
