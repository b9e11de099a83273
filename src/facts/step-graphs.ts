import drill from "../../content/graphs/drill.json" with { type: "json" };
import setUp from "../../content/graphs/set-up.json" with { type: "json" };
import type { GraphData } from "./graph.ts";

/** The step graphs that the trolley card prints, with their reasons: for pages that are built, not for islands. */
export const SET_UP_GRAPH: GraphData = setUp;
export const DRILL_GRAPH: GraphData = drill;
