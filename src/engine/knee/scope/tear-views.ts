import type { Compartment, Pattern } from "./lesion.ts";
import type { StationId } from "./stations.ts";

/** How a finding of the model is looked at, so that it shows: station, how far it gapes or has moved, and how the scope is held. */
export interface TearView {
  readonly station: StationId;
  readonly pattern: Pattern;
  readonly of: Compartment;
  readonly amount: number;
  /** Drawn back along the shaft, in mm of the reference knee; negative is farther in. */
  readonly backMm: number;
}

const seen = (station: StationId, pattern: Pattern, [amount, backMm = 0]: readonly [number, number?]): TearView =>
  ({ station, pattern, of: station.startsWith("medial") ? "medial" : "lateral", amount, backMm });

/** Views by finding. A draw names one by its place in the list, so a view is never taken away or moved. */
export const TEAR_VIEWS: Readonly<Record<string, readonly TearView[]>> = {
  longitudinal: [seen("medial-body", "longitudinal", [0]), seen("medial-horn", "longitudinal", [0]), seen("lateral-back", "longitudinal", [0]), seen("hiatus", "longitudinal", [0])],
  "bucket-handle": [seen("medial-body", "longitudinal", [0.9]), seen("medial-back", "longitudinal", [1, 10]), seen("lateral-back", "longitudinal", [0.8])],
  radial: [seen("medial-horn", "radial", [1, -4]), seen("lateral-body", "radial", [1]), seen("hiatus", "radial", [1])],
  horizontal: [seen("medial-body", "horizontal", [1]), seen("lateral-back", "horizontal", [0.8]), seen("hiatus", "horizontal", [0.7])],
  flap: [seen("medial-horn", "flap", [1, -4]), seen("lateral-back", "flap", [1]), seen("hiatus", "flap", [1])],
  complex: [seen("medial-horn", "complex", [0.8, -3]), seen("lateral-back", "complex", [0.8]), seen("hiatus", "complex", [0.8])],
  root: [seen("medial-horn", "root", [1]), seen("lateral-back", "root", [1])],
  hiatus: [seen("hiatus", "none", [0]), seen("hiatus", "none", [0, -3]), seen("lateral-back", "none", [0])],
};

/** The view that a draw names. */
export const tearViewOf = (about: { readonly find?: string; readonly view?: string }): TearView => {
  const view = TEAR_VIEWS[about.find ?? ""]?.[Number(about.view ?? 0)];
  if (view === undefined) throw new RangeError(`view must be one of the finding's, got ${about.find ?? ""} ${about.view ?? ""}`);
  return view;
};
