import { needleUnder } from "../engine/knee/aimed-needle.ts";
import { type AngleInterval, type AnglesAtPortal, clearAngles } from "../engine/knee/clear-angles.ts";
import type { Knee, PortalId } from "../engine/knee/knee.ts";
import type { Needle } from "../engine/knee/needle.ts";

/** One setting of the axial figure: every picture, number and word of it comes from here. */
export interface AxialModel {
  readonly knee: Knee;
  /** Age band in words: "8–10 years". */
  readonly ages: string;
  readonly portal: PortalId;
  readonly bearingDeg: number;
  readonly entryToJunctionMm: number;
  readonly depthMm: number;
  readonly marginMm: number;
  readonly needleRadiusMm: number;
  /** True where the needle is the learner's own. */
  readonly isOwn: boolean;
  /** False where angles would give an answer away. */
  readonly showsAngles: boolean;
  /** On paper, where the reader draws the line: the knee and its portals without a needle. */
  readonly isBlank?: true;
}

export interface AxialView {
  readonly model: AxialModel;
  /** `null` where the line misses the lateral meniscus. */
  readonly needle: Needle | null;
  readonly angles: AnglesAtPortal;
}

/** All that the figure shows of one setting. */
export const axialView = (model: AxialModel): AxialView => {
  const { knee, portal, marginMm, needleRadiusMm, depthMm, entryToJunctionMm } = model;
  const beyondJunctionMm = Math.max(0, depthMm - entryToJunctionMm);
  return { model, needle: needleUnder(model), angles: clearAngles({ knee, portal, marginMm, needleRadiusMm, beyondJunctionMm }) };
};

/** True where the needle keeps the margin to every vessel and nerve. */
export const isClear = ({ model, needle }: AxialView): boolean => needle !== null && needle.nearest.clearanceMm >= model.marginMm;

/** Blocked angles inside the rim, joined where they overlap: what is left between the clear ones. */
export const blockedInside = ({ angles: { rim, clear } }: AxialView): readonly AngleInterval[] => {
  const blocked: AngleInterval[] = [];
  let from = rim.fromDeg;
  for (const interval of clear) {
    if (interval.fromDeg > from) blocked.push({ fromDeg: from, toDeg: interval.fromDeg });
    from = interval.toDeg;
  }
  if (from < rim.toDeg) blocked.push({ fromDeg: from, toDeg: rim.toDeg });
  return blocked;
};
