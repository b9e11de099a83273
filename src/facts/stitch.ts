import json from "../../content/ledger/stitch.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "stitch". */
export const stitch = (pin: string): Pinned => pinnedIn(json, pin);
