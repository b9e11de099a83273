import { element } from "../markup.ts";

/** How the things of a theatre are drawn: plain lines in a box of 44 by 36, from its middle. Generic instruments, none of any maker. */
const PATHS: Readonly<Record<string, string>> = {
  scope: "M-22 -7H-8V7H-22ZM-8 -3H18V3H-8M18 -3L21 0 18 3M-15 -7V-12",
  sheath: "M-20 -8H-12V8H-20ZM-12 -4H20M-12 4H20M-16 -8V-13",
  obturator: "M-20 -7H-14V7H-20ZM-14 -2H14Q20 0 14 2H-14",
  probe: "M-21 -3H-6V3H-21ZM-6 0H19V6",
  needle: "M-21 -4H-16V4H-21ZM-16 0H21M15 -3L21 0",
  cap: "M-9 8V-2Q-9 -9 0 -9Q9 -9 9 -2V8ZM-9 2H9",
  clamp: "M-20 -9Q-10 -6 16 -1M-20 9Q-10 6 16 1M-20 -9V9M16 -1L21 -3M16 1L21 3",
  retriever: "M-21 -3H-8V3H-21ZM-8 0H6M6 0Q14 -10 20 0Q14 10 6 0",
  cannula: "M-20 -9L-12 -4V4L-20 9ZM-12 -4H19L21 4H-12",
  tubing: "M-19 -4Q-19 -13 -9 -13Q3 -13 3 0Q3 12 13 12Q21 12 21 3V-3M-21 -4H-17",
  swab: "M-13 -12H13V12H-13ZM-13 -4H13M-13 4H13M-4 -12V12M5 -12V12",
  blade: "M-20 3H-2V-3H-20ZM-2 -5L20 -5Q13 6 -2 5Z",
  tip: "M-20 0H2M2 0L18 -7M2 0L18 7M18 -7L21 -4M18 7L21 4",
  brokenTip: "M-20 0H2M2 0L18 -7M2 0L8 3M18 -7L21 -4M8 1L12 6",
  box: "M-18 -10H18V10H-18ZM-18 -4H18",
};

export const SHAPES: readonly string[] = Object.keys(PATHS).filter((name) => name !== "brokenTip");

/** One thing, drawn around a point; `width` is the room that it may fill. */
export const thing = (shape: string, [x, y]: readonly [number, number], widthPx: number): string => {
  const scale = Math.min(1, widthPx / 46);
  return element("path", { class: "t-out", d: PATHS[shape] ?? PATHS["box"], transform: `translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${scale.toFixed(2)})` });
};
