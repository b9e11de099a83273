import { MEASURABLE_VERBS } from "../../../schemas/module.ts";

/** What a field of the front matter is, in an author's words, and how it is written. */
export interface FieldHelp {
  readonly is: string;
  readonly sample: string;
  /** A value that can stand in place of a wrong one. */
  readonly instead: string;
}

const importance: Omit<FieldHelp, "sample"> = { is: '"core" or "optional"; leave a role out that does not read the module', instead: "core" };

/** By path; a place in a list is written `*`. The order is the order of a new module. */
export const FIELDS: Readonly<Record<string, FieldHelp>> = {
  title: { is: "the title, as text", sample: "title: Needle path and depth", instead: "Needle path and depth" },
  code: { is: 'the code of the module, "M01" to "M14" or "DX"', sample: "code: M10", instead: "M10" },
  summary: { is: "one sentence that leads into the module", sample: "summary: How deep a needle may go, and where there is no depth at all.", instead: "One sentence that leads into the module." },
  needs: { is: "a list of module codes, [] where nothing is needed", sample: "needs: [M01, M06]", instead: "[M01]" },
  roles: { is: 'one role or more of resident, nurse and director, each "core" or "optional"', sample: "roles: { resident: core, nurse: optional }", instead: "{ resident: core }" },
  "roles.resident": { ...importance, sample: "resident: core" },
  "roles.nurse": { ...importance, sample: "nurse: optional" },
  "roles.director": { ...importance, sample: "director: optional" },
  minutes: { is: "a whole number of minutes, without quotes", sample: "minutes: 40", instead: "40" },
  objectives: { is: "a list with one objective or more, each with id, verb and text", sample: "objectives:\n  - { id: m10-least, verb: calculate, text: the least depth }", instead: "[{ id: m10-least, verb: calculate, text: the least depth }]" },
  "objectives.*": { is: "an objective with id, verb and text", sample: "- { id: m10-least, verb: calculate, text: the least depth }", instead: "{ id: m10-least, verb: calculate, text: the least depth }" },
  "objectives.*.id": { is: "the code of the module in small letters, a hyphen and a word", sample: "id: m10-least", instead: "m10-least" },
  "objectives.*.verb": { is: `a verb that a machine can check: ${MEASURABLE_VERBS.join(", ")}`, sample: "verb: calculate", instead: "calculate" },
  "objectives.*.text": { is: "what the verb is about, as text", sample: "text: the least depth", instead: "the least depth" },
  review: { is: "{ state: none }, or { state: reviewed, by: …, on: …, due: … }", sample: "review: { state: none }", instead: "{ state: none }" },
  "review.state": { is: '"none" or "reviewed"', sample: "state: none", instead: "none" },
  "review.by": { is: "the role of the person who read it, as text", sample: "by: paediatric orthopaedic surgeon", instead: "paediatric orthopaedic surgeon" },
  "review.on": { is: "the day of the review: year, month, day", sample: "on: 2026-11-01", instead: "2026-11-01" },
  "review.due": { is: "the day of the next review: year, month, day", sample: "due: 2027-11-01", instead: "2027-11-01" },
  language: { is: 'the language of the module: "en"', sample: "language: en", instead: "en" },
};

/** A path of the data as it is written in the table. */
export const fieldName = (path: readonly PropertyKey[]): string =>
  path.map((step) => (typeof step === "number" ? "*" : String(step))).join(".");

/** Fields that may stand directly under a path. */
export const fieldsUnder = (path: readonly PropertyKey[]): readonly string[] => {
  const head = path.length === 0 ? "" : `${fieldName(path)}.`;
  return Object.keys(FIELDS)
    .filter((name) => name.startsWith(head) && !name.slice(head.length).includes("."))
    .map((name) => name.slice(head.length))
    .filter((name) => name !== "*");
};
