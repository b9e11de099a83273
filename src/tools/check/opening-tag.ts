/** How an attribute is written: `a="x"`, `a={x}`, `a` alone, or `{...x}`. */
export type AttributeForm = "text" | "expression" | "none" | "spread";

export interface Attribute {
  readonly name: string;
  readonly form: AttributeForm;
  /** Without quotes or braces. */
  readonly value: string;
  readonly start: number;
  readonly end: number;
}

export interface OpeningTag {
  readonly name: string;
  readonly attributes: readonly Attribute[];
  readonly selfClosing: boolean;
  /** Offset behind the closing `>`. */
  readonly end: number;
}

const NAME = /[\w$:.-]+/y;
const SPACE = /\s*/y;

const take = (pattern: RegExp, text: string, at: number): string => {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? "";
};

/** Offset behind the string that opens at `open`. */
const behindQuote = (text: string, open: number): number => {
  const close = text.indexOf(text[open] ?? "", open + 1);
  return close < 0 ? text.length : close + 1;
};

/** Offset behind the brace that closes the one at `open`; strings inside are skipped. */
const behindBrace = (text: string, open: number): number => {
  let depth = 0;
  for (let at = open; at < text.length; at += 1) {
    const letter = text[at] ?? "";
    if (`"'\``.includes(letter)) at = behindQuote(text, at) - 1;
    depth += Number(letter === "{") - Number(letter === "}");
    if (depth === 0) return at + 1;
  }
  return text.length;
};

const valueAt = (text: string, at: number): { form: AttributeForm; value: string; end: number } => {
  if (text[at] === "{") {
    const end = behindBrace(text, at);
    return { form: "expression", value: text.slice(at + 1, end - 1).trim(), end };
  }
  const quote = text[at] ?? "";
  const close = text.indexOf(quote, at + 1);
  const end = close < 0 ? text.length : close + 1;
  return { form: "text", value: text.slice(at + 1, end - 1), end };
};

const attributeAt = (text: string, start: number): Attribute => {
  if (text[start] === "{") {
    const end = behindBrace(text, start);
    return { name: text.slice(start, end), form: "spread", value: "", start, end };
  }
  const name = take(NAME, text, start) || (text[start] ?? "");
  const behindName = start + name.length;
  const equals = behindName + take(SPACE, text, behindName).length;
  if (text[equals] !== "=") return { name, form: "none", value: "", start, end: behindName };
  return { name, start, ...valueAt(text, equals + 1 + take(SPACE, text, equals + 1).length) };
};

/**
 * Reads the opening tag that starts at an offset. The tree of the parser has no places for attributes,
 * and a message must point at the attribute.
 */
export const openingTagAt = (text: string, start: number): OpeningTag => {
  const name = take(NAME, text, start + 1);
  const attributes: Attribute[] = [];
  let at = start + 1 + name.length;
  while (at < text.length) {
    at += take(SPACE, text, at).length;
    const rest = take(/\/?\s*>/y, text, at);
    if (rest !== "") return { name, attributes, selfClosing: rest.startsWith("/"), end: at + rest.length };
    const attribute = attributeAt(text, at);
    attributes.push(attribute);
    at = Math.max(attribute.end, at + 1);
  }
  return { name, attributes, selfClosing: false, end: text.length };
};
