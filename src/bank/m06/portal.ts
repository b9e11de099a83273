import { sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { MarkFamily } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import { CHILDREN, HOSPITALS, SIDES } from "../m01/common.ts";
import { numberOf, type PlaceId, PLACES_AT_MOST, regionsOf, tendonAtMm } from "./portal-places.ts";

const TENDON = { key: "tendonMm", unit: "mm", least: 18, greatest: 26, step: 1 } as const;
const BESIDE = { key: "besideMm", unit: "mm", least: 4, greatest: 8, step: 1 } as const;
const ABOVE = { key: "aboveMm", unit: "mm", least: 6, greatest: 12, step: 1 } as const;
const YOUNGEST = 8;

const SLIP_PLACES: Readonly<Record<string, PlaceId>> = {
  "from-the-middle": "middle",
  "on-the-joint-line": "low",
  "too-high": "high",
  "other-side": "other-right",
  "numbers-swapped": "swapped",
};

const shown = (say: Say): Draw => ({ givens: { tendonMm: say.value("tendonMm"), besideMm: say.value("besideMm"), aboveMm: say.value("aboveMm") }, about: { side: say.about("side"), portal: say.about("portal"), order: say.about("order") } });
const right = (say: Say): string => numberOf(shown(say), "right") ?? "";
const page = (say: Say): string => ((say.about("side") === "right") === (say.about("portal") === "anterolateral") ? "left" : "right");
const half = (say: Say): string => String(say.value("tendonMm") / 2);
const aside = (say: Say): string => String(sumOnGrid(say.value("tendonMm") / 2, say.value("besideMm")));
const rule = (say: Say): string => `The sheet at ${say.about("hospital")} counts from what is felt: so far beside the edge of the patellar tendon, so far above the joint line.`;
const child = (say: Say): string => `${say.about("child")}, ${say.about("age")}`;

const words: MarkFamily["words"][Language] = {
  title: "Where the blade goes in",
  stems: [
    (say) => [`${child(say)}: ${say.about("side")} knee, bent to a right angle, and you stand in front of it. You mark the ${say.about("portal")} portal. ${rule(say)}`],
    (say) => [`Before fluid makes everything round, the ${say.about("portal")} portal is marked on the ${say.about("side")} knee of ${child(say)}. The knee is bent to a right angle, and you face it. ${rule(say)}`],
    (say) => [`“Draw it, then say what it is measured from.” You face the ${say.about("side")} knee of ${child(say)}, bent to a right angle; the ${say.about("portal")} portal is wanted. ${rule(say)}`],
  ],
  question: "Which numbered place is the portal by this sheet?",
  givens: { tendonMm: "Patellar tendon, felt from edge to edge", besideMm: (say) => `Beside the edge of the tendon, sheet of ${say.about("hospital")} hospital`, aboveMm: (say) => `Above the joint line, sheet of ${say.about("hospital")} hospital` },
  targets: { portal: "The portal" },
  slips: {
    "from-the-middle": { name: "through the tendon", because: (say) => [`${say.of("besideMm")} was counted from the middle of the tendon. Half the tendon is ${half(say)} mm wide, so the blade would go through it. The sheet counts from the edge.`] },
    "on-the-joint-line": { name: "too low", because: (say) => [`On the joint line the meniscus lies under the blade. The sheet asks for ${say.of("aboveMm")} above it.`] },
    "too-high": { name: "too high", because: (say) => [`That is twice ${say.of("aboveMm")}. From up there the tool comes down on the condyle and cannot pass under it.`] },
    "other-side": { name: "the other side", because: (say) => [`You face the knee: of a ${say.about("side")} knee the ${say.about("portal")} portal lies on your ${page(say)}. The head of the fibula is lateral; look for it first.`] },
    "numbers-swapped": { name: "the two numbers swapped", because: (say) => [`${say.of("besideMm")} is the way sideways from the edge, and ${say.of("aboveMm")} the way up from the joint line.`] },
  },
  working: (say) => [
    `You face a ${say.about("side")} knee, so its ${say.about("portal").replace("antero", "")} side is on your ${page(say)}.`,
    `From the middle of the tendon: ${half(say)} + ${say.bare("besideMm")} = ${aside(say)} mm. From the joint line: ${say.bare("aboveMm")} mm upwards.`,
    `That is place ${right(say)}.`,
  ],
  right: (say) => [`Place ${right(say)}: clear of the tendon, above the meniscus, below the bulge of the condyle. For children no published offset was found; the numbers are the sheet’s, and a needle tries the place first.`],
  off: (say) => [`First the side, by the head of the fibula; then ${aside(say)} mm from the middle of the tendon and ${say.bare("aboveMm")} mm up. That is place ${right(say)}.`],
  moves: () => ["A wider tendon moves the place outwards, and another sheet may move it anywhere. What stays is what it is counted from: edge and joint line, both felt."],
  turns: () => ["On the other knee, or for the other portal, the place changes its side of the page and nothing else."],
};

/** 06f: a front portal marked by the local rule. */
export const portal: MarkFamily = {
  kind: "mark",
  id: "portal",
  code: "06f",
  module: "M06",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m06-portal"],
  reads: [],
  sources: [],
  cautions: ["C2", "C6", "C8"],
  givens: [TENDON, BESIDE, ABOVE],
  targets: () => ["portal"],
  regions: regionsOf,
  truth: (draw) => ({ portal: numberOf(draw, "right") ?? "" }),
  draw: (chance) => {
    const about = { side: chance.pick(SIDES), portal: chance.pick(["anterolateral", "anteromedial"]), child: chance.pick(CHILDREN), age: String(YOUNGEST + chance.below(9)), hospital: chance.pick(HOSPITALS) };
    return {
      givens: { tendonMm: chance.onGrid(TENDON), besideMm: chance.onGrid(BESIDE), aboveMm: chance.onGrid(ABOVE) },
      about: { ...about, tendonAtMm: String(tendonAtMm(about)), order: chance.shuffled(Array.from({ length: PLACES_AT_MOST }, (_, index) => index)).join(" ") },
      origins: { besideMm: { from: "local" }, aboveMm: { from: "local" } },
    };
  },
  slips: Object.entries(SLIP_PLACES).map(([id, place]) => ({ id, gives: (draw: Draw) => { const number = numberOf(draw, place); return number === null ? null : { portal: number }; } })),
  words: { en: words },
};
