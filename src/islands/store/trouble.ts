/**
 * Why the device could not keep something: `blocked` storage, no room (`full`), a record that a `newer` edition has
 * written, or `busy` because another tab with an older edition holds it.
 */
export type StoreTrouble = "blocked" | "full" | "newer" | "busy";

/** What the browser's own error means for the learner. */
export const troubleOf = (error: unknown): StoreTrouble => {
  const name = error instanceof Error || error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") return "full";
  if (name === "VersionError") return "newer";
  return name === "BusyError" ? "busy" : "blocked";
};
