import json from "../../content/ledger/tear.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "tear". */
export const tear = (pin: string): Pinned => pinnedIn(json, pin);
