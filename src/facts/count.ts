import json from "../../content/ledger/count.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "count". */
export const countFact = (pin: string): Pinned => pinnedIn(json, pin);
