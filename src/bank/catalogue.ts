import type { Family } from "../engine/question/family.ts";
import { DX } from "./dx/catalogue.ts";
import { M01 } from "./m01/catalogue.ts";
import { M02 } from "./m02/catalogue.ts";
import { M03 } from "./m03/catalogue.ts";
import { M04 } from "./m04/catalogue.ts";
import { M05 } from "./m05/catalogue.ts";
import { M06 } from "./m06/catalogue.ts";
import { M07 } from "./m07/catalogue.ts";
import { M08 } from "./m08/catalogue.ts";
import { M09 } from "./m09/catalogue.ts";
import { M10 } from "./m10/catalogue.ts";
import { M11 } from "./m11/catalogue.ts";
import { M12 } from "./m12/catalogue.ts";
import { M13 } from "./m13/catalogue.ts";
import { M14 } from "./m14/catalogue.ts";

/** Every family in the order of the curriculum, newest version first; old versions stand behind theirs while a record may name them. */
export const CATALOGUE: readonly (readonly Family[])[] = [...M01, ...M02, ...M03, ...M04, ...M05, ...M06, ...M07, ...M08, ...M09, ...M10, ...M11, ...M12, ...M13, ...M14, ...DX];
