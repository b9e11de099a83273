import { camelOf } from "./names.ts";

/** A family's name in the lists of its module. */
export interface Listed {
  readonly id: string;
  readonly module: string;
}

const importLine = ({ id }: Listed): string => `import { ${camelOf(id)} } from "./${id}.ts";`;
const key = (id: string): string => (id.includes("-") ? `"${id}"` : id);

/** A line put among others of its kind: behind the last of them that sorts before it, or the last of all. */
const withLine = (text: string, line: string, isKin: (each: string) => boolean): string => {
  const lines = text.split("\n");
  const kin = lines.flatMap((each, index) => (isKin(each) ? [index] : []));
  const before = kin.filter((index) => (lines[index] ?? "").localeCompare(line, "en") < 0).at(-1);
  const at = before ?? (kin[0] === undefined ? -1 : kin[0] - 1);
  return [...lines.slice(0, at + 1), line, ...lines.slice(at + 1)].join("\n");
};

/** A line put before the closing bracket of the last list of a file, with a comma behind what stood last. */
const atEnd = (text: string, line: string, close: string): string => {
  const at = text.lastIndexOf(close);
  const head = text.slice(0, at).trimEnd();
  return `${head}${/[,[{]$/.test(head) ? "" : ","}\n${line}\n${text.slice(at)}`;
};

const isImport = (each: string): boolean => /^import \{ \w+ \} from "\.\/[^/]+\.ts";$/.test(each);

/** `catalogue.ts` of a module with the new family at its end. */
export const catalogueWith = (text: string | null, family: Listed): string => {
  const { module } = family;
  if (text === null) {
    return `import type { Family } from "../../engine/question/family.ts";\n${importLine(family)}\n\n/** Families of module ${module}, in the order of their codes, newest version first. */\nexport const ${module}: readonly (readonly Family[])[] = [\n  [${camelOf(family.id)}],\n];\n`;
  }
  return atEnd(withLine(text, importLine(family), isImport), `  [${camelOf(family.id)}],`, "];");
};

/** `load.ts` of a module with the new family at its end. */
export const loadWith = (text: string | null, { id, module }: Listed): string => {
  const line = `  ${key(id)}: () => import("./${id}.ts"),`;
  if (text === null) return `import type { Loaders } from "../loaders.ts";\n\n/** One chunk a family of module ${module}. */\nexport const LOAD_${module}: Loaders = {\n${line}\n};\n`;
  return atEnd(text, line, "};");
};

/** The bank's own list with a module that had no family yet. */
export const bankCatalogueWith = (text: string, module: string): string => {
  const folder = module.toLowerCase();
  if (text.includes(`./${folder}/catalogue.ts`)) return text;
  const line = `import { ${module} } from "./${folder}/catalogue.ts";`;
  return withLine(text, line, (each) => /^import \{ \w+ \} from "\.\/\w+\/catalogue\.ts";$/.test(each)).replace(/(\[(?:\.\.\.\w+, )*\.\.\.\w+)\];/, `$1, ...${module}];`);
};

/** The bank's own loaders with a module that had no family yet. */
export const bankLoadWith = (text: string, module: string): string => {
  const folder = module.toLowerCase();
  if (text.includes(`./${folder}/load.ts`)) return text;
  const line = `import { LOAD_${module} } from "./${folder}/load.ts";`;
  return withLine(text, line, (each) => /^import \{ LOAD_\w+ \} from "\.\/\w+\/load\.ts";$/.test(each)).replace(/(\{ (?:\.\.\.\w+, )*\.\.\.\w+) \};/, `$1, ...LOAD_${module} };`);
};
