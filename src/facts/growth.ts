import json from "../../content/ledger/growth.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "growth". */
export const growth = (pin: string): Pinned => pinnedIn(json, pin);
