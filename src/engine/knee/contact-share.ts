import type { Knee } from "./knee.ts";
import { type AimedLine, lineToPeronealMm } from "./line-to-peroneal-mm.ts";

/** Share of knees, 0 to 1, in which a line drawn on past the popliteus tendon touches the common peroneal nerve; `null` without knees. */
export const contactShare = (knees: readonly Knee[], line: AimedLine): number | null =>
  knees.length === 0 ? null : knees.filter((knee) => lineToPeronealMm(knee, line) <= 0).length / knees.length;
