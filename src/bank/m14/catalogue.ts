import type { Family } from "../../engine/question/family.ts";
import { crudeRr } from "./crude-rr.ts";
import { flexionPlan } from "./flexion-plan.ts";
import { oddsToRisk } from "./odds-to-risk.ts";
import { printFault } from "./print-fault.ts";
import { rateCi } from "./rate-ci.ts";
import { realChange } from "./real-change.ts";
import { redFlag } from "./red-flag.ts";
import { score100 } from "./score-100.ts";
import { sideToSide } from "./side-to-side.ts";
import { stepLoad } from "./step-load.ts";
import { visitDates } from "./visit-dates.ts";
import { zeroEvents } from "./zero-events.ts";

/** Families of module M14, in the order of their codes, newest version first. */
export const M14: readonly (readonly Family[])[] = [[visitDates], [stepLoad], [flexionPlan], [rateCi], [oddsToRisk], [crudeRr], [realChange], [score100], [zeroEvents], [redFlag], [printFault], [sideToSide]];
