import { isModuleStep, type PageStep, type Path } from "../facts/paths.ts";

export interface NextOnPath {
  readonly path: Path;
  /** The question that follows on the path; null behind its last. */
  readonly next: string | null;
  /** Behind the last question of a path: the page it goes on with, where it names one. */
  readonly page: PageStep | null;
}

type Stop = string | PageStep;

const stopsOn = ({ sittings }: Path): readonly Stop[] =>
  sittings.flatMap(({ steps }) => steps.flatMap((step): readonly Stop[] => (isModuleStep(step) ? (step.families ?? []) : [step])));

/** Paths that name a question, each with what follows there: whoever came from a path goes on along it. */
export const nextOnPaths = (family: string, paths: readonly Path[]): readonly NextOnPath[] =>
  paths.flatMap((path) => {
    const stops = stopsOn(path);
    const at = stops.indexOf(family);
    if (at < 0) return [];
    const after = stops.slice(at + 1);
    const next = after.find((stop) => typeof stop === "string") ?? null;
    const page = after.find((stop) => typeof stop !== "string") ?? null;
    return [{ path, next, page: next === null ? page : null }];
  });
