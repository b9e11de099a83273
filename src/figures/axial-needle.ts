import { crossingsOrFoot } from "../engine/geometry/circle.ts";
import { fromTo, lengthOf, movedAlong, type Point } from "../engine/geometry/vec2.ts";
import { directionAt } from "../engine/knee/bearing.ts";
import type { AngleInterval } from "../engine/knee/clear-angles.ts";
import type { AxialFrame } from "./axial-frame.ts";
import { type AxialView, blockedInside } from "./axial-model.ts";
import { element, px } from "./markup.ts";

const TICK_EVERY_MM = 2;
const OUTSIDE_MM = 9;
const MISSED_MM = 80;
const BEHIND_RIM_MM = 13;
const STEP_DEG = 2;

/** The ground behind the rim under an interval of bearings, as it lies before the needle. */
const ground = ({ model }: AxialView, { fromDeg, toDeg }: AngleInterval): readonly Point[] => {
  const { knee, portal } = model;
  const start = knee.portals[portal];
  const count = Math.max(1, Math.ceil((toDeg - fromDeg) / STEP_DEG));
  const bearings = Array.from({ length: count + 1 }, (_, index) => fromDeg + ((toDeg - fromDeg) * index) / count);
  const rim = bearings.map((bearing) => {
    const direction = directionAt(knee.side, bearing);
    return { direction, reachMm: crossingsOrFoot(start, direction, knee.lateral.rim)[1] };
  });
  const near = rim.map(({ direction, reachMm }) => movedAlong(start, direction, reachMm));
  const far = rim.map(({ direction, reachMm }) => movedAlong(start, direction, reachMm + BEHIND_RIM_MM));
  return [...near, ...far.reverse()];
};

/** Blocked angles are inked, clear ones stay paper inside a dotted line. */
export const axialGround = (frame: AxialFrame, view: AxialView): string => {
  if (!view.model.showsAngles) return "";
  const blocked = blockedInside(view).map((interval) => frame.path(ground(view, interval), true));
  const clear = view.angles.clear.map((interval) => frame.path(ground(view, interval), true));
  return [
    ...clear.map((d) => element("path", { class: "clear", d })),
    ...blocked.map((d) => element("path", { fill: "url(#p-forbid)", class: "forbid", d })),
  ].join("");
};

const portals = (frame: AxialFrame, { model }: AxialView): string =>
  (["AL", "AM"] as const).map((id) => {
    const [cx, cy] = frame.at(model.knee.portals[id]);
    return element("circle", { cx, cy, r: 6, class: id === model.portal ? "portal-on" : "portal" });
  }).join("");

const ticks = (frame: AxialFrame, [from, to]: readonly [Point, Point]): string => {
  const way = fromTo(from, to);
  const length = lengthOf(way);
  const along = { xMm: way.xMm / length, yMm: way.yMm / length };
  return Array.from({ length: Math.floor(length / TICK_EVERY_MM) }, (_, index) => {
    const [x, y] = frame.at(movedAlong(from, along, (index + 1) * TICK_EVERY_MM));
    const [dx, dy] = [along.yMm * 5, along.xMm * 5];
    return `M${px(x - dx)} ${px(y - dy)}L${px(x + dx)} ${px(y + dy)}`;
  }).join("");
};

/** The needle from outside the skin to its tip, ticked behind its entry, and the two portals. */
export const axialNeedle = (frame: AxialFrame, view: AxialView): string => {
  const { model, needle } = view;
  if (model.isBlank) return portals(frame, view);
  const portal = model.knee.portals[model.portal];
  const direction = directionAt(model.knee.side, model.bearingDeg);
  const back = movedAlong(portal, direction, -OUTSIDE_MM);
  if (needle === null) {
    // A line that misses the meniscus has no entry; it is shown as far as the knee goes, so that one sees where it leads.
    const past = frame.path([back, movedAlong(portal, direction, MISSED_MM)]);
    return element("path", { class: model.isOwn ? "mine" : "ndl", "stroke-width": 2, "stroke-dasharray": "9 5", d: past }) + portals(frame, view);
  }
  const [line, grip] = model.isOwn ? ["mine", "grip"] : ["ndl", "tipmark"];
  const shaft = frame.path([back, needle.tip]);
  const [ex, ey] = frame.at(needle.entry);
  const [tx, ty] = frame.at(needle.tip);
  return [
    element("path", { class: "haloline", d: shaft }),
    element("path", { class: line, "stroke-width": 4.5, d: shaft }),
    element("path", { class: line, "stroke-width": 1.3, d: ticks(frame, [needle.entry, needle.tip]) }),
    portals(frame, view),
    element("circle", { cx: ex, cy: ey, r: 5, class: "entry" }),
    element("circle", { cx: tx, cy: ty, r: 11, class: grip, "data-tip": "" }),
  ].join("");
};
