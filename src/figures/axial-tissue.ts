import type { Arc } from "../engine/geometry/arc.ts";
import type { Band, Knee } from "../engine/knee/knee.ts";
import type { Meniscus } from "../engine/knee/meniscus.ts";
import type { Structure } from "../engine/knee/structure.ts";
import { alongArc, type AxialFrame, bandBetween } from "./axial-frame.ts";
import { element } from "./markup.ts";

const FIBRES = [0.12, 0.26, 0.4, 0.55, 0.7, 0.86] as const;

const between = (from: number, to: number, share: number): number => from + (to - from) * share;

/** A curve inside the meniscus, along its fibres: at a share of the way from rim to free edge. */
const fibre = ({ rim, freeEdge }: Meniscus, share: number): Arc => ({
  ...rim,
  centre: { xMm: between(rim.centre.xMm, freeEdge.centre.xMm, share), yMm: between(rim.centre.yMm, freeEdge.centre.yMm, share) },
  radiusMm: between(rim.radiusMm, freeEdge.radiusMm, share),
});

const meniscus = (frame: AxialFrame, one: Meniscus): string => {
  const outline = bandBetween(frame, one.rim, one.freeEdge);
  const fibres = FIBRES.map((share, index) => {
    const { start, curve } = alongArc(frame, fibre(one, share));
    return element("path", { class: "t-fib", "stroke-dasharray": index % 2 === 0 ? "15 3" : "9 2.5", d: `M${start}${curve}` });
  });
  return element("path", { class: "t-fill", d: outline }) + fibres.join("") + element("path", { class: "t-out2 t-none", d: outline });
};

/** The capsule as one band behind both menisci, from the outside of one to the outside of the other. */
const capsule = (frame: AxialFrame, knee: Knee): string => {
  const band = (arc: Arc, thicknessMm: number): string => {
    const outer = { ...arc, fromDeg: 20, toDeg: -120 };
    return bandBetween(frame, outer, { ...outer, radiusMm: arc.radiusMm - thicknessMm });
  };
  const thick = knee.capsule.beyondJunctionMm;
  return [knee.capsule.lateral, knee.capsule.medial]
    .map((arc) => element("path", { class: "t-fill", d: band(arc, thick) }) + element("path", { class: "t-thin2", fill: "url(#p-caps)", d: band(arc, thick) }))
    .join("");
};

const bandPath = (frame: AxialFrame, { arc, thicknessMm }: Band): string =>
  bandBetween(frame, { ...arc, radiusMm: arc.radiusMm + thicknessMm / 2 }, { ...arc, radiusMm: arc.radiusMm - thicknessMm / 2 });

/** Both lobes of the tibia in one line, each a true arc. */
const plateau = (frame: AxialFrame, { plateau: { lateral, medial } }: Knee): string => {
  const [there, back] = [alongArc(frame, lateral), alongArc(frame, medial)];
  return element("path", { class: "t-plateau", d: `M${there.start}${there.curve}L${back.start}${back.curve}Z` });
};

const patellarTendon = (frame: AxialFrame, { tendon }: Knee): string => {
  const [cx, cy] = frame.at(tendon.centre);
  const [edge] = frame.at(tendon.lateralEdge);
  const shape = { cx, cy, rx: Math.abs(edge - cx), ry: (tendon.thicknessMm / 2) * frame.pxPerMm };
  return element("ellipse", { ...shape, class: "t-fill" }) + element("ellipse", { ...shape, class: "t-out2", fill: "url(#p-tend)" });
};

/** One structure behind the knee, and the distance that is to be kept round it. */
const structure = (frame: AxialFrame, one: Structure, keptMm: number | null): string => {
  const [cx, cy] = frame.at(one.centre);
  const r = one.radiusMm * frame.pxPerMm;
  const kept = keptMm === null || one.id === "popliteus" ? "" : element("circle", { class: "keep", cx, cy, r: r + keptMm * frame.pxPerMm });
  if (one.id === "popliteus") return element("circle", { class: "t-fill", cx, cy, r }) + element("circle", { class: "t-out2", fill: "url(#p-tend)", cx, cy, r });
  const isNerve = one.id === "tibial-nerve" || one.id === "peroneal-nerve";
  if (isNerve) return kept + element("circle", { class: "t-nerve", cx, cy, r: Math.max(2.5, r - 2.5) });
  return kept + element("circle", { class: "t-vessel", cx, cy, r }) + element("circle", { class: "t-vessel", cx, cy, r: Math.max(1, r - 3.4) });
};

/** Bone, menisci, capsule and tendons: what lies under the angles. */
export const axialBase = (frame: AxialFrame, knee: Knee): string => [
  plateau(frame, knee),
  capsule(frame, knee),
  ...[knee.collaterals.lateral, knee.collaterals.medial].map((band) => element("path", { class: "t-thin2", fill: "url(#p-tend)", d: bandPath(frame, band) })),
  meniscus(frame, knee.medial),
  meniscus(frame, knee.lateral),
  patellarTendon(frame, knee),
].join("");

/** Vessels, nerves and the popliteus tendon, with the distance that is to be kept round each. */
export const axialStructures = (frame: AxialFrame, knee: Knee, keptMm: number | null): string => knee.structures.map((one) => structure(frame, one, keptMm)).join("");
