import json from "../../content/ledger/optics.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "optics". */
export const optics = (pin: string): Pinned => pinnedIn(json, pin);
