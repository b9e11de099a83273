import type { Item } from "../engine/question/item.ts";
import type { DrawPicture, Own, Picture } from "./pictures/picture.ts";

type Load = () => Promise<DrawPicture>;

/** The picture of each family that has one, fetched when a question of it is shown. */
const BY_FAMILY: Readonly<Record<string, Load>> = {
  "pack-check": async () => (await import("./pictures/tray.ts")).packTray,
  reconcile: async () => (await import("./pictures/tray.ts")).countTray,
  "date-check": async () => (await import("./pictures/packages.ts")).datedPackages,
  "field-fault": async () => (await import("./pictures/packages.ts")).seenPackages,
  "clock-length": async () => (await import("./pictures/tear-on-clock.ts")).tearOnClock,
  "rim-zone": async () => (await import("./pictures/tear-in-width.ts")).tearInZone,
  "depth-in-width": async () => (await import("./pictures/tear-in-width.ts")).tearAcross,
  "notch-look": async () => (await import("./pictures/strip.ts")).pictureStrip,
  "rim-stability": async () => (await import("./pictures/disc.ts")).discFromAbove,
  orientation: async () => (await import("./pictures/stitch.ts")).stitchFromAbove,
  unrecorded: async () => (await import("./pictures/strip.ts")).pictureStrip,
  "where-am-i": async () => (await import("./pictures/still.ts")).unnamedView,
  pattern: async () => (await import("./pictures/still.ts")).tearInView,
  hiatus: async () => (await import("./pictures/still.ts")).hiatusTwice,
  portal: async () => (await import("./pictures/front.ts")).frontOfKnee,
  spread: async () => (await import("./pictures/rim.ts")).backOfMeniscus,
  "same-place": async () => (await import("./pictures/two-views.ts")).placeTwice,
  slices: async () => (await import("./pictures/slices.ts")).sliceRow,
  "minutes-left": async () => (await import("./pictures/clock.ts")).cuffClock,
  "two-periods": async () => (await import("./pictures/clock.ts")).periodClocks,
  "repeat-time": async () => (await import("./pictures/clock.ts")).doseClock,
  head: async () => (await import("./pictures/bag.ts")).bagOverJoint,
  "hang-at": async () => (await import("./pictures/bag.ts")).bagToHang,
  "table-up": async () => (await import("./pictures/bag.ts")).bagOverMovingTable,
  "cuff-width": async () => (await import("./pictures/cuff.ts")).cuffOnLimb,
};

/** Families whose questions have a picture of their own before they are answered. */
export const PICTURED: readonly string[] = Object.keys(BY_FAMILY);

const LINE_KEYS = ["junctionToBundleMm", "freeEdgeToBundleMm"];
const isOnLine = (item: Item): boolean => LINE_KEYS.every((key) => item.givens.some((given) => given.key === key));

/** Pictures that would tell the answer, or in which it is given by hand: they come after it. */
const afterwards = async (item: Item): Promise<DrawPicture | null> => {
  if (item.kind === "line") return (await import("./pictures/knee.ts")).needlePicture;
  if (item.kind === "mark") return (await import("./pictures/knee.ts")).marksPicture;
  if (item.family === "in-view") return (await import("./pictures/cone.ts")).coneWithTarget;
  if (item.family === "zone-angle") return (await import("./pictures/zone.ts")).zonePicture;
  return isOnLine(item) ? (await import("./pictures/line.ts")).linePicture : null;
};

/**
 * The picture that belongs to a question, with the learner's own part once there is an answer; null for a question
 * without one. What draws it is fetched here, so that a page loads no more than the pictures that it shows.
 */
export const pictureOfItem = async (item: Item, own?: Own): Promise<Picture | null> => {
  const load = BY_FAMILY[item.family];
  const drawPicture = load ? await load() : own && (await afterwards(item));
  return drawPicture?.(item, own) ?? null;
};
