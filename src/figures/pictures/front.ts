import type { Item } from "../../engine/question/item.ts";
import { ORIGIN_PX, type Pair, toPx } from "../front-frame.ts";
import { element, pathThrough, px } from "../markup.ts";
import { aboutOf, type DrawPicture, drawn, givenOf, inWords, MIDDLE, type Own, words } from "./picture.ts";

/** The front of a bent knee with numbered places on the skin: schematic, of no one's size but for the tendon's width. */

const HEIGHT_PX = 322;
const SQUARE_MM = 5;
const GRID_MM = { halfWidth: 40, top: 40, bottom: -30 } as const;
const PLACE_PX = 11;

/** Path data written in mm, shifted sideways on request. */
const inMm = (data: string, shiftMm = 0): string => data.replace(/(-?[\d.]+),(-?[\d.]+)/g, (_, x: string, y: string) => toPx([Number(x) + shiftMm, Number(y)]).map(px).join(" "));

const both = (d: string, name: string, fill: string): string => element("path", { class: name, d }) + element("path", { class: "t-out2", fill, d });

const FEMUR = "M-34,20C-34,9 -27,3 -19,3C-12,3 -8,6 -6,11C-4,15 4,15 6,11C8,6 12,3 19,3C27,3 34,9 34,20C34,30 27,36 19,37C12,38 6,35 0,34C-6,35 -12,38 -19,37C-27,36 -34,30 -34,20Z";
const TIBIA = "M-37,-4C-37,-2 -35,-2 -33,-2L33,-2C35,-2 37,-2 37,-4C37,-11 28,-14 24,-20C21,-25 20,-28 20,-31L-20,-31C-20,-28 -21,-25 -24,-20C-28,-14 -37,-11 -37,-4Z";
const MENISCI = "M-36,-2C-37,1 -36,4 -32,5C-24,3 -14,2 -7,-2ZM36,-2C37,1 36,4 32,5C24,3 14,2 7,-2Z";
const FIBULA = "M-4.5,-31L-4,-21C-7,-18 -7,-10 0,-9C7,-10 7,-18 4,-21L4.5,-31Z";
const FIBULA_MM = 35;
const PATELLA = "M-15,33C-16,41 16,41 15,33C14,28 6,23 0,22C-6,23 -14,28 -15,33Z";
/** The tendon keeps its width from the patella to below the joint line. */
const tendon = (half: number): string => `M${-half},27L${-half},-14C${-half},-20 ${-half / 2},-24 0,-25C${half / 2},-24 ${half},-20 ${half},-14L${half},27Z`;

interface Front {
  /** Side of the page on which the fibula stands: 1 on the right, −1 on the left. */
  readonly lateral: number;
  /** Middle of the tendon, and its width. */
  readonly middleMm: number;
  readonly tendonMm: number;
}

/** Bones, menisci and tendon. */
const tissue = ({ lateral, middleMm, tendonMm }: Front): string => [
  both(inMm(FIBULA, lateral * FIBULA_MM), "t-bone", "url(#p-cart)"),
  both(inMm(MENISCI), "t-fill", "url(#p-men)"),
  both(inMm(FEMUR), "t-bone", "url(#p-cart)"),
  both(inMm(TIBIA), "t-bone", "url(#p-cart)"),
  both(inMm(tendon(tendonMm / 2), middleMm), "t-fill", "url(#p-tend)"),
  both(inMm(PATELLA, middleMm), "t-bone", "url(#p-cart)"),
].join("");

const steps = (from: number, to: number): readonly number[] => Array.from({ length: Math.floor((to - from) / SQUARE_MM) + 1 }, (_, index) => from + index * SQUARE_MM);

/** Squares whose lines run through the joint line and the middle of the tendon. */
const squares = (middleMm: number): string => {
  const { halfWidth, top, bottom } = GRID_MM;
  const across = (y: number): readonly Pair[] => [[middleMm - halfWidth, y], [middleMm + halfWidth, y]];
  const upright = (x: number): readonly Pair[] => [[middleMm + x, bottom], [middleMm + x, top]];
  const lines = [...steps(-halfWidth, halfWidth).map(upright), ...steps(bottom, top).map(across)];
  const path = (line: readonly Pair[]): string => pathThrough(line.map(toPx));
  return element("path", { class: "t-thin", "stroke-dasharray": "2 3", d: lines.map(path).join("") }) + element("path", { class: "dimstrong", d: path(across(0)) });
};

interface Numbered {
  readonly id: string;
  readonly place: Pair;
}
const placesOf = (item: Item): readonly Numbered[] => (item.kind === "mark" ? item.regions.map(({ id, xMm, yMm }) => ({ id, place: [Number(xMm), Number(yMm)] as const })) : []);

/** The place that the learner chose. */
const chosenIn = (item: Item, own: Own | undefined): Numbered | null => {
  const point = own?.response.kind === "mark" ? own.response.points["portal"] : undefined;
  return placesOf(item).find(({ place: [x, y] }) => point !== undefined && Math.hypot(x - Number(point.xMm), y - Number(point.yMm)) < 1) ?? null;
};

const numbered = ({ id, place }: Numbered): string => {
  const [cx, cy] = toPx(place);
  return element("circle", { cx, cy, r: PLACE_PX, class: "place" }) + words(cx, cy + 5.2, [id, { ...MIDDLE, class: "num placenum" }]);
};
const ownRing = ({ place }: Numbered): string => {
  const [cx, cy] = toPx(place);
  return element("circle", { cx, cy, r: PLACE_PX + 2.4, class: "ownring" });
};

const plain = (mm: number): string => Number(mm.toFixed(1)).toString();
const whereIs = ({ id, place: [x, y] }: Numbered, middleMm: number): string =>
  `${id}: ${plain(Math.abs(x - middleMm))} mm to the ${x < middleMm ? "left" : "right"} of the middle of the tendon, ${y === 0 ? "on the joint line" : `${plain(y)} mm above the joint line`}`;

/** The numbered places of a question on the front of its knee, and the chosen one after an answer. */
export const frontOfKnee: DrawPicture = (item, own) => {
  const lateral = aboutOf(item, "side") === "right" ? -1 : 1;
  const [middleMm, tendonMm] = [Number(aboutOf(item, "tendonAtMm")), givenOf(item, "tendonMm")];
  const chosen = chosenIn(item, own);
  return {
    markup: drawn({ name: "small", heightPx: HEIGHT_PX }, [
      tissue({ lateral, middleMm, tendonMm }),
      squares(middleMm),
      ...placesOf(item).map(numbered),
      chosen === null ? "" : ownRing(chosen),
      words(ORIGIN_PX[0], HEIGHT_PX - 2, [`heavy line: joint line; squares of ${SQUARE_MM} mm`, { ...MIDDLE, class: "dim" }]),
    ]),
    text: inWords(
      `The front of a knee that is bent to a right angle, as somebody sees it who faces it. The patella is at the top, its tendon runs down the middle, ${plain(tendonMm)} mm wide; the head of the fibula stands at the lower ${lateral < 0 ? "left" : "right"}.`,
      `Numbered places: ${placesOf(item).map((one) => whereIs(one, middleMm)).join("; ")}.`,
      chosen === null ? "" : `You chose ${chosen.id}.`,
    ),
  };
};
