import json from "../../content/graphs/set-up.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "set-up": what must stand before what. */
export const setUpEdges: readonly EdgeSpec[] = edgesOf(json);
