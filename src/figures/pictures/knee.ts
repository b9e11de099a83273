import { axialFigure } from "../axial-figure.ts";
import { marksOfItem } from "../axial-marks.ts";
import { axialOfItem } from "../axial-of-item.ts";
import { axialModelOf } from "../axial-setting.ts";
import type { DrawPicture } from "./picture.ts";

const numberIn = (text: string): number => Number(text.replace(",", "."));

/** The knee of a question with a needle, with the learner's own needle in it. */
export const needlePicture: DrawPicture = (item, own) => {
  if (own?.response.kind !== "line") return null;
  const setting = axialOfItem(item, { angleDeg: numberIn(own.response.angleDeg), depthMm: numberIn(own.response.depthMm) });
  return setting ? { ...axialFigure(axialModelOf(setting, { isOwn: true, showsAngles: true })), isMap: true, hasCaption: true } : null;
};

/** The knee with its numbered places. */
export const marksPicture: DrawPicture = (item) => {
  const figure = marksOfItem(item);
  return figure ? { markup: figure.markup, text: figure.text, isMap: true } : null;
};
