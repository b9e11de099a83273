import type { Spot } from "../../engine/knee/scope/spot-of.ts";
import type { Draw, Language } from "../../engine/question/family-head.ts";
import type { MarkFamily, RegionSpec } from "../../engine/question/family.ts";
import type { Say } from "../../engine/question/say.ts";
import type { Chance } from "../../engine/random/chance.ts";
import { SIDES } from "../m01/common.ts";
import { measure } from "./optics-words.ts";
import { fieldDeg, firstSpot, levelSpot, LOOKS, secondSpot, TILT_DEG, tiltHour, turnedBy, upHour } from "./two-looks.ts";

const TILT = { key: "tiltDeg", unit: "deg", least: TILT_DEG, greatest: TILT_DEG, step: 1 } as const;
const FIELD = { key: "fieldDeg", unit: "deg", least: 60, greatest: 90, step: 0.1 } as const;
/** Places of the picture are hundredths of its radius; the tolerance is a twentieth of its width. */
const PER_RADIUS = 100;
const TOLERANCE = 10;
const APART = 0.34;
const OUTERMOST = 0.84;
const NUMBERED = 6;
const UPS = ["12", "3", "3", "6", "9", "9"] as const;
const QUARTER_HOURS = 3;
const FILLERS: readonly Spot[] = [0.35, 0.7].flatMap((radius) => Array.from({ length: 12 }, (_, hour) => turnedBy([0, radius], hour)));

const distance = ([x, y]: Spot, [u, v]: Spot): number => Math.hypot(x - u, y - v);
const isClear = (spot: Spot, others: readonly Spot[]): boolean => Math.hypot(...spot) <= OUTERMOST && others.every((other) => distance(spot, other) >= APART);

/** Where people look for it instead, in the order in which they are kept. */
const MISTAKEN: Readonly<Record<string, (draw: Draw) => Spot | null>> = {
  "horizon-left-out": (draw) => (upHour(draw) === 12 ? null : levelSpot(draw)),
  "same-spot-of-the-picture": firstSpot,
  "turned-the-other-way": (draw) => turnedBy(levelSpot(draw), upHour(draw) === 12 ? QUARTER_HOURS : -upHour(draw)),
  mirrored: (draw) => turnedBy([-levelSpot(draw)[0], levelSpot(draw)[1]], upHour(draw)),
};

/** Mistaken places that can be told from the right one and from each other. */
const mistakenIn = (draw: Draw): Readonly<Record<string, Spot>> => {
  const taken: Spot[] = [secondSpot(draw)];
  const found: Record<string, Spot> = {};
  for (const [id, mistake] of Object.entries(MISTAKEN)) {
    const spot = mistake(draw);
    if (spot === null || !isClear(spot, taken)) continue;
    taken.push(spot);
    found[id] = spot;
  }
  return found;
};

const clockAngle = ([x, y]: Spot): number => (Math.atan2(x, y) + 2 * Math.PI) % (2 * Math.PI);
const written = (spot: Spot): string => spot.map((share) => (PER_RADIUS * share).toFixed(0)).join(",");
const numberedIn = ({ about }: Draw): readonly Spot[] => (about["numbered"] ?? "").split(" ").map((text) => text.split(",").map((part) => Number(part) / PER_RADIUS) as unknown as Spot);

const regionsOf = (draw: Draw): readonly RegionSpec[] =>
  numberedIn(draw).map(([x, y], index) => ({ id: String(index + 1), xMm: PER_RADIUS * x, yMm: PER_RADIUS * y, radiusMm: TOLERANCE }));
/** The number that stands nearest to a place. */
const numberAt = (draw: Draw, spot: Spot): string => {
  const far = numberedIn(draw).map((one) => distance(one, spot));
  return String(far.indexOf(Math.min(...far)) + 1);
};

const LEAST_MISTAKES = 2;
const drawLook = (chance: Chance): Draw => {
  const { station, turnDeg, tenths } = chance.pick(LOOKS);
  const [side, up] = [chance.pick(SIDES), chance.pick(UPS)];
  const cases = tenths.map((place): Draw => ({ givens: { tiltDeg: TILT_DEG, fieldDeg: Number(fieldDeg().toFixed(1)) }, about: { station, turnDeg: String(turnDeg), side, up, place: place.join(",") } }));
  const drawn = chance.pick(cases.filter((one) => Math.hypot(...secondSpot(one)) <= OUTERMOST && Object.keys(mistakenIn(one)).length >= LEAST_MISTAKES));
  const numbered = [secondSpot(drawn), ...Object.values(mistakenIn(drawn))];
  for (const filler of chance.shuffled(FILLERS)) if (numbered.length < NUMBERED && isClear(filler, numbered)) numbered.push(filler);
  return { ...drawn, about: { ...drawn.about, numbered: numbered.sort((one, other) => clockAngle(one) - clockAngle(other)).map(written).join(" ") } };
};

