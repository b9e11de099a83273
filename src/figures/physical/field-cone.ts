import { fieldInLiquidDeg } from "../../engine/optics/field-in-liquid-deg.ts";
import { fieldWidthMm } from "../../engine/optics/field-width-mm.ts";
import { sweptConeDeg } from "../../engine/optics/swept-cone-deg.ts";
import { withUnit } from "../../engine/quantity/format.ts";
import { element, pathThrough } from "../markup.ts";
import { drawn, inWords, WIDTH_PX, words } from "../pictures/picture.ts";
import { type PhysicalFigure, polar } from "./physical-figure.ts";

export interface FieldCone {
  /** Tilt of the view from the shaft, 0 to 90 included. */
  readonly viewDeg: number;
  /** Full angle of the field in air, greater than 0 and less than 180. */
  readonly fieldInAirDeg: number;
  readonly refractiveIndex: number;
  /** Where the round is measured, square to the view. */
  readonly distanceMm: number;
}

const TIP = [150, 134] as const;
const RAY_PX = 122;
const SHAFT_PX = 7;
const HEIGHT_PX = 304;

const wedge = (middleDeg: number, fullDeg: number): string => {
  const steps = Array.from({ length: 13 }, (_, index) => middleDeg - fullDeg / 2 + (fullDeg * index) / 12);
  return pathThrough([TIP, ...steps.map((angleDeg) => polar(TIP, RAY_PX, angleDeg))], true);
};
const ray = (angleDeg: number, lengthPx = RAY_PX): string => pathThrough([TIP, polar(TIP, lengthPx, angleDeg)]);
const deg = (value: number): string => `${value.toFixed(0)}°`;
const mm = (value: number): string => withUnit(value.toFixed(1), "mm");

const sweptText = (viewDeg: number, fieldDeg: number): string => {
  if (viewDeg === 0) return "Turned about its shaft this scope shows the same cone again.";
  const { totalDeg, blindDeg } = sweptConeDeg({ viewDeg, fieldDeg });
  const blind = blindDeg > 0 ? `and leaves a cone of ${deg(blindDeg)} straight ahead unseen` : "and leaves nothing out straight ahead";
  return `In saline a full turn about the shaft sweeps ${deg(totalDeg)} ${blind}.`;
};

/** The cone that a scope sees, in air and in liquid, with the direction of view and what a full turn sweeps. */
export const fieldCone = ({ viewDeg, fieldInAirDeg, refractiveIndex, distanceMm }: FieldCone): PhysicalFigure => {
  const fieldDeg = fieldInLiquidDeg({ fieldInAirDeg, refractiveIndex });
  const [airMm, salineMm] = [fieldInAirDeg, fieldDeg].map((one) => fieldWidthMm({ distanceMm, fieldDeg: one }));
  const turned = viewDeg === 0 ? "" : element("path", { class: "t-thin", "stroke-dasharray": "2 5", d: ray(-viewDeg + fieldDeg / 2) + ray(-viewDeg - fieldDeg / 2) });
  const [labelX, labelY] = polar(TIP, RAY_PX + 6, viewDeg);
  const said = `A scope looks ${viewDeg === 0 ? "straight along its shaft" : `${deg(viewDeg)} off its shaft`}. Its field is ${deg(fieldInAirDeg)} in air and ${deg(fieldDeg)} in saline.`;
  const rounds = `At ${withUnit(String(distanceMm), "mm")} the round is ${mm(airMm ?? 0)} wide in air and ${mm(salineMm ?? 0)} in saline.`;
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, [
      element("path", { class: "t-thin2", fill: "none", "stroke-dasharray": "6 4", d: wedge(viewDeg, fieldInAirDeg) }),
      element("path", { class: "t-bone", d: wedge(viewDeg, fieldDeg) }),
      element("path", { class: "t-out", d: wedge(viewDeg, fieldDeg) }),
      turned,
      element("path", { class: "ax", d: ray(viewDeg) }),
      element("path", { class: "t-ink", d: pathThrough([[0, TIP[1] - SHAFT_PX], [TIP[0] - (viewDeg === 0 ? 0 : 4), TIP[1] - SHAFT_PX], [TIP[0], TIP[1] + SHAFT_PX], [0, TIP[1] + SHAFT_PX]], true) }),
      words(0, TIP[1] - 16, ["shaft", { class: "dim" }]),
      words(Math.min(labelX, WIDTH_PX - 36), labelY + 5, ["view", {}]),
      words(0, HEIGHT_PX - 28, [`${deg(fieldDeg)} in saline: full line`, {}]),
      words(0, HEIGHT_PX - 6, [`${deg(fieldInAirDeg)} in air: dashes${viewDeg === 0 ? "" : "; dots: turned half round"}`, { class: "dim" }]),
    ]),
    text: inWords(said, rounds, sweptText(viewDeg, fieldDeg)),
    caption: `${rounds} ${sweptText(viewDeg, fieldDeg)}`,
  };
};
