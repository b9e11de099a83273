import type { Family } from "../../engine/question/family.ts";
import { dateCheck } from "./date-check.ts";
import { fieldFault } from "./field-fault.ts";
import { firstPicture } from "./first-picture.ts";
import { openingSum } from "./opening-sum.ts";
import { packCheck } from "./pack-check.ts";
import { pictureRoute } from "./picture-route.ts";
import { setUpMinutes } from "./set-up-minutes.ts";
import { setUp } from "./set-up.ts";
import { spares } from "./spares.ts";
import { teamPause } from "./team-pause.ts";

/** Families of module M04, in the order of their codes, newest version first. */
export const M04: readonly (readonly Family[])[] = [
  [packCheck], [dateCheck], [openingSum], [setUpMinutes], [setUp], [spares], [pictureRoute], [fieldFault],
  [firstPicture], [teamPause],
];
