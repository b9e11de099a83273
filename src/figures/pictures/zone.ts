import { zoneOfItem } from "../zone-figure.ts";
import type { DrawPicture } from "./picture.ts";

/** The triangle of the zone, with the learner's own angle in it. */
export const zonePicture: DrawPicture = (item, own) => zoneOfItem(item, Object.values(own?.values ?? {})[0]);
