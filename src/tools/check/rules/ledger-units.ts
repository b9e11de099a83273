import { isUnitId, UNITS, unitNamed } from "../../../engine/quantity/units.ts";
import type { Finding } from "../finding.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

/** A ledger entry's unit is one that the engine knows, spelt as there; a plain number has "". */
export const ledgerUnits: CourseRule = (course) =>
  course.records
    .filter(({ unit }) => unit !== "" && !isUnitId(unit))
    .map(({ file, index, unit }): Finding => {
      const span = file.located().spanOf(["entries", index, "unit"]);
      const meant = unitNamed(unit) ?? nearest(unit, Object.keys(UNITS)) ?? "";
      const expected = meant === "" ? 'a unit of src/engine/quantity/units.ts, or "" for a plain number' : `a unit of src/engine/quantity/units.ts; the nearest is "${meant}"`;
      return { source: file, offset: span.start, rule: "unknown unit", found: `"${unit}"`, expected, edits: [{ ...span, text: `"${meant}"` }] };
    });
