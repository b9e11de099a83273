import type { Family } from "../../engine/question/family.ts";
import { breakEven } from "./break-even.ts";
import { drill } from "./drill.ts";
import { evidenceBothWays } from "./evidence-both-ways.ts";
import { howRare } from "./how-rare.ts";
import { implantTrace } from "./implant-trace.ts";
import { massCarbon } from "./mass-carbon.ts";
import { needles } from "./needles.ts";
import { reconcile } from "./reconcile.ts";
import { record } from "./record.ts";
import { streams } from "./streams.ts";

/** Families of module M13, in the order of their codes, newest version first. */
export const M13: readonly (readonly Family[])[] = [[reconcile], [needles], [drill], [streams], [massCarbon], [breakEven], [howRare], [record], [evidenceBothWays], [implantTrace]];
