import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { jsonFaults } from "./json-form.ts";
import { readJson } from "./json-file.ts";
import { problemsOf } from "./problem.ts";
import type { Problem } from "./finding.ts";

/**
 * JSON files under a folder that cannot be read at all. They are named alone and first: everything else that would be
 * said follows from them, and question families read some of them while they are loaded.
 */
export const unreadableIn = (folder: string, shown: (path: string) => string): readonly Problem[] => {
  if (!existsSync(folder)) return [];
  const paths = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json")).sort();
  const files = paths.map((name) => readJson(join(folder, name), shown(join(folder, name)))).filter(({ value }) => value === undefined);
  return problemsOf(files.flatMap((file) => jsonFaults(file, "JSON")));
};
