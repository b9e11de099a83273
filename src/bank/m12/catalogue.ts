import type { Family } from "../../engine/question/family.ts";
import { cappedDose } from "./capped-dose.ts";
import { dilute } from "./dilute.ts";
import { infant } from "./infant.ts";
import { injectionSite } from "./injection-site.ts";
import { mostVolume } from "./most-volume.ts";
import { percentStrength } from "./percent.ts";
import { repeatTime } from "./repeat-time.ts";
import { spotIt } from "./spot-it.ts";
import { twoAgents } from "./two-agents.ts";
import { twoSheets } from "./two-sheets.ts";
import { doseUnits } from "./units.ts";
import { writeItSafely } from "./write-it-safely.ts";

/** Families of module M12, in the order of their codes, newest version first. */
export const M12: readonly (readonly Family[])[] = [[cappedDose], [percentStrength], [mostVolume], [twoAgents], [repeatTime], [dilute], [infant], [spotIt], [twoSheets], [doseUnits], [injectionSite], [writeItSafely]];
