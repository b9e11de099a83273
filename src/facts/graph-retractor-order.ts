import json from "../../content/graphs/retractor-order.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "retractor-order": what must stand before what. */
export const retractorOrderEdges: readonly EdgeSpec[] = edgesOf(json);
