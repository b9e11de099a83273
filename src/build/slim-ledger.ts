import type { AstroIntegration } from "astro";
import type { CautionData } from "../facts/cautions.ts";
import type { TopicData } from "../facts/reader.ts";

const LEDGER_FILE = /\/content\/ledger\/[^/]+\.json$/;
const CAUTIONS_FILE = /\/content\/cautions\.json$/;

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

/** The cautions as an island says them: where each must stand is settled while pages are built. */
export const slimCautions = (text: string): string => JSON.stringify((JSON.parse(text) as readonly CautionData[]).map(({ id, text: said }) => ({ id, text: said, places: [] })));

const slimmed = (code: string, id: string): string | null => {
  if (LEDGER_FILE.test(id)) return slimLedger(code);
  return CAUTIONS_FILE.test(id) ? slimCautions(code) : null;
};

/** Sends the numbers of the ledger to browsers without the prose around them, which weighs several times as much, and the cautions without their places. */
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
