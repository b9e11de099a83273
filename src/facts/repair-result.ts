import json from "../../content/ledger/repair-result.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "repair-result". */
export const repairResult = (pin: string): Pinned => pinnedIn(json, pin);
