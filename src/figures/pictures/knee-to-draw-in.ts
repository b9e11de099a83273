import { fromTo, lengthOf } from "../../engine/geometry/vec2.ts";
import { bearingDeg } from "../../engine/knee/bearing.ts";
import { axialFigure } from "../axial-figure.ts";
import type { AxialModel } from "../axial-model.ts";
import { axialOfItem } from "../axial-of-item.ts";
import { axialModelOf } from "../axial-setting.ts";
import { AXIAL_WORDS, deg, mm } from "../axial-words.ts";
import { type DrawPicture, inWords } from "./picture.ts";

const words = AXIAL_WORDS.en;

/** Where each structure lies from the portal that is used, as bearing and distance. */
const placesInWords = ({ knee, portal }: AxialModel): string => {
  const from = knee.portals[portal];
  return knee.structures.map(({ id, centre, radiusMm }) => `${words.structures[id]} ${deg(bearingDeg(knee.side, from, centre))}, ${mm(lengthOf(fromTo(from, centre)))} to its middle, ${mm(2 * radiusMm)} across`).join("; ");
};

/** The knee of a question with a needle as it stands on paper: no needle, no angles, nothing that the answer tells. */
export const kneeToDrawIn: DrawPicture = (item) => {
  const setting = axialOfItem(item);
  if (setting === null) return null;
  const { markup, view: { model } } = axialFigure(axialModelOf(setting, { isOwn: false, showsAngles: false, isBlank: true }));
  const text = inWords(
    `A ${model.knee.side} knee of the model, ${model.ages}, ${words.seen}, front at the top.`,
    `The ${words.portals[model.portal]} portal is the filled one; no needle is drawn.`,
    `From it, 0° straight back and plus to the lateral side: ${placesInWords(model)}.`,
  );
  return { markup, text, isMap: true };
};
