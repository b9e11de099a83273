import { lineFigure } from "../line-figure.ts";
import { lineOfItem } from "../line-of-item.ts";
import type { DrawPicture } from "./picture.ts";

/** The line of a question about one needle, with the learner's own depths on it. */
export const linePicture: DrawPicture = (item, own) => {
  const model = lineOfItem(item, own !== undefined, Object.values(own?.values ?? {}).filter((depth) => depth > 0));
  return model ? { ...lineFigure(model), hasCaption: true } : null;
};
