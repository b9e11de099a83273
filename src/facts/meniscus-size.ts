import json from "../../content/ledger/meniscus-size.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "meniscus-size". */
export const meniscusSize = (pin: string): Pinned => pinnedIn(json, pin);
