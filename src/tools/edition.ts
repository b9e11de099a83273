import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parse } from "yaml";
import { families } from "../bank/index.ts";
import { type ModuleMatter, moduleSchema } from "../schemas/module.ts";
import { fail, type Tool, wordsOf } from "./words.ts";

/**
 * Writes what the sheet numbers and carry codes of a new edition mean. Editions that are out are never touched: the file
 * only grows, and a sheet number or a carry code of years ago keeps its meaning. `--replace` rewrites the newest one,
 * which is right only before it has been given out.
 */

const FILE = resolve(import.meta.dirname, "../../content/editions.json");
const MODULES = resolve(import.meta.dirname, "../../content/modules");
const ROLES = ["resident", "nurse", "director"] as const;
const MIXED_SLOTS = 12;
const LAST_EDITION = 31;

interface Held {
  readonly edition: number;
}

const matterOf = (file: string): ModuleMatter => moduleSchema.parse(parse(/^---\n([\s\S]*?)\n---/.exec(readFileSync(join(MODULES, file), "utf8"))?.[1] ?? ""));

const modules = readdirSync(MODULES).filter((file) => file.endsWith(".mdx")).map(matterOf).toSorted((one, other) => families.findIndex(({ module }) => module === one.code) - families.findIndex(({ module }) => module === other.code));
const codes = [...new Set(families.map(({ module }) => module))].toSorted();
const asked = (code: string): readonly string[] => families.filter((family) => family.module === code && family.kind !== "chain").map(({ id }) => id);

const coreOf = (role: (typeof ROLES)[number]): readonly string[] => modules.filter(({ roles }) => roles[role] === "core").map(({ code }) => code);

/** Pools by name: one a module, and one for all core modules of a role. */
const poolsOf = (): Readonly<Record<string, readonly string[]>> => ({
  ...Object.fromEntries(codes.map((code) => [code, asked(code)])),
  ...Object.fromEntries(ROLES.map((role) => [role, coreOf(role).flatMap(asked)])),
});

const plansOf = () =>
  ROLES.flatMap((role, index) => [
    { plan: 1 + index, kind: "entry", role, slots: coreOf(role) },
    { plan: 1 + ROLES.length + index, kind: "mixed", role, slots: Array.from({ length: MIXED_SLOTS }, () => role) },
  ]);

const editionOf = (edition: number) => ({
  edition,
  families: families.map(({ id, version, module }) => [id, version, module]),
  pools: poolsOf(),
  plans: plansOf(),
  carry: { modules: codes, safety: [...new Set(families.filter(({ unsafe }) => unsafe).flatMap(({ objectives }) => objectives))] },
});

const TOOL: Tool = {
  name: "edition",
  does: "Adds an edition: what its sheet numbers and carry codes mean. Run it when families are added or get a new version.",
  flags: { replace: { says: "rewrites the newest edition instead, before anybody has it" } },
};

const held = JSON.parse(readFileSync(FILE, "utf8")) as readonly Held[];
const kept = wordsOf(TOOL).has("replace") ? held.slice(0, -1) : held;
const number = (kept.at(-1)?.edition ?? 0) + 1;
if (number > LAST_EDITION) fail(`edition must be at most ${LAST_EDITION}: sheet numbers have no room for more. Nothing was written.`);
writeFileSync(FILE, `[\n${[...kept, editionOf(number)].map((one) => JSON.stringify(one)).join(",\n")}\n]\n`);
console.log(`Edition ${number} written: ${families.length} question families, ${plansOf().length} plans. Commit content/editions.json with the families it lists.`);
