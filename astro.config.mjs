import { satteri } from "@astrojs/markdown-satteri";
import mdx from "@astrojs/mdx";
import react from "@astrojs/react";
import { defineConfig } from "astro/config";
import { address, folder } from "./src/build/address.ts";
import { islandIds } from "./src/build/island-ids.ts";
import { ledgerUse } from "./src/build/ledger-use.ts";
import { lightImports } from "./src/build/light-imports.ts";
import { mathPlugin } from "./src/build/math.ts";
import { slimLedgerForBrowsers } from "./src/build/slim-ledger.ts";

/** Every MDX file raises the same harmless notice about its head marker; all other warnings pass. */
const quiet = (warning, next) => {
  if (warning.code !== "MODULE_LEVEL_DIRECTIVE") next(warning);
};

export default defineConfig({
  site: address,
  base: `${folder}/`,
  trailingSlash: "always",
  build: { inlineStylesheets: "never", format: "directory" },
  devToolbar: { enabled: false },
  markdown: { processor: satteri({ features: { math: true }, mdastPlugins: [mathPlugin] }), syntaxHighlight: false },
  integrations: [react(), mdx(), ledgerUse(), slimLedgerForBrowsers(), lightImports(), islandIds()],
  security: {
    csp: {
      directives: ["default-src 'self'", "img-src 'self' data:", "font-src 'self'", "connect-src 'self'", "base-uri 'self'", "form-action 'none'", "object-src 'none'"],
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
  vite: { build: { target: ["chrome111", "firefox114", "safari16.4"], rolldownOptions: { onwarn: quiet } } },
});
