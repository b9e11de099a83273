import json from "../../content/ledger/test-accuracy.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "test-accuracy". */
export const testAccuracy = (pin: string): Pinned => pinnedIn(json, pin);
