/** Who puts a caution on a module's page: the layout by itself, or the author by a tag. */
export interface CautionPlace {
  readonly caution: string;
  readonly by: "layout" | "author";
  /** Codes of modules, or all. */
  readonly modules: "all" | readonly string[];
  /** `head`: before the first heading. `where it applies`: once anywhere. */
  readonly where: "head" | "where it applies" | "each section that shows such a number";
  /** Also in every module that shows a simulated share. */
  readonly alsoForSimulatedShares?: true;
}

/**
 * Places of the cautions inside modules. C1 and C16 stand in the footer of every page, C8 in every
 * figure, C10 in verdicts, C11 and C12 on pages of their own.
 */
export const CAUTION_PLACES: readonly CautionPlace[] = [
  { caution: "C2", by: "layout", modules: "all", where: "head" },
  { caution: "C13", by: "layout", modules: "all", where: "head" },
  { caution: "C6", by: "layout", modules: ["M06", "M10", "M11"], where: "head" },
  { caution: "C3", by: "layout", modules: "all", where: "each section that shows such a number" },
  { caution: "C9", by: "layout", modules: "all", where: "each section that shows such a number" },
  { caution: "C4", by: "author", modules: ["M12"], where: "head" },
  { caution: "C5", by: "author", modules: ["M04", "M13"], where: "where it applies" },
  { caution: "C7", by: "author", modules: ["M04", "M13"], where: "where it applies" },
  { caution: "C14", by: "author", modules: ["M06", "M10"], where: "where it applies", alsoForSimulatedShares: true },
  { caution: "C15", by: "author", modules: ["M05", "M07"], where: "where it applies" },
  { caution: "C16", by: "author", modules: ["M14"], where: "where it applies" },
];
