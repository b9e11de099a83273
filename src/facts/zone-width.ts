import json from "../../content/ledger/zone-width.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "zone-width". */
export const zoneWidth = (pin: string): Pinned => pinnedIn(json, pin);
