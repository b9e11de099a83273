import json from "../../content/ledger/discoid.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "discoid". */
export const discoid = (pin: string): Pinned => pinnedIn(json, pin);
