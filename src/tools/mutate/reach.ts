import { existsSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import ts from "typescript";

/** The module that a statement loads when it runs; a type names nothing that could change a result. */
const loadedBy = (statement: ts.Statement): string | null => {
  if (!(ts.isImportDeclaration(statement) || ts.isExportDeclaration(statement))) return null;
  if (ts.isImportDeclaration(statement) && statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword) return null;
  const name = statement.moduleSpecifier;
  return name && ts.isStringLiteral(name) && name.text.startsWith(".") ? name.text : null;
};

const known = new Map<string, readonly string[]>();

const importsOf = (path: string): readonly string[] => {
  const before = known.get(path);
  if (before) return before;
  const statements = path.endsWith(".ts") ? ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest).statements : [];
  const found = [...statements].flatMap((statement) => loadedBy(statement) ?? []).map((name) => resolve(dirname(path), name)).filter((file) => existsSync(file));
  known.set(path, found);
  return found;
};

/** Every file that a file loads, itself included, by absolute path. */
export const reachOf = (path: string): ReadonlySet<string> => {
  const reached = new Set<string>();
  const visit = (one: string): void => {
    if (reached.has(one)) return;
    reached.add(one);
    for (const next of importsOf(one)) visit(next);
  };
  visit(path);
  return reached;
};
