import { arcPoint } from "../../engine/geometry/arc.ts";
import { needleUnder } from "../../engine/knee/aimed-needle.ts";
import { bearingDeg } from "../../engine/knee/bearing.ts";
import { type Knee, kneeFrom, type PortalId, structureOf } from "../../engine/knee/knee.ts";
import type { Side } from "../../engine/knee/sizes.ts";
import type { Draw, GivenSpec, Language } from "../../engine/question/family-head.ts";
import type { LineCheck, LineFamily, PlacedLine } from "../../engine/question/family.ts";
import { compareOnGrid, sumOnGrid } from "../../engine/quantity/grid.ts";
import type { Say } from "../../engine/question/say.ts";
import { type KneeBand, kneeSizes } from "../../facts/knee-model.ts";

const ENTRY: GivenSpec = { key: "entryToJunctionMm", unit: "mm", least: 2, greatest: 5, step: 0.5 };
const WALL: GivenSpec = { key: "throughCapsuleMm", unit: "mm", least: 3, greatest: 6, step: 0.5 };
const MARGIN: GivenSpec = { key: "marginMm", unit: "mm", least: 1.5, greatest: 3, step: 0.5 };
const BANDS = ["5-7", "8-10", "11-13", "14-16"] as const;
/** Places on the rim by their angle, from the back horn outward, with their names. */
const PLACES: Readonly<Record<string, number>> = { "-95": -95, "-80": -80, "-65": -65, "-50": -50 };
const PLACE_NAMES: Readonly<Record<string, string>> = { "-95": "near the root", "-80": "in the middle of the posterior horn", "-65": "where posterior horn and body meet", "-50": "just behind the popliteus tendon" };
const TOLERANCE_DEG = 10;
const NEEDLE_MM = 0.5;
const SPARE_MM = 4;
const HALF = 0.5;

const knees = new Map<string, Knee>();

/** The model knee of a draw; the same few are built again and again. */
const kneeOf = ({ about, givens }: Draw): Knee => {
  const { band = "8-10", side = "right" } = about;
  const capsuleMm = givens["throughCapsuleMm"] ?? WALL.least;
  const name = `${band} ${side} ${capsuleMm}`;
  const known = knees.get(name) ?? kneeFrom(kneeSizes({ band: band as KneeBand, side: side as Side, capsuleMm }));
  knees.set(name, known);
  return known;
};

const value = (draw: Draw, key: string): number => draw.givens[key] ?? 0;
const portalOf = ({ about }: Draw): PortalId => (about["portal"] === "AM" ? "AM" : "AL");
const placeOf = ({ about }: Draw): number => PLACES[about["place"] ?? ""] ?? -80;
const needOf = (draw: Draw): number => sumOnGrid(value(draw, "entryToJunctionMm"), value(draw, "throughCapsuleMm"));

const needleOf = (draw: Draw, { angleDeg, depthMm }: PlacedLine) =>
  needleUnder({ knee: kneeOf(draw), portal: portalOf(draw), bearingDeg: angleDeg, entryToJunctionMm: value(draw, "entryToJunctionMm"), depthMm, needleRadiusMm: NEEDLE_MM });

/** How far the line is from the place of the stitch, as an angle at the portal. */
const offPlace = (draw: Draw, angleDeg: number): number => Math.abs(angleDeg - aimOf(draw));

const aimOf = (draw: Draw): number => {
  const knee = kneeOf(draw);
  return bearingDeg(knee.side, knee.portals[portalOf(draw)], arcPoint(knee.lateral.rim, placeOf(draw)));
};

