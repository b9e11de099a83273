import type { Family } from "../../engine/question/family.ts";
import { bothFaces } from "./both-faces.ts";
import { howMany } from "./how-many.ts";
import { loadShare } from "./load-share.ts";
import { oneMore } from "./one-more.ts";
import { oneStitch } from "./one-stitch.ts";
import { openVsUsed } from "./open-vs-used.ts";
import { orientation } from "./orientation.ts";
import { needlePasses } from "./passes.ts";
import { physisShare } from "./physis-share.ts";
import { realGap } from "./real-gap.ts";
import { spread } from "./spread.ts";
import { timeFit } from "./time-fit.ts";

/** Families of module M11, in the order of their codes, newest version first. */
export const M11: readonly (readonly Family[])[] = [
  [howMany], [realGap], [needlePasses], [bothFaces], [oneStitch], [spread], [orientation], [loadShare], [timeFit], [openVsUsed], [oneMore],
  [physisShare],
];
