import json from "../../content/ledger/carbon.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "carbon". */
export const carbon = (pin: string): Pinned => pinnedIn(json, pin);
