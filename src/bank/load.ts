import type { Family } from "../engine/question/family.ts";

/** One chunk a family, fetched when a question of it is first worked on. */
const LOADERS: Readonly<Record<string, () => Promise<Family>>> = {
  "path-width": async () => (await import("./m10/path-width.ts")).pathWidth,
  "least-depth": async () => (await import("./m10/least-depth.ts")).leastDepth,
  "greatest-depth": async () => (await import("./m10/greatest-depth.ts")).greatestDepth,
  window: async () => (await import("./m10/window.ts")).depthWindow,
};

/** The newest version of a family by its id; rejects with a RangeError for an id that is not listed. */
export const loadFamily = async (id: string): Promise<Family> => {
  const load = LOADERS[id];
  if (!load) throw new RangeError(`id must name a family, got ${id}`);
  return load();
};
