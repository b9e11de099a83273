import type { Family } from "../engine/question/family.ts";
import { greatestDepth } from "./m10/greatest-depth.ts";
import { leastDepth } from "./m10/least-depth.ts";
import { pathWidth } from "./m10/path-width.ts";
import { depthWindow } from "./m10/window.ts";

/** Every family in the order of the curriculum, newest version; old versions stand behind theirs while a record may name them. */
export const CATALOGUE: readonly (readonly Family[])[] = [[pathWidth], [leastDepth], [greatestDepth], [depthWindow]];
