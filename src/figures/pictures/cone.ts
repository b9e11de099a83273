import { inView } from "../../engine/optics/in-view.ts";
import { element, pathThrough } from "../markup.ts";
import { polar } from "../physical/physical-figure.ts";
import { aboutOf, type DrawPicture, drawn, END, givenOf, inWords, words } from "./picture.ts";

const TIP = [160, 142] as const;
const RAY_PX = 128;
const SHAFT_PX = 7;
const HEIGHT_PX = 296;
const STEPS = 12;
const LETTER_PX = 16;

const ray = (angleDeg: number, lengthPx = RAY_PX): string => pathThrough([TIP, polar(TIP, lengthPx, angleDeg)]);
const wedge = (middleDeg: number, fullDeg: number): string =>
  pathThrough([TIP, ...Array.from({ length: STEPS + 1 }, (_, index) => polar(TIP, RAY_PX, middleDeg - fullDeg / 2 + (fullDeg * index) / STEPS))], true);

const WAYS = { still: "inside the cone as the scope stands", rotating: "inside the cone once the scope is turned half round its shaft", tilting: "outside the cone, turned or not" } as const;

/** The cone of a scope with a target beside it, drawn after an answer: before it, it would tell. */
export const coneWithTarget: DrawPicture = (item) => {
  const [viewDeg, fieldDeg, off] = ["viewDeg", "fieldDeg", "targetDeg"].map((key) => givenOf(item, key)) as [number, number, number];
  const targetDeg = aboutOf(item, "side") === "other" ? -off : off;
  const [x, y] = polar(TIP, RAY_PX - 20, targetDeg);
  const [viewX, viewY] = polar(TIP, RAY_PX + LETTER_PX, viewDeg);
  const turned = viewDeg === 0 ? "" : element("path", { class: "t-thin", fill: "none", "stroke-dasharray": "2 5", d: wedge(-viewDeg, fieldDeg) });
  const way = WAYS[inView({ viewDeg, fieldDeg, targetDeg })];
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, [
      element("path", { class: "t-bone", d: wedge(viewDeg, fieldDeg) }), element("path", { class: "t-out", d: wedge(viewDeg, fieldDeg) }), turned,
      element("path", { class: "ax", d: ray(viewDeg) }),
      element("path", { class: "t-ink", d: pathThrough([[0, TIP[1] - SHAFT_PX], [TIP[0] - (viewDeg === 0 ? 0 : 4), TIP[1] - SHAFT_PX], [TIP[0], TIP[1] + SHAFT_PX], [0, TIP[1] + SHAFT_PX]], true) }),
      element("path", { class: "t-thin", "stroke-dasharray": "6 4", d: ray(targetDeg, RAY_PX - 26) }),
      element("circle", { class: "k-dotink", cx: x, cy: y, r: 6 }),
      words(Math.min(viewX, 318), viewY + 5, ["view", {}]),
      words(0, TIP[1] - LETTER_PX, ["shaft", { class: "dim" }]),
      words(356, HEIGHT_PX - 6, [viewDeg === 0 ? "dot: target" : "dot: target; dots: turned half round", { ...END, class: "dim" }]),
    ]),
    text: inWords(`A scope from the side. Its view is ${viewDeg}° off the shaft and its field ${fieldDeg}°. The target is ${off}° off the shaft${targetDeg < 0 ? ", away from the tilt of the view" : ""}: ${way}.`),
  };
};
