import { withUnit } from "../../engine/quantity/format.ts";
import { tear } from "../../facts/tear.ts";
import { element, pathThrough } from "../markup.ts";
import { along, meniscus, onClock, rimSide, type Ring } from "./meniscus.ts";
import { aboutOf, type DrawPicture, drawn, END, givenOf, inWords, line, MIDDLE, WIDTH_PX, words } from "./picture.ts";

const BAR = { left: 30, right: WIDTH_PX - 30, topPx: 314 } as const;
const PLACE_PX = 258;
/** A number of the bar stands at least so far from the tear. */
const TEAR_ROOM_PX = 15;
/** Borders of the adult table of rim zones, drawn only after an answer. */
const BORDERS = ["rim-zone.1@1", "rim-zone.2@1"].map((pin) => tear(pin).number.value ?? 0);

const ringFor = (toward: 1 | -1): Ring => ({ centre: [WIDTH_PX / 2 - toward * 40, 128], outerPx: 104, widthPx: 54, toward });
const cut = (points: Parameters<typeof pathThrough>[0], name = "tear"): string => element("path", { class: name, d: pathThrough(points) });

const orientation = (ring: Ring): string => words(ring.centre[0] - ring.toward * 64, 38, ["front", { ...MIDDLE, class: "dim" }]);

/** Where along the rim a named part of the meniscus lies, in hours. */
const hourOf = (place: string): number => {
  if (place.includes("posterior")) return 4.8;
  return place.includes("anterior") ? 1.2 : 3;
};

interface Part {
  readonly share: number;
  readonly text: string;
}

/** The width of the meniscus at the tear, drawn out as a bar from the capsule to the free edge, with two numbers of the question over it. */
const widthBar = (tearShare: number, [outer, inner]: readonly [Part, Part]): string => {
  const at = (share: number): number => BAR.left + share * (BAR.right - BAR.left);
  const y = BAR.topPx;
  return [
    element("rect", { class: "t-bone", x: BAR.left, y, width: BAR.right - BAR.left, height: 30 }),
    line(`M${BAR.left} ${y}H${BAR.right}M${BAR.left} ${y + 30}H${BAR.right}M${BAR.left} ${y - 6}V${y + 36}`, "t-out"),
    line(`M${BAR.right} ${y - 6}V${y + 36}`, "t-thin"),
    cut([[at(tearShare), y - 3], [at(tearShare), y + 33]]),
    words(BAR.left, y + 53, ["capsule", { class: "dim" }]),
    words(BAR.right, y + 53, ["free edge", { ...END, class: "dim" }]),
    ...[outer, inner].filter(({ text }) => text !== "").map(({ share, text }) => words(at(share), y - 12, [text, { ...MIDDLE, class: "num" }])),
  ].join("");
};

/** A number over the middle of its part of the bar, kept inside the picture; the two middles are always half a bar apart. */
const spread = (tearShare: number, [outer, inner]: readonly [string, string]): readonly [Part, Part] => [
  { share: Math.max(0.03, tearShare / 2), text: outer },
  { share: Math.min(0.97, (1 + tearShare) / 2), text: inner },
];

/** The zone that the learner chose, beside the borders of the table. */
const zoneMarks = (widthMm: number, tearShare: number): string => {
  const at = (millimetres: number): number => BAR.left + (Math.min(millimetres, widthMm) / widthMm) * (BAR.right - BAR.left);
  const ends = [0, ...BORDERS.filter((border) => border < widthMm), widthMm];
  return ends.slice(1).map((end, zone) => {
    const [middle, tearAt] = [(at(ends[zone] ?? 0) + at(end)) / 2, at(tearShare * widthMm)];
    const clear = Math.abs(middle - tearAt) < TEAR_ROOM_PX ? tearAt + (tearAt > middle ? -TEAR_ROOM_PX : TEAR_ROOM_PX) : middle;
    const edge = end < widthMm ? line(`M${at(end)} ${BAR.topPx + 2}v26`, "keepline") : "";
    return edge + words(clear, BAR.topPx + 21, [String(zone + 1), MIDDLE]);
  }).join("");
};

