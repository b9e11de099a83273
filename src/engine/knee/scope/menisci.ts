import { abs, add, atan, clamp01, cos, div, type Formula, length2, max, min, mix, mul, neg, pick, pow, sin, smooth, smoothMax, sqrt, square, sub, X, Y, Z } from "./formula.ts";
import { tibiaHeight } from "./bones.ts";
import { its, type NumberName } from "./numbers.ts";
import { popliteus } from "./soft.ts";
import { windowOf } from "./shapes.ts";

/** Names that stand in a pair. */
type Paired = NumberName extends infer Name ? (Name extends `${infer Stem}_M` ? Stem : never) : never;

/** The medial meniscus fills the space medial to this, the lateral one the other, in mm lateral of the middle. */
const BETWEEN = 0;

/** Half the width of a gap that is not there: nothing of the solid comes so near to its middle plane. */
const NO_GAP_MM = -5;
/** Put on the distance to a part that is not there. */
const ABSENT_MM = 500;

/** The number of the meniscus on whose side the point lies. */
const ofSide = (stem: Paired): Formula => pick({ when: X, isBelow: BETWEEN, yes: its(`${stem}_M`), no: its(`${stem}_L`) });

/** +1 on the lateral side, −1 on the medial one. */
const outward = (): Formula => pick({ when: X, isBelow: BETWEEN, yes: -1, no: 1 });

export interface MeniscalPlace {
  /** Rim angle in radians: 0 outward, positive forwards. */
  readonly angle: Formula;
  /** From the rim inwards, in mm; negative outside. */
  readonly inward: Formula;
  /** From the free edge outwards, in mm. */
  readonly fromEdge: Formula;
  readonly width: Formula;
  /** 0 at the rim, 1 at the free edge. */
  readonly share: Formula;
}

/** Where a point lies in its meniscus, by the two circles of the axial map. */
export const meniscalPlace = (): MeniscalPlace => {
  const x = mul(outward(), sub(X, ofSide("rimX")));
  const y = sub(Y, ofSide("rimY"));
  const inward = sub(ofSide("rimR"), length2(x, y));
  const fromEdge = sub(length2(sub(X, ofSide("freeX")), sub(Y, ofSide("freeY"))), ofSide("freeR"));
  const width = max(add(inward, fromEdge), 1);
  return { angle: atan(y, x), inward, fromEdge, width, share: clamp01(div(inward, width)) };
};

/** Height of the rim over the tibia: its own in front, at the side and behind. */
const rimHeight = (angle: Formula): Formula => {
  const front = clamp01(div(angle, ofSide("hornA")));
  const back = clamp01(div(angle, ofSide("hornP")));
  const own = mix(mix(ofSide("heightB"), ofSide("heightA"), smooth(0.2, 0.7, front)), ofSide("heightP"), smooth(0.2, 0.7, back));
  return mul(own, sub(1, mul(0.45, add(smooth(0.72, 1.05, front), smooth(0.72, 1.05, back)))));
};

/** How far a cut gapes at a point: below 0 inside the gap. */
const cutGap = ({ angle, fromEdge, width }: MeniscalPlace): Formula => {
  const along = sub(mul(sub(angle, ofSide("cutAt")), ofSide("rimR")), mul(ofSide("cutSlant"), fromEdge));
  const reach = mul(width, ofSide("cutReach"));
  const left = div(sub(reach, fromEdge), max(reach, 0.1));
  const half = pick({ when: ofSide("cutOpen"), isBelow: 0.01, yes: NO_GAP_MM, no: mul(ofSide("cutOpen"), min(max(add(left, 0.12), -1), 1.05), 0.5) });
  return sub(abs(add(along, mul(0.22, sin(mul(fromEdge, 2.6))))), half);
};

/** Half the gape of a split between an upper and a lower leaf, open at the free edge. */
const splitHalf = ({ angle, share }: MeniscalPlace): Formula => mul(ofSide("splitOpen"), smooth(0.3, 1.05, share), windowOf(angle, { from: -1.5, to: 0.5, edge: 0.25 }), 0.5);

/** The split itself, under an upper leaf that it lifts: `sound` is where the upper face would be without it. */
const splitGap = (half: Formula, over: Formula, sound: Formula): Formula => sub(abs(sub(over, add(mul(sound, 0.42), half))), sub(half, 0.05));

/** A tear behind the back of the medial meniscus, where it is fixed to the capsule. */
const rampGap = ({ angle, inward }: MeniscalPlace): Formula => {
  const half = mul(0.5, its("rampOpen"), windowOf(angle, { from: -2.05, to: -0.95, edge: 0.25 }));
  return sub(abs(add(inward, 0.1)), pick({ when: mul(its("rampOpen"), neg(outward())), isBelow: 0.01, yes: NO_GAP_MM, no: sub(half, 0.05) }));
};

/** The tear along the fibres: 1 where the strip has left the meniscus. */
const stripWindow = (angle: Formula): Formula => mul(ofSide("stripOpen"), windowOf(angle, { from: -1.2, to: 1.05, edge: 0.18 }));

