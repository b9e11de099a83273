import json from "../../content/ledger/local-anaesthetic.json" with { type: "json" };
import { type Pinned, pinnedIn } from "./reader.ts";

/** Reads a pinned value of the ledger topic "local-anaesthetic". */
export const localAnaesthetic = (pin: string): Pinned => pinnedIn(json, pin);
