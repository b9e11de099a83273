import { withUnit } from "../../engine/quantity/format.ts";
import type { Item } from "../../engine/question/item.ts";
import { element, pathThrough } from "../markup.ts";
import { along, meniscus, onClock, rimSide, type Ring } from "./meniscus.ts";
import { aboutOf, type DrawPicture, drawn, givenOf, inWords, line, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

const HEIGHT_PX = 330;
const OUTER_PX = 140;
const RING_PX = 78;
const PX_PER_MM = 8;
const DEG_AN_HOUR = 30;
const OWN_HALF_PX = 18;
const OWN_BESIDE_HOURS = 1.1;
/** Where along the rim each part lies, in hours of a clock with its twelve in front. */
const HOURS: Readonly<Record<string, number>> = { front: 0.9, body: 3, back: 5.1 };
const PARTS: Readonly<Record<string, string>> = { front: "anterior horn", body: "body", back: "posterior horn" };

const ringFor = (toward: 1 | -1): Ring => ({ centre: [WIDTH_PX / 2 - toward * 58, 154], outerPx: OUTER_PX, widthPx: RING_PX, toward });
const hoursFor = (px: number, radiusPx: number): number => ((px / radiusPx) * 180) / Math.PI / DEG_AN_HOUR;

interface Ends {
  readonly first: readonly [number, number];
  readonly second: readonly [number, number];
}

/** The two points of the thread, each at its distance from the rim, as far apart along it as the question says. */
const endsOf = (item: Item, ring: Ring): Ends => {
  const hour = HOURS[aboutOf(item, "place")] ?? 3;
  const [first, second] = ["firstFromRimMm", "secondFromRimMm"].map((key) => OUTER_PX - givenOf(item, key) * PX_PER_MM) as [number, number];
  const half = (givenOf(item, "apartAlongMm") * PX_PER_MM) / 2;
  return { first: onClock(ring, hour - hoursFor(half, first), first), second: onClock(ring, hour + hoursFor(half, second), second) };
};

/** How a stitch of the learner's name would lie, beside the one that is there. */
const ownLie = (item: Item, ring: Ring, own: Own | undefined): { readonly markup: string; readonly said: string } => {
  const named = own?.response.kind === "name" ? (own.response.picks["lies"] ?? "") : "";
  if (named === "") return { markup: "", said: "" };
  const there = HOURS[aboutOf(item, "place")] ?? 3;
  const hour = there + (there > 3 ? -OWN_BESIDE_HOURS : OWN_BESIDE_HOURS);
  const slant = givenOf(item, "firstFromRimMm") > givenOf(item, "secondFromRimMm") ? 1 : -1;
  const middle = OUTER_PX - ((givenOf(item, "firstFromRimMm") + givenOf(item, "secondFromRimMm")) / 2) * PX_PER_MM;
  const [out, sideways] = { vertical: [OWN_HALF_PX, 0], horizontal: [0, OWN_HALF_PX] }[named] ?? [OWN_HALF_PX / 1.4, (-slant * OWN_HALF_PX) / 1.4];
  const ends = [-1, 1].map((end) => onClock(ring, hour + hoursFor(end * (sideways ?? 0), middle), middle - end * (out ?? 0)));
  return { markup: element("path", { class: "mineband", d: pathThrough(ends) }), said: `Your answer was ${named}: the broken line beside it shows how such a stitch would lie.` };
};

/** A stitch in the meniscus, seen from above. */
export const stitchFromAbove: DrawPicture = (item, own) => {
  const [side, name, place] = [aboutOf(item, "side"), aboutOf(item, "meniscus"), aboutOf(item, "place")];
  const ring = ringFor(rimSide(name, side));
  const { first, second } = endsOf(item, ring);
  const { markup, said } = ownLie(item, ring, own);
  const dot = ([cx, cy]: readonly [number, number]): string => element("circle", { class: "k-dotink", cx, cy, r: 5 });
  const drawing = [
    meniscus(ring),
    line(along(ring, 0), "t-out"),
    markup,
    element("path", { class: "haloline", d: pathThrough([first, second]) }),
    element("path", { class: "tear", d: pathThrough([first, second]) }),
    dot(first),
    dot(second),
    words(ring.centre[0] - ring.toward * 60, 24, ["front", { ...MIDDLE, class: "dim" }]),
    words(ring.centre[0] - ring.toward * 60, ring.centre[1] + OUTER_PX + 6, ["back", { ...MIDDLE, class: "dim" }]),
    words(WIDTH_PX / 2, HEIGHT_PX - 4, [`${name} meniscus, ${side} knee, seen from above`, MIDDLE]),
  ];
  const mm = (key: string): string => withUnit(String(givenOf(item, key)), "mm");
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, drawing),
    text: inWords(`The ${name} meniscus of a ${side} knee, seen from above, front at the top, hatched along its fibres. In the ${PARTS[place] ?? place} a thread lies between two points: the first is ${mm("firstFromRimMm")} from the rim, the second ${mm("secondFromRimMm")}, and along the rim they are ${mm("apartAlongMm")} apart.`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
