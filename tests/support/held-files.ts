import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import type { HeldFile, HeldItem } from "./held.ts";

/** Held questions stand in one file for each module, so that a change of one module touches no other. */
const FOLDER = new URL("../laws/held/", import.meta.url);

const fileOf = (module: string): URL => new URL(`${module.toLowerCase()}.json`, FOLDER);

/** Modules that hold something, as the names of their files have them: `m10`. */
export const heldModules = (): readonly string[] => readdirSync(FOLDER).filter((name) => name.endsWith(".json")).map((name) => name.slice(0, -".json".length)).sort();

/** What one module holds; nothing where it has no file yet. */
export const heldIn = (module: string): HeldFile =>
  heldModules().includes(module.toLowerCase()) ? (JSON.parse(readFileSync(fileOf(module), "utf8")) as HeldFile) : {};

/** Writes what one module holds. */
export const writeHeld = (module: string, held: Readonly<Record<string, readonly HeldItem[]>>): void => writeFileSync(fileOf(module), `${JSON.stringify(held, null, 1)}\n`);
