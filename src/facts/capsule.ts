import json from "../../content/ledger/capsule.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "capsule". */
export const capsule = (pin: string): Pinned => pinnedIn(json, pin);
