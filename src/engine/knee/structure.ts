import type { Circle } from "../geometry/circle.ts";

/** What a needle may meet, in the order in which pages list it. */
export type StructureId = "artery" | "vein" | "tibial-nerve" | "peroneal-nerve" | "popliteus";

/** A round structure of the axial plane, as a cylinder standing on it. */
export interface Structure extends Circle {
  readonly id: StructureId;
}

/** Vessels and nerves, which a needle must not meet; the popliteus tendon is a landmark. */
export const isAtRisk = ({ id }: Structure): boolean => id !== "popliteus";

/** Artery, vein and tibial nerve: the bundle. */
export const isBundle = ({ id }: Structure): boolean => id === "artery" || id === "vein" || id === "tibial-nerve";
