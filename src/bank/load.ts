import type { Family } from "../engine/question/family.ts";
import type { Loaders } from "./loaders.ts";
import { LOAD_DX } from "./dx/load.ts";
import { LOAD_M01 } from "./m01/load.ts";
import { LOAD_M02 } from "./m02/load.ts";
import { LOAD_M03 } from "./m03/load.ts";
import { LOAD_M04 } from "./m04/load.ts";
import { LOAD_M05 } from "./m05/load.ts";
import { LOAD_M06 } from "./m06/load.ts";
import { LOAD_M07 } from "./m07/load.ts";
import { LOAD_M08 } from "./m08/load.ts";
import { LOAD_M09 } from "./m09/load.ts";
import { LOAD_M10 } from "./m10/load.ts";
import { LOAD_M11 } from "./m11/load.ts";
import { LOAD_M12 } from "./m12/load.ts";
import { LOAD_M13 } from "./m13/load.ts";
import { LOAD_M14 } from "./m14/load.ts";

const LOADERS: Loaders = { ...LOAD_M01, ...LOAD_M02, ...LOAD_M03, ...LOAD_M04, ...LOAD_M05, ...LOAD_M06, ...LOAD_M07, ...LOAD_M08, ...LOAD_M09, ...LOAD_M10, ...LOAD_M11, ...LOAD_M12, ...LOAD_M13, ...LOAD_M14, ...LOAD_DX };

const isFamily = (part: unknown, id: string): part is Family => typeof part === "object" && part !== null && "id" in part && part.id === id && "kind" in part;

/** The newest version of a family by its id; rejects with a RangeError for an id that is not listed, or whose file does not hold it. */
export const loadFamily = async (id: string): Promise<Family> => {
  const load = LOADERS[id];
  if (!load) throw new RangeError(`id must name a family, got ${id}`);
  const [family] = Object.values(await load()).filter((part) => isFamily(part, id)).toSorted((first, second) => second.version - first.version);
  if (!family) throw new RangeError(`the file of ${id} must export the family, got none of that id`);
  return family;
};
