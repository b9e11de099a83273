import json from "../../content/ledger/liquid.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "liquid". */
export const liquid = (pin: string): Pinned => pinnedIn(json, pin);
