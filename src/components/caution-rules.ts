/** Modules about doing or assisting: C6 stands beside their objectives. */
export const C6_MODULES: readonly string[] = ["M06", "M10", "M11"];

/** Modules whose link previews carry C16, because a family may meet the link: what to do when a leg changes after an operation. */
export const C16_PREVIEWS: readonly string[] = ["M14"];
