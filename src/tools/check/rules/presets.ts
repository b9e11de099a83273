import { MOST_QUESTIONS, ROUTES } from "../../../engine/record/list-form.ts";
import { presetsSchema } from "../../../schemas/preset.ts";
import type { Finding } from "../finding.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT, quoted } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const PRESETS: DataFile = {
  rule: "ready-made list",
  schema: presetsSchema,
  whole: "a ready-made teaching list",
  help: {
    number: ["a whole number from 0 to 63, the next one that is free", '"number": 4'],
    title: ["what learners read, at most 80 signs", '"title": "First list"'],
    families: ["a list of question families", '"families": ["greatest-depth"]'],
    each: [`questions of each family, so that the sheet has at most ${MOST_QUESTIONS}`, '"each": 1'],
    sheet: ['"own" for a sheet for each learner, or "same"', '"sheet": "own"'],
    attempts: ["a whole number from 1 to 9", '"attempts": 3'],
    rightPercent: ["a whole number from 0 to 100", '"rightPercent": 80'],
    must: ["families of this list of which every question must be right", '"must": ["greatest-depth"]'],
    noUnsafe: ["true or false, without quotes", '"noUnsafe": true'],
    back: [`ways to hand in: ${ROUTES.join(", ")}`, '"back": ["file", "block"]'],
  },
  repair: () => null,
};

interface Listed {
  readonly number?: unknown;
  readonly families?: unknown;
}

const listsIn = (value: unknown): readonly Listed[] => (Array.isArray(value) ? value.filter((one): one is Listed => typeof one === "object" && one !== null) : []);

/** Ready-made lists hold to their schema, name families that there are, and each has a number of its own. */
export const presets: CourseRule = (course) => {
  const file = course.presets;
  const known = course.families.map(({ id }) => id);
  const lists = listsIn(file.value);
  const unknown = lists.flatMap(({ families }, at) => (Array.isArray(families) ? families : []).flatMap((family: unknown, place): readonly Finding[] => {
    if (known.includes(String(family))) return [];
    const span = file.located().spanOf([at, "families", place]);
    const meant = nearest(String(family), known);
    const head = { source: file, offset: span.start, rule: "ready-made list", found: `the family ${quoted(String(family))}` };
    return [meant === null ? { ...head, expected: "a family that the bank lists", write: LEAVE_OUT } : { ...head, expected: `a family that the bank lists; the nearest is "${meant}"`, edits: [{ ...span, text: `"${meant}"` }] }];
  }));
  const twice = lists.flatMap(({ number }, at): readonly Finding[] => {
    if (lists.findIndex((one) => one.number === number) === at) return [];
    const span = file.located().spanOf([at, "number"]);
    const free = Math.max(...lists.map((one) => Number(one.number) || 0)) + 1;
    return [{ source: file, offset: span.start, rule: "ready-made list", found: `the number ${String(number)} a second time`, expected: "a number of its own, because typed codes name it", edits: [{ ...span, text: String(free) }] }];
  });
  return [...schemaFindings(file, PRESETS), ...unknown, ...twice];
};
