import paths from "../../content/paths.json" with { type: "json" };

/** A module of a sitting; whole where no questions are named. */
export interface ModuleStep {
  readonly module: string;
  readonly families?: readonly string[];
}

/** A page of the site that is worked on in a sitting. */
export interface PageStep {
  readonly page: string;
  readonly text: string;
}

export interface Sitting {
  readonly name: string;
  readonly why: string;
  readonly steps: readonly (ModuleStep | PageStep)[];
}

/** One way through the course. */
export interface Path {
  readonly id: string;
  readonly title: string;
  readonly who: string;
  readonly lead: string;
  readonly fullFor?: "resident" | "nurse" | "director";
  /** Modules that are worked through whatever an entry sheet says. */
  readonly obligatory: readonly string[];
  readonly cautions: readonly string[];
  readonly sittings: readonly Sitting[];
}

/** Every path, in the order of the start page. */
export const PATHS: readonly Path[] = paths as readonly Path[];

/** A path by its id; throws a RangeError for one that the list does not hold. */
export const pathNamed = (id: string): Path => {
  const found = PATHS.find((path) => path.id === id);
  if (!found) throw new RangeError(`id must be one of ${PATHS.map((path) => path.id).join(", ")}, got ${id}`);
  return found;
};

/** True for a step that is a module or a part of one. */
export const isModuleStep = (step: ModuleStep | PageStep): step is ModuleStep => "module" in step;

/** Codes of the modules on a path, each once. */
export const modulesOn = (path: Path): readonly string[] => [...new Set(path.sittings.flatMap(({ steps }) => steps.filter(isModuleStep).map(({ module }) => module)))];
