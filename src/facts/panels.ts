import panels from "../../content/panels.json" with { type: "json" };

/** A panel of judges and its estimates for one sheet. */
export interface Panel {
  readonly on: string;
  readonly sheet: string;
  readonly judges: readonly string[];
  readonly must: readonly string[];
  readonly estimates: Readonly<Record<string, readonly number[]>>;
}

/** Every panel that met, newest first. */
export const PANELS: readonly Panel[] = (panels as readonly Panel[]).toSorted((first, second) => second.on.localeCompare(first.on));
