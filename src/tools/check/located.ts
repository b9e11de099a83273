import { isMap, isScalar, isSeq, type Node, type Pair, parseDocument } from "yaml";

/** A piece of YAML or JSON: its value and where each part of it stands. */
export interface Located {
  readonly value: unknown;
  readonly errors: readonly { readonly code: string; readonly message: string; readonly start: number }[];
  /** Span of the value at a path, or of the nearest part above it that exists. */
  readonly spanOf: (path: readonly PropertyKey[]) => Span;
  /** Span of a key inside the map at a path. */
  readonly keySpanOf: (path: readonly PropertyKey[], key: string) => Span;
}

export interface Span {
  readonly start: number;
  readonly end: number;
}

const keyText = (pair: Pair): string => (isScalar(pair.key) ? String(pair.key.value) : "");

const pairIn = (node: unknown, key: PropertyKey): Pair | undefined =>
  isMap(node) ? node.items.find((pair) => keyText(pair as Pair) === String(key)) as Pair | undefined : undefined;

const childOf = (node: unknown, key: PropertyKey): unknown =>
  isSeq(node) ? node.items[Number(key)] : pairIn(node, key)?.value;

const spanOfNode = (node: unknown, from: number): Span | null => {
  const range = (node as Node | null)?.range;
  return range == null ? null : { start: from + range[0], end: from + range[1] };
};

/** Reads YAML (JSON is a part of it) with places; `from` is the offset of the piece in its file. */
export const locate = (text: string, from = 0): Located => {
  // The site's own reader turns bare days into dates; so does this one, or they would disagree.
  const document = parseDocument(text, { customTags: ["timestamp"], prettyErrors: false, strict: true });
  const spanOf = (path: readonly PropertyKey[]): Span => {
    let node: unknown = document.contents;
    let span = spanOfNode(node, from) ?? { start: from, end: from };
    for (const key of path) {
      const pair = pairIn(node, key);
      node = childOf(node, key);
      span = spanOfNode(node, from) ?? spanOfNode(pair?.key, from) ?? span;
    }
    return span;
  };
  const keySpanOf = (path: readonly PropertyKey[], key: string): Span => {
    let node: unknown = document.contents;
    for (const step of path) node = childOf(node, step);
    return spanOfNode(pairIn(node, key)?.key, from) ?? spanOf(path);
  };
  return {
    value: document.errors.length > 0 ? null : (document.toJS() as unknown),
    errors: document.errors.map(({ code, message, pos }) => ({ code, message, start: from + pos[0] })),
    spanOf,
    keySpanOf,
  };
};