const shown = (say: Say): Draw => ({ givens: {}, about: Object.fromEntries(["station", "turnDeg", "side", "up", "place", "numbered"].map((key) => [key, say.about(key)])) });
const hour = (clock: number): string => `${clock} o’clock`;
const up = (say: Say): string => (upHour(shown(say)) === 12 ? "The horizon is level in both pictures." : `In the second picture up lies towards ${hour(upHour(shown(say)))}: the camera has turned in the hand.`);
const number = (say: Say): string => numberAt(shown(say), secondSpot(shown(say)));
const half = (say: Say): string => measure(say.value("fieldDeg") / 2, "deg", 2);
const opposite = (clock: number): number => (clock > 6 ? clock - 6 : clock + 6);
const moved = (say: Say): string => `The view goes ${say.of("tiltDeg")} towards ${hour(tiltHour(shown(say)))}, so in an upright picture the place goes towards ${hour(opposite(tiltHour(shown(say))))}, by about ${say.number(say.value("tiltDeg") / (say.value("fieldDeg") / 2), 2)} of the radius.`;

const words: MarkFamily["words"][Language] = {
  title: "The same place twice",
  stems: [
    (say) => [`Two pictures of a ${say.about("side")} model knee, through one portal and with the tip in one place. First a scope that looks straight ahead, with a ring round a place. Then one whose view is tilted, towards ${hour(tiltHour(shown(say)))} of the first picture; while it was changed, the camera may have turned in the hand.`],
    (say) => [`The scope is changed, and the tip stands where it stood. In the first picture of this ${say.about("side")} model knee a place is ringed; in the second the view is tilted towards ${hour(tiltHour(shown(say)))} of the first. Whether the camera was turned as well, nobody says.`],
    (say) => [`“There, that edge.” The ring stands in the straight picture of a ${say.about("side")} model knee. Then the tilted scope goes in, as far and through the same portal, looking towards ${hour(tiltHour(shown(say)))} of the first picture. The camera may be upright, or not.`],
  ],
  question: "Which number of the second picture marks the ringed place of the first?",
  givens: { tiltDeg: "Tilt of the second view, off the shaft", fieldDeg: "Field of both scopes in saline, full angle" },
  targets: { place: "The ringed place" },
  slips: {
    "horizon-left-out": { name: "horizon left out", because: (say) => [`${up(say)} Compare the horizon, then the target: there it would be with the camera upright.`] },
    "same-spot-of-the-picture": { name: "same spot of the picture", because: (say) => [`The screen stayed, and the view did not. ${moved(say)}`] },
    "turned-the-other-way": { name: "horizon turned where it was not, or the other way", because: (say) => [`${up(say)} Find the bone that bulges from above in both pictures; it tells which way is up.`] },
    mirrored: { name: "mirrored", because: () => ["A scope tilts and turns a picture, and never mirrors it. What lies beside the place lies on the same side of it in both pictures."] },
  },
  working: (say) => [
    `Half the field is ${half(say)}, and equal steps from the middle are equal angles. ${moved(say)}`,
    up(say),
    `It is ${number(say)}.`,
  ],
  right: (say) => [`It is ${number(say)}. ${up(say)} The edges that meet in the ring meet there again.`],
  off: (say) => [`It is ${number(say)}. ${up(say)} First the horizon, then the way of the view, then the neighbours of the place.`],
  moves: () => ["A larger tilt moves the place farther, and a wider field less far. A turned camera moves everything but the middle."],
  turns: () => ["With the camera upright the place lies away from the tilt; with a turned camera that whole picture is turned."],
};

/** 03j: the same place in a straight and in a tilted view. */
export const samePlace: MarkFamily = {
  kind: "mark",
  id: "same-place",
  code: "03j",
  module: "M03",
  version: 1,
  firstWave: false,
  unsafe: false,
  objectives: ["m03-move"],
  reads: [],
  sources: [],
  cautions: ["C8"],
  givens: [TILT, FIELD],
  targets: () => ["place"],
  regions: regionsOf,
  truth: (draw) => ({ place: numberAt(draw, secondSpot(draw)) }),
  draw: drawLook,
  slips: Object.keys(MISTAKEN).map((id) => ({ id, gives: (draw: Draw) => { const spot = mistakenIn(draw)[id]; return spot === undefined ? null : { place: numberAt(draw, spot) }; } })),
  words: { en: words },
};
