import { withUnit } from "../../engine/quantity/format.ts";
import { compareOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { SumFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { stopSettingMm } from "../../engine/repair/stop-setting-mm.ts";
import { given, LINE_SAYS } from "./aimed-line.ts";
import { AGES, CHILDREN, childIn, childOf } from "./needle-words.ts";

const LEAST = { key: "leastMm", unit: "mm", least: 8, greatest: 17, step: 0.1 } as const;
const GREATEST = { key: "greatestMm", unit: "mm", least: 8, greatest: 22, step: 0.1 } as const;
const STOP_EVERY_MM = 2;
const FIRST_STOPS = ["6", "7", "8"] as const;
const STOPS = 9;
const LEAST_SPAN_TENTHS = 2;

const stopsFrom = (first: string): readonly number[] => Array.from({ length: STOPS }, (_, index) => Number(first) + index * STOP_EVERY_MM);
const STOPS_BY_FIRST: ReadonlyMap<string, readonly number[]> = new Map(FIRST_STOPS.map((first) => [first, stopsFrom(first)]));

/** The stops of the needle in the case, from the first one that the draw names. */
const stopsOf = ({ firstStop = FIRST_STOPS[0] }: Draw["about"]): readonly number[] => STOPS_BY_FIRST.get(firstStop) ?? stopsFrom(firstStop);

const windowOf = (givens: Givens) => ({ leastMm: given(givens, "leastMm"), greatestMm: given(givens, "greatestMm") });
const inside = (givens: Givens, about: Draw["about"]): readonly number[] =>
  stopsOf(about).filter((stop) => compareOnGrid(stop, given(givens, "leastMm")) >= 0 && compareOnGrid(stop, given(givens, "greatestMm")) <= 0);
const below = ({ givens, about }: Draw): number | undefined => stopsOf(about).filter((stop) => compareOnGrid(stop, given(givens, "leastMm")) < 0).at(-1);
const above = ({ givens, about }: Draw): number | undefined => stopsOf(about).find((stop) => compareOnGrid(stop, given(givens, "greatestMm")) > 0);

const mm = (value: number | undefined): string => withUnit(String(value ?? ""), "mm");
const list = (say: Say): string => `${stopsOf({ firstStop: say.about("firstStop") }).join(", ")}`;
const fitting = (say: Say): readonly number[] => inside({ leastMm: say.value("leastMm"), greatestMm: say.value("greatestMm") }, { firstStop: say.about("firstStop") });
const window = (say: Say): string => `from ${say.of("leastMm")} to ${say.of("greatestMm")}`;

const slip = (value: number | undefined) => (value === undefined ? null : { stopMm: value });

/** 10e: the smallest stop inside a window, or none. */
export const stopSetting: SumFamily = {
  kind: "sum",
  id: "stop-setting",
  code: "10e",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-window"],
  reads: [],
  sources: [],
  cautions: ["C2"],
  givens: [LEAST, GREATEST],
  asks: [{ id: "stopMm", unit: "mm", roundTo: 0.1, rounding: "nearest", safeSide: "none" }],
  draw: (chance) => {
    const leastMm = chance.onGrid(LEAST);
    const spanTenths = LEAST_SPAN_TENTHS + (chance.happens(2, 5) ? chance.below(17) : chance.below(48));
    const greatestMm = Number((leastMm + spanTenths / 10).toFixed(1));
    return { givens: { leastMm, greatestMm }, about: { child: chance.pick(CHILDREN), age: chance.pick(AGES), firstStop: chance.pick(FIRST_STOPS) } };
  },
  solve: (givens, about) => {
    const stopMm = stopSettingMm(windowOf(givens), stopsOf(about));
    return stopMm === null ? { says: "none" } : { stopMm };
  },
  isUnsafe: ({ givens }, { stopMm = 0 }) => compareOnGrid(stopMm, given(givens, "leastMm")) < 0 || compareOnGrid(stopMm, given(givens, "greatestMm")) > 0,
  slips: [
    { id: "below-the-need", gives: (draw) => slip(below(draw)) },
    { id: "past-the-limit", gives: (draw) => slip(above(draw)) },
    { id: "largest-that-fits", gives: ({ givens, about }) => { const fit = inside(givens, about); return fit.length > 1 ? slip(fit.at(-1)) : null; } },
    { id: "between-two-stops", gives: ({ givens, about }) => (inside(givens, about).length === 0 ? { stopMm: Number(((given(givens, "leastMm") + given(givens, "greatestMm")) / 2).toFixed(1)) } : null) },
  ],
  words: {
    en: {
      title: "The stop",
      stems: [
        (say) => [`For ${childIn(say)} the window on the planned line has been worked out. The needle of this case can be stopped at ${list(say)} millimetres and nowhere else.`],
        (say) => [`The scrub nurse holds the needle. Its stop can be fixed at ${list(say)} millimetres. The window for ${childIn(say)} is below.`],
        (say) => [`Stops on this needle: ${list(say)} millimetres. You have the window for one stitch in the knee of ${childOf(say)}, and you name the stop aloud.`],
      ],
      question: "Which stop do you name, or is there none in the window?",
      givens: { leastMm: "Least depth, from the entry", greatestMm: "Greatest depth, from the entry" },
      asks: { stopMm: "Stop" },
      says: { ...LINE_SAYS, none: "No stop in this window" },
      slips: {
        "below-the-need": { name: "stop below the need", because: (say) => [`The window begins at ${say.of("leastMm")}. With a stop before that the anchor cannot open behind the capsule: it holds nothing and may come loose.`] },
        "past-the-limit": { name: "stop past the limit", because: (say) => [`The window ends at ${say.of("greatestMm")}. Behind that the margin in front of the bundle is gone.`] },
        "largest-that-fits": { name: "largest stop that fits", because: (say) => [`It lies in the window, and so does ${mm(fitting(say)[0])}. More than needed: the margin is spent and nothing is bought with it.`] },
        "between-two-stops": { name: "a setting that does not exist", because: () => ["The middle of the window is no stop of this needle. What cannot be set cannot be trusted to stay."] },
      },
      working: (say) => [
        `Stops that are at least ${say.of("leastMm")} and at most ${say.of("greatestMm")}: ${fitting(say).length === 0 ? "none" : fitting(say).map(mm).join(", ")}.`,
        fitting(say).length === 0 ? "The window lies between two stops. Another needle, another line, or another technique." : `The smallest of them: ${mm(fitting(say)[0])}.`,
      ],
      right: (say) => fitting(say).length === 0 ? [`The window ${window(say)} lies between two stops of this needle. None is the answer; change the needle or the line.`] : [`${mm(fitting(say)[0])} is the smallest stop that meets the need, so the most margin is kept.`],
      off: (say) => fitting(say).length === 0 ? [`No stop lies in the window ${window(say)}. A window is not enough: the needle must be able to stop in it.`] : [`Take the stops ${window(say)}, and of those the smallest. Here that leaves ${fitting(say).map(mm).join(", ")}.`],
      moves: (say) => [`Nothing, until an end of the window passes a stop. The stops are ${list(say)} millimetres, and between two of them the answer stays the same.`],
      turns: (say) => fitting(say).length === 0 ? [`As soon as a stop lies in the window ${window(say)}. A window as wide as the step between two stops always holds one.`] : [`When the need is at most ${mm(fitting(say)[0])} and the limit at least that, and no smaller stop would do.`],
      inverse: () => [],
    },
  },
};
