import type { Point } from "../engine/geometry/vec2.ts";
import type { Item } from "../engine/question/item.ts";
import { frontPointAt } from "./front-frame.ts";
import { rimPointAt } from "./rim-frame.ts";
import { pointInSecond } from "./two-views-frame.ts";

/** Questions that ask for marks in a picture of their own and not in the map of the knee: a page without a map need not load one. */
const UNDER: Readonly<Record<string, (xShare: number, yShare: number) => Point | null>> = { portal: frontPointAt, "same-place": pointInSecond, spread: rimPointAt };

/** True for a question that is answered in the map of the knee. */
export const isInMap = (item: Item): boolean => item.kind === "line" || (item.kind === "mark" && UNDER[item.family] === undefined);

/** The place under a point of a question's own picture, given as shares of its width; null beside the places. */
export const placeUnder = (item: Item, xShare: number, yShare: number): Point | null => UNDER[item.family]?.(xShare, yShare) ?? null;

/** True for a question whose picture rings the places while they are chosen. */
export const ringsChosen = (item: Item): boolean => item.family === "spread";
