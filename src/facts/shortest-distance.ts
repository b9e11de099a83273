import json from "../../content/ledger/shortest-distance.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "shortest-distance". */
export const shortestDistance = (pin: string): Pinned => pinnedIn(json, pin);
