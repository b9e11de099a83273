import { gridSize } from "../../../engine/random/chance.ts";
import { isUnitId, UNITS, unitNamed } from "../../../engine/quantity/units.ts";
import type { Rounding } from "../../../engine/quantity/round.ts";
import type { SafeSide } from "../../../engine/question/item.ts";
import type { Family } from "../../../engine/question/family.ts";
import type { AskSpec, GivenSpec } from "../../../engine/question/family-head.ts";
import type { Course, FamilyFacts } from "../course.ts";
import { type FamilyFault, familyFinding, namesText } from "../family-finding.ts";
import type { Finding } from "../finding.ts";
import { anyOf, nearest } from "../nearest.ts";
import type { CourseRule } from "../rule.ts";
import { endOf, saysUnit, withEnd } from "../unit-ends.ts";

const rule = "family";
const LEAST_SLIPS = 2;

const asId = (text: string): string => text.replace(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "");

const ROUNDINGS: readonly Rounding[] = ["nearest", "up", "down"];
const SIDES: readonly SafeSide[] = ["up", "down", "none"];

/** A word of an ask that is none of its list: nothing else would notice before the types of the whole site are looked at. */
const wordFault = (id: string, { field, word, words }: { readonly field: string; readonly word: string; readonly words: readonly string[] }): readonly FamilyFault[] =>
  words.includes(word) ? [] : [{ near: id, rule, found: `${field} "${word}" of ${id}`, expected: anyOf(words), write: `${field}: "${nearest(word, words) ?? words[0]}"` }];

const nameFaults = ({ id, code, module, source, isLoaded }: FamilyFacts): readonly FamilyFault[] => {
  const faults: FamilyFault[] = [];
  const head = { near: id, rule };
  if (id !== asId(id)) faults.push({ ...head, found: `the id "${id}"`, expected: "small letters, numbers and hyphens", write: `id: "${asId(id)}",` });
  const number = module === "DX" ? "15" : module.slice(1);
  if (!/^\d\d[a-z]$/.test(code) || (module !== "DX" && !code.startsWith(number))) {
    const letter = /[a-z]$/.exec(code)?.[0] ?? "a";
    faults.push({ ...head, near: code, found: `the code "${code}" in module ${module}`, expected: "the two digits of the module and one small letter", write: `code: "${number}${letter}",` });
  }
  if (isLoaded === false) faults.push({ ...head, found: `the id "${id}", which load.ts beside it does not name`, expected: "a line there, by which a page fetches the question", write: `"${id}": () => import("./${id}.ts"),` });
  const name = /([^/]+)\.ts$/.exec(source?.file ?? "")?.[1];
  if (name !== undefined && name !== id) faults.push({ ...head, found: `the id "${id}" in the file ${name}.ts`, expected: "a file named as the family, by which it is found", write: `id: "${name}",` });
  return faults;
};

const moduleFaults = ({ module, objectives, source }: FamilyFacts, course: Course): readonly FamilyFault[] => {
  const head = `${module.toLowerCase()}-`;
  const wrong = objectives.filter((id) => !id.startsWith(head));
  const faults: FamilyFault[] = wrong.map((id) => ({ near: id, rule, found: `objective "${id}" in module ${module}`, expected: `an objective of its own module, which starts with "${head}"`, write: `objectives: ${namesText([id.replace(/^[^-]*-/, head)])},` }));
  if (objectives.length === 0) faults.push({ near: module, rule, found: "no objective", expected: "the objective that it asks about", write: `objectives: ["${head}…"],` });
  const names = Object.keys((course.curriculum.value ?? {}) as object);
  if (names.length > 0 && !names.includes(module)) faults.push({ near: module, rule, found: `module "${module}"`, expected: "a code of content/curriculum.json", write: `module: "${nearest(module, names) ?? names[0]}",` });
  const folder = /src\/bank\/([^/]+)\/[^/]+\.ts$/.exec(source?.file ?? "")?.[1];
  if (folder !== undefined && folder !== module.toLowerCase()) faults.push({ near: module, rule, found: `module "${module}" in the folder ${folder}`, expected: "the folder of its own module", write: `module: "${folder.toUpperCase()}",` });
  return faults;
};

const unitFault = (name: string, unit: string, what: string): readonly FamilyFault[] => {
  if (!isUnitId(unit)) {
    const meant = unitNamed(unit) ?? nearest(unit, Object.keys(UNITS));
    const advice = meant === null ? `none is near; there are ${anyOf(Object.keys(UNITS))}` : `the nearest is "${meant}"`;
    return [{ near: name, rule, found: `the unit "${unit}" of ${name}`, expected: `a unit of src/engine/quantity/units.ts; ${advice}`, write: `unit: "${meant ?? "…"}"` }];
  }
  if (saysUnit(name, unit)) return [];
  return [{ near: name, rule, found: `${what} "${name}" in ${unit}`, expected: `a name that ends in its unit, ${endOf(unit)}`, write: `"${withEnd(name, unit)}"` }];
};

