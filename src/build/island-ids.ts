import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { AstroIntegration } from "astro";

/** Numbers the islands of a page in their order, since Astro's own ids change with the folder of the build. */
export const renumbered = (html: string): string => {
  let count = 0;
  return html.replace(/(<astro-island uid=")[^"]*(")/g, (_, before: string, after: string) => {
    count += 1;
    return `${before}i${count}${after}`;
  });
};

/** Makes two builds of the same content byte-identical, whatever their folders. */
export const islandIds = (): AstroIntegration => ({
  name: "island-ids",
  hooks: {
    "astro:build:done": ({ dir }) => {
      const folder = fileURLToPath(dir);
      const pages = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".html"));
      for (const page of pages) {
        const path = join(folder, page);
        writeFileSync(path, renumbered(readFileSync(path, "utf8")));
      }
    },
  },
});