const check = (draw: Draw, line: PlacedLine): LineCheck => {
  const needle = line.depthMm > 0 ? needleOf(draw, line) : null;
  if (needle === null) return { isRight: false, isUnsafe: false, score: 0, slip: "misses-the-meniscus" };
  const isClear = needle.nearest.clearanceMm >= value(draw, "marginMm");
  const isDeepEnough = compareOnGrid(line.depthMm, needOf(draw)) >= 0;
  const isShortEnough = compareOnGrid(line.depthMm, needOf(draw) + SPARE_MM) <= 0;
  const isOnPlace = offPlace(draw, line.angleDeg) <= TOLERANCE_DEG;
  const depthHolds = isDeepEnough && isShortEnough;
  if (isClear && depthHolds && isOnPlace) return { isRight: true, isUnsafe: false, score: 1 };
  const score = HALF * Number(isClear && isOnPlace) + HALF * Number(depthHolds && isClear);
  if (!isClear) return { isRight: false, isUnsafe: true, score: 0, slip: isDeepEnough && !isShortEnough ? "right-line-too-deep" : "wrong-line" };
  if (!isOnPlace) return { isRight: false, isUnsafe: false, score, slip: "not-at-the-stitch" };
  return { isRight: false, isUnsafe: false, score, slip: isDeepEnough ? "deeper-than-needed" : "short-of-the-capsule" };
};

/** The clear line nearest to the place, at the least depth that passes the capsule; null where the place cannot be reached. */
const found = (draw: Draw): PlacedLine | null => {
  const depthMm = Math.ceil(2 * needOf(draw)) / 2;
  const aim = Math.round(aimOf(draw));
  for (let off = 0; off < TOLERANCE_DEG; off += 1) {
    for (const angleDeg of [aim + off, aim - off]) if (check(draw, { angleDeg, depthMm }).isRight) return { angleDeg, depthMm };
  }
  return null;
};

const towardsBundle = (draw: Draw): PlacedLine => {
  const knee = kneeOf(draw);
  const angleDeg = Math.round(bearingDeg(knee.side, knee.portals[portalOf(draw)], structureOf(knee, "artery").centre));
  return { angleDeg, depthMm: Math.ceil(2 * needOf(draw)) / 2 + 2 };
};

const only = (draw: Draw, line: PlacedLine, slip: string): PlacedLine | null => (check(draw, line).slip === slip ? line : null);

const drawOfSay = (say: Say): Draw => ({
  givens: { entryToJunctionMm: say.value("entryToJunctionMm"), throughCapsuleMm: say.value("throughCapsuleMm"), marginMm: say.value("marginMm") },
  about: { band: say.about("band"), side: say.about("side"), portal: say.about("portal"), place: say.about("place") },
});
const portalName = (say: Say): string => (say.about("portal") === "AM" ? "anteromedial" : "anterolateral");
const answerText = (say: Say): string => {
  const line = found(drawOfSay(say));
  if (line === null) return "no line";
  const angle = String(line.angleDeg).replace("-", "−");
  return `${angle}° and ${line.depthMm.toFixed(1)}\u2009mm`;
};
const least = (say: Say): string => `${needOf(drawOfSay(say)).toFixed(1)}\u2009mm`;
const ages = (say: Say): string => say.about("band").replace("-", "–");

