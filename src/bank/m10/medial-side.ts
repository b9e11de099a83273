import { numberOf, type PlaceId, regionsOf, shuffledNumbers } from "../m01/knee-marks.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { MarkFamily } from "../../engine/question/family.ts";
import { withUnit } from "../../engine/quantity/format.ts";
import { posteriorPortal } from "../../facts/posterior-portal.ts";
import type { Pinned } from "../../facts/reader.ts";

const PLACES: readonly PlaceId[] = ["medial-collateral", "between-medial", "semimembranosus", "bundle", "popliteus", "lateral-collateral"];
const BANDS = ["8-10", "11-13", "14-16"] as const;

const bent = posteriorPortal("inside-out-to-saphenous.adult-90@1");
const straight = posteriorPortal("inside-out-to-saphenous.adult-straight@1");
const wide = ({ value }: Pinned): string => withUnit(value.mean ?? "", "mm");

/** The retractor stands behind the collateral ligament and in front of semimembranosus; the nerve lies behind, on the same side. */
const chosen = (draw: Draw, retractor: PlaceId, nerve: PlaceId): Readonly<Record<string, string>> => ({ retractor: numberOf(draw, PLACES, retractor), nerve: numberOf(draw, PLACES, nerve) });

const words: MarkFamily["words"][Language] = {
  title: "The medial side",
  stems: [
    (say) => [`Inside out on the medial side, model knee of ${say.about("band").replace("-", "–")} years, seen from above with the front at the top. The knee is bent to ${say.about("bend")}.`],
    (say) => [`The tear is medial. You will catch the needles behind, in the model knee of ${say.about("band").replace("-", "–")} years, seen from above; bent to ${say.about("bend")}.`],
    (say) => [`A medial repair from inside out. Model knee, ${say.about("band").replace("-", "–")} years, seen from above, front at the top, bent to ${say.about("bend")}. Find your side first.`],
  ],
  question: "Where does the retractor stand, and where do you look for the saphenous nerve?",
  givens: {},
  targets: { retractor: "Retractor", nerve: "Side of the saphenous nerve" },
  slips: {
    "in-front-of-the-ligament": { name: "in front of the ligament", because: () => ["The way in lies behind the medial collateral ligament. In front of it the retractor guards nothing that a needle from inside could meet."] },
    "lateral-side": { name: "the other side", because: () => ["That is the lateral side: the popliteus tendon lies there. The saphenous nerve runs on the medial side."] },
    "bundle-guarded-instead": { name: "the bundle guarded, the nerve forgotten", because: () => ["On the medial side the bundle is far and the saphenous nerve is near. It is the nerve that is caught, and it is easily forgotten because no muscle fails when it is."] },
  },
  working: () => ["Behind the medial collateral ligament, in front of semimembranosus: the retractor. Behind that: the nerve.", `Adult cadaver knees: from the wire to the saphenous nerve ${wide(bent)} at 90° and ${wide(straight)} straight; no figure for children was found. Order and place by common practice, no source.`],
  right: () => [`Behind the ligament, in front of semimembranosus. Bent, the nerve falls back: in adult knees ${wide(bent)} from the wire at 90°, ${wide(straight)} when straight.`],
  off: () => ["Find the medial side by what is missing there: no popliteus tendon. Then the ligament, then the room behind it, then semimembranosus and the nerve."],
  moves: () => ["Straightening the knee brings the nerve nearer to the needle; the same place is not the same distance at every bend."],
  turns: () => ["Always behind the medial collateral ligament and in front of semimembranosus, on whichever side of the page the medial side lies."],
};

/** 10p: the retractor's place and the nerve's side in a medial repair. */
export const medialSide: MarkFamily = {
  kind: "mark",
  id: "medial-side",
  code: "10p",
  module: "M10",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m10-fallback"],
  reads: ["inside-out-to-saphenous.adult-90@1", "inside-out-to-saphenous.adult-straight@1"],
  sources: [bent, straight].map(({ source, entry }) => ({ source: source ?? "", entry })),
  cautions: ["C8", "C9"],
  givens: [],
  targets: () => ["retractor", "nerve"],
  regions: (draw) => regionsOf(draw, PLACES),
  truth: (draw) => chosen(draw, "between-medial", "semimembranosus"),
  draw: (chance) => ({ givens: {}, about: { band: chance.pick(BANDS), side: chance.pick(["left", "right"]), bend: chance.pick(["60°", "70°", "80°", "90°"]), numbers: shuffledNumbers(chance, PLACES) } }),
  slips: [
    { id: "in-front-of-the-ligament", gives: (draw) => chosen(draw, "medial-collateral", "semimembranosus") },
    { id: "lateral-side", gives: (draw) => chosen(draw, "lateral-collateral", "popliteus") },
    { id: "bundle-guarded-instead", gives: (draw) => chosen(draw, "between-medial", "bundle") },
  ],
  words: { en: words },
};
