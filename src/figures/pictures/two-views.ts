import { stationOf } from "../../engine/knee/scope/stations.ts";
import type { Item } from "../../engine/question/item.ts";
import { element } from "../markup.ts";
import { seenByLook, shownHour, type Turned } from "../scope-seen.ts";
import { scopeModelOf, type ScopeSetting, settingAt } from "../scope-setting.ts";
import { type Glance, glancesOf, stillFrom } from "../scope-still.ts";
import { CAPTION_PX, inPicture, LEFT_PX, SECOND_TOP_PX, type Spot, SQUARE_PX, STILL_BOX } from "../two-views-frame.ts";
import { aboutOf, type DrawPicture, drawn, givenOf, inWords, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

/** Two views from one tip, one over the other: a ringed place in the first, numbered places in the second. */

const PLACE_PX = 11;
const RING_PX = 17;
const HOUR_DEG = 30;
const PERCENT = 100;

const KEPT = new Map<string, readonly Glance[]>();
const seenAt = (setting: ScopeSetting): readonly Glance[] => {
  const key = `${setting.station} ${setting.viewDeg} ${setting.viewDeg === 0 ? 0 : setting.turnDeg}`;
  const glances = KEPT.get(key) ?? glancesOf(scopeModelOf(setting));
  KEPT.set(key, glances);
  return glances;
};

interface Twice {
  readonly straight: readonly Glance[];
  readonly tilted: readonly Glance[];
  readonly isMirrored: boolean;
  readonly upHour: number;
}

/** What both scopes see, by the station and the turn that the draw names. */
const twiceOf = (item: Item): Twice => {
  const station = stationOf(aboutOf(item, "station") as Parameters<typeof stationOf>[0]).id;
  const turnDeg = Number(aboutOf(item, "turnDeg"));
  return {
    straight: seenAt(settingAt(station, { viewDeg: 0, turnDeg: 0 })),
    tilted: seenAt(settingAt(station, { viewDeg: givenOf(item, "tiltDeg") as ScopeSetting["viewDeg"], turnDeg })),
    isMirrored: aboutOf(item, "side") === "left",
    upHour: Number(aboutOf(item, "up")),
  };
};

const disc = (glances: readonly Glance[], { isMirrored, upHour }: Turned, topPx: number): string => {
  const still = stillFrom(glances, isMirrored);
  const turnDeg = (upHour * HOUR_DEG) % 360;
  return element("svg", { x: LEFT_PX, y: topPx, width: SQUARE_PX, height: SQUARE_PX, viewBox: STILL_BOX }, turnDeg === 0 ? still : element("g", { transform: `rotate(${turnDeg} 180 172)` }, still));
};

const ring = ([cx, cy]: Spot): string => element("circle", { class: "haloline", cx, cy, r: RING_PX }) + element("circle", { class: "dimstrong", cx, cy, r: RING_PX });
const ownRing = ([cx, cy]: Spot): string => element("circle", { class: "ownring", cx, cy, r: PLACE_PX + 3 });

const numbered = ([cx, cy]: Spot, id: string): string =>
  element("circle", { class: "place", cx, cy, r: PLACE_PX }) + words(cx, cy + 5.4, [id, { ...MIDDLE, class: "num placenum" }]);

interface Numbered {
  readonly id: string;
  readonly spot: Spot;
}
const placesOf = (item: Item): readonly Numbered[] =>
  item.kind === "mark" ? item.regions.map(({ id, xMm, yMm }) => ({ id, spot: [Number(xMm) / PERCENT, Number(yMm) / PERCENT] as const })) : [];

const ringed = (item: Item): Spot => {
  const [x = 0, y = 0] = aboutOf(item, "place").split(",").map((tenths) => Number(tenths) / 10);
  return [aboutOf(item, "side") === "left" ? -x : x, y];
};

/** The place that the learner chose, by its number. */
const chosenIn = (item: Item, own: Own | undefined): Numbered | null => {
  const point = own?.response.kind === "mark" ? own.response.points["place"] : undefined;
  return placesOf(item).find(({ spot: [x, y] }) => point !== undefined && Math.hypot(PERCENT * x - Number(point.xMm), PERCENT * y - Number(point.yMm)) < 1) ?? null;
};

const LEVEL = { isMirrored: false, upHour: 12 } as const;
const whereIs = ([u, v]: Spot): string => `towards ${shownHour({ u, v }, LEVEL)} o’clock, ${Math.round(PERCENT * Math.hypot(u, v))} % of the way to the edge`;

/** The same place in two views, before and after an answer. */
export const placeTwice: DrawPicture = (item, own) => {
  const { straight, tilted, isMirrored, upHour } = twiceOf(item);
  const [first, second] = [{ isMirrored, upHour: 12 }, { isMirrored, upHour }];
  const chosen = chosenIn(item, own);
  return {
    markup: drawn({ name: "scope", heightPx: SECOND_TOP_PX + SQUARE_PX + CAPTION_PX }, [
      disc(straight, first, 0),
      ring(inPicture(ringed(item), 0)),
      words(WIDTH_PX / 2, SQUARE_PX + 18, ["first: straight ahead", MIDDLE]),
      disc(tilted, second, SECOND_TOP_PX),
      ...placesOf(item).map(({ id, spot }) => numbered(inPicture(spot, SECOND_TOP_PX), id)),
      chosen === null ? "" : ownRing(inPicture(chosen.spot, SECOND_TOP_PX)),
      words(WIDTH_PX / 2, SECOND_TOP_PX + SQUARE_PX + 18, ["second: tilted", MIDDLE]),
    ]),
    text: inWords(
      `Two round pictures from one place. First, straight ahead: ${seenByLook(straight, first)}. A ring stands ${whereIs(ringed(item))}.`,
      `Second, tilted: ${seenByLook(tilted, second)}. Numbered places in it: ${placesOf(item).map(({ id, spot }) => `${id}, ${whereIs(spot)}`).join("; ")}.`,
      chosen === null ? "" : `You chose ${chosen.id}.`,
    ),
  };
};
