import json from "../../content/graphs/pulse-and-foot.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "pulse-and-foot": what must stand before what. */
export const pulseAndFootEdges: readonly EdgeSpec[] = edgesOf(json);
