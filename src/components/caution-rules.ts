/** Modules about doing or assisting: C6 stands beside their objectives. */
export const C6_MODULES: readonly string[] = ["M06", "M10", "M11"];
