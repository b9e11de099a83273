import type { Knee, PortalId } from "../knee.ts";
import { arcPoint } from "../../geometry/arc.ts";
import type { Compartment } from "./lesion.ts";
import type { Place } from "./field.ts";

/** Stops on a walk through the front of the joint, in the order of a common round. */
export const STATIONS = ["medial-body", "medial-horn", "medial-back", "notch", "lateral-back", "hiatus", "lateral-body"] as const;
export type StationId = (typeof STATIONS)[number];

/** How a station is reached: where the lens stands, what is looked for, and how the leg lies. */
export interface Station {
  readonly id: StationId;
  readonly portal: PortalId;
  /** Lens, in mm of the reference knee; drawn. */
  readonly lens: Place;
  /** What is looked for, in mm of the reference knee. */
  readonly target: (knee: Knee, scale: number) => Place;
  readonly flexionDeg: number;
  readonly opened: Compartment | "none";
  readonly viewDeg: 0 | 30 | 70;
  readonly turnDeg: number;
}

const onRim = (of: Compartment, angleDeg: number, heightMm: number) => (knee: Knee, scale: number): Place => {
  const { rim, freeEdge } = knee[of];
  const [outer, inner] = [arcPoint(rim, angleDeg), arcPoint(freeEdge, angleDeg)];
  return [(outer.xMm + inner.xMm) / 2 / scale, (outer.yMm + inner.yMm) / 2 / scale, heightMm];
};

const BY_ID: Readonly<Record<StationId, Omit<Station, "id">>> = {
  "medial-body": { portal: "AL", lens: [-13, 21, 7], target: onRim("medial", -15, 2.5), flexionDeg: 20, opened: "medial", viewDeg: 30, turnDeg: 270 },
  "medial-horn": { portal: "AL", lens: [-13, 6, 6], target: onRim("medial", -85, 2.5), flexionDeg: 20, opened: "medial", viewDeg: 30, turnDeg: 270 },
  "medial-back": { portal: "AL", lens: [-9, 8, 6.2], target: onRim("medial", -85, 2.5), flexionDeg: 20, opened: "medial", viewDeg: 30, turnDeg: 270 },
  notch: { portal: "AL", lens: [6, 27, 11], target: () => [3.5, 3, 9], flexionDeg: 90, opened: "none", viewDeg: 30, turnDeg: 270 },
  "lateral-back": { portal: "AL", lens: [12, 13, 6.5], target: onRim("lateral", -95, 2.5), flexionDeg: 70, opened: "lateral", viewDeg: 30, turnDeg: 270 },
  hiatus: { portal: "AL", lens: [16, 11, 6.5], target: (knee, scale) => hiatusOf(knee, scale), flexionDeg: 70, opened: "lateral", viewDeg: 30, turnDeg: 270 },
  "lateral-body": { portal: "AM", lens: [8, 15, 6.5], target: onRim("lateral", 5, 2.5), flexionDeg: 70, opened: "lateral", viewDeg: 30, turnDeg: 270 },
};

const hiatusOf = (knee: Knee, scale: number): Place => {
  const tendon = knee.structures.find(({ id }) => id === "popliteus");
  return tendon === undefined ? [0, 0, 0] : [tendon.centre.xMm / scale, tendon.centre.yMm / scale, 5];
};

/** A station by its name. */
export const stationOf = (id: StationId): Station => ({ id, ...BY_ID[id] });
