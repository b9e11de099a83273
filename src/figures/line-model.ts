import { compareOnGrid, sumOnGrid } from "../engine/quantity/grid.ts";
import { greatestDepthMm, leastDepthMm } from "../engine/repair/line-depths.ts";

/** What is drawn of one line aimed at the bundle: every number in millimetres along the needle, zero at its entry. */
export interface LineModel {
  readonly entryName: "entry" | "free edge";
  readonly entryToJunctionMm: number;
  readonly junctionToBundleMm: number;
  readonly freeEdgeToBundleMm: number;
  readonly marginMm?: number;
  readonly throughCapsuleMm?: number;
  /** Drawn only once the question is answered. */
  readonly answered: boolean;
  /** The depths that the learner typed. */
  readonly yoursMm: readonly number[];
}

export interface LinePlaces {
  readonly freeEdgeMm: number;
  readonly junctionMm: number;
  readonly bundleMm: number;
  readonly greatestMm?: number;
  readonly leastMm?: number;
  /** True where the need is larger than the room. */
  readonly isEmpty: boolean;
}

/** Where everything stands along the needle. The same sums as grading, so picture and verdict cannot differ. */
export const placesOn = (model: LineModel): LinePlaces => {
  const { entryToJunctionMm, junctionToBundleMm, freeEdgeToBundleMm, marginMm, throughCapsuleMm } = model;
  const bundleMm = sumOnGrid(entryToJunctionMm, junctionToBundleMm);
  const greatestMm = marginMm === undefined ? undefined : greatestDepthMm({ entryToJunctionMm, junctionToStructureMm: junctionToBundleMm, marginMm });
  const leastMm = throughCapsuleMm === undefined ? undefined : leastDepthMm({ entryToJunctionMm, throughCapsuleMm });
  return {
    freeEdgeMm: sumOnGrid(bundleMm, -freeEdgeToBundleMm),
    junctionMm: entryToJunctionMm,
    bundleMm,
    ...(greatestMm === undefined ? {} : { greatestMm }),
    ...(leastMm === undefined ? {} : { leastMm }),
    isEmpty: greatestMm !== undefined && leastMm !== undefined && compareOnGrid(leastMm, greatestMm) > 0,
  };
};
