import { locate } from "../check/located.ts";

interface PathRow {
  readonly id: string;
  readonly fullFor?: string;
  readonly sittings: readonly { readonly steps: readonly { readonly module?: string }[] }[];
}

interface Placed {
  /** The file of paths with the module in it. */
  readonly text: string;
  /** Paths that have it now. */
  readonly ids: readonly string[];
}

/** Place of the last step of a path that is a module; null for a path without one. */
const lastModule = ({ sittings }: PathRow): readonly [sitting: number, step: number] | null => {
  const steps = sittings.flatMap((sitting, at) => sitting.steps.map((step, index) => ({ step, place: [at, index] as const })));
  return steps.findLast(({ step }) => step.module !== undefined)?.place ?? null;
};

/**
 * Puts a new module behind the last one of every path that is whole for a role for which it is core. The rest of the
 * file stays as an author set it.
 */
export const placedOnPaths = (text: string, code: string, coreFor: readonly string[]): Placed => {
  const located = locate(text);
  const paths = located.value as readonly PathRow[];
  const places = paths.flatMap((path, index) => {
    const last = path.fullFor !== undefined && coreFor.includes(path.fullFor) ? lastModule(path) : null;
    return last === null ? [] : [{ id: path.id, at: located.spanOf([index, "sittings", last[0], "steps", last[1]]).end }];
  });
  const placed = places.toReversed().reduce((before, { at }) => `${before.slice(0, at)}, { "module": "${code}" }${before.slice(at)}`, text);
  return { text: placed, ids: places.map(({ id }) => id) };
};
