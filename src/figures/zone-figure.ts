import { withUnit } from "../engine/quantity/format.ts";
import type { Item } from "../engine/question/item.ts";
import { zoneAngleDeg } from "../engine/repair/zone-angle-deg.ts";
import { cautionText } from "../facts/cautions.ts";
import { element, escaped, label, pathThrough } from "./markup.ts";

const WIDTH_PX = 520;
const HEIGHT_PX = 300;
const PORTAL: readonly [number, number] = [260, 24];
const LONGEST_PX = 200;
const ARC_PX = 56;
/** A learner's angle beyond this would leave the picture; its number still stands beside the answer. */
const MOST_OWN_DEG = 70;

export interface ZoneFigure {
  readonly markup: string;
  readonly text: string;
}

/** The point at a distance from the portal, at an angle from straight down; positive turns to the right of the page. */
const pointAt = (angleDeg: number, distancePx: number): readonly [number, number] => {
  const angle = (angleDeg * Math.PI) / 180;
  return [PORTAL[0] + distancePx * Math.sin(angle), PORTAL[1] + distancePx * Math.cos(angle)];
};

const arc = (fromDeg: number, toDeg: number): string => {
  const [[fromX, fromY], [toX, toY]] = [pointAt(fromDeg, ARC_PX), pointAt(toDeg, ARC_PX)];
  return `${pathThrough([[fromX, fromY]])}A${ARC_PX} ${ARC_PX} 0 0 0 ${pathThrough([[toX, toY]]).slice(1)}`;
};

const ownLine = (halfDeg: number, ownDeg: number | undefined): string => {
  if (ownDeg === undefined || ownDeg <= 0 || ownDeg > MOST_OWN_DEG) return "";
  const [x, y] = pointAt(ownDeg - halfDeg, LONGEST_PX);
  return element("path", { class: "mine", "stroke-width": 3, "stroke-dasharray": "7 5", d: pathThrough([PORTAL, [x, y]]) }) + label(x + 8, y + 18, { text: withUnit(ownDeg.toFixed(1), "deg"), class: "dimmine-t" });
};

/** The triangle between a portal and the two ends of the zone, in proportion, from the numbers that the question printed; null for a question about something else. */
export const zoneOfItem = (item: Item, ownDeg?: number): ZoneFigure | null => {
  if (item.family !== "zone-angle") return null;
  const value = (key: string): number => Number(item.givens.find((given) => given.key === key)?.text);
  const [nearEdgeMm, farEdgeMm, widthMm] = [value("nearEdgeMm"), value("farEdgeMm"), value("widthMm")];
  const angleDeg = zoneAngleDeg({ nearEdgeMm, farEdgeMm, widthMm });
  const half = angleDeg / 2;
  const near = pointAt(-half, (LONGEST_PX * nearEdgeMm) / farEdgeMm);
  const far = pointAt(half, LONGEST_PX);
  const mm = (number: number): string => withUnit(String(number), "mm");
  const drawing = [
    element("path", { class: "ink", d: pathThrough([PORTAL, near, far], true), fill: "none", stroke: "currentColor", "stroke-width": 2 }),
    element("circle", { cx: PORTAL[0], cy: PORTAL[1], r: 6, fill: "currentColor" }),
    element("path", { class: "dim", d: arc(-half, half), fill: "none", stroke: "currentColor" }),
    label(PORTAL[0] + 14, PORTAL[1] + 4, { text: "portal" }),
    label(PORTAL[0], PORTAL[1] + ARC_PX + 22, { text: withUnit(angleDeg.toFixed(1), "deg"), class: "num", "text-anchor": "middle" }),
    label((PORTAL[0] + near[0]) / 2 - 12, (PORTAL[1] + near[1]) / 2 + 30, { text: mm(nearEdgeMm), "text-anchor": "end" }),
    label((PORTAL[0] + far[0]) / 2 + 12, (PORTAL[1] + far[1]) / 2 + 30, { text: mm(farEdgeMm) }),
    label((near[0] + far[0]) / 2, Math.max(near[1], far[1]) + 22, { text: mm(widthMm), class: "num", "text-anchor": "middle" }),
    ownLine(half, ownDeg),
    element("text", { x: 0, y: HEIGHT_PX - 8, "font-size": 14, class: "c8" }, `${element("tspan", { class: "id" }, "C8")} ${escaped(cautionText("C8"))}`),
  ].join("");
  const own = ownDeg === undefined ? "" : ` Your angle of ${withUnit(ownDeg.toFixed(1), "deg")} is laid from the nearer edge.`;
  const text = `A triangle, in proportion: from the portal ${mm(nearEdgeMm)} to the nearer end of the zone and ${mm(farEdgeMm)} to the farther end; the ends lie ${mm(widthMm)} apart. The angle at the portal is ${withUnit(angleDeg.toFixed(1), "deg")}.${own} ${cautionText("C8")}`;
  return { markup: element("svg", { class: "fig zone", viewBox: `0 0 ${WIDTH_PX} ${HEIGHT_PX}`, "aria-hidden": "true", focusable: "false" }, drawing), text };
};