/** Both menisci in one: wedges between rim and free edge, with horns, and whatever a lesion takes away. */
export const menisci = (): Formula => {
  const place = meniscalPlace();
  const { angle, inward, fromEdge, width, share } = place;
  const over = sub(Z, tibiaHeight(X, Y));
  const height = rimHeight(angle);
  const lift = mul(ofSide("flapLift"), windowOf(sub(mul(sub(angle, ofSide("cutAt")), ofSide("rimR")), mul(ofSide("cutSlant"), fromEdge)), { from: 0.1, to: 6, edge: 1.6 }), smooth(0.45, 1, share));
  const half = splitHalf(place);
  const sound = add(its("freeEdge"), mul(sub(height, its("freeEdge")), pow(sub(1, share), 1.3)), lift);
  const top = add(sound, mul(2, half));
  const slope = div(mul(1.2, height), width);
  const upper = mul(sub(over, top), div(1, sqrt(add(1, square(slope)))));
  const edge = sub(mul(0.14, clamp01(div(sub(ofSide("rimR"), inward), 8)), sin(add(mul(angle, 9), 1))), fromEdge);
  const torn = sub(inward, mul(width, its("stripAt")));
  const inner = mix(edge, max(edge, add(torn, mul(0.1, sin(mul(angle, 23))))), stripWindow(angle));
  const wedge = smoothMax(upper, inner, 0.5);
  const floor = sub(add(mul(0.3, smooth(0.35, 1, share)), mul(lift, 0.8)), over);
  const ends = mul(max(sub(angle, ofSide("hornA")), sub(ofSide("hornP"), angle)), sub(ofSide("rimR"), inward), 0.95);
  const whole = smoothMax(smoothMax(max(wedge, floor), sub(-1.4, inward), 0.8), ends, 2.5);
  const cut = smoothMax(whole, neg(cutGap(place)), 0.35);
  const split = max(cut, neg(splitGap(half, over, sound)));
  const ramp = rampGap(place);
  const hiatus = sub(popliteus(), its("hiatus"));
  return mul(smoothMax(smoothMax(split, neg(ramp), 0.3), neg(hiatus), 0.8), 0.95);
};

/** A meniscus lies below a certain height, and outside the circle of its free edge; at its scalloped edge a little within. */
const CLEAR_MM = 0.3;
export const menisciBound = (): Formula => max(sub(Z, 9), sub(neg(meniscalPlace().fromEdge), CLEAR_MM));

/** The strip lies as low as the menisci, and is not reckoned where there is none. */
export const stripBound = (): Formula => max(sub(Z, 9), mul(ABSENT_MM, sub(0.5, max(its("stripOpen_M"), its("stripOpen_L")))));

/** The strip of a tear along the fibres, between its bed and the notch. */
export const strip = (): Formula => {
  const side = its("stripSide");
  const ofStrip = (stem: Paired): Formula => pick({ when: side, isBelow: 0, yes: its(`${stem}_M`), no: its(`${stem}_L`) });
  const radius = sub(ofStrip("rimR"), mul(its("stripAt"), sub(ofStrip("rimR"), ofStrip("freeR"))));
  const x = mul(side, sub(X, ofStrip("rimX")));
  const half = mul(radius, 0.965);
  const y = min(max(Y, neg(half)), half);
  const bowed = square(div(y, half));
  const bed = sqrt(max(sub(square(radius), square(y)), 1));
  const notch = mix(neg(mul(radius, 0.62)), mul(radius, 0.262), bowed);
  const middle = add(mix(sub(bed, 2.6), notch, its("stripMove")), mul(its("stripMove"), 0.6, sin(mul(y, 0.3))));
  const steep = mix(div(neg(y), bed), div(mul(y, 2, mul(radius, 0.882)), square(half)), its("stripMove"));
  const off = div(sub(x, middle), sqrt(add(1, square(steep))));
  const centre = add(mul(tibiaHeight(add(ofStrip("rimX"), mul(side, middle)), y), 0.75), mix(1.25, add(1.3, mul(2.6, sub(1, bowed))), its("stripMove")));
  const roll = mul(its("stripMove"), 0.55);
  const [across, up] = [sub(mul(off, cos(roll)), mul(sub(Z, centre), sin(roll))), add(mul(off, sin(roll)), mul(sub(Z, centre), cos(roll)))];
  const thick = mix(0.42, 1.75, clamp01(add(div(across, 6), 0.5)));
  const flat = length2(max(sub(abs(across), 2.3), 0), max(sub(abs(up), mul(thick, 0.5)), 0));
  const beyond = max(sub(abs(Y), half), 0);
  const end = length2(max(sub(flat, mul(thick, 0.66)), 0), beyond);
  const body = pick({ when: abs(Y), isBelow: half, yes: sub(flat, mul(thick, 0.66)), no: end });
  const isTorn = max(its("stripOpen_M"), its("stripOpen_L"));
  return add(mul(body, 0.9), mul(ABSENT_MM, sub(1, isTorn)));
};
