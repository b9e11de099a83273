import { tearViewOf } from "../../engine/knee/scope/tear-views.ts";
import { stationOf } from "../../engine/knee/scope/stations.ts";
import type { Item } from "../../engine/question/item.ts";
import { element } from "../markup.ts";
import { type Glance, glancesOf, stillFrom, type Tissue } from "../scope-still.ts";
import { seenByLook, shownHour, type Turned } from "../scope-seen.ts";
import { type ScopeModel, scopeModelOf, type ScopeSetting, settingAt } from "../scope-setting.ts";
import { tearOf } from "../scope-tear.ts";
import { aboutOf, type DrawPicture, drawn, inWords, MIDDLE, words } from "./picture.ts";

interface Looked {
  readonly model: ScopeModel;
  readonly glances: readonly Glance[];
  /** Stills by side and size, drawn when they are first shown. */
  readonly stills: Map<string, string>;
}

/** Views that were cast: a question shows the same few again and again, and casting is what takes time. */
const KEPT = new Map<string, Looked>();
const MOST_KEPT = 48;

/** A view of the right knee; a left one is its mirror image. */
const lookAt = (setting: ScopeSetting): Looked => {
  const key = JSON.stringify(setting);
  const known = KEPT.get(key);
  if (known !== undefined) return known;
  const model = scopeModelOf(setting);
  const looked: Looked = { model, glances: glancesOf(model), stills: new Map() };
  if (KEPT.size >= MOST_KEPT) KEPT.clear();
  KEPT.set(key, looked);
  return looked;
};

/** Squares of the still's own drawing: the disc with a little room round it. */
const SQUARE_PX = 320;
const SQUARE = "14 6 332 332";
const TURN_DEG: Readonly<Record<number, number>> = { 12: 0, 3: 90, 6: 180, 9: 270 };

const disc = ({ glances, stills }: Looked, { isMirrored, upHour }: Turned, place: { readonly x: number; readonly y: number; readonly sizePx: number }): string => {
  const turnDeg = TURN_DEG[upHour] ?? 0;
  const { x, y, sizePx } = place;
  const size = `${isMirrored ? "left" : "right"} ${sizePx}`;
  const still = stills.get(size) ?? stillFrom(glances, isMirrored, sizePx < SQUARE_PX);
  stills.set(size, still);
  return element("svg", { x, y, width: sizePx, height: sizePx, viewBox: SQUARE }, turnDeg === 0 ? still : element("g", { transform: `rotate(${turnDeg} 180 172)` }, still));
};

const isLeft = (item: Item): boolean => aboutOf(item, "side") === "left";

/** A view that the question does not name: a still, turned as the camera was. */
export const unnamedView: DrawPicture = (item) => {
  const station = stationOf(aboutOf(item, "station") as Parameters<typeof stationOf>[0]);
  const looked = lookAt(settingAt(station.id, { backMm: Number(aboutOf(item, "back")) }));
  const turned = { isMirrored: isLeft(item), upHour: Number(aboutOf(item, "up")) };
  return {
    markup: drawn({ name: "scope", heightPx: SQUARE_PX }, [disc(looked, turned, { x: 18, y: 0, sizePx: SQUARE_PX })]),
    text: inWords("A round picture through a scope, from the front of the joint.", `In it: ${seenByLook(looked.glances, turned)}.`),
  };
};

/** What a tear looks like, told without its name. */
const SIGHTS: Readonly<Record<string, string>> = {
  longitudinal: "Inside the band an opening runs along its length, side by side with the free edge. The strip between opening and free edge lies in line with the rest.",
  "bucket-handle": "A long strip, held at both its ends, lies apart from the band, nearer to the middle of the joint. The band behind it is narrower than elsewhere.",
  radial: "A gap leads from the free edge straight into the band, square to its length, and ends before the thick side. Its two sides face each other.",
  horizontal: "At the free edge the band has two lips, one over the other, with a dark level cleft between them.",
  flap: "A gap leads slantwise from the free edge into the band. The tongue beside it stands up above the surface and is held on one side alone.",
  complex: "A gap leads from the free edge straight into the band. Beside it the free edge has two lips, one over the other, with a dark level cleft between them.",
  root: "A gap crosses the band from the free edge to the thick side, close to the bone in which the band ends. A short stump stays on the bone.",
  hiatus: "Free edge and surface of the band are whole. Behind the band is a smooth-edged gap, and in it the round shining cord.",
};

