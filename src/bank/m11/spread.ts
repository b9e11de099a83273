import { withUnit } from "../../engine/quantity/format.ts";
import type { MarkFamily } from "../../engine/question/family.ts";
import type { Draw, Givens } from "../../engine/question/family-head.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { given } from "../m01/common.ts";
import { type Broken, brokenBy, gapsOf, PLACE_STEP_MM, placeOnRim, placesOn, rightPlaces, type SpreadCase } from "./spread-places.ts";
import { CASE_ABOUT } from "./stitch-words.ts";

const TEAR = { key: "tearMm", unit: "mm", least: 14, greatest: 26, step: 2 } as const;
const MARGIN = { key: "endMarginMm", unit: "mm", least: 2, greatest: 4, step: 2 } as const;
const SPACING = { key: "greatestSpacingMm", unit: "mm", least: 4, greatest: 6, step: 1 } as const;
const STITCHES = { key: "stitches", unit: "pieces", least: 4, greatest: 5, step: 1 } as const;
const REGION_RADIUS_MM = 0.9;

type About = Draw["about"];
type Chosen = Readonly<Record<string, string>>;
type Slip = (plan: SpreadCase, best: readonly number[]) => readonly number[];

const planOf = (givens: Givens, about: About): SpreadCase => ({
  tearMm: given(givens, "tearMm"),
  endMarginMm: given(givens, "endMarginMm"),
  greatestSpacingMm: given(givens, "greatestSpacingMm"),
  stitches: given(givens, "stitches"),
  softMm: (about["soft"] ?? "") === "" ? [] : [Number(about["soft"])],
});
const rimToward = (about: About): 1 | -1 => ((about["meniscus"] === "lateral") === (about["side"] === "right") ? 1 : -1);
const chosen = (places: readonly number[]): Chosen => Object.fromEntries(places.map((place, at) => [`stitch-${at + 1}`, String(place)]));
const bestFor = (plan: SpreadCase): readonly number[] => rightPlaces(plan)[0] ?? [];

const inner = ({ tearMm, endMarginMm, softMm }: SpreadCase): readonly number[] =>
  placesOn({ tearMm }).filter((place) => place > endMarginMm && place < tearMm - endMarginMm && !softMm.includes(place));
/** End stitches as they should stand, and those between as near as they can be to where `far` is least. */
const drawnTo = (plan: SpreadCase, far: (place: number) => number): readonly number[] => {
  const between = [...inner(plan)].sort((first, second) => far(first) - far(second)).slice(0, plan.stitches - 2);
  return [plan.endMarginMm, ...between.sort((first, second) => first - second), plan.tearMm - plan.endMarginMm];
};

/** What people do instead; a set that breaks no rule, or another one first, is no slip of this draw. */
const SLIPS: Readonly<Record<Broken, Slip>> = {
  "crowded-middle": (plan) => drawnTo(plan, (place) => Math.abs(place - plan.tearMm / 2)),
  "crowded-ends": (plan) => drawnTo(plan, (place) => -Math.abs(place - plan.tearMm / 2)),
  "margin-left-out": (plan, best) => [0, ...best.slice(1, -1), plan.tearMm],
  "end-left-open": (plan, best) => [...best.slice(0, -1), inner(plan).findLast((place) => !best.includes(place)) ?? 0],
  "soft-place": ({ softMm: [soft] }, best) => (soft === undefined ? best : [best[0] ?? 0, soft, ...best.slice(2)]),
  "one-place-twice": (_, best) => [best[0] ?? 0, best[0] ?? 0, ...best.slice(2)],
};

/** The share of stitches that may stay where they are: those in common with the right placement that is nearest. */
const shareKept = (places: readonly number[], asked: SpreadCase): number =>
  Math.max(...rightPlaces(asked).map((right) => right.filter((place) => places.includes(place)).length)) / asked.stitches;

/** A stretch that needs all its stitches, and a soft place that still leaves a way. */
const drawPlan = (chance: Chance): SpreadCase => {
  const greatestSpacingMm = chance.onGrid(SPACING);
  const [endMarginMm, stitches] = [chance.onGrid(MARGIN), greatestSpacingMm >= 6 ? STITCHES.least : chance.onGrid(STITCHES)];
  const onPlaces = Math.floor(greatestSpacingMm / PLACE_STEP_MM) * PLACE_STEP_MM;
  const stretchMm = chance.onGrid({ least: (stitches - 2) * onPlaces + PLACE_STEP_MM, greatest: (stitches - 1) * onPlaces, step: PLACE_STEP_MM });
  const plan = { tearMm: stretchMm + 2 * endMarginMm, endMarginMm, greatestSpacingMm, stitches, softMm: [] };
  const soft = inner(plan).filter((place) => rightPlaces({ ...plan, softMm: [place] }).length > 0);
  return soft.length > 0 && chance.happens(2, 3) ? { ...plan, softMm: [chance.pick(soft)] } : plan;
};

const plan = (say: Say): SpreadCase => planOf(Object.fromEntries([TEAR, MARGIN, SPACING, STITCHES].map(({ key }) => [key, say.value(key)])), { soft: say.about("soft") });
const softly = (say: Say): string => (say.about("soft") === "" ? "The tissue holds a needle at every place." : `At the place ${say.about("soft")} the tissue is too soft to hold a needle.`);
const tearOf = (say: Say): string => `${say.about("child")}, ${say.about("age")}, ${say.about("side")} knee: a longitudinal tear along the back of the ${say.about("meniscus")} meniscus.`;
const RULE = "Your hospital’s sheet: one stitch at each end, just inside the margin, and nowhere a gap above the widest that it allows.";
const NUMBERS = `Places stand every ${withUnit(String(PLACE_STEP_MM), "mm")} along the tear, each with its distance in millimetres from the end at the body.`;
const listed = (places: readonly number[]): string => `${places.slice(0, -1).join(", ")} and ${places.at(-1) ?? ""}`;

