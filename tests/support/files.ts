import { readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";

const root = new URL("../..", import.meta.url).pathname.replace(/\/$/, "");

export interface TextFile {
  /** Path from the top of the project. */
  readonly path: string;
  readonly text: string;
}

/** Text files of a folder whose names end in one of the endings. */
export const filesIn = (folder: string, endings: readonly string[]): readonly TextFile[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => endings.some((ending) => name.endsWith(ending)))
    .sort()
    .map((name) => ({ path: join(folder, name), text: readFileSync(join(root, folder, name), "utf8") }));

/** Text of one file of the project. */
export const textOf = (path: string): string => readFileSync(join(root, path), "utf8");

/** The place that an import means: a path from the top of the project, or the name of a package. */
export const imported = (from: string, name: string): string =>
  name.startsWith(".") ? relative(root, join(root, from, "..", name)) : name;
