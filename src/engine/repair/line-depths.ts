import { sumOnGrid } from "../quantity/grid.ts";

/** Depth from the entry that carries the tip behind the capsule: the way to the junction and the need beyond it. */
export const leastDepthMm = ({ entryToJunctionMm, throughCapsuleMm }: { readonly entryToJunctionMm: number; readonly throughCapsuleMm: number }): number =>
  sumOnGrid(entryToJunctionMm, throughCapsuleMm);

/** Depth from the entry that still keeps the margin in front of a structure; 0 or less where the margin reaches the entry. */
export const greatestDepthMm = ({ entryToJunctionMm, junctionToStructureMm, marginMm }: {
  readonly entryToJunctionMm: number;
  readonly junctionToStructureMm: number;
  readonly marginMm: number;
}): number => sumOnGrid(entryToJunctionMm, junctionToStructureMm, -marginMm);
