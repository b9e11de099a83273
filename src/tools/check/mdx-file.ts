import type { Finding, SourceText } from "./finding.ts";
import { type Located, locate } from "./located.ts";
import { type OpeningTag, openingTagAt } from "./opening-tag.ts";
import { FILLER, readTree } from "./syntax.ts";

export type FileKind = "module" | "glossary" | "change";

export interface Tag extends OpeningTag {
  readonly start: number;
  /** Offset behind the whole element. */
  readonly stop: number;
}

export interface Heading {
  readonly depth: number;
  readonly start: number;
  readonly stop: number;
}

/** A link or an image in Markdown, with the words that stand in its brackets. */
export interface Link {
  readonly kind: "link" | "image";
  readonly url: string;
  readonly text: string;
  readonly start: number;
  readonly stop: number;
}

/** A piece of program in a text: an import or export, or an {expression}. */
export interface CodePiece {
  readonly kind: "esm" | "expression";
  readonly value: string;
  readonly start: number;
  readonly stop: number;
}

/** A formula between dollar signs. */
export interface FormulaPiece {
  readonly value: string;
  readonly start: number;
  readonly stop: number;
}

/** A read MDX file. `prose` is as long as `text`; all that is not prose is blanked in it. */
export interface MdxFile extends SourceText {
  readonly kind: FileKind;
  readonly slug: string;
  readonly tags: readonly Tag[];
  readonly headings: readonly Heading[];
  readonly links: readonly Link[];
  readonly code: readonly CodePiece[];
  readonly formulas: readonly FormulaPiece[];
  readonly prose: string;
  readonly matter: { readonly start: number; readonly text: string; readonly located: Located } | null;
  /** Where the text behind the front matter starts. */
  readonly bodyStart: number;
  readonly syntax: readonly Finding[];
}

/** The few parts of a tree's node that are used here. */
interface Node {
  readonly type: string;
  readonly name?: string | null;
  readonly depth?: number;
  readonly value?: string;
  readonly url?: string;
  readonly alt?: string | null;
  readonly children?: readonly Node[];
  readonly position?: { readonly start: { readonly offset?: number }; readonly end: { readonly offset?: number } };
}

interface Gathered {
  readonly tags: Tag[];
  readonly headings: Heading[];
  readonly links: Link[];
  readonly code: CodePiece[];
  readonly formulas: FormulaPiece[];
  readonly shown: [number, number][];
}

const isComment = (value: string): boolean => /^(\s*\/\*[\s\S]*?\*\/\s*)*$/.test(value);

const gatherCode = (node: Node, span: readonly [number, number], into: Gathered): void => {
  const value = node.value ?? "";
  if (node.type !== "mdxjsEsm" && isComment(value) && value.trim() !== "") return;
  into.code.push({ kind: node.type === "mdxjsEsm" ? "esm" : "expression", value, start: span[0], stop: span[1] });
};

/** Words under a node, tags left out. */
const wordsIn = (node: Node): string => node.value ?? (node.children ?? []).map(wordsIn).join("");

const linkOf = (node: Node, start: number, stop: number): Link => {
  const isImage = node.type === "image";
  return { kind: isImage ? "image" : "link", url: node.url ?? "", text: isImage ? (node.alt ?? "") : wordsIn(node), start, stop };
};

/** Letters that a mark of stress takes at either end. */
const MARK_WIDTHS: Readonly<Record<string, number>> = { strong: 2, emphasis: 1 };

type Take = (node: Node, span: readonly [start: number, stop: number], into: Gathered) => void;

const takeLink: Take = (node, [start, stop], into) => {
  into.links.push(linkOf(node, start, stop));
};
const takeFormula: Take = (node, [start, stop], into) => {
  into.formulas.push({ value: node.value ?? "", start, stop });
};

/** What is kept of a node, by its type. */
const TAKES: Readonly<Record<string, Take>> = {
  heading: ({ depth = 1 }, [start, stop], into) => {
    into.headings.push({ depth, start, stop });
  },
  link: takeLink,
  image: takeLink,
  text: (_, [start, stop], into) => {
    into.shown.push([start, stop]);
  },
  math: takeFormula,
  inlineMath: takeFormula,
  mdxjsEsm: gatherCode,
};

const gather = (node: Node, text: string, into: Gathered): void => {
  const start = node.position?.start.offset ?? 0;
  const stop = node.position?.end.offset ?? 0;
  if (node.type.startsWith("mdxJsx")) into.tags.push({ ...openingTagAt(text, start), name: node.name ?? "", start, stop });
  if (node.type.endsWith("Expression")) gatherCode(node, [start, stop], into);
  TAKES[node.type]?.(node, [start, stop], into);
  const width = MARK_WIDTHS[node.type];
  if (width !== undefined) into.shown.push([start, start + width], [stop - width, stop]);
  for (const child of node.children ?? []) gather(child, text, into);
};

const onlyShown = (text: string, shown: readonly (readonly [number, number])[]): string => {
  const letters = text.replace(/[^\n]/g, FILLER).split("");
  for (const [start, stop] of shown) {
    for (let at = start; at < stop; at += 1) letters[at] = text[at] ?? FILLER;
  }
  return letters.join("");
};

/** Front matter between the two lines of dashes at the head of the file, or null. */
const matterOf = (text: string): MdxFile["matter"] => {
  const match = /^---[ \t]*\r?\n([\s\S]*?)^---[ \t]*$/m.exec(text);
  if (match === null || match.index !== 0) return null;
  const start = text.indexOf("\n") + 1;
  return { start, text: match[1] ?? "", located: locate(match[1] ?? "", start) };
};

const bodyStartOf = (text: string, matter: MdxFile["matter"]): number => {
  if (matter === null) return 0;
  const close = text.indexOf("\n", matter.start + matter.text.length);
  return close < 0 ? text.length : close + 1;
};

/** Reads a file into what the rules need: tags, headings, pieces of program, prose, front matter. */
export const readMdx = (source: SourceText, kind: FileKind, slug: string): MdxFile => {
  const { tree, findings, text } = readTree(source);
  const gathered: Gathered = { tags: [], headings: [], links: [], code: [], formulas: [], shown: [] };
  if (tree !== null) gather(tree as Node, source.text, gathered);
  const matter = matterOf(source.text);
  return {
    ...source,
    kind,
    slug,
    tags: gathered.tags,
    headings: gathered.headings,
    links: gathered.links,
    code: gathered.code,
    formulas: gathered.formulas,
    prose: onlyShown(text, gathered.shown),
    matter,
    bodyStart: bodyStartOf(source.text, matter),
    syntax: findings,
  };
};
