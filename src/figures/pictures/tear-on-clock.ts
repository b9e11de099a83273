import { withUnit } from "../../engine/quantity/format.ts";
import type { Item } from "../../engine/question/item.ts";
import { element, pathThrough } from "../markup.ts";
import { along, meniscus, onClock, rimSide, type Ring } from "./meniscus.ts";
import { aboutOf, type DrawPicture, drawn, END, givenOf, inWords, line, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

const HOURS_A_TURN = 12;
const MOST_TURN = 0.95;
const HEIGHT_PX = 312;
const OUTER_PX = 104;

const ringFor = (toward: 1 | -1): Ring => ({ centre: [WIDTH_PX / 2 - toward * 40, 150], outerPx: OUTER_PX, widthPx: 46, toward });
const cut = (points: Parameters<typeof pathThrough>[0], name = "tear"): string => element("path", { class: name, d: pathThrough(points) });

/** The hours of the clock along the rim, 12 in front. */
const numerals = (ring: Ring): string =>
  [0, 1, 2, 3, 4, 5, 6].map((hour) => {
    const [x, y] = onClock(ring, hour, OUTER_PX + 17);
    const [from, to] = [onClock(ring, hour, OUTER_PX + 1), onClock(ring, hour, OUTER_PX + 6)];
    return cut([from, to], "k-line") + words(x, y + 5, [String(hour === 0 ? 12 : hour), MIDDLE]);
  }).join("");

const spoken = (halves: number): string => {
  const hour = Math.floor(halves / 2);
  return halves % 2 === 0 ? `${hour === 0 ? 12 : hour} o’clock` : `half past ${hour === 0 ? 12 : hour}`;
};

/** The learner's length, laid along the rim from the beginning of the tear. */
const ownLength = (item: Item, ring: Ring, own: Own | undefined): { readonly markup: string; readonly said: string } => {
  const lengthMm = own?.values["lengthMm"] ?? 0;
  if (lengthMm <= 0) return { markup: "", said: "" };
  const from = Number(aboutOf(item, "fromHalves"));
  const turn = lengthMm / (2 * Math.PI * givenOf(item, "rimRadiusMm"));
  const said = `Your length of ${withUnit(lengthMm.toFixed(1), "mm")} is laid along the rim from ${spoken(from)}${turn > MOST_TURN ? " and would go round more than once" : ""}.`;
  const arc = along({ ...ring, outerPx: OUTER_PX + 32, widthPx: 0 }, 0, [from / 2, from / 2 + Math.min(turn, MOST_TURN) * HOURS_A_TURN]);
  return { markup: element("path", { class: "mine", "stroke-width": 3, "stroke-dasharray": "7 5", d: arc }), said };
};

/** A longitudinal tear on the clock, with the radius of the rim. */
export const tearOnClock: DrawPicture = (item, own) => {
  const [side, name] = [aboutOf(item, "side"), aboutOf(item, "meniscus")];
  const ring = ringFor(rimSide(name, side));
  const [from, to] = [Number(aboutOf(item, "fromHalves")), Number(aboutOf(item, "toHalves"))];
  const radius = withUnit(String(givenOf(item, "rimRadiusMm")), "mm");
  const { markup, said } = ownLength(item, ring, own);
  const radiusEnd = onClock(ring, 0, OUTER_PX);
  const drawing = [
    meniscus(ring),
    numerals(ring),
    line(along(ring, 0.22, [from / 2, to / 2]), "tear"),
    ...[from, to].map((halves) => cut([onClock(ring, halves / 2, OUTER_PX - 18), onClock(ring, halves / 2, OUTER_PX + 4)], "k-line")),
    element("path", { class: "drop", d: pathThrough([ring.centre, radiusEnd]) }),
    element("circle", { class: "k-dot", cx: ring.centre[0], cy: ring.centre[1], r: 4 }),
    words(ring.centre[0] - ring.toward * 10, ring.centre[1] + 5, [`radius ${radius}`, ring.toward === 1 ? END : {}]),
    markup,
    words(WIDTH_PX / 2, HEIGHT_PX - 6, [`${name} meniscus, ${side} knee, seen from above`, MIDDLE]),
  ];
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, drawing),
    text: inWords(`The ${name} meniscus of a ${side} knee, seen from above, front at the top, hatched along its fibres, with a clock along the rim. A tear runs along the fibres near the rim from ${spoken(from)} to ${spoken(to)}. The rim has a radius of ${radius}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
