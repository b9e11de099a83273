export interface Neighbour {
  readonly slug: string;
  readonly code: string;
  readonly title: string;
}

/** The modules before and after one, in the order of their codes; null at either end. */
export const neighboursOf = (modules: readonly Neighbour[], slug: string): { readonly before: Neighbour | null; readonly after: Neighbour | null } => {
  const inOrder = modules.toSorted((first, second) => first.code.localeCompare(second.code) || first.slug.localeCompare(second.slug));
  const at = inOrder.findIndex((one) => one.slug === slug);
  if (at < 0) throw new RangeError(`slug must be one of ${inOrder.map((one) => one.slug).join(", ")}, got ${slug}`);
  return { before: inOrder[at - 1] ?? null, after: inOrder[at + 1] ?? null };
};
