import json from "../../content/ledger/cuff.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "cuff". */
export const cuff = (pin: string): Pinned => pinnedIn(json, pin);
