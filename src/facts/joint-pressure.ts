import json from "../../content/ledger/joint-pressure.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "joint-pressure". */
export const jointPressure = (pin: string): Pinned => pinnedIn(json, pin);
