import { element, pathThrough } from "../markup.ts";
import { along, onClock, type Point, rimSide, type Ring } from "./meniscus.ts";
import { aboutOf, type DrawPicture, drawn, inWords, line, MIDDLE, type Own, WIDTH_PX, words } from "./picture.ts";

/** A discoid lateral meniscus seen from above, front at the top, over the place where its rim belongs: schematic, of no one's size. */

const HEIGHT_PX = 330;
const OUTER_PX = 97;
const DISC_PX = 93;
const MIDDLE_Y = 158;
const OWN_PX = 113;
const BESIDE_PX = 140;
const HANDLE_PX = 66;
/** Radii of the rings of fibres. */
const FIBRES_PX = [66, 38] as const;

/** How far the disc is drawn from its place: toward the rim, and down the page. */
const GONE_PX: Readonly<Record<string, readonly [number, number]>> = { none: [0, 0], front: [-8, -24], back: [-8, 24], centre: [-24, 0] };
const GONE_SAID: Readonly<Record<string, string>> = { none: "within", front: "nearer the notch and forward of", back: "nearer the notch and behind", centre: "toward the notch, beyond" };

/** Stretches of the rim by place, in hours of a clock with twelve in front, running toward the rim. */
const HOURS: Readonly<Record<string, readonly (readonly [number, number])[]>> = { front: [[0, 1.8]], back: [[4.9, 6.6]], outer: [[3.2, 4.7]], both: [[0, 1.8], [4.9, 6.6]], notch: [[7.8, 10.2]] };
const HOOK_HOURS: Readonly<Record<string, number>> = { front: 0.9, back: 5.7 };
const OWN_SAID: Readonly<Record<string, string>> = { front: "in front", back: "at the back", outer: "on the outer side, toward the back", both: "in front and at the back", notch: "on the side of the notch" };

const socketFor = (toward: 1 | -1): Ring => ({ centre: [WIDTH_PX / 2, MIDDLE_Y], outerPx: OUTER_PX, widthPx: OUTER_PX, toward });

/** The disc's own rim, moved as the question says. */
const movedBy = (socket: Ring, shift: string): Ring => {
  const [rimwardPx, downPx] = GONE_PX[shift] ?? [0, 0];
  return { ...socket, centre: [socket.centre[0] + socket.toward * rimwardPx, socket.centre[1] + downPx], outerPx: DISC_PX, widthPx: DISC_PX };
};

const circle = ({ centre: [cx, cy] }: Ring, r: number, name: string): string => element("circle", { class: name, cx, cy, r });

/** A whole disc, hatched along its fibres. */
const disc = (moved: Ring): string => circle(moved, DISC_PX, "t-plateau") + FIBRES_PX.map((radius) => circle(moved, radius, "t-fib")).join("");

/** A probe whose hook lifts the rim at one place; drawn in whole pixels. */
const hook = (moved: Ring, place: string): string => {
  const hour = HOOK_HOURS[place];
  if (hour === undefined) return "";
  const [tip, bend] = [onClock(moved, hour, DISC_PX - 10), onClock(moved, hour, DISC_PX + 8)].map(([x, y]) => [Math.round(x), Math.round(y)] as const) as [Point, Point];
  return element("path", { class: "dimstrong", d: pathThrough([tip, bend, [bend[0] + moved.toward * HANDLE_PX, bend[1]]]) });
};

/** What the probe has met, in letters on the disc and in a sentence. */
const probeSays = (probed: string, lifts: string): readonly [string, string] => {
  if (probed === "nowhere") return ["not probed", "The rim has not been probed."];
  if (lifts === "nothing") return ["holds all round", "The probe has been all round, and lifts it nowhere."];
  return probed === "all" ? [`${lifts} lifts, rest holds`, `The probe lifts it at the ${lifts}, and nowhere else.`] : [`${lifts} lifts`, `The probe lifts it at the ${lifts}; the rest is not probed.`];
};

/** The stretches of the rim where the learner would stabilise it. */
const ownPlaces = (socket: Ring, own: Own | undefined): { readonly markup: string; readonly said: string } => {
  const picked = own?.response.kind === "name" ? (own.response.picks["stitch"] ?? "") : "";
  if (picked === "") return { markup: "", said: "" };
  const stretches = HOURS[picked] ?? [];
  if (stretches.length === 0) return { markup: "", said: "Your answer names no place, and none is marked." };
  const beside: Ring = { ...socket, outerPx: OWN_PX };
  return { markup: stretches.map((hours) => line(along(beside, 0, hours), "mineband")).join(""), said: `Your answer would stabilise it ${OWN_SAID[picked] ?? picked}: a broken line along the rim.` };
};

/** The disc of a question, where it lies and what the probe has met. */
export const discFromAbove: DrawPicture = (item, own) => {
  const [side, shift, probed, lifts] = [aboutOf(item, "side"), aboutOf(item, "shift"), aboutOf(item, "probed"), aboutOf(item, "lifts")];
  const socket = socketFor(rimSide("lateral", side));
  const { markup, said } = ownPlaces(socket, own);
  const moved = movedBy(socket, shift);
  const [letters, sentence] = probeSays(probed, lifts);
  const beside = (x: number, y: number, said: string): string => words(WIDTH_PX / 2 + socket.toward * x * BESIDE_PX, MIDDLE_Y + 5 + y * (BESIDE_PX - 6), [said, { ...MIDDLE, class: "dim" }]);
  const drawing = [
    disc(moved),
    element("circle", { class: "t-out", "stroke-dasharray": "6 5", cx: socket.centre[0], cy: MIDDLE_Y, r: OUTER_PX }),
    hook(moved, lifts),
    markup,
    beside(0, -1, "front"),
    beside(0, 1, "back"),
    beside(-1, 0, "notch"),
    words(moved.centre[0], moved.centre[1] + 5, [letters, MIDDLE]),
    words(WIDTH_PX / 2, HEIGHT_PX - 4, [`lateral meniscus, ${side} knee, seen from above`, MIDDLE]),
  ];
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, drawing),
    text: inWords(`The lateral meniscus of a ${side} knee, seen from above, front at the top, hatched along its fibres: a disc. It lies ${GONE_SAID[shift] ?? ""} the broken line of its place. ${sentence}`, said),
    ...(said === "" ? {} : { own: said }),
  };
};
