import type { Item } from "../engine/question/item.ts";
import { pictureOfItem } from "./picture-of-item.ts";
import { marksPicture } from "./pictures/knee.ts";
import { kneeToDrawIn } from "./pictures/knee-to-draw-in.ts";
import type { Picture } from "./pictures/picture.ts";

/** The picture of a question on paper, where nobody can move a needle or press a place: a map to draw in instead. */
export const pictureOnPaper = async (item: Item): Promise<Picture | null> => (await pictureOfItem(item)) ?? kneeToDrawIn(item) ?? marksPicture(item);
