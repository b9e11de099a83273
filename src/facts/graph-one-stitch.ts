import json from "../../content/graphs/one-stitch.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "one-stitch": what must stand before what. */
export const oneStitchEdges: readonly EdgeSpec[] = edgesOf(json);
