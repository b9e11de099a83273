import type { LocalTables } from "../../src/facts/local-list.ts";
import { localListOf } from "../../src/facts/local-list.ts";
import tables from "./held-list.json" with { type: "json" };

/** The local list by which held questions are drawn: a copy that stays as it is when a hospital edits its own. */
export const HELD_LIST = localListOf(tables as LocalTables);
