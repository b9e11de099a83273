import json from "../../content/ledger/bundle-line.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "bundle-line". */
export const bundleLine = (pin: string): Pinned => pinnedIn(json, pin);
