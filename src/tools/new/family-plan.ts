import { isUnitId, type UnitId, UNITS, unitNamed } from "../../engine/quantity/units.ts";
import { anyOf, nearest } from "../check/nearest.ts";
import { saysUnit, withEnd } from "../check/unit-ends.ts";
import type { Question } from "./ask.ts";
import { camelOf, slugOf } from "./names.ts";

/** A number that a new family states. */
export interface PlannedGiven {
  readonly key: string;
  readonly label: string;
  readonly unit: UnitId;
  readonly least: number;
  readonly greatest: number;
  readonly step: number;
}

/** All that a new family is made from. */
export interface FamilyPlan {
  readonly id: string;
  readonly code: string;
  readonly module: string;
  readonly kind: FamilyKind;
  readonly title: string;
  readonly objective: string;
  readonly givens: readonly PlannedGiven[];
  readonly askUnit: UnitId;
}

/** Kinds that a scaffold is written for; the others are copied from a family of their kind. */
export const SCAFFOLDS = ["sum", "order", "judge"] as const;
export type FamilyKind = (typeof SCAFFOLDS)[number];

const EXAMPLES: Readonly<Record<string, string>> = {
  range: "m07/balance.ts", mark: "m01/structures.ts", line: "m10/needle.ts", tray: "m04/pack-check.ts", name: "m03/in-view.ts", count: "m13/reconcile.ts", chain: "m10/depth-to-stop.ts",
};

const LEAST_GIVENS = 2;
const GIVEN = /^([A-Za-z][A-Za-z ]*?)\s+(\S+)\s+(-?\d+(?:\.\d+)?)\s+to\s+(-?\d+(?:\.\d+)?)\s+by\s+(\d+(?:\.\d+)?)$/;

const unitOf = (written: string): UnitId | null => (isUnitId(written) ? written : unitNamed(written));

const noUnit = (written: string): string => {
  const meant = nearest(written, Object.keys(UNITS));
  return `"${written}" is no unit; ${meant === null ? `there are ${anyOf(Object.keys(UNITS))}` : `the nearest is "${meant}"`}.`;
};

/** The givens of an answer, "entry mm 2 to 6 by 0.5; margin mm 1 to 3 by 0.5"; or a sentence about the first that cannot be read. */
export const givensOf = (answer: string): readonly PlannedGiven[] | string => {
  const pieces = answer.split(";").map((each) => each.trim()).filter((each) => each !== "");
  const givens: PlannedGiven[] = [];
  for (const piece of pieces) {
    const [, name = "", written = "", least, greatest, step] = GIVEN.exec(piece) ?? [];
    if (name === "") return `"${piece}" cannot be read; write it as "entry mm 2 to 6 by 0.5".`;
    const unit = unitOf(written);
    if (unit === null) return noUnit(written);
    const key = withUnitEnd(camelOf(slugOf(name)), unit);
    const given = { key, label: `${name.charAt(0).toUpperCase()}${name.slice(1)}`, unit, least: Number(least), greatest: Number(greatest), step: Number(step) };
    const fault = gridFault(given) ?? (givens.some((each) => each.key === key) ? `"${name}" stands twice.` : null);
    if (fault !== null) return fault;
    givens.push(given);
  }
  return givens.length < LEAST_GIVENS ? "Two givens or more, so that a slip can leave one out; a semicolon between two." : givens;
};

const withUnitEnd = (name: string, unit: UnitId): string => (saysUnit(name, unit) ? name : withEnd(name, unit));

const gridFault = ({ label, least, greatest, step }: PlannedGiven): string | null => {
  if (least >= greatest) return `${label} goes from ${least} to ${greatest}; the least value comes first.`;
  if (least <= 0) return `${label} begins at ${least}; a given is above 0.`;
  if (!(step > 0)) return `${label} has steps of ${step}; a step is above 0.`;
  const steps = (greatest - least) / step;
  return Math.abs(steps - Math.round(steps)) < 1 / 1000 ? null : `${label} does not reach ${greatest} from ${least} in steps of ${step}.`;
};

/** What is there already, so that nothing is written over. */
export interface Taken {
  readonly ids: readonly string[];
  readonly modules: readonly string[];
}

const idFault = (answer: string, taken: Taken): string | null => {
  if (!/^[a-z]+(-[a-z0-9]+)*$/.test(answer)) return `"${answer}" is no id; write small letters and hyphens, such as "${slugOf(answer).replace(/^\d+-?/, "") || "least-depth"}".`;
  return taken.ids.includes(answer) ? `There is a family "${answer}" already.` : null;
};

const moduleFault = (answer: string, { modules }: Taken): string | null =>
  modules.includes(answer.toUpperCase()) ? null : `No module has the code "${answer}"; write ${modules.join(", ")}. A new module comes first: npm run new:module.`;

const kindFault = (answer: string): string | null => {
  const kind = answer.toLowerCase();
  if ((SCAFFOLDS as readonly string[]).includes(kind)) return null;
  const example = EXAMPLES[kind];
  return example === undefined ? `"${answer}" is no kind; write ${anyOf(SCAFFOLDS)}.` : `A file is written for ${anyOf(SCAFFOLDS)}; for "${kind}" copy src/bank/${example}.`;
};

const titleFault = (answer: string): string | null => (slugOf(answer) === "" ? "A title has letters." : null);

const givensFault = (answer: string): string | null => {
  const givens = givensOf(answer);
  return typeof givens === "string" ? givens : null;
};

const unitFault = (answer: string): string | null => (unitOf(answer) === null ? noUnit(answer) : null);

/** What is asked of every family, and what only of sums. */
export const familyQuestions = (taken: Taken): { readonly always: readonly Question[]; readonly ofSums: readonly Question[] } => ({
  always: [
    { name: "id", text: "1 of 6  Its name, in small letters and hyphens, such as least-depth:", fault: (answer) => idFault(answer, taken) },
    { name: "module", text: `2 of 6  Its module (${taken.modules.join(", ")}):`, fault: (answer) => moduleFault(answer, taken) },
    { name: "kind", text: `3 of 6  Its kind: ${SCAFFOLDS.join(", ")}`, fault: kindFault },
    { name: "title", text: "4 of 6  Its title, a few words:", fault: titleFault },
  ],
  ofSums: [
    { name: "givens", text: "5 of 6  The numbers that it states: name, unit, least, greatest, step; a semicolon between two.\n        For example: entry mm 2 to 6 by 0.5; margin mm 1 to 3 by 0.5", fault: givensFault },
    { name: "ask", text: "6 of 6  The unit of the answer, such as mm:", fault: unitFault },
  ],
});

/** The unit that an answer means; millimetres where there is none, which the questions never let through. */
export const askUnitOf = (answer: string): UnitId => unitOf(answer) ?? "mm";

const LAST_LETTER = "z".charCodeAt(0);

/** The next free code of a module: its two digits and the letter after the last. */
export const nextCode = (module: string, codes: readonly string[]): string | null => {
  const digits = module === "DX" ? (codes.find((code) => !/^(0\d|1[0-4])/.test(code))?.slice(0, 2) ?? "15") : module.slice(1);
  const letters = codes.filter((code) => code.startsWith(digits)).map((code) => code.charCodeAt(2));
  const next = Math.max("a".charCodeAt(0) - 1, ...letters) + 1;
  return next > LAST_LETTER ? null : `${digits}${String.fromCharCode(next)}`;
};
