import json from "../../content/graphs/move-the-knee.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "move-the-knee": what must stand before what. */
export const moveTheKneeEdges: readonly EdgeSpec[] = edgesOf(json);
