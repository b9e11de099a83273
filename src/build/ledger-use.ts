import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

/** Where one ledger entry is used: modules that show it, and checks against publications that name it. */
export interface LedgerUse {
  readonly modules: readonly string[];
  readonly tests: readonly string[];
}

const NAME = "virtual:ledger-use";
const TAG = /<Num\s[^>]*of="([^"@]+)/g;
const KEY = /["'`]([a-z0-9]+(?:-[a-z0-9]+)*\.[a-z0-9]+(?:-[a-z0-9]+)*)(?:@\d+)?["'`]/g;

const filesOf = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(ending)).sort();

const gather = (root: string, { folder, ending, pattern }: { folder: string; ending: string; pattern: RegExp }): Map<string, Set<string>> => {
  const found = new Map<string, Set<string>>();
  for (const name of filesOf(join(root, folder), ending)) {
    for (const [, key = ""] of readFileSync(join(root, folder, name), "utf8").matchAll(pattern)) {
      found.set(key, (found.get(key) ?? new Set()).add(name.replace(ending, "")));
    }
  }
  return found;
};

/** Uses of every ledger entry that any module or any published check names. */
export const ledgerUses = (root: string): Readonly<Record<string, LedgerUse>> => {
  const modules = gather(root, { folder: "content/modules", ending: ".mdx", pattern: TAG });
  const tests = gather(root, { folder: "tests/published", ending: ".test.ts", pattern: KEY });
  const keys = new Set([...modules.keys(), ...tests.keys()]);
  return Object.fromEntries([...keys].sort().map((key) => [key, { modules: [...(modules.get(key) ?? [])], tests: [...(tests.get(key) ?? [])] }]));
};

/** Gives pages the uses of the ledger under the name "virtual:ledger-use". */
export const ledgerUse = (): AstroIntegration => ({
  name: "ledger-use",
  hooks: {
    "astro:config:setup": ({ config, updateConfig }) => {
      const root = fileURLToPath(config.root);
      updateConfig({
        vite: {
          plugins: [{
            name: "ledger-use",
            resolveId: (id: string) => (id === NAME ? `\0${NAME}` : undefined),
            load: (id: string) => (id === `\0${NAME}` ? `export default ${JSON.stringify(ledgerUses(root))}` : undefined),
          }],
        },
      });
    },
  },
});
