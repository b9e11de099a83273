import { withUnit } from "../engine/quantity/format.ts";
import type { Item } from "../engine/question/item.ts";
import { zoneAngleDeg } from "../engine/repair/zone-angle-deg.ts";
import { cautionText } from "../facts/cautions.ts";
import { cautionLines } from "./caution-lines.ts";
import { element, label, pathThrough } from "./markup.ts";

const WIDTH_PX = 356;
const HEIGHT_PX = 316;
const FONT_PX = 15;
const PORTAL: readonly [number, number] = [178, 24];
const LONGEST_PX = 200;
const ARC_PX = 56;
/** A learner's angle beyond this would leave the picture; its number still stands beside the answer. */
const MOST_OWN_DEG = 45;

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

/** Words at a point of the picture, in the size of all its letters. */
const text = ([x, y]: readonly [number, number], words: string, attributes: Readonly<Record<string, string>> = {}): string => label(x, y, { text: words, "font-size": FONT_PX, ...attributes });

const ownLine = (halfDeg: number, ownDeg: number | undefined): string => {
  if (ownDeg === undefined || ownDeg <= 0 || ownDeg > MOST_OWN_DEG) return "";
  const [x, y] = pointAt(ownDeg - halfDeg, LONGEST_PX);
  return element("path", { class: "mine", "stroke-width": 3, "stroke-dasharray": "7 5", d: pathThrough([PORTAL, [x, y]]) }) + text([x + 6, y + 16], withUnit(ownDeg.toFixed(1), "deg"), { class: "dimmine-t" });
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
  const degrees = withUnit(angleDeg.toFixed(1), "deg");
  const [arcLeft, arcBelow] = pointAt(-half, ARC_PX);
  const drawing = [
    element("path", { class: "t-out", d: pathThrough([PORTAL, near, far], true) }),
    element("path", { class: "k-line", d: arc(-half, half) }),
    ownLine(half, ownDeg),
    element("circle", { cx: PORTAL[0], cy: PORTAL[1], r: 6, class: "k-dot" }),
    text([PORTAL[0] + 14, PORTAL[1]], "portal"),
    text([arcLeft - 8, arcBelow], degrees, { class: "num", "text-anchor": "end" }),
    text([(PORTAL[0] + near[0]) / 2 - 16, (PORTAL[1] + near[1]) / 2 + 36], mm(nearEdgeMm), { "text-anchor": "end" }),
    text([(PORTAL[0] + far[0]) / 2 + 16, (PORTAL[1] + far[1]) / 2 + 36], mm(farEdgeMm)),
    text([(near[0] + far[0]) / 2, far[1] + 26], mm(widthMm), { class: "num", "text-anchor": "middle" }),
    cautionLines({ yPx: HEIGHT_PX - 28, fontPx: FONT_PX, isNarrow: true }),
  ].join("");
  const own = ownDeg === undefined ? "" : ` Your angle of ${withUnit(ownDeg.toFixed(1), "deg")} is laid from the nearer edge.`;
  const inWords = `A triangle, in proportion: from the portal ${mm(nearEdgeMm)} to the nearer end of the zone and ${mm(farEdgeMm)} to the farther end; the ends lie ${mm(widthMm)} apart. The angle at the portal is ${degrees}.${own} ${cautionText("C8")}`;
  return { markup: element("svg", { class: "fig zone", viewBox: `0 0 ${WIDTH_PX} ${HEIGHT_PX}`, "aria-hidden": "true", focusable: "false" }, drawing), text: inWords };
};
