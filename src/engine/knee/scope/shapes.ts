import { abs, add, clamp01, div, exp, type Formula, length2, max, mix, mul, sin, smooth, sqrt, square, sub, type Term } from "./formula.ts";

/** A point of a formula: lateral, front, up. */
export interface Spot {
  readonly x: Term;
  readonly y: Term;
  readonly z: Term;
}

export const away = (to: Spot, from: Spot): Spot => ({ x: sub(to.x, from.x), y: sub(to.y, from.y), z: sub(to.z, from.z) });
export const times = (a: Spot, b: Spot): Formula => add(mul(a.x, b.x), mul(a.y, b.y), mul(a.z, b.z));
export const length3 = (spot: Spot): Formula => sqrt(times(spot, spot));

const TINY = 0.0001;

/**
 * About the distance to an ellipse with these half axes: 0 on the outline, and the right slope there. With
 * f = length(x ÷ a, y ÷ b), the slope of f is length(x ÷ a², y ÷ b²) ÷ f; f − 1 divided by it is the first step of Newton's way to the outline.
 */
export const ellipse = (x: Term, y: Term, half: readonly [Term, Term]): Formula => {
  const [halfX, halfY] = half;
  const near = length2(div(x, halfX), div(y, halfY));
  const slope = length2(div(x, square(halfX)), div(y, square(halfY)));
  return div(mul(near, sub(near, 1)), max(slope, TINY));
};

/** The same in space. */
export const ellipsoid = ({ x, y, z }: Spot, half: Spot): Formula => {
  const near = length3({ x: div(x, half.x), y: div(y, half.y), z: div(z, half.z) });
  const slope = length3({ x: div(x, square(half.x)), y: div(y, square(half.y)), z: div(z, square(half.z)) });
  return div(mul(near, sub(near, 1)), max(slope, TINY));
};

/** Share of the way from one end of a segment to the other at which a point stands beside it. */
export const shareAlong = (point: Spot, from: Spot, to: Spot): Formula => {
  const way = away(to, from);
  return clamp01(div(times(away(point, from), way), max(times(way, way), TINY)));
};

/** Distance to a rod with round ends. */
export const rod = (point: Spot, ends: readonly [Spot, Spot], radius: Term): Formula => {
  const [from, to] = ends;
  const share = shareAlong(point, from, to);
  return sub(length3(away(point, { x: mix(from.x, to.x, share), y: mix(from.y, to.y, share), z: mix(from.z, to.z, share) })), radius);
};

/** A bump of height 1 that ends at a finite distance, about exp(−1.2 q²). */
export const bump = (x: Term, y: Term): Formula => {
  const left = max(sub(1, mul(0.2, add(square(x), square(y)))), 0);
  const twice = square(left);
  return mul(twice, twice, twice);
};

interface Ligament {
  readonly from: Spot;
  readonly to: Spot;
  readonly wide: Term;
  readonly thick: Term;
  /** Turn of its section from one end to the other, in radians. */
  readonly twist: number;
}

/** A flat tube between two feet; it twists, sags a little, and spreads into the bone at both ends. */
export const ligament = (point: Spot, { from, to, wide, thick, twist }: Ligament): Formula => {
  const way = away(to, from);
  const long = length3(way);
  const along: Spot = { x: div(way.x, long), y: div(way.y, long), z: div(way.z, long) };
  const share = clamp01(div(times(away(point, from), along), long));
  const reach = mul(share, long);
  const off = away(away(point, from), { x: mul(along.x, reach), y: mul(along.y, reach), z: mul(along.z, reach) });
  const flat = length2(along.x, along.y);
  const side: Spot = { x: div(along.y, flat), y: sub(0, div(along.x, flat)), z: 0 };
  const over: Spot = { x: mul(side.y, along.z), y: sub(0, mul(side.x, along.z)), z: sub(mul(side.x, along.y), mul(side.y, along.x)) };
  const aside = times(off, side);
  const above = sub(times(off, over), sin(mul(share, Math.PI)));
  const turn = mul(share, twist);
  const cosTurn = sin(add(turn, Math.PI / 2));
  const u = add(mul(aside, cosTurn), mul(above, sin(turn)));
  const v = sub(mul(above, cosTurn), mul(aside, sin(turn)));
  const spread = add(1, mul(0.5, exp(mul(share, -6))), mul(0.55, exp(mul(sub(1, share), -4))));
  const lengthwise = sub(times(away(point, from), along), reach);
  return add(ellipse(u, v, [mul(wide, spread), mul(thick, spread)]), mul(0.6, abs(lengthwise)));
};

/** 1 inside a window of angles, 0 outside, smooth over its edges. */
export const windowOf = (term: Term, { from, to, edge }: { readonly from: Term; readonly to: Term; readonly edge: number }): Formula =>
  mul(smooth(sub(from, edge), add(from, edge), term), smooth(add(to, edge), sub(to, edge), term));
