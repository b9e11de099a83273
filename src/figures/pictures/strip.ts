import { element, pathThrough } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, flaggedBy, inWords, listed, MIDDLE, WIDTH_PX, words } from "./picture.ts";

const COLUMNS = 5;
const FRAME_PX = WIDTH_PX / COLUMNS;
const ROW_PX = 92;
const RADIUS_PX = 32;

interface Station {
  readonly name: string;
  /** Where it lies in the small map of a right knee, front at the top. */
  readonly places: readonly (readonly [number, number])[];
}

const STATIONS: Readonly<Record<string, Station>> = {
  pouch: { name: "pouch above the patella", places: [[0, -26]] },
  patella: { name: "under the patella", places: [[0, -15]] },
  gutters: { name: "both gutters", places: [[-27, -8], [27, -8]] },
  "medial-front": { name: "medial meniscus, front and body", places: [[-16, -1]] },
  "medial-back": { name: "medial meniscus, posterior horn", places: [[-14, 14]] },
  notch: { name: "notch", places: [[0, 5]] },
  "lateral-front": { name: "lateral meniscus, front and body", places: [[16, -1]] },
  "lateral-back": { name: "lateral meniscus, posterior horn", places: [[12, 15]] },
  hiatus: { name: "popliteal hiatus", places: [[22, 11]] },
  behind: { name: "behind, seen through the notch", places: [[0, 23]] },
  "medial-root": { name: "medial root, from the front", places: [[-5, 16]] },
  "lateral-root": { name: "lateral root, from the front", places: [[5, 16]] },
  "behind-medial": { name: "behind the medial posterior horn, through the notch", places: [[-14, 24]] },
  "behind-lateral": { name: "behind the lateral posterior horn, through the notch", places: [[13, 25]] },
};

const MAP = "M-24 2Q-24 -9 -12 -8Q0 -5 12 -8Q24 -9 24 2Q24 16 12 17Q4 17 0 11Q-4 17 -12 17Q-24 16 -24 2Z";

/** The round picture as a scope gives it, with a map of the knee and a dot where it was taken. */
const frame = (ids: readonly string[], mirror: 1 | -1, name: "k-dotink" | "ownring"): string =>
  element("circle", { class: "t-out", r: RADIUS_PX }) +
  element("path", { class: "t-thin", d: MAP }) +
  element("path", { class: "t-thin", d: pathThrough([[-8, -19], [8, -19], [5, -11], [-5, -11]], true) }) +
  ids.flatMap((id) => STATIONS[id]?.places ?? []).map(([x, y]) => element("circle", { class: name, cx: mirror * x, cy: y, r: name === "k-dotink" ? 4.6 : 5.4 })).join("");

const placed = (at: number, inside: string): string =>
  element("g", { transform: `translate(${((at % COLUMNS) * FRAME_PX + FRAME_PX / 2).toFixed(1)} ${Math.floor(at / COLUMNS) * ROW_PX + RADIUS_PX + 4})` }, inside);

/** The pictures of a round in the order taken, each with the place where it was taken. */
export const pictureStrip: DrawPicture = (item, own) => {
  const strip = aboutOf(item, "strip").split(" ");
  const mirror = aboutOf(item, "side") === "right" ? 1 : -1;
  const found = flaggedBy(own).filter((id) => id in STATIONS);
  const said = found.length === 0 ? "" : `You flagged: ${listed(found.map((id) => STATIONS[id]?.name ?? id))}.`;
  const frames = strip.map((id, at) => placed(at, frame([id], mirror, "k-dotink") + words(0, RADIUS_PX + 20, [String(at + 1), { ...MIDDLE, class: "num" }])));
  const mine = said === "" ? "" : placed(strip.length, frame(found, mirror, "ownring") + words(0, RADIUS_PX + 20, ["yours", { ...MIDDLE, class: "dimmine-t" }]));
  const rows = Math.ceil((strip.length + (said === "" ? 0 : 1)) / COLUMNS);
  return {
    markup: drawn({ name: "small", heightPx: rows * ROW_PX + 30 }, [...frames, mine, words(0, rows * ROW_PX + 18, [`${aboutOf(item, "side")} knee from above, front at the top`, { class: "dim" }])]),
    text: inWords(`A strip of ${strip.length} round pictures of a ${aboutOf(item, "side")} knee, each with a dot where it was taken.`, `${strip.map((id, at) => `${at + 1}: ${STATIONS[id]?.name ?? id}`).join("; ")}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
