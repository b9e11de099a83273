import json from "../../content/graphs/skin-and-warmth.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "skin-and-warmth": what must stand before what. */
export const skinAndWarmthEdges: readonly EdgeSpec[] = edgesOf(json);
