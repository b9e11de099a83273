import { resolve } from "node:path";
import { families } from "../bank/index.ts";
import { LEDGER, ledgerEntry, valueText } from "../facts/ledger.ts";
import { ledgerUses } from "../build/ledger-use.ts";
import { nearest } from "./check/nearest.ts";
import { fail, wordsOf } from "./words.ts";

/** Says who is affected when a number of the ledger gets a new revision. */

const { words: [typed = ""] } = wordsOf({ name: "affected", does: "Says who is affected when a number of the ledger gets a new revision.", words: ["ledger key"], example: "npm run affected -- junction-to-bundle.boys" });
const key = typed.split("@")[0] ?? "";
const entries = LEDGER.flatMap((topic) => topic.entries);

const MOST_NEAR = 8;

/** Keys of the same topic, or else those that hold a word of what was typed. */
const near = (): string => {
  const keys = entries.map((entry) => entry.key);
  const [topic = "?"] = key.split(".");
  const found = keys.filter((one) => one.startsWith(topic));
  return (found.length > 0 ? found : [nearest(key, keys) ?? keys.find((one) => one.includes(topic))].filter((one) => one !== undefined)).slice(0, MOST_NEAR).join(", ");
};

const main = (): void => {
  if (key === "") fail("Name a ledger entry, for example:\n  npm run affected -- junction-to-bundle.boys");
  if (!entries.some((entry) => entry.key === key)) fail(`No entry is called "${key}". ${near() === "" ? "The page of the number ledger lists them all." : `Near it: ${near()}`}`);
  const { entry, revision } = ledgerEntry(key);
  console.log(`${key}@${revision.revision}  ${valueText(revision.value, entry.unit)}  (${revision.state})`);
  const pinned = families.flatMap((family) => family.reads.filter((pin) => pin.split("@")[0] === key).map((pin) => `  question ${family.code} ${family.id}, version ${family.version}, reads ${pin}: a new revision needs a new version`));
  const derived = entries.flatMap((one) => one.revisions.filter(({ parents }) => parents?.some((parent) => parent.split("@")[0] === key)).map(({ revision: number, formula }) => `  entry ${one.key}@${number} is derived from it: ${formula}`));
  const conflicts = LEDGER.flatMap(({ topic, conflicts: held }) => (held ?? []).filter(({ between }) => between.includes(key)).map(({ id }) => `  conflict ${id} in content/ledger/${topic}.json names it`));
  const use = ledgerUses(resolve(import.meta.dirname, "../.."))[key];
  const shown = (use?.modules ?? []).map((slug) => `  module content/modules/${slug}.mdx shows it`);
  const checks = (use?.tests ?? []).map((name) => `  check tests/published/${name}.test.ts names it`);
  const lines = [...pinned, ...derived, ...shown, ...conflicts, ...checks];
  console.log(lines.length === 0 ? "  Nobody reads it yet." : lines.join("\n"));
};

main();
