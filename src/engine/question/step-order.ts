import type { EdgeSpec } from "./family.ts";

/**
 * Steps in one order that breaks no edge: of those that may come next, the one listed first in the edges. Edges to steps
 * that are not shown do not count. Throws a RangeError, with the name of the edges, where they run in a circle.
 */
export const stepOrder = (edges: readonly EdgeSpec[], shown: readonly string[], name = "edges"): string[] => {
  const rank = [...new Set(edges.flatMap(({ before, after }) => [before, after]))];
  const own = edges.filter(({ before, after }) => shown.includes(before) && shown.includes(after));
  const rest = [...shown].sort((first, second) => rank.indexOf(first) - rank.indexOf(second));
  const order: string[] = [];
  while (rest.length > 0) {
    const next = rest.findIndex((card) => own.every(({ before, after }) => after !== card || !rest.includes(before)));
    if (next < 0) throw new RangeError(`${name} must not run in a circle, got ${rest.join(", ")}`);
    order.push(...rest.splice(next, 1));
  }
  return order;
};
