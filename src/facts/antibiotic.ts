import json from "../../content/ledger/antibiotic.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "antibiotic". */
export const antibiotic = (pin: string): Pinned => pinnedIn(json, pin);
