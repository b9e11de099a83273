import type { Item } from "../../engine/question/item.ts";
import { axialFigure } from "../axial-figure.ts";
import { marksOfItem } from "../axial-marks.ts";
import { axialOfItem } from "../axial-of-item.ts";
import { axialModelOf } from "../axial-setting.ts";
import type { DrawPicture, Own } from "./picture.ts";

const numberIn = (text: string): number => Number(text.replace(",", "."));

/** The knee of a question with a needle, with the learner's own needle in it. */
export const needlePicture: DrawPicture = (item, own) => {
  if (own?.response.kind !== "line") return null;
  const setting = axialOfItem(item, { angleDeg: numberIn(own.response.angleDeg), depthMm: numberIn(own.response.depthMm) });
  return setting ? { ...axialFigure(axialModelOf(setting, { isOwn: true, showsAngles: true })), isMap: true, hasCaption: true } : null;
};

/** Regions that the learner's points stand in: a point is sent as the middle of its region. */
const chosenIn = (item: Item, own: Own | undefined): readonly string[] => {
  if (item.kind !== "mark" || own?.response.kind !== "mark") return [];
  const points = Object.values(own.response.points).map(({ xMm, yMm }) => `${xMm} ${yMm}`);
  return item.regions.filter(({ xMm, yMm }) => points.includes(`${xMm} ${yMm}`)).map(({ id }) => id);
};

/** The numbered places of a question, with the learner's own where the figure shows them. */
export const marksPicture: DrawPicture = (item, own) => {
  const figure = marksOfItem(item, chosenIn(item, own));
  return figure ? { markup: figure.markup, text: figure.text, isMap: true } : null;
};
