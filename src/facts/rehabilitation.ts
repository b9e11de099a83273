import json from "../../content/ledger/rehabilitation.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "rehabilitation". */
export const rehabilitation = (pin: string): Pinned => pinnedIn(json, pin);
