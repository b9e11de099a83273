import type { AstroIntegration } from "astro";
import { lightCode } from "./light-code.ts";

interface Chunk {
  readonly type: string;
  code?: string;
}

/** Takes the helper of imports out of every script of a bundle, and its file where no script asks for it any more. */
const lighten = (_: unknown, bundle: Record<string, Chunk>): void => {
  const chunks = Object.values(bundle).filter((chunk) => chunk.code !== undefined);
  for (const chunk of chunks) chunk.code = lightCode(chunk.code ?? "");
  for (const file of Object.keys(bundle).filter((name) => name.includes("preload-helper."))) {
    const [name = ""] = file.split("/").slice(-1);
    if (!chunks.some(({ code = "" }) => code.includes(name))) delete bundle[file];
  }
};

/**
 * Leaves out the lists of what each family's file needs beside it, and the helper that would read them. Every page carried
 * the lists of all families, several kilobytes, so that the one family that is worked on comes a moment sooner; its file
 * names what it needs by itself.
 */
export const lightImports = (): AstroIntegration => ({
  name: "light-imports",
  hooks: {
    "astro:config:setup": ({ updateConfig }) => {
      updateConfig({
        vite: {
          plugins: [{
            name: "light-imports",
            enforce: "post",
            configEnvironment: (name: string) => (name === "client" ? { build: { modulePreload: { polyfill: false, resolveDependencies: () => [] } } } : null),
            generateBundle: { order: "post", handler: lighten },
          }],
        },
      });
    },
  },
});
