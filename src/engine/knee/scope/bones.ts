import { abs, add, cos, div, type Formula, max, min, mul, sin, smooth, smoothMax, smoothMin, sqrt, square, sub, type Term, X, Y, Z } from "./formula.ts";
import { its } from "./numbers.ts";
import { bump, ellipse, ellipsoid, type Spot } from "./shapes.ts";

/** Height of the tibial surface over a point of the plane: medial dish, lateral crown, two spines, a fall in front and behind. */
export const tibiaHeight = (x: Term, y: Term): Formula => {
  const dish = mul(its("dishM"), bump(div(add(x, 19), 17), div(y, 24)));
  const crown = mul(its("crownL"), bump(div(sub(x, 19), 13), div(y, 17)));
  const medial = mul(its("spineM"), bump(div(add(x, 4.6), 4.6), div(add(y, 1.5), 10)));
  const lateral = mul(its("spineL"), bump(div(sub(x, 5), 4.4), div(add(y, 2.5), 8)));
  const front = mul(its("frontDrop"), smooth(9, 21, y), smooth(15, 4, abs(x)));
  const back = mul(its("backDrop"), smooth(-11, -23, y), smooth(10, 2, abs(sub(x, 1))));
  return sub(add(crown, medial, lateral), add(dish, front, back));
};

/** Upper surface of the tibia; the spines make the true distance a little shorter than the height. */
export const tibia = (): Formula => mul(sub(Z, tibiaHeight(X, Y)), 0.82);

const turned = (y: Term, z: Term): { readonly y: Formula; readonly z: Formula } => {
  const [s, c] = [sin(its("flexion")), cos(its("flexion"))];
  return { y: add(mul(c, y), mul(s, z)), z: sub(mul(c, z), mul(s, y)) };
};

/** From the plateau up to the centre of a condyle of this profile, at this flexion. */
const centreUp = (): Formula => sqrt(add(square(mul(its("condyleFront"), sin(its("flexion")))), square(mul(its("condyleUp"), cos(its("flexion"))))));

/** Where the condyles' centre stands from front to back: over the contact, which rolls back with flexion. */
export const centreFront = (): Formula => {
  const lever = div(mul(sub(square(its("condyleFront")), square(its("condyleUp"))), sin(its("flexion")), cos(its("flexion"))), centreUp());
  return add(sub(its("contactY"), mul(its("rollBack"), its("flexion"))), lever);
};

/** Height of the middle between both condyles' centres. */
export const centreHeight = (): Formula => add(mul(0.5, add(its("gapM"), its("gapL"))), centreUp());

/** A point of the femur's own frame, in the frame of the tibia. */
export const onFemur = (x: Term, y: Term, z: Term): Spot => {
  const [s, c] = [sin(its("flexion")), cos(its("flexion"))];
  return { x, y: add(centreFront(), sub(mul(c, y), mul(s, z))), z: add(centreHeight(), add(mul(s, y), mul(c, z))) };
};

interface Condyle {
  readonly centre: Term;
  readonly gap: Term;
  readonly half: Term;
  readonly crown: Term;
}

/** A condyle: an elliptic profile seen from the side, rounded across, with flat flanks. */
const condyle = ({ centre, gap, half, crown }: Condyle): Formula => {
  const own = turned(sub(Y, centreFront()), sub(Z, add(gap, centreUp())));
  const across = sub(X, centre);
  const round = max(sub(1, div(square(across), mul(2, crown, its("condyleUp")))), 0.2);
  const profile = ellipse(own.y, own.z, [mul(its("condyleFront"), round), mul(its("condyleUp"), round)]);
  return smoothMax(profile, sub(abs(across), half), 7);
};

/** Both condyles and what joins them in front and above: the roof of the notch. */
export const femur = (): Formula => {
  const medial = condyle({ centre: its("condyleX_M"), gap: its("gapM"), half: its("condyleHalf_M"), crown: its("condyleCrown_M") });
  const lateral = condyle({ centre: its("condyleX_L"), gap: its("gapL"), half: its("condyleHalf_L"), crown: its("condyleCrown_L") });
  const own = turned(sub(Y, centreFront()), sub(Z, centreHeight()));
  const roof = ellipsoid({ x: X, y: sub(own.y, its("roofY")), z: sub(own.z, its("roofZ")) }, { x: its("roofHalfX"), y: its("roofHalfY"), z: its("roofHalfZ") });
  return smoothMin(min(medial, lateral), roof, 6);
};

/** Below the lowest point of both condyles nothing of the femur lies. */
export const femurBound = (): Formula => sub(sub(min(its("gapM"), its("gapL")), 0.2), Z);
