import ts from "typescript";

/** One place of a source text and what to write there instead. */
export interface Change {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Operators and what takes their place: the neighbour that a slip of the hand would write. */
const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "%": ["*"],
  "**": ["*"],
  "<": ["<=", ">="],
  "<=": ["<", ">"],
  ">": [">=", "<="],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "&&": ["||"],
  "||": ["&&"],
  "??": ["&&"],
};

const ASSIGNMENTS: Readonly<Record<string, string>> = { "+=": "-=", "-=": "+=", "*=": "/=", "/=": "*=" };

const METHODS: Readonly<Record<string, string>> = { min: "max", max: "min", floor: "ceil", ceil: "floor", round: "floor", sin: "cos", cos: "sin", some: "every", every: "some" };

const whole = (node: ts.Node, text: string): Change => ({ start: node.getStart(), end: node.end, text });

const isText = (node: ts.Node): boolean => ts.isStringLiteralLike(node) || ts.isTemplateExpression(node);

/** Brackets around both sides keep the grouping, whatever stands beside the new operator. */
const ofBinary = (node: ts.BinaryExpression): readonly Change[] => {
  const operator = node.operatorToken.getText();
  const assigned = ASSIGNMENTS[operator];
  if (assigned !== undefined) return [whole(node.operatorToken, assigned)];
  if (operator === "+" && (isText(node.left) || isText(node.right))) return [];
  return (OPERATORS[operator] ?? []).map((other) => whole(node, `((${node.left.getText()}) ${other} (${node.right.getText()}))`));
};

const ofNumber = (node: ts.NumericLiteral | ts.BigIntLiteral): readonly Change[] => {
  const big = ts.isBigIntLiteral(node) ? "n" : "";
  const value = Number(node.text.replace(/n$/, ""));
  if (value === 0) return [whole(node, `1${big}`)];
  return [value - 1, value + 1].map((other) => whole(node, `${other}${big}`));
};

const ofPrefix = (node: ts.PrefixUnaryExpression): readonly Change[] => {
  const isDropped = node.operator === ts.SyntaxKind.ExclamationToken || node.operator === ts.SyntaxKind.MinusToken;
  return isDropped ? [whole(node, `(${node.operand.getText()})`)] : [];
};

/** A condition that always holds and one that never does; without an else the second removes the guard. A loop is only left out. */
const ofCondition = (condition: ts.Expression, isLoop: boolean): readonly Change[] =>
  (isLoop ? ["false"] : ["true", "false"]).map((text) => whole(condition, text));

const isCalledName = (node: ts.Node): node is ts.Identifier =>
  ts.isIdentifier(node) && ts.isPropertyAccessExpression(node.parent) && node.parent.name === node && ts.isCallExpression(node.parent.parent) && node.parent.parent.expression === node.parent;

const ofName = (node: ts.Node): readonly Change[] => {
  const other = isCalledName(node) && Object.hasOwn(METHODS, node.text) ? METHODS[node.text] : undefined;
  return other === undefined ? [] : [whole(node, other)];
};

const ofStatement = (node: ts.Node): readonly Change[] | null => {
  if (ts.isIfStatement(node)) return ofCondition(node.expression, false);
  if (ts.isWhileStatement(node)) return ofCondition(node.expression, true);
  if (ts.isForStatement(node) && node.condition) return ofCondition(node.condition, true);
  return ts.isExpressionStatement(node) && ts.isCallExpression(node.expression) ? [whole(node, ";")] : null;
};

const ofExpression = (node: ts.Node): readonly Change[] => {
  if (ts.isBinaryExpression(node)) return ofBinary(node);
  if (ts.isNumericLiteral(node) || ts.isBigIntLiteral(node)) return ofNumber(node);
  if (ts.isPrefixUnaryExpression(node)) return ofPrefix(node);
  if (ts.isConditionalExpression(node)) return ofCondition(node.condition, false);
  if (node.kind === ts.SyntaxKind.TrueKeyword) return [whole(node, "false")];
  return node.kind === ts.SyntaxKind.FalseKeyword ? [whole(node, "true")] : ofName(node);
};

const isTypeOnly = (node: ts.Node): boolean => ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) || ts.isImportDeclaration(node);

/** Every small change of a source text that a good test should notice, in the order in which they stand; texts and types are left alone. */
export const changesIn = (source: string): readonly Change[] => {
  const file = ts.createSourceFile("source.ts", source, ts.ScriptTarget.Latest, true);
  const found: Change[] = [];
  const visit = (node: ts.Node): void => {
    if (isTypeOnly(node)) return;
    found.push(...(ofStatement(node) ?? ofExpression(node)));
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
};

/** The source with one change made. */
export const changed = (source: string, { start, end, text }: Change): string => source.slice(0, start) + text + source.slice(end);
