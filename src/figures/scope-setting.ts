import { type Camera, cameraOf } from "../engine/knee/scope/camera.ts";
import { type Field, fieldOf, type Place } from "../engine/knee/scope/field.ts";
import type { Compartment, Lesion, Pattern } from "../engine/knee/scope/lesion.ts";
import { inOrder } from "../engine/knee/scope/numbers.ts";
import { SCENE, SURFACE } from "../engine/knee/scope/scene.ts";
import { sceneNumbers } from "../engine/knee/scope/scene-numbers.ts";
import { type Station, type StationId, stationOf } from "../engine/knee/scope/stations.ts";
import { along, length, minus, unit } from "../engine/knee/scope/vec3.ts";
import { type Knee, kneeFrom, type PortalId } from "../engine/knee/knee.ts";
import type { Side } from "../engine/knee/sizes.ts";
import { fieldInLiquidDeg } from "../engine/optics/field-in-liquid-deg.ts";
import { ADULT_CAPSULE_MM, type KneeBand, kneeModel, kneeSizes } from "../facts/knee-model.ts";
import { optics } from "../facts/optics.ts";
import { scopeNumber, scopeShapes } from "../facts/scope-model.ts";
import { type Instrument, instrumentsOf } from "./scope-instruments.ts";

/** What a hand or a module sets; everything else follows from the ledger. */
export interface ScopeSetting {
  readonly band: KneeBand;
  readonly side: Side;
  readonly station: StationId;
  readonly portal: PortalId;
  readonly viewDeg: 0 | 30 | 70;
  /** Where the tilted view points, as a clock angle of the picture: 0 up, positive clockwise. */
  readonly turnDeg: number;
  /** How far the scope is drawn back along its shaft from the station, in mm of the reference knee; negative is farther in. */
  readonly backMm: number;
  readonly flexionDeg: number;
  readonly fieldInAirDeg: number;
  readonly isInSaline: boolean;
  readonly pattern: Pattern;
  readonly of: Compartment;
  readonly amount: number;
  readonly instrument: Instrument;
}

/** Everything that a picture needs. Places are those of a right knee; a left one mirrors the finished picture. */
export interface ScopeModel {
  readonly setting: ScopeSetting;
  readonly station: Station;
  readonly knee: Knee;
  readonly scale: number;
  readonly field: Field;
  readonly surface: Field;
  readonly camera: Camera;
  readonly target: Place;
  readonly portal: Place;
  readonly fieldDeg: number;
  readonly tickMm: number;
  readonly needleMm: number;
}

/** The setting in which a station is usually looked at. */
export const settingAt = (station: StationId, rest: Partial<ScopeSetting> = {}): ScopeSetting => {
  const { portal, viewDeg, turnDeg, flexionDeg } = stationOf(station);
  const isLeft = rest.side === "left";
  const of: Compartment = station.startsWith("lateral") || station === "hiatus" ? "lateral" : "medial";
  return { band: "14-16", side: "right", station, portal, viewDeg, turnDeg: isLeft ? mirroredTurn(turnDeg) : turnDeg, backMm: 0, flexionDeg, fieldInAirDeg: 105, isInSaline: true, pattern: "none", of, amount: 0.5, instrument: "none", ...rest };
};

/** The same turn in the mirror: clock angles run the other way. */
export const mirroredTurn = (turnDeg: number): number => (360 - turnDeg) % 360;

const portalPlace = (knee: Knee, portal: PortalId, scale: number): Place => [knee.portals[portal].xMm / scale, knee.portals[portal].yMm / scale, scopeNumber("portal-height")];

const openings = ({ opened }: Station, scale: number): { readonly medial: number; readonly lateral: number } => {
  const openedMm = (of: Compartment): number => scale * scopeNumber(of === opened ? "opening-stressed" : "opening-rest");
  return { medial: openedMm("medial"), lateral: openedMm("lateral") };
};

/** The model of a setting. */
export const scopeModelOf = (setting: ScopeSetting): ScopeModel => {
  const station = stationOf(setting.station);
  const scale = kneeModel(`scale.${setting.band}@1`).number.value ?? 1;
  const knee = kneeFrom(kneeSizes({ band: setting.band, side: "right", capsuleMm: ADULT_CAPSULE_MM }));
  const portal = portalPlace(knee, setting.portal, scale);
  const shaft = unit(minus(station.lens, portal));
  const deepestMm = length(minus(station.lens, portal)) - 1;
  const tip = along(station.lens, shaft, -Math.min(setting.backMm, deepestMm));
  const index = optics("refractive-index.saline-20@1").number.value ?? 1;
  const fieldDeg = setting.isInSaline ? fieldInLiquidDeg({ fieldInAirDeg: setting.fieldInAirDeg, refractiveIndex: index }) : setting.fieldInAirDeg;
  const lesion: Lesion = { pattern: setting.pattern, of: setting.of, amount: setting.amount };
  const target = station.target(knee, scale);
  const instruments = instrumentsOf(setting.instrument, { knee, scale, target, other: portalPlace(knee, setting.portal === "AL" ? "AM" : "AL", scale), of: setting.of });
  const numbers = inOrder(sceneNumbers({ knee, scale, shapes: scopeShapes(), flexionDeg: setting.flexionDeg, openingMm: openings(station, scale), lesion, tip, portal, ...instruments, stitchRadiusMm: scopeNumber("stitch-radius") }));
  const turnDeg = setting.side === "left" ? mirroredTurn(setting.turnDeg) : setting.turnDeg;
  return {
    setting, station, knee, scale, target, portal, fieldDeg,
    field: fieldOf(SCENE, numbers),
    surface: fieldOf(SURFACE, numbers),
    camera: cameraOf({ portal, tip, viewDeg: setting.viewDeg, turnDeg, fieldDeg }),
    tickMm: 5 / scale,
    needleMm: instruments.needle === null ? 1 : length(minus(instruments.needle.tip, instruments.needle.from)),
  };
};
