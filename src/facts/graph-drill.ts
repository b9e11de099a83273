import json from "../../content/graphs/drill.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "drill": what must stand before what. */
export const drillEdges: readonly EdgeSpec[] = edgesOf(json);
