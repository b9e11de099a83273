import type { Label } from "../engine/knee/scope/in-view.ts";
import { element } from "./markup.ts";
import type { Region } from "./scope-regions.ts";

/** The drawing's measures in its own pixels: the disc, and the room round it for marks and words. */
export const DISC = { widthPx: 360, heightPx: 388, xPx: 180, yPx: 172, radiusPx: 150 } as const;

const BONE = "url(#p-cart)";
const MENISCUS = "url(#p-men)";
const CORD = "url(#p-tend)";
const SOFT = "url(#p-caps)";
const PATTERN: Readonly<Partial<Record<Label, string>>> = {
  "medial-condyle": BONE, "lateral-condyle": BONE, "medial-plateau": BONE, "lateral-plateau": BONE,
  "medial-front-horn": MENISCUS, "medial-body": MENISCUS, "medial-back-horn": MENISCUS, "lateral-front-horn": MENISCUS, "lateral-body": MENISCUS, "lateral-back-horn": MENISCUS, strip: MENISCUS,
  "anterior-cruciate": CORD, "posterior-cruciate": CORD, popliteus: CORD, synovium: SOFT,
};
const INKED: ReadonlySet<Label> = new Set<Label>(["probe", "needle", "stitch", "dark"]);

/** Outlines in whole pixels of the drawing, closed. */
export const outlinePath = (outlines: readonly (readonly (readonly [number, number])[])[], mirror: number): string =>
  outlines.map((line) => `M${line.map(placed(mirror)).map(([x, y]) => `${Math.round(x)} ${Math.round(y)}`).join("L")}Z`).join("");

/** A place of the picture in the drawing; a left knee is the mirror image. */
export const placed = (mirror: number) => ([u, v]: readonly [number, number]): readonly [number, number] => [DISC.xPx + mirror * u * DISC.radiusPx, DISC.yPx - v * DISC.radiusPx];

const fillClass = (label: Label): string => {
  if (INKED.has(label)) return "t-ink";
  return PATTERN[label] === BONE || label === "spines" || label === "notch-wall" ? "t-bone" : "t-fill";
};

/** A region in the pattern of its tissue. */
export const drawnRegion = ({ label, outlines }: Pick<Region<Label>, "label" | "outlines">, mirror: number): string => {
  const d = outlinePath(outlines, mirror);
  const pattern = PATTERN[label];
  return element("path", { class: fillClass(label), d }) + element("path", { class: "t-out2", fill: pattern ?? "none", d });
};

/** Everything but the disc, in the colour of the page: it cuts the regions to the round field. */
export const surround = (): string => {
  const { widthPx, heightPx, xPx, yPx, radiusPx } = DISC;
  return `M-40 -40H${widthPx + 40}V${heightPx}H-40ZM${xPx - radiusPx} ${yPx}a${radiusPx} ${radiusPx} 0 1 0 ${2 * radiusPx} 0a${radiusPx} ${radiusPx} 0 1 0 ${-2 * radiusPx} 0Z`;
};
