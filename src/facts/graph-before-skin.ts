import json from "../../content/graphs/before-skin.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "before-skin": what must stand before what. */
export const beforeSkinEdges: readonly EdgeSpec[] = edgesOf(json);