/** The meniscus of the question with what was found in it. */
export const tearInView: DrawPicture = (item) => {
  const find = aboutOf(item, "find");
  const { station, ...rest } = tearViewOf({ find, view: aboutOf(item, "view") });
  const looked = lookAt(settingAt(station, rest));
  const turned = { isMirrored: isLeft(item), upHour: 12 };
  const sight = tearOf(looked.model);
  const place = sight === null ? "" : `The gap lies towards ${shownHour({ u: Math.sin((sight.clockDeg * Math.PI) / 180), v: Math.cos((sight.clockDeg * Math.PI) / 180) }, turned)} o’clock.`;
  return {
    markup: drawn({ name: "scope", heightPx: SQUARE_PX }, [disc(looked, turned, { x: 18, y: 0, sizePx: SQUARE_PX })]),
    text: inWords(`A round picture through a scope; the tan band in it is the ${aboutOf(item, "meniscus")} meniscus.`, `In it: ${seenByLook(looked.glances, turned)}.`, SIGHTS[find] ?? "", place),
  };
};

const HALF_PX = 174;
const CAPTION_PX = 24;
const UNDER_PROBE = 0.9;
const WIDE = 0.9;

const atRest = (find: string): Partial<ScopeSetting> => (find === "fascicle" ? { pattern: "fascicle", amount: WIDE } : {});
const pulled = (find: string): Partial<ScopeSetting> => (find === "hypermobile" ? { pattern: "hypermobile", amount: UNDER_PROBE } : atRest(find));

/** Share of a still that a tissue fills, in words. */
const shareOf = (tissue: Tissue, glances: readonly Glance[]): string => `${Math.round((100 * glances.filter(({ label }) => label === tissue).length) / glances.length)} %`;

/** The place beside the popliteus tendon, at rest and while the probe pulls. */
export const hiatusTwice: DrawPicture = (item) => {
  const find = aboutOf(item, "find");
  const base = { backMm: -Number(aboutOf(item, "nearer")) };
  const views = [lookAt(settingAt("hiatus", { ...base, ...atRest(find) })), lookAt(settingAt("hiatus", { ...base, ...pulled(find) }))] as const;
  const turned = { isMirrored: isLeft(item), upHour: 12 };
  const names = ["at rest", "probe pulls"] as const;
  const gap = find === "fascicle" ? "wide: the cord lies bare, and the band ends well short of it" : "narrow and smooth-edged round the cord";
  const moved = find === "hypermobile" ? "the whole back of the band comes forwards over the flat white floor, away from the cord" : "nothing has moved";
  return {
    markup: drawn({ name: "scope", heightPx: HALF_PX + CAPTION_PX }, views.map((view, index) =>
      disc(view, turned, { x: index * (HALF_PX + 8), y: 0, sizePx: HALF_PX }) + words(index * (HALF_PX + 8) + HALF_PX / 2, HALF_PX + 18, [names[index] ?? "", MIDDLE]))),
    text: inWords(
      "Two round pictures of one place: a tan band, and behind it a round shining cord beside a red wall.",
      `At rest the gap behind the band is ${gap}. While the probe pulls, ${moved}.`,
      `The floor fills ${shareOf("tibia", views[0].glances)} of the first picture and ${shareOf("tibia", views[1].glances)} of the second; the cord ${shareOf("popliteus", views[0].glances)} and ${shareOf("popliteus", views[1].glances)}.`,
    ),
  };
};
