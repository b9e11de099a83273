import type { AstroIntegration } from "astro";

/**
 * Leaves out the lists of what each family's file needs beside it. Every page carried the lists of all families, several
 * kilobytes, so that the one family that is worked on comes a moment sooner; its file names what it needs by itself.
 */
export const lightImports = (): AstroIntegration => ({
  name: "light-imports",
  hooks: {
    "astro:config:setup": ({ updateConfig }) => {
      updateConfig({
        vite: {
          plugins: [{
            name: "light-imports",
            configEnvironment: (name: string) => (name === "client" ? { build: { modulePreload: { polyfill: false, resolveDependencies: () => [] } } } : null),
          }],
        },
      });
    },
  },
});
