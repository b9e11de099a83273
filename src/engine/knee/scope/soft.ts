import { add, type Formula, length2, max, min, mul, neg, sin, smooth, smoothMax, smoothMin, sub, X, Y, Z } from "./formula.ts";
import { onFemur } from "./bones.ts";
import { its } from "./numbers.ts";
import { ellipse, ellipsoid, length3, ligament, rod, type Spot } from "./shapes.ts";

const HERE: Spot = { x: X, y: Y, z: Z };

const aclEnds = (): readonly [Spot, Spot] => [{ x: its("aclX"), y: its("aclY"), z: its("aclZ") }, onFemur(its("aclFX"), its("aclFY"), its("aclFZ"))];
const pclEnds = (): readonly [Spot, Spot] => [{ x: its("pclX"), y: its("pclY"), z: its("pclZ") }, onFemur(its("pclFX"), its("pclFY"), its("pclFZ"))];

/** Anterior cruciate: from the front of the tibia between the spines, up, back and lateral to the lateral condyle. */
export const anteriorCruciate = (): Formula => {
  const [from, to] = aclEnds();
  return ligament(HERE, { from, to, wide: its("aclWide"), thick: its("aclThick"), twist: 1.1 });
};

/** Posterior cruciate: from behind the plateau, up, forward and medial to the medial condyle. */
export const posteriorCruciate = (): Formula => {
  const [from, to] = pclEnds();
  return ligament(HERE, { from, to, wide: its("pclWide"), thick: its("pclThick"), twist: -0.6 });
};

export const anteriorCruciateBound = (): Formula => rod(HERE, aclEnds(), 9);
export const posteriorCruciateBound = (): Formula => rod(HERE, pclEnds(), 10);

const hiatusSpot = (): Spot => ({ x: its("popX"), y: its("popY"), z: its("popZ") });
const lower = (): Spot => ({ x: add(its("popX"), its("popDownX")), y: add(its("popY"), its("popDownY")), z: add(its("popZ"), its("popDownZ")) });
const upper = (): Spot => ({ x: add(its("popX"), its("popUpX")), y: add(its("popY"), its("popUpY")), z: add(its("popZ"), its("popUpZ")) });

/** The popliteus tendon: through its hiatus behind the lateral meniscus, up and forward to the femur. */
export const popliteus = (): Formula => smoothMin(rod(HERE, [lower(), hiatusSpot()], its("popR")), rod(HERE, [hiatusSpot(), upper()], its("popR")), 1.5);

/** The joint's wall: round both menisci, wider in front, with recesses above the rims; positive inside the joint. */
export const wall = (): Formula => {
  const around = (side: "M" | "L"): Formula => sub(length2(sub(X, its(`rimX_${side}`)), sub(Y, its(`rimY_${side}`))), add(its(`rimR_${side}`), its("wall")));
  const front = ellipse(sub(X, its("frontX")), sub(Y, its("frontY")), [its("frontHalfX"), its("frontHalfY")]);
  const joined = smoothMin(smoothMin(around("M"), around("L"), 9), front, 9);
  const deeper = sub(mul(its("recess"), smooth(3, 10, Z)), mul(1.2, smooth(0, -6, Z)));
  const folds = add(mul(0.5, sin(add(mul(X, 0.35), mul(Z, 0.5), mul(Y, 0.21))), smooth(4, 11, Z)), mul(0.28, sin(add(mul(Z, 0.9), mul(X, 0.2))), smooth(5, 10, Z)));
  const cavity = sub(add(joined, folds), deeper);
  return neg(smoothMin(cavity, sub(popliteus(), 2.2), 3));
};

/** The fat pad behind the patellar tendon, pushed aside by the scope. */
export const fatPad = (): Formula => {
  const pad = ellipsoid({ x: sub(X, its("fatX")), y: sub(Y, its("fatY")), z: sub(Z, its("fatZ")) }, { x: its("fatHalfX"), y: its("fatHalfY"), z: its("fatHalfZ") });
  const lobes = mul(0.45, add(sin(mul(X, 0.55)), sin(add(mul(Z, 0.7), 1)), sin(add(mul(X, 0.9), mul(Z, 0.8)))));
  const pushed = sub(its("fatCarve"), length3({ x: sub(X, its("tipX")), y: sub(Y, its("tipY")), z: sub(Z, its("tipZ")) }));
  return mul(smoothMax(add(pad, lobes), pushed, 3), 0.85);
};

export const fatBound = (): Formula => sub(sub(its("fatY"), add(its("fatHalfY"), 2)), Y);

/** A probe: its shaft, and a hook of known length. */
export const probe = (): Formula => {
  const [a, b, c] = (["A", "B", "C"] as const).map((end): Spot => ({ x: its(`probe${end}X`), y: its(`probe${end}Y`), z: its(`probe${end}Z`) }));
  if (a === undefined || b === undefined || c === undefined) throw new RangeError("a probe must have three corners");
  return min(rod(HERE, [a, b], its("probeR")), rod(HERE, [b, c], mul(its("probeR"), 0.82)));
};

export const needleEnds = (): readonly [Spot, Spot] => [{ x: its("needleAX"), y: its("needleAY"), z: its("needleAZ") }, { x: its("needleBX"), y: its("needleBY"), z: its("needleBZ") }];
export const needle = (): Formula => rod(HERE, needleEnds(), its("needleR"));

const stitch = (index: 0 | 1 | 2 | 3): Formula =>
  rod(HERE, [{ x: its(`stitch${index}X`), y: its(`stitch${index}Y`), z: its(`stitch${index}Z`) }, { x: its(`stitch${index}U`), y: its(`stitch${index}V`), z: its(`stitch${index}W`) }], its("stitchR"));

export const stitches = (): Formula => min(stitch(0), stitch(1), stitch(2), stitch(3));
/** Instruments and stitches that are not there stand beyond this, and are not reckoned. */
const GONE_MM = 800;
export const probeBound = (): Formula => sub(its("probeAX"), GONE_MM);
export const needleBound = (): Formula => sub(its("needleAX"), GONE_MM);
export const stitchesBound = (): Formula => max(sub(Z, 10), sub(its("stitch0X"), GONE_MM));
