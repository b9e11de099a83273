import { kneeFrom } from "../../engine/knee/knee.ts";
import { type Camera, cameraOf, rayAt } from "../../engine/knee/scope/camera.ts";
import type { Place } from "../../engine/knee/scope/field.ts";
import { type Spot, spotOf } from "../../engine/knee/scope/spot-of.ts";
import { type StationId, stationOf } from "../../engine/knee/scope/stations.ts";
import { fieldInLiquidDeg } from "../../engine/optics/field-in-liquid-deg.ts";
import type { Draw } from "../../engine/question/family-head.ts";
import { ADULT_CAPSULE_MM, kneeModel, kneeSizes } from "../../facts/knee-model.ts";
import { optics } from "../../facts/optics.ts";
import { scopeNumber } from "../../facts/scope-model.ts";
import { radians } from "./optics-words.ts";

/** Two looks from one tip: straight ahead, and tilted. Nothing comes nearer or goes farther, so a place moves by angles alone. */

export const FIELD_IN_AIR_DEG = 105;
export const TILT_DEG = 30;
const SHARE = 10;
const FULL_TURN_DEG = 360;
const HOUR_DEG = 30;
const HOURS = 12;

interface Look {
  readonly station: StationId;
  /** Where the tilted view points in a right knee, as a clock angle. */
  readonly turnDeg: number;
  /** Places at the edge of one tissue before another, in tenths of the radius of the straight picture. */
  readonly tenths: readonly Spot[];
}

/** Looks of which both pictures hold enough to be recognised. */
export const LOOKS: readonly Look[] = [
  { station: "medial-back", turnDeg: 270, tenths: [[-6, -4], [-6, 4], [-6, 1], [-4, -4], [-4, 1], [-2, -4]] },
  { station: "medial-back", turnDeg: 90, tenths: [[2, -3], [2, 1], [4, 1], [4, -4], [6, -4], [6, 1]] },
  { station: "notch", turnDeg: 180, tenths: [[-5, -4], [-4, -2], [-3, -6], [-2, -5], [1, -3], [3, -5], [5, -4]] },
  { station: "notch", turnDeg: 270, tenths: [[-7, -2], [-5, -4], [-5, 4], [-4, 2], [-4, -3], [-3, -6]] },
  { station: "lateral-back", turnDeg: 270, tenths: [[-7, 2], [-6, -2], [-5, 2], [-4, -3], [-3, 1], [-3, 6]] },
  { station: "lateral-body", turnDeg: 270, tenths: [[-6, -3], [-5, 1], [-4, 3], [-4, -2], [-3, 0], [-2, 2]] },
];

/** The look of a draw, by its station and its turn. */
const lookOf = ({ about }: Pick<Draw, "about">): Pick<Look, "station" | "turnDeg"> => ({ station: (about["station"] ?? "notch") as StationId, turnDeg: Number(about["turnDeg"]) });

/** The field of both scopes in saline. */
export const fieldDeg = (): number => fieldInLiquidDeg({ fieldInAirDeg: FIELD_IN_AIR_DEG, refractiveIndex: optics("refractive-index.saline-20@1").number.value ?? 1 });

/** The camera of a scope at a station of the model knee of 14–16 years, right side. */
export const cameraAt = ({ station, turnDeg }: Pick<Look, "station" | "turnDeg">, viewDeg: number): Camera => {
  const { portal, lens } = stationOf(station);
  const knee = kneeFrom(kneeSizes({ band: "14-16", side: "right", capsuleMm: ADULT_CAPSULE_MM }));
  const scale = kneeModel("scale.14-16@1").number.value ?? 1;
  const place: Place = [knee.portals[portal].xMm / scale, knee.portals[portal].yMm / scale, scopeNumber("portal-height")];
  return cameraOf({ portal: place, tip: lens, viewDeg, turnDeg, fieldDeg: fieldDeg() });
};

const kept = new Map<string, readonly [Camera, Camera]>();
const camerasOf = (look: Pick<Look, "station" | "turnDeg">): readonly [straight: Camera, tilted: Camera] => {
  const key = `${look.station} ${look.turnDeg}`;
  const cameras = kept.get(key) ?? [cameraAt(look, 0), cameraAt(look, TILT_DEG)] as const;
  kept.set(key, cameras);
  return cameras;
};

/** A picture turned as a clock hand runs, by so many hours. */
export const turnedBy = ([x, y]: Spot, hours: number): Spot => {
  const angle = radians(hours * HOUR_DEG);
  return [x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)];
};
const mirrorOf = ({ about }: Pick<Draw, "about">): number => (about["side"] === "left" ? -1 : 1);
export const upHour = ({ about }: Pick<Draw, "about">): number => Number(about["up"] ?? HOURS);

/** The ringed place as it stands in the first picture. */
export const firstSpot = (draw: Pick<Draw, "about">): Spot => {
  const [x = 0, y = 0] = (draw.about["place"] ?? "").split(",").map((tenths) => Number(tenths) / SHARE);
  return [mirrorOf(draw) * x, y];
};

/** The same place in the second picture, before the camera turned. */
export const levelSpot = (draw: Pick<Draw, "about">): Spot => {
  const [straight, tilted] = camerasOf(lookOf(draw));
  const [x, y] = firstSpot(draw);
  const [u, v] = spotOf(tilted, fieldDeg(), rayAt(straight, fieldDeg(), [mirrorOf(draw) * x, y]));
  return [mirrorOf(draw) * u, v];
};

/** The same place in the second picture. */
export const secondSpot = (draw: Pick<Draw, "about">): Spot => turnedBy(levelSpot(draw), upHour(draw));

/** The hour of the first picture towards which the second view is tilted. */
export const tiltHour = (draw: Pick<Draw, "about">): number => {
  const { turnDeg } = lookOf(draw);
  const shownDeg = mirrorOf(draw) < 0 ? (FULL_TURN_DEG - turnDeg) % FULL_TURN_DEG : turnDeg;
  return shownDeg / HOUR_DEG === 0 ? HOURS : shownDeg / HOUR_DEG;
};
