import { resolve } from "node:path";
import { families } from "../bank/index.ts";
import { LEDGER, ledgerEntry, valueText } from "../facts/ledger.ts";
import { ledgerUses } from "../build/ledger-use.ts";

/** Says who is affected when a number of the ledger gets a new revision. */

const key = process.argv[2]?.split("@")[0] ?? "";
const entries = LEDGER.flatMap((topic) => topic.entries);

const usage = (): never => {
  console.error('Name a ledger entry, for example:\n  npm run affected -- junction-to-bundle.boys');
  process.exit(1);
};

const nearest = (): string => entries.map((entry) => entry.key).filter((one) => one.startsWith(key.split(".")[0] ?? "?")).slice(0, 8).join(", ");

const main = (): void => {
  if (key === "") usage();
  if (!entries.some((entry) => entry.key === key)) {
    console.error(`No entry is called "${key}". ${nearest() === "" ? "The page of the number ledger lists them all." : `Near it: ${nearest()}`}`);
    process.exit(1);
  }
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
