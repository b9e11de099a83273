import json from "../../content/ledger/score.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "score". */
export const scoreFact = (pin: string): Pinned => pinnedIn(json, pin);
