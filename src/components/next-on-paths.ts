import { isModuleStep, type Path } from "../facts/paths.ts";

export interface NextOnPath {
  readonly path: Path;
  /** The question that follows on the path; null behind its last. */
  readonly next: string | null;
}

const namedOn = ({ sittings }: Path): readonly string[] => sittings.flatMap(({ steps }) => steps.filter(isModuleStep).flatMap(({ families }) => families ?? []));

/** Paths that name a question, each with the one that follows there: whoever came from a path goes on along it. */
export const nextOnPaths = (family: string, paths: readonly Path[]): readonly NextOnPath[] =>
  paths.flatMap((path) => {
    const named = namedOn(path);
    const at = named.indexOf(family);
    return at < 0 ? [] : [{ path, next: named[at + 1] ?? null }];
  });
