import type { Item } from "../../engine/question/item.ts";
import type { Response } from "../../engine/question/response.ts";
import { axialFigure } from "../../figures/axial-figure.ts";
import { marksOfItem } from "../../figures/axial-marks.ts";
import { axialOfItem } from "../../figures/axial-of-item.ts";
import { axialModelOf } from "../../figures/axial-setting.ts";
import { lineFigure } from "../../figures/line-figure.ts";
import { lineOfItem } from "../../figures/line-of-item.ts";
import { frontOfKnee } from "../../figures/pictures/front.ts";
import type { DrawPicture } from "../../figures/pictures/picture.ts";
import { backOfMeniscus } from "../../figures/pictures/rim.ts";
import { hiatusTwice, tearInView, unnamedView } from "../../figures/pictures/still.ts";
import { placeTwice } from "../../figures/pictures/two-views.ts";
import { zoneOfItem } from "../../figures/zone-figure.ts";

export interface SheetFigure {
  readonly markup: string;
  readonly text: string;
}

const kneeOf = (item: Item, right: Response): SheetFigure | null => {
  if (right.kind !== "line") return null;
  const setting = axialOfItem(item, { angleDeg: Number(right.angleDeg), depthMm: Number(right.depthMm) });
  return setting ? axialFigure(axialModelOf(setting, { isOwn: false, showsAngles: true })) : null;
};

const alongNeedle = (item: Item): SheetFigure | null => {
  const model = lineOfItem(item, true);
  return model ? lineFigure(model) : null;
};

/** Questions that are answered in or from a picture of their own: they mean nothing without it. */
const IN_PICTURE: Readonly<Record<string, DrawPicture>> = {
  portal: frontOfKnee, "same-place": placeTwice, spread: backOfMeniscus, "where-am-i": unnamedView, pattern: tearInView, hiatus: hiatusTwice,
};
const inPicture = (item: Item): SheetFigure | null => IN_PICTURE[item.family]?.(item) ?? null;

/** The drawing for a wide page alone: a printed sheet has one width. */
const wideOnly = ({ markup, text }: SheetFigure): SheetFigure => ({ markup: markup.slice(0, markup.indexOf("</svg>") + "</svg>".length), text });

/** The figure that a page shows with the right answer to an item; null for an item without one. */
export const figureOf = (item: Item, right: Response): SheetFigure | null => {
  const figure = alongNeedle(item) ?? kneeOf(item, right) ?? marksOfItem(item) ?? zoneOfItem(item);
  return figure ? wideOnly(figure) : inPicture(item);
};
