import type { MarkItem } from "../engine/question/item.ts";
import { marksOfItem } from "../figures/axial-marks.ts";
import type { AskedPart } from "./asked-part.ts";
import { AskedPlaces, type Stage } from "./AskedPlaces.tsx";
import { Drawing } from "./Drawing.tsx";

const stageOf = (item: MarkItem): Stage => {
  const figure = marksOfItem(item);
  return { name: "stage", drawing: figure && <Drawing markup={figure.markup} text={figure.text} />, pointUnder: (...point) => figure?.pointUnder(...point) ?? null };
};

/** Places to be pointed at in the map of the knee, or chosen by their numbers. */
export const AskedMark = (props: AskedPart<MarkItem>) => <AskedPlaces {...props} stageFor={() => stageOf(props.item)} />;
