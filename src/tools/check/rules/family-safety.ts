import type { Family } from "../../../engine/question/family.ts";
import { chanceFor } from "../../../engine/random/chance.ts";
import { type Course, type FamilyFacts, idsIn } from "../course.ts";
import { type FamilyFault, familyFinding, namesText } from "../family-finding.ts";
import { recordNamed } from "../json-file.ts";
import { nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";

const rule = "unsafe side";

/** Where each kind says what could hurt somebody, and how that is written. */
const unsafeParts: Readonly<Record<Family["kind"], { readonly has: (family: Family) => boolean; readonly write: string }>> = {
  sum: { has: (family) => family.kind === "sum" && (family.isUnsafe !== undefined || family.asks.some(({ safeSide }) => safeSide !== "none")), write: 'safeSide: "down"' },
  chain: { has: (family) => family.kind === "chain" && family.steps.some((step) => step.isUnsafe !== undefined || step.asks.some(({ safeSide }) => safeSide !== "none")), write: 'safeSide: "down"' },
  order: { has: (family) => family.kind === "order" && family.edges.some(({ critical }) => critical === true), write: '{ before: "…", after: "…", critical: true }' },
  judge: { has: (family) => family.kind === "judge" && family.unsafeOptions !== undefined, write: 'unsafeOptions: (draw) => ["…"],' },
  name: { has: (family) => family.kind === "name" && family.isUnsafe !== undefined, write: "isUnsafe: (draw, picks) => …," },
  tray: { has: (family) => family.kind === "tray" && family.critical !== undefined, write: 'critical: (draw) => ["…"],' },
  mark: { has: (family) => family.kind === "mark" && family.critical !== undefined, write: 'critical: ["…"],' },
  count: { has: () => true, write: "" },
  line: { has: () => true, write: "" },
  range: { has: () => true, write: "" },
};

const sideFaults = (family: Family): readonly FamilyFault[] => {
  const { has, write } = unsafeParts[family.kind];
  if (!family.unsafe || has(family)) return [];
  return [{ near: family.id, rule, found: `unsafe, and no answer of this ${family.kind} is on the unsafe side`, expected: "the side or part that could hurt somebody, or unsafe: false", write }];
};

const STUDY_STATES: ReadonlySet<string> = new Set(["read", "quoted", "derived"]);

/** Draws in which a family is asked for the origins of its givens. */
const LOOKED_AT: readonly string[] = ["0", "1"];

/** The ledger entry of a length or an angle that a study measured in children and that the question shows. */
const shownStudyLength = (family: Family, course: Course): string | undefined =>
  LOOKED_AT.flatMap((seed) => {
    try {
      return Object.values(family.draw(chanceFor(family.id, family.version, seed)).origins ?? {});
    } catch {
      return [];
    }
  }).flatMap(({ from, entry }) => (from === "study" && entry !== undefined ? [entry] : [])).find((pin) => {
    const { record, revision } = recordNamed(course.records, pin);
    return record !== undefined && revision !== undefined && STUDY_STATES.has(revision.state) && (record.unit === "mm" || record.unit === "deg") && !record.adult;
  });

/** Kinds of numbers that carry a caution wherever they are asked about. */
const CAUTIONED: readonly { readonly id: string; readonly modules: readonly string[]; readonly units: ReadonlySet<string>; readonly of: string }[] = [
  { id: "C4", modules: ["M12"], units: new Set(["mg", "mg/kg", "micrograms", "mg/mL"]), of: "a dose" },
  { id: "C15", modules: ["M05", "M07"], units: new Set(["mmHg", "mL", "mL/min"]), of: "a pressure or a volume of fluid" },
];

const cautionFaults = (family: FamilyFacts, course: Course): readonly FamilyFault[] => {
  const { cautions, declared, module } = family;
  if (cautions === undefined || declared === undefined) return [];
  const lacks = (id: string, found: string): readonly FamilyFault[] =>
    cautions.includes(id) ? [] : [{ near: family.id, rule: "missing caution", found, expected: `caution ${id} among its cautions`, write: `cautions: ${namesText([...cautions, id])},` }];
  const units = [...declared.givens.map(({ unit }) => unit), ...(declared.kind === "sum" ? declared.asks.map(({ unit }) => unit) : [])];
  const length = shownStudyLength(declared, course);
  return [
    ...(length === undefined ? [] : lacks("C3", `shows the measured length "${length}"`)),
    ...CAUTIONED.filter((each) => each.modules.includes(module) && units.some((unit) => each.units.has(unit))).flatMap(({ id, of }) => lacks(id, `asks about ${of}`)),
  ];
};

const unknownCautions = ({ cautions }: FamilyFacts, course: Course): readonly FamilyFault[] => {
  const ids = idsIn(course.cautions);
  return (cautions ?? []).filter((id) => !ids.includes(id)).map((id) => ({ near: id, rule: "unknown caution", found: `caution "${id}"`, expected: `an id of content/cautions.json; the nearest is "${nearest(id, ids) ?? ids[0]}"`, write: `cautions: ${namesText([nearest(id, ids) ?? ids[0] ?? "C3"])},` }));
};

/** An unsafe family says what is unsafe, and a family carries the cautions of what it asks about. */
export const familySafety: CourseRule = (course) =>
  course.families.flatMap((family) =>
    [...(family.declared === undefined ? [] : sideFaults(family.declared)), ...cautionFaults(family, course), ...unknownCautions(family, course)].map((fault) => familyFinding(family, fault)),
  );
