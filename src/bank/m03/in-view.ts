import { inView } from "../../engine/optics/in-view.ts";
import { sweptConeDeg } from "../../engine/optics/swept-cone-deg.ts";
import type { Draw, Givens, Language } from "../../engine/question/family-head.ts";
import type { NameFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { CHILDREN, FIELD_LABEL, given, HOSPITALS, measure } from "./optics-words.ts";

const VIEW = { key: "viewDeg", unit: "deg", least: 0, greatest: 70, step: 10 } as const;
const FIELD = { key: "fieldDeg", unit: "deg", least: 60, greatest: 110, step: 10 } as const;
const TARGET = { key: "targetDeg", unit: "deg", least: 0, greatest: 120, step: 1 } as const;
const CLEAR_DEG = 3;
const HALF_TURN_DEG = 180;

type Picks = Readonly<Record<"way" | "turning", string>>;

interface Look {
  readonly viewDeg: number;
  readonly fieldDeg: number;
  /** Below 0 on the side away from the tilt of the view. */
  readonly targetDeg: number;
}

const lookOf = ({ givens, about }: { givens: Givens; about: Draw["about"] }): Look => ({
  viewDeg: given(givens, "viewDeg"),
  fieldDeg: given(givens, "fieldDeg"),
  targetDeg: about["side"] === "other" ? -given(givens, "targetDeg") : given(givens, "targetDeg"),
});

/** What a full turn about the shaft adds: nothing, a wider round, or a wider round with a blind middle. */
const turningOf = ({ viewDeg, fieldDeg }: Look): string => {
  if (viewDeg === 0) return "same";
  return sweptConeDeg({ viewDeg, fieldDeg }).blindDeg > 0 ? "gap" : "whole";
};

const truthOf = (look: Look): Picks => ({ way: inView(look), turning: turningOf(look) });

/** Wrong ways of thinking, in the order in which they are looked for; `null` where one leads to the truth. */
const THOUGHTS: Readonly<Record<string, (look: Look, truth: Picks) => Picks | null>> = {
  "straight-scope-turned": ({ viewDeg }, truth) => (viewDeg === 0 ? { way: truth.way === "tilting" ? "rotating" : truth.way, turning: "whole" } : null),
  "only-the-middle-counts": ({ viewDeg }, truth) => (truth.way === "still" ? { way: viewDeg === 0 ? "tilting" : "rotating", turning: truth.turning } : null),
  "whole-field-on-one-side": (look, truth) => ({ ...truth, way: inView({ ...look, fieldDeg: Math.min(HALF_TURN_DEG, 2 * look.fieldDeg, 2 * (HALF_TURN_DEG - look.viewDeg)) }) }),
  "side-left-out": (look, truth) => ({ ...truth, way: inView({ ...look, targetDeg: Math.abs(look.targetDeg) }) }),
  "view-angle-left-out": (look) => ({ way: inView({ ...look, viewDeg: 0 }), turning: "same" }),
  "blind-middle-overlooked": (_, truth) => (truth.turning === "gap" ? { ...truth, turning: "whole" } : null),
  "blind-middle-imagined": (_, truth) => (truth.turning === "whole" ? { ...truth, turning: "gap" } : null),
  "tilted-at-once": (_, truth) => (truth.way === "rotating" ? { ...truth, way: "tilting" } : null),
};

const wrongPicks = (picks: Picks, truth: Picks): readonly string[] => (["way", "turning"] as const).filter((id) => picks[id] !== truth[id]).map((id) => `${id} ${picks[id]}`);

/** Thoughts of a draw that can be told apart: none shares a wrong pick with one before it. */
const thoughtsOf = (draw: Draw): Readonly<Record<string, Picks>> => {
  const look = lookOf(draw);
  const truth = truthOf(look);
  const taken = new Set<string>();
  const kept: Record<string, Picks> = {};
  for (const [id, thought] of Object.entries(THOUGHTS)) {
    const picks = thought(look, truth);
    const wrong = picks === null ? [] : wrongPicks(picks, truth);
    if (picks === null || wrong.length === 0 || wrong.some((one) => taken.has(one))) continue;
    for (const one of wrong) taken.add(one);
    kept[id] = picks;
  }
  return kept;
};

/** Targets that lie clear of every edge, so that no answer hangs on a degree; before a straight scope near enough to be thought seen. */
const placesFor = (viewDeg: number, fieldDeg: number): readonly { readonly targetDeg: number; readonly side: string; readonly way: string }[] =>
  ["same", "other"].flatMap((side) =>
    Array.from({ length: TARGET.greatest + 1 }, (_, targetDeg) => targetDeg).flatMap((targetDeg) => {
      const signed = side === "other" ? -targetDeg : targetDeg;
      const edges = [Math.abs(signed - viewDeg), Math.abs(targetDeg - viewDeg)].map((offDeg) => Math.abs(offDeg - fieldDeg / 2));
      const isTooFar = viewDeg === 0 && targetDeg > fieldDeg - CLEAR_DEG;
      return targetDeg < 5 || isTooFar || edges.some((gapDeg) => gapDeg < CLEAR_DEG) ? [] : [{ targetDeg, side, way: inView({ viewDeg, fieldDeg, targetDeg: signed }) }];
    }));

const drawLook = (chance: Chance): Draw => {
  const viewDeg = chance.pick([0, 0, 30, 30, 70]);
  const fieldDeg = chance.onGrid(FIELD);
  const places = placesFor(viewDeg, fieldDeg);
  const way = chance.pick([...new Set(places.map((place) => place.way))]);
  const { targetDeg, side } = chance.pick(places.filter((place) => place.way === way));
  return {
    givens: { viewDeg, fieldDeg, targetDeg },
    about: { side: viewDeg === 0 ? "any" : side, child: chance.pick(CHILDREN), hospital: chance.pick(HOSPITALS), thing: chance.pick(["the ramp of the posterior horn", "the root", "the hiatus", "the edge of the defect", "the loose body"]) },
    origins: { fieldDeg: { from: "local" } },
  };
};

const drawOf = (say: Say): Draw => ({ givens: { viewDeg: say.value("viewDeg"), fieldDeg: say.value("fieldDeg"), targetDeg: say.value("targetDeg") }, about: { side: say.about("side") } });
const look = (say: Say): Look => lookOf(drawOf(say));
const half = (say: Say): string => measure(say.value("fieldDeg") / 2, "deg", 0);
const off = (say: Say): string => measure(Math.abs(look(say).targetDeg - look(say).viewDeg), "deg", 0);
const offTurned = (say: Say): string => measure(Math.abs(say.value("targetDeg") - say.value("viewDeg")), "deg", 0);
const SIDES: Readonly<Record<string, string>> = { any: "to one side of the shaft", same: "on the side to which the view is tilted", other: "on the side away from the tilt of the view" };
const sideOf = (say: Say): string => SIDES[say.about("side")] ?? "";
const WAYS: Readonly<Record<string, string>> = { still: "Hold still: it is in the picture", rotating: "Turn the scope about its own shaft", tilting: "Only tilting the shaft will show it" };
const TURNS: Readonly<Record<string, string>> = { same: "The same round again", whole: "A wider round, with nothing left out", gap: "A wider round, with a blind middle" };
const truth = (say: Say): string => `${WAYS[truthOf(look(say)).way] ?? ""}. A full turn: ${(TURNS[turningOf(look(say))] ?? "").toLowerCase()}.`;
const scope = (say: Say): string => (say.value("viewDeg") === 0 ? "a straight-ahead scope" : `a scope with a view of ${say.of("viewDeg")}`);

const words: NameFamily["words"][Language] = {
  title: "What shows the target",
  stems: [
    (say) => [`You look into the knee of ${say.about("child")} with ${scope(say)}. From the tip, ${say.about("thing")} lies off the shaft by the angle printed, ${sideOf(say)}.`],
    (say) => [`${say.about("thing").charAt(0).toUpperCase()}${say.about("thing").slice(1)} in the knee of ${say.about("child")} lies ${sideOf(say)}, as far off as printed. In your hand is ${scope(say)}.`],
    (say) => [`“Where is ${say.about("thing")}?” You hold ${scope(say)} in the knee of ${say.about("child")}. Seen from the tip, it lies ${sideOf(say)}.`],
  ],
  question: "What is the least that shows it, and what does a full turn of this scope about its own shaft show? The tip stays where it is.",
  givens: { viewDeg: "View, off the shaft", fieldDeg: FIELD_LABEL, targetDeg: (say) => `Target, off the shaft, ${sideOf(say)}` },
  attributes: { way: "The least that shows the target", turning: "A full turn about the shaft shows" },
  options: { ...WAYS, ...TURNS },
  slips: {
    "straight-scope-turned": { name: "straight scope turned like an angled one", because: () => ["A straight-ahead scope that is turned about its shaft shows the same cone. Turning moves only a view that is tilted."] },
    "only-the-middle-counts": { name: "only the middle of the picture counted", because: (say) => [`It lies ${off(say)} off the middle of the view, and the picture reaches ${half(say)} to each side. It is there, towards the edge.`] },
    "whole-field-on-one-side": { name: "whole field on one side", because: (say) => [`${say.of("fieldDeg")} is the field from edge to edge. To each side it reaches only ${half(say)}.`] },
    "side-left-out": { name: "side left out", because: (say) => [`The target lies ${sideOf(say)}: ${off(say)} from the middle of the view, not ${offTurned(say)}. Only a turn brings the view to that side.`] },
    "view-angle-left-out": { name: "tilt of the view left out", because: (say) => [`This scope looks ${say.of("viewDeg")} off its shaft. Angles count from there, and a turn carries the view round.`] },
    "blind-middle-overlooked": { name: "blind middle overlooked", because: (say) => [`The view is tilted by ${say.of("viewDeg")} and reaches back only ${half(say)}. The middle, straight ahead, stays unseen through the whole turn.`] },
    "blind-middle-imagined": { name: "blind middle imagined", because: (say) => [`The view is tilted by ${say.of("viewDeg")} and reaches back ${half(say)}, past the shaft. Nothing straight ahead is left out with this field.`] },
    "tilted-at-once": { name: "tilted at once", because: (say) => [`After a turn the target lies ${offTurned(say)} off the middle of the view, within ${half(say)}. Turn first: a shaft that is not tilted presses on nothing.`] },
  },
  working: (say) => [
    `Half the field: ${half(say)}. As the scope stands, the target is ${off(say)} off the middle of the view.`,
    say.value("viewDeg") === 0 ? "A turn of a straight-ahead scope changes nothing." : `Turned to its side, it would be ${offTurned(say)} off.`,
    truth(say),
  ],
  right: (say) => [truth(say)],
  off: (say) => [`Count from the middle of the view, ${say.of("viewDeg")} off the shaft, and allow ${half(say)} to each side. ${truth(say)}`],
  moves: () => ["A wider field brings more in without moving. A view that is tilted more shows more by turning, and beyond half the field it loses what is straight ahead."],
  turns: (say) => [`As the scope stands, the edge of the picture is ${half(say)} from the middle of the view; after a turn the same holds on every side.`],
};

/** 03c: whether a target is seen as the scope stands, by turning it, or only by tilting it. */
export const targetInView: NameFamily = {
  kind: "name",
  id: "in-view",
  code: "03c",
  module: "M03",
  version: 1,
  firstWave: true,
  unsafe: false,
  objectives: ["m03-move"],
  reads: [],
  sources: [],
  cautions: [],
  givens: [VIEW, FIELD, TARGET],
  attributes: [{ id: "way", options: ["still", "rotating", "tilting"] }, { id: "turning", options: ["same", "whole", "gap"] }],
  draw: drawLook,
  truth: (draw) => truthOf(lookOf(draw)),
  slips: Object.keys(THOUGHTS).map((id) => ({ id, gives: (draw: Draw) => thoughtsOf(draw)[id] ?? null })),
  words: { en: words },
};
