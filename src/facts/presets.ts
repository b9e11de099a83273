import presets from "../../content/presets.json" with { type: "json" };
import type { ListPreset } from "../engine/record/list-code.ts";

/** Ready-made teaching lists, which a short code can stand for. */
export const PRESETS: readonly ListPreset[] = presets as readonly ListPreset[];
