import type { LineFrame } from "./line-frame.ts";
import type { LineModel, LinePlaces } from "./line-model.ts";
import { element, pathThrough, px } from "./markup.ts";

/** Tissues around the line. Only what lies along the needle is to scale; heights and round shapes are drawn to be read. */

type Point = readonly [number, number];

const FEMUR = { centreMm: -8.4, lowestMm: 1.4, radiusMm: 22.8, cartilageMm: 1.5 };

const at = (frame: LineFrame, points: readonly Point[]): Point[] => points.map(([x, y]) => [frame.x(x), frame.y(y)]);

const ARC_FROM = Math.PI * 1.1;
const ARC_TO = Math.PI * 1.9;

/** An arc of the femur's outline as path data, drawn forwards or backwards. */
const arc = (radiusMm: number, frame: LineFrame, forwards: boolean): string => {
  const point = (angle: number): string =>
    `${px(frame.x(FEMUR.centreMm + radiusMm * Math.cos(angle)))} ${px(frame.y(FEMUR.lowestMm + FEMUR.radiusMm + radiusMm * Math.sin(angle)))}`;
  const [from, to] = forwards ? [ARC_FROM, ARC_TO] : [ARC_TO, ARC_FROM];
  const radius = px(radiusMm * frame.pxPerMm);
  return `${point(from)}A${radius} ${radius} 0 0 ${forwards ? 0 : 1} ${point(to)}`;
};

const femur = (frame: LineFrame): string => {
  const inner = FEMUR.radiusMm - FEMUR.cartilageMm;
  const outline = `M${arc(FEMUR.radiusMm, frame, true)}`;
  return [
    element("path", { class: "t-bone", d: `${outline}Z` }),
    element("path", { fill: "url(#p-cart)", d: `${outline}L${arc(inner, frame, false)}Z` }),
    element("path", { class: "t-out", d: outline }),
    element("path", { class: "t-thin", d: `M${arc(inner, frame, true)}` }),
  ].join("");
};

const tibia = (frame: LineFrame, junctionMm: number): string => {
  const top: Point[] = [[-40, -2.5], [junctionMm - 8, -2.35], [junctionMm - 3, -2.5], [junctionMm + 0.6, -2.75], [junctionMm + 1.5, -3.3]];
  const edge: Point[] = [...top, [junctionMm + 2.2, -4.3], [junctionMm + 2.5, -6]];
  const under: Point[] = [[junctionMm + 0.9, -4], [junctionMm - 6, -3.6], [-40, -3.7]];
  return [
    element("path", { class: "t-bone", d: pathThrough(at(frame, [...edge, [-40, -6]]), true) }),
    element("path", { fill: "url(#p-cart)", d: pathThrough(at(frame, [...top, ...under]), true) }),
    element("path", { class: "t-out", d: pathThrough(at(frame, edge)) }),
  ].join("");
};

const patterned = (points: readonly Point[], pattern: string, line: string): string =>
  element("path", { class: "t-fill", d: pathThrough(points, true) }) + element("path", { class: line, fill: `url(#${pattern})`, d: pathThrough(points, true) });

const capsule = (frame: LineFrame, { junctionMm, bundleMm }: LinePlaces): string => {
  const thick = Math.min(1.8, 0.6 * (bundleMm - junctionMm));
  const outline: Point[] = [
    [-0.15, 4.1], [0, 2.4], [0, -2.7], [0.35 * thick, -2.85], [0.8 * thick, -3.25], [0.97 * thick, -2], [thick, 0], [0.95 * thick, 1.8], [0.75 * thick, 3.2], [0.55 * thick, 4.2],
  ];
  return patterned(at(frame, outline.map(([x, y]): Point => [junctionMm + x, y])), "p-caps", "t-thin2");
};

const TIP_MM = -1.95;
const CREST_MM = 2.5;

/** The upper surface rises from the free edge to the junction and passes the needle's own entry. */
const surface = ({ freeEdgeMm, junctionMm }: LinePlaces): Point[] => {
  const share = -freeEdgeMm / (junctionMm - freeEdgeMm);
  const bend = share > 0.05 ? Math.log(-TIP_MM / (CREST_MM - TIP_MM)) / Math.log(share) : 1.2;
  return Array.from({ length: 21 }, (_, step): Point => [
    freeEdgeMm + ((junctionMm - freeEdgeMm) * step) / 20,
    TIP_MM + (CREST_MM - TIP_MM) * (step / 20) ** bend,
  ]);
};

const meniscus = (frame: LineFrame, places: LinePlaces): string => {
  const { freeEdgeMm, junctionMm } = places;
  const under: Point[] = [[junctionMm, -2.7], [junctionMm - 3, -2.45], [freeEdgeMm + 2.2, -2.3], [freeEdgeMm, -2.25]];
  return patterned(at(frame, [...surface(places), ...under]), "p-men", "t-out2");
};

/** Artery, vein and nerve: the artery's near edge stands where the bundle begins. Sizes are assumed. */
export const BUNDLE = [
  { name: "artery", behindMm: 1.75, upMm: 0.15, radiusMm: 1.75 },
  { name: "vein", behindMm: 5.3, upMm: 1, radiusMm: 2.15 },
  { name: "nerve", behindMm: 8.6, upMm: -0.9, radiusMm: 1.75 },
] as const;

const bundle = (frame: LineFrame, { bundleMm }: LinePlaces): string =>
  BUNDLE.map(({ name, behindMm, upMm, radiusMm }) => {
    const place = { cx: frame.x(bundleMm + behindMm), cy: frame.y(upMm) };
    const radiusPx = radiusMm * frame.pxPerMm;
    if (name === "nerve") return element("circle", { ...place, r: radiusPx - 2.5, class: "t-nerve" });
    return element("circle", { ...place, r: radiusPx, class: "t-vessel" }) + element("circle", { ...place, r: radiusPx - 4, class: "t-vessel" });
  }).join("");

/** Behind the greatest depth the ground is inked: what is forbidden is hatched, what is clear stays paper. */
const forbidden = (frame: LineFrame, fromMm: number): string => {
  const x = frame.x(fromMm);
  return element("rect", { x, y: 0, width: frame.widthPx - x, height: frame.heightPx, fill: "url(#p-forbid)" })
    + element("path", { class: "edge", d: pathThrough([[x, 0], [x, frame.heightPx]]) });
};

/** All tissue of one line. */
export const tissue = (frame: LineFrame, model: LineModel, places: LinePlaces): string => [
  femur(frame),
  tibia(frame, places.junctionMm),
  capsule(frame, places),
  meniscus(frame, places),
  bundle(frame, places),
  model.answered && places.greatestMm !== undefined ? forbidden(frame, Math.max(places.greatestMm, frame.leftMm)) : "",
].join("");
