import json from "../../content/graphs/stations.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "stations": what must stand before what. */
export const stationsEdges: readonly EdgeSpec[] = edgesOf(json);
