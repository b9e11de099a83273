import { families } from "../bank/index.ts";
import { isModuleStep, type ModuleStep, type Path, type Sitting } from "../facts/paths.ts";

/** A module as far as a path's time needs it. */
export interface TimedModule {
  readonly code: string;
  readonly minutes: number;
}

/** Minutes of one step: the module's own, or for a part its share by questions, rounded up. Zero for a module that is not written. */
export const stepMinutes = ({ module, families: part }: ModuleStep, modules: readonly TimedModule[]): number => {
  const minutes = modules.find(({ code }) => code === module)?.minutes ?? 0;
  if (part === undefined) return minutes;
  const all = families.filter((family) => family.module === module).length;
  return Math.ceil((minutes * part.length) / Math.max(all, part.length));
};

/** Minutes of a sitting's modules; pages have no minutes of their own. */
export const sittingMinutes = (sitting: Sitting, modules: readonly TimedModule[]): number =>
  sitting.steps.filter(isModuleStep).reduce((sum, step) => sum + stepMinutes(step, modules), 0);

/** Minutes of all modules of a path. */
export const pathMinutes = (path: Path, modules: readonly TimedModule[]): number => path.sittings.reduce((sum, sitting) => sum + sittingMinutes(sitting, modules), 0);

const HOUR_MIN = 60;

/** Minutes as people say them: `95` gives "1 h 35 min". */
export const spokenMinutes = (minutes: number): string => {
  const hours = Math.floor(minutes / HOUR_MIN);
  const rest = minutes % HOUR_MIN;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
};
