import type { Item } from "../engine/question/item.ts";
import { AskedLine } from "./AskedLine.tsx";
import { AskedMark } from "./AskedMark.tsx";
import type { AskedPart } from "./asked-part.ts";

/** The part of a card that is answered in the map of the knee. The map is the heaviest drawing of the site, so it stands in a file of its own. */
export const MapPart = ({ item, ...rest }: AskedPart<Item>) => {
  if (item.kind === "line") return <AskedLine {...rest} item={item} />;
  return item.kind === "mark" ? <AskedMark {...rest} item={item} /> : null;
};