const gridFaults = ({ key, unit, least, greatest, step }: GivenSpec): readonly FamilyFault[] => {
  const written = (from: number, to: number, by: number): string => `{ key: "${key}", unit: "${unit}", least: ${from}, greatest: ${to}, step: ${by} }`;
  const head = { near: key, rule };
  if (least > greatest) return [{ ...head, found: `${key} from ${least} to ${greatest}`, expected: "the least value first", write: written(greatest, least, step) }];
  if (!(step > 0)) return [{ ...head, found: `${key} in steps of ${step}`, expected: "a step above 0, which is also the precision shown", write: written(least, greatest, Math.abs(step) || 1) }];
  const steps = (greatest - least) / step;
  if (Math.abs(steps - Math.round(steps)) < 1 / 1000) return [];
  const last = Number((least + (gridSize({ least, greatest, step }) - 1) * step).toFixed(6));
  return [{ ...head, found: `${key} from ${least} to ${greatest} in steps of ${step}`, expected: `a greatest value that the steps reach, such as ${last}`, write: written(least, last, step) }];
};

const askFaults = ({ id, unit, roundTo, rounding, safeSide }: AskSpec): readonly FamilyFault[] => [
  ...(roundTo > 0 ? [] : [{ near: id, rule, found: `${id} rounded to ${roundTo}`, expected: "a step above 0", write: "roundTo: 0.5" }]),
  ...wordFault(id, { field: "rounding", word: rounding, words: ROUNDINGS }),
  ...wordFault(id, { field: "safeSide", word: safeSide, words: SIDES }),
  ...unitFault(id, unit, "the ask"),
];

const asksOf = (family: Family): readonly AskSpec[] => {
  if (family.kind === "sum") return family.asks;
  return family.kind === "chain" ? family.steps.flatMap(({ asks }) => asks) : [];
};

const slipFaults = (family: Family): readonly FamilyFault[] => {
  const ids = family.slips.map(({ id }) => id);
  const faults: FamilyFault[] = ids.filter((id, index) => ids.indexOf(id) < index).map((id) => ({ near: id, rule, found: `slip "${id}" twice`, expected: "each slip once", write: `{ id: "${id}-2", gives: ({ givens }) => ({ … }) },` }));
  if (ids.length >= LEAST_SLIPS) return faults;
  return [...faults, { near: family.id, rule, found: ids.length === 0 ? "no slip" : `one slip, "${ids[0]}"`, expected: `${LEAST_SLIPS} slips or more, each with a formula and a sentence`, write: '{ id: "margin-forgotten", gives: ({ givens }) => ({ … }) },' }];
};

const inverseFault = (family: Family): readonly FamilyFault[] => {
  const keys = family.givens.map(({ key }) => key);
  if (family.kind !== "sum" || family.inverseOf === undefined || keys.includes(family.inverseOf)) return [];
  const meant = nearest(family.inverseOf, keys) ?? keys[0] ?? "";
  return [{ near: family.inverseOf, rule, found: `inverseOf "${family.inverseOf}"`, expected: `the key of a given; the nearest is "${meant}"`, write: `inverseOf: "${meant}",` }];
};

const declaredFaults = (family: Family): readonly FamilyFault[] => [
  ...family.givens.flatMap((given) => [...unitFault(given.key, given.unit, "the given"), ...gridFaults(given)]),
  ...asksOf(family).flatMap(askFaults),
  ...slipFaults(family),
  ...inverseFault(family),
];

/** True where a grid or a rounding is wrong, so that no draw can be right. */
export const hasWrongGrid = (family: Family): boolean =>
  family.givens.some((given) => gridFaults(given).length > 0) || asksOf(family).some(({ roundTo }) => !(roundTo > 0)) || family.slips.length < LEAST_SLIPS;

/** Two families may share a code, as steps of one question; a name is given once. */
const twice = (families: readonly FamilyFacts[]): readonly Finding[] =>
  families.filter(({ id }, index) => families.findIndex((each) => each.id === id) < index).map((family) =>
    familyFinding(family, { near: family.id, rule, found: `the id "${family.id}", which another family has`, expected: "each id once", write: `id: "${family.id}-2",` }),
  );

/** What a family declares holds together: its names, its units, its grids, its slips. */
export const familyForm: CourseRule = (course) => [
  ...twice(course.families),
  ...course.families.filter(({ declared }) => declared !== undefined).flatMap((family) => {
    const declared = family.declared === undefined ? [] : declaredFaults(family.declared);
    return [...nameFaults(family), ...moduleFaults(family, course), ...declared].map((fault) => familyFinding(family, fault));
  }),
];
