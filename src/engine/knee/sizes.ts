/**
 * All sizes of the model knee. Lengths in mm, angles in degrees. "Lateral" lengths count from the middle of the plateau
 * towards the lateral side, "front" lengths from there forwards; both may be negative. Rim angles count around the centre
 * of a meniscus from its outward side (lateral meniscus: lateral; medial meniscus: medial), positive forwards.
 */
export interface KneeSizes {
  readonly side: Side;
  readonly lateral: MeniscusSizes;
  readonly medial: MeniscusSizes;
  /** Bone beyond the rim of both menisci, in mm; 0 included. */
  readonly plateauMarginMm: number;
  readonly patellarTendon: TendonSizes;
  /** Portal beside the edge of the patellar tendon, in mm; 0 included. */
  readonly portalBesideTendonMm: number;
  readonly popliteus: PopliteusSizes;
  readonly bundle: BundleSizes;
  readonly peroneal: PeronealSizes;
  readonly lateralCollateral: CollateralSizes;
  readonly medialCollateral: CollateralSizes;
  /** Outer wall of the capsule beyond the meniscocapsular junction, in mm; greater than 0. */
  readonly capsuleMm: number;
}

export type Side = "right" | "left";

export interface MeniscusSizes {
  /** Centre of the rim's circle from the middle of the plateau towards its own side, in mm. */
  readonly centreOutwardMm: number;
  /** The same forwards, in mm. */
  readonly centreFrontMm: number;
  /** Radius of the outer rim, the meniscocapsular junction, in mm; greater than 0. */
  readonly rimRadiusMm: number;
  /** Width square to the rim in front, at the side and behind, in mm; greater than 0, each below the radius. */
  readonly frontWidthMm: number;
  readonly bodyWidthMm: number;
  readonly backWidthMm: number;
  /** Rim angle at which the front horn ends, in degrees; 0 to 180. */
  readonly frontEndDeg: number;
  /** Rim angle at which the back horn ends, in degrees; −180 to 0. */
  readonly backEndDeg: number;
}

export interface TendonSizes {
  /** Middle of the tendon towards the lateral side and forwards, in mm. */
  readonly centreLateralMm: number;
  readonly centreFrontMm: number;
  /** Width from side to side and thickness from front to back, in mm; greater than 0. */
  readonly widthMm: number;
  readonly thicknessMm: number;
}

export interface PopliteusSizes {
  /** Rim angle of its centre, in degrees. */
  readonly rimDeg: number;
  /** Its centre beyond the rim, in mm; negative where it lies inside. */
  readonly beyondRimMm: number;
  readonly radiusMm: number;
}

/** A round structure by its place beside the artery, in mm; lateral and backward count positive. */
export interface BesideArtery {
  readonly lateralMm: number;
  readonly backMm: number;
  readonly radiusMm: number;
}

export interface BundleSizes {
  /** Rim angle at which a line from the anterolateral portal to the centre of the artery crosses the junction, in degrees. */
  readonly aimDeg: number;
  /** From the junction to the near wall of the artery along that line, in mm; greater than 0. */
  readonly gapMm: number;
  readonly arteryRadiusMm: number;
  readonly vein: BesideArtery;
  readonly tibialNerve: BesideArtery;
}

export interface PeronealSizes {
  /** Centre of the common peroneal nerve from the centre of the popliteus tendon, lateral and backward, in mm. */
  readonly lateralOfTendonMm: number;
  readonly behindTendonMm: number;
  readonly radiusMm: number;
}

export interface CollateralSizes {
  /** Rim angle of its middle, in degrees. */
  readonly rimDeg: number;
  /** Its middle beyond the rim, in mm. */
  readonly beyondRimMm: number;
  /** Half of its length from front to back along the rim, in mm; greater than 0. */
  readonly halfLengthMm: number;
  readonly thicknessMm: number;
}