const words: LineFamily["words"][Language] = {
  title: "A needle in the model",
  stems: [
    (say) => [`A ${say.about("side")} knee of the model, ${ages(say)} years. The stitch belongs ${PLACE_NAMES[say.about("place")] ?? ""}; the needle comes from the ${portalName(say)} portal. Its tip must pass the capsule as drawn, and every point of it must keep the margin.`],
    (say) => [`From the ${portalName(say)} portal, ${say.about("side")} knee, ${ages(say)} years: one stitch ${PLACE_NAMES[say.about("place")] ?? ""}. Behind the capsule as drawn, and clear of vessels and nerves.`],
    (say) => [`Place one needle in the model knee of ${ages(say)} years, ${say.about("side")} side, through the ${portalName(say)} portal, ${PLACE_NAMES[say.about("place")] ?? ""}.`],
  ],
  question: "Which angle at the portal, and which depth from the entry? 0° is straight back, plus turns to the lateral side.",
  givens: { entryToJunctionMm: "Entry to meniscocapsular junction", throughCapsuleMm: "Needed beyond the junction, the capsule as drawn", marginMm: "Margin to every vessel and nerve" },
  slips: {
    "wrong-line": { name: "right depth, wrong line", because: (say) => [`Along this line a vessel or nerve comes nearer than ${say.of("marginMm")}. No depth mends a line; turn the needle first.`] },
    "right-line-too-deep": { name: "right line, too deep", because: (say) => [`The line is clear as far as it must go, ${least(say)}; behind that it runs into what it should stay in front of.`] },
    "short-of-the-capsule": { name: "short of the capsule", because: (say) => [`The tip must stand at least ${least(say)} deep to be behind the capsule as drawn. Short of it the anchor opens inside the joint.`] },
    "deeper-than-needed": { name: "deeper than needed", because: (say) => [`${least(say)} are needed. Every millimetre behind the capsule is spent for nothing.`] },
    "not-at-the-stitch": { name: "clear, but not at the stitch", because: (say) => [`The line keeps the margin, but the stitch belongs ${PLACE_NAMES[say.about("place")] ?? ""}.`] },
    "misses-the-meniscus": { name: "misses the meniscus", because: () => ["Under this angle the line does not leave through the lateral meniscus at all."] },
  },
  working: (say) => [`Least depth: ${say.bare("entryToJunctionMm")} + ${say.bare("throughCapsuleMm")} = ${least(say)}`, `Turn to the place of the stitch, then look at the nearest structure; one clear setting is ${answerText(say)}.`],
  right: (say) => [`The needle is behind the capsule as drawn and keeps ${say.of("marginMm")} from every vessel and nerve of this model.`],
  off: (say) => [`Choose the line first, the depth second. One setting that holds is ${answerText(say)}.`],
  moves: () => ["A degree at the portal moves the tip by more than half a millimetre; half a millimetre of depth moves it by half a millimetre. That is why the line comes first."],
  turns: (say) => [`With every angle that keeps ${say.of("marginMm")} and leads to the place, at ${least(say)} or a little more.`],
};

/** 10i: a needle placed in the axial plane of the model. */
export const needle: LineFamily = {
  kind: "line",
  id: "needle",
  code: "10i",
  module: "M10",
  version: 1,
  firstWave: true,
  unsafe: true,
  objectives: ["m10-drag"],
  reads: [],
  sources: [],
  cautions: ["C3", "C8", "C9"],
  givens: [ENTRY, WALL, MARGIN],
  angle: { least: -30, greatest: 75, step: 1 },
  depth: { least: 0.5, greatest: 30, step: 0.5 },
  draw: (chance) => {
    for (;;) {
      const drawn: Draw = {
        givens: { entryToJunctionMm: chance.onGrid(ENTRY), throughCapsuleMm: chance.onGrid(WALL), marginMm: chance.onGrid(MARGIN) },
        about: { band: chance.pick(BANDS), side: chance.pick(["left", "right"]), portal: chance.pick(["AL", "AM"]), place: chance.pick(Object.keys(PLACES)) },
        origins: { throughCapsuleMm: { from: "local" } },
      };
      if (found(drawn) !== null) return drawn;
    }
  },
  check,
  answer: (draw) => found(draw) ?? { angleDeg: 0, depthMm: needOf(draw) },
  slips: [
    { id: "wrong-line", gives: (draw) => only(draw, towardsBundle(draw), "wrong-line") },
    { id: "right-line-too-deep", gives: (draw) => { const line = found(draw); return line === null ? null : only(draw, { ...line, depthMm: line.depthMm + 10 }, "right-line-too-deep"); } },
    { id: "short-of-the-capsule", gives: (draw) => { const line = found(draw); return line === null ? null : only(draw, { ...line, depthMm: line.depthMm - 2 }, "short-of-the-capsule"); } },
    { id: "deeper-than-needed", gives: (draw) => { const line = found(draw); return line === null ? null : only(draw, { ...line, depthMm: line.depthMm + 5 }, "deeper-than-needed"); } },
    { id: "not-at-the-stitch", gives: (draw) => { const line = found(draw); return line === null ? null : only(draw, { ...line, angleDeg: Math.round(aimOf(draw)) + TOLERANCE_DEG + 4 }, "not-at-the-stitch"); } },
    { id: "misses-the-meniscus", gives: (draw) => { const line = found(draw); return line === null ? null : only(draw, { ...line, angleDeg: 75 }, "misses-the-meniscus"); } },
  ],
  words: { en: words },
};