/** A longitudinal tear with its way to the rim and to the free edge; after an answer with the borders of the zones. */
export const tearInZone: DrawPicture = (item, own) => {
  const [rimMm, edgeMm] = [givenOf(item, "fromRimMm"), givenOf(item, "fromFreeEdgeMm")];
  const ring = ringFor(rimSide("medial", aboutOf(item, "side")));
  const hour = hourOf(aboutOf(item, "place"));
  const share = rimMm / (rimMm + edgeMm);
  const numbers = [withUnit(rimMm.toFixed(1), "mm"), withUnit(edgeMm.toFixed(1), "mm")] as const;
  const answered = own === undefined ? "" : ` The borders of the adult table are drawn in, at ${BORDERS.map((border) => withUnit(border.toFixed(0), "mm")).join(" and ")} from the rim.`;
  const drawing = [
    meniscus(ring),
    line(along(ring, share, [hour - 0.9, hour + 0.9]), "tear"),
    orientation(ring),
    words(WIDTH_PX / 2, PLACE_PX, [`medial meniscus, ${aboutOf(item, "side")} knee, seen from above`, MIDDLE]),
    widthBar(share, spread(share, numbers)),
    own === undefined ? "" : zoneMarks(rimMm + edgeMm, share),
  ];
  return {
    markup: drawn({ name: "small", heightPx: BAR.topPx + 66 }, drawing),
    text: inWords(`The medial meniscus of a ${aboutOf(item, "side")} knee, seen from above, front at the top. A tear runs along the fibres in its ${aboutOf(item, "place")}. Below, the width there as a bar: from the tear to the rim at the capsule ${numbers[0]}, to the free edge ${numbers[1]}.${answered}`),
  };
};

/** A radial tear from the free edge, with its depth and the whole width. */
export const tearAcross: DrawPicture = (item, own) => {
  const [depthMm, widthMm] = [givenOf(item, "depthMm"), givenOf(item, "widthMm")];
  const place = aboutOf(item, "place");
  const name = place.includes("lateral") ? "lateral" : "medial";
  const ring = ringFor(rimSide(name, aboutOf(item, "side")));
  const hour = hourOf(place);
  const share = 1 - depthMm / widthMm;
  const numbers = [withUnit(depthMm.toFixed(1), "mm"), withUnit(widthMm.toFixed(1), "mm")] as const;
  const percent = own?.values["sharePercent"] ?? 0;
  const said = percent > 0 && percent <= 100 ? `Your share of ${withUnit(percent.toFixed(0), "%")} is laid on the bar from the free edge.` : "";
  const ownAt = BAR.right - (percent / 100) * (BAR.right - BAR.left);
  const drawing = [
    meniscus(ring),
    cut([onClock(ring, hour, ring.outerPx - ring.widthPx - 3), onClock(ring, hour, ring.outerPx - ring.widthPx * share)]),
    orientation(ring),
    words(WIDTH_PX / 2, PLACE_PX, [`${name} meniscus, ${aboutOf(item, "side")} knee, seen from above`, MIDDLE]),
    widthBar(share, [{ share: 0.5, text: `whole width ${numbers[1]}` }, { share: 0, text: "" }]),
    line(`M${BAR.left + share * (BAR.right - BAR.left)} ${BAR.topPx + 15}H${BAR.right}`, "dimstrong"),
    words(BAR.right - 6, BAR.topPx + 74, [`tear ${numbers[0]} from the free edge`, { ...END, class: "num" }]),
    said === "" ? "" : line(`M${ownAt} ${BAR.topPx + 24}H${BAR.right}M${ownAt} ${BAR.topPx + 18}v12`, "dimmine"),
  ];
  return {
    markup: drawn({ name: "small", heightPx: BAR.topPx + 86 }, drawing),
    text: inWords(`The ${name} meniscus of a ${aboutOf(item, "side")} knee, seen from above, front at the top. A tear runs across the fibres in the ${place}, from the free edge outwards. Below, the width there as a bar: the tear is ${numbers[0]} deep from the free edge, the whole width is ${numbers[1]}.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
