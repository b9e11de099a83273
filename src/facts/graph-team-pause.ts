import json from "../../content/graphs/team-pause.json" with { type: "json" };
import type { EdgeSpec } from "../engine/question/family.ts";
import { edgesOf } from "./graph.ts";

/** The steps of "team-pause": what must stand before what. */
export const teamPauseEdges: readonly EdgeSpec[] = edgesOf(json);
