import { draw, families } from "../bank/index.ts";

/** Title of each question family by its id, for pages that name families without drawing them. */
export const familyTitles = (): Readonly<Record<string, string>> => Object.fromEntries(families.map(({ id }) => [id, draw(id, 1).title]));

/** Families that have an unsafe side. */
export const unsafeFamilies = (): readonly string[] => families.filter(({ unsafe }) => unsafe).map(({ id }) => id);
