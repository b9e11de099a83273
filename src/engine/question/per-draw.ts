import type { Draw } from "./family-head.ts";

/** Something that a family makes of a draw. */
export type OfDraw<F, T> = (family: F, draw: Draw) => T;

/** What a family makes of a draw, worked out once for the draw of last time: its truth and its slips are asked for with every answer. */
export const perDraw = <F, T>(make: OfDraw<F, T>): OfDraw<F, T> => {
  let last: { readonly family: F; readonly draw: Draw; readonly made: T } | null = null;
  return (family, draw) => {
    if (last !== null && last.draw === draw && last.family === family) return last.made;
    last = { family, draw, made: make(family, draw) };
    return last.made;
  };
};
