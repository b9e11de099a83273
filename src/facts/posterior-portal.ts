import json from "../../content/ledger/posterior-portal.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "posterior-portal". */
export const posteriorPortal = (pin: string): Pinned => pinnedIn(json, pin);
