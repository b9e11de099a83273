import type { Family } from "../../engine/question/family.ts";
import { printFault } from "./print-fault.ts";
import { rateCi } from "./rate-ci.ts";
import { realChange } from "./real-change.ts";
import { redFlag } from "./red-flag.ts";
import { stepLoad } from "./step-load.ts";
import { visitDates } from "./visit-dates.ts";

/** Families of module M14, in the order of their codes, newest version first. */
export const M14: readonly (readonly Family[])[] = [[visitDates], [stepLoad], [rateCi], [realChange], [redFlag], [printFault]];
