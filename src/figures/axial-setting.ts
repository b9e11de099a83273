import { kneeFrom } from "../engine/knee/knee.ts";
import type { PortalId } from "../engine/knee/knee.ts";
import type { Side } from "../engine/knee/sizes.ts";
import { agesOf, type KneeBand, kneeSizes } from "../facts/knee-model.ts";
import type { AxialModel } from "./axial-model.ts";

/** What a hand or a module sets: everything else of the knee follows from the ledger. */
export interface AxialSetting {
  readonly band: KneeBand;
  readonly side: Side;
  readonly portal: PortalId;
  readonly bearingDeg: number;
  readonly entryToJunctionMm: number;
  readonly depthMm: number;
  readonly marginMm: number;
  /** Outer wall of the capsule as drawn; unknown in children. */
  readonly capsuleMm: number;
}

/** Radius of the needle that the figure draws; an assumption of the figure. */
export const NEEDLE_RADIUS_MM = 0.5;

/** The model of a setting. */
export const axialModelOf = (setting: AxialSetting, look: Pick<AxialModel, "isOwn" | "showsAngles" | "isBlank">): AxialModel => {
  const { band, side, capsuleMm, ...needle } = setting;
  return { ...needle, knee: kneeFrom(kneeSizes({ band, side, capsuleMm })), ages: agesOf(band), needleRadiusMm: NEEDLE_RADIUS_MM, ...look };
};
