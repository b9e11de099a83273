import type { AstroIntegration } from "astro";
import type { TopicData } from "../facts/reader.ts";

const LEDGER_FILE = /\/content\/ledger\/[^/]+\.json$/;

/** A ledger file without its prose: all that `pinnedIn` reads, and nothing else. Pages are built from the whole file; a browser only computes with it. */
export const slimLedger = (text: string): string => {
  const { topic, entries } = JSON.parse(text) as TopicData;
  return JSON.stringify({
    topic,
    entries: entries.map(({ key, name, unit, population: { adult }, revisions }) => ({
      key,
      name,
      unit,
      population: { adult },
      revisions: revisions.map(({ revision, state, value, source }) => ({ revision, state, value, source })),
    })),
  });
};

const slimmed = (code: string, id: string): string | null => (LEDGER_FILE.test(id) ? slimLedger(code) : null);

/** Sends the numbers of the ledger to browsers without the prose around them, which weighs several times as much. */
export const slimLedgerForBrowsers = (): AstroIntegration => ({
  name: "slim-ledger",
  hooks: {
    "astro:config:setup": ({ updateConfig }) => {
      updateConfig({
        vite: {
          plugins: [{
            name: "slim-ledger",
            enforce: "pre",
            transform: (code: string, id: string, options?: { readonly ssr?: boolean | undefined }) => {
              const slim = options?.ssr === true ? null : slimmed(code, id);
              return slim === null ? null : { code: slim, map: null };
            },
          }],
        },
      });
    },
  },
});