/** 11f: stitches placed along a tear so that no gap is too wide. */
export const spread: MarkFamily = {
  kind: "mark",
  id: "spread",
  code: "11f",
  module: "M11",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m11-even"],
  reads: [],
  sources: [],
  cautions: ["C8"],
  givens: [TEAR, MARGIN, SPACING, STITCHES],
  targets: ({ givens }) => Array.from({ length: given(givens, "stitches") }, (_, at) => `stitch-${at + 1}`),
  regions: ({ givens, about }) => placesOn(planOf(givens, about)).map((place) => ({ id: String(place), ...placeOnRim(place, { tearMm: given(givens, "tearMm"), toward: rimToward(about) }), radiusMm: REGION_RADIUS_MM })),
  truth: ({ givens, about }) => chosen(bestFor(planOf(givens, about))),
  check: ({ givens, about }, picked) => {
    const [places, asked] = [Object.values(picked).map((id) => (id === "" ? Number.NaN : Number(id))), planOf(givens, about)];
    if (places.some(Number.isNaN)) return { isRight: false, score: 0 };
    const slip = brokenBy(places, asked);
    return slip === null ? { isRight: true, score: 1 } : { isRight: false, score: shareKept(places, asked), slip };
  },
  draw: (chance) => {
    const { softMm, ...givens } = drawPlan(chance);
    return { givens, about: { ...CASE_ABOUT(chance), soft: softMm.map(String).join("") }, origins: { endMarginMm: { from: "local" }, greatestSpacingMm: { from: "local" } } };
  },
  slips: Object.entries(SLIPS).map(([id, slip]) => ({
    id,
    gives: ({ givens, about }) => {
      const asked = planOf(givens, about);
      const places = slip(asked, bestFor(asked));
      return places.length === asked.stitches && brokenBy(places, asked) === id ? chosen(places) : null;
    },
  })),
  words: {
    en: {
      title: "Spread them",
      stems: [
        (say) => [`${tearOf(say)} ${RULE}`, `${NUMBERS} ${softly(say)}`],
        (say) => [`The number has been said aloud; now each stitch gets its place. ${tearOf(say)}`, `${RULE} ${NUMBERS} ${softly(say)}`],
        (say) => [`A gap that opens at every step does not know that its neighbours hold. ${tearOf(say)} ${RULE}`, `${NUMBERS} ${softly(say)}`],
      ],
      question: "Where do the stitches go? More than one answer may be right, and their order does not matter.",
      givens: { tearMm: "Length of the tear, along the rim", endMarginMm: "Left free at each end, your hospital’s sheet", greatestSpacingMm: "Widest gap, your hospital’s sheet", stitches: "Stitches" },
      targets: { "stitch-1": "First stitch", "stitch-2": "Second stitch", "stitch-3": "Third stitch", "stitch-4": "Fourth stitch", "stitch-5": "Fifth stitch" },
      slips: {
        "crowded-middle": { name: "crowded middle", because: (say) => [`The stitches crowd in the middle, and beside an end stitch a gap is wider than ${say.of("greatestSpacingMm")}.`] },
        "crowded-ends": { name: "middle left open", because: (say) => [`Away from the end stitches a gap is wider than ${say.of("greatestSpacingMm")}. The number of stitches was right; the promise was the gap.`] },
        "margin-left-out": { name: "margin left out", because: (say) => [`The first ${say.of("endMarginMm")} of the tear stay free by this sheet, and as much at its other end. The end stitches stand just inside.`] },
        "end-left-open": { name: "an end left open", because: (say) => [`The sheet wants a stitch at each end, ${say.of("endMarginMm")} from it. Beyond the last one here the tear stays open.`] },
        "soft-place": { name: "soft tissue stitched", because: (say) => [`At the place ${say.about("soft")} the tissue does not hold a needle. The neighbours move so that no gap grows too wide.`] },
        "one-place-twice": { name: "two stitches in one place", because: () => ["Two stitches through the same holes are one stitch, and the gap beside them is as wide as before."] },
      },
      working: (say) => [
        `From margin to margin: ${say.bare("tearMm")} − 2 × ${say.bare("endMarginMm")} = ${withUnit(String(say.value("tearMm") - 2 * say.value("endMarginMm")), "mm")}, shared by ${say.value("stitches") - 1} gaps of at most ${say.of("greatestSpacingMm")}.`,
        `For example at ${listed(bestFor(plan(say)))}: gaps of ${withUnit(listed(gapsOf(bestFor(plan(say)))), "mm")}.`,
        ...(rightPlaces(plan(say)).length === 1 ? ["Here no other set of places keeps the sheet."] : [`${rightPlaces(plan(say)).length} sets of places keep the sheet here; the most even one stands above.`]),
      ],
      right: (say) => [`Both ends are held, and no gap is above ${say.of("greatestSpacingMm")}. Say the places aloud before the first needle.`],
      off: () => ["First the two end stitches, just inside the margins. Then share what lies between, and look at the widest gap."],
      moves: (say) => [say.about("soft") === "" ? "If one place turned out soft, its neighbours would have to move, and the widest gap with them." : `If the place ${say.about("soft")} held after all, more rows might keep the sheet.`],
      turns: () => ["A wider gap on the sheet leaves more ways to place the same stitches; a narrower one may need one stitch more."],
    },
  },
};
