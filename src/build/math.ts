import temml from "temml";

interface MathNode {
  readonly value: string;
}

interface Replacing {
  readonly replaceNode: (node: MathNode, by: { readonly raw: string; readonly mdxExpressions: false }) => void;
}

/** A formula as MathML, written at build time: no script, no style attribute, read aloud by screen readers. */
export const mathMarkup = (formula: string, displayMode: boolean): string =>
  temml.renderToString(formula, { displayMode, throwOnError: true }).replace(/ style="[^"]*"/g, "");

/** Turns formulas in modules into MathML. */
export const mathPlugin = {
  name: "math-to-mathml",
  inlineMath(node: MathNode, context: Replacing): void {
    context.replaceNode(node, { raw: mathMarkup(node.value, false), mdxExpressions: false });
  },
  math(node: MathNode, context: Replacing): void {
    context.replaceNode(node, { raw: mathMarkup(node.value, true), mdxExpressions: false });
  },
};
