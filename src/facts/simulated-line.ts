import json from "../../content/ledger/simulated-line.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "simulated-line". */
export const simulatedLine = (pin: string): Pinned => pinnedIn(json, pin);
