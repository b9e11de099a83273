import { panelsSchema } from "../../../schemas/panel.ts";
import type { Course } from "../course.ts";
import type { Finding } from "../finding.ts";
import { nearest } from "../nearest.ts";
import { type CourseRule, LEAVE_OUT } from "../rule.ts";
import { type DataFile, schemaFindings } from "../schema-findings.ts";

const RULE = "panel";

const PANELS: DataFile = {
  rule: RULE,
  schema: panelsSchema,
  whole: "a panel",
  help: {
    on: ["the day of the meeting, as year, month and day", '"on": "2027-03-01"'],
    sheet: ["the sheet or list that was judged, as text", '"sheet": "Depth and dose, spring list"'],
    judges: ["a list of judges by role, at least one", '"judges": ["Surgeon, Saltmere", "Theatre nurse, Carrow"]'],
    must: ["a list of questions that must be right; [] where there are none", '"must": ["window"]'],
    estimates: ["for each question that need not be right, one share from 0 to 1 per judge", '"estimates": { "window": [0.6, 0.7] }'],
  },
  repair: () => null,
};

interface PanelRow {
  readonly must: readonly string[];
  readonly estimates: Readonly<Record<string, unknown>>;
}

/** A question that the course does not have, with the nearest in its place. */
const unknown = (course: Course, name: string, span: { readonly start: number; readonly end: number }): Finding => {
  const meant = nearest(name, course.families.map(({ id }) => id));
  const head = { source: course.panels, offset: span.start, rule: RULE, found: `"${name}"` };
  return meant === null
    ? { ...head, expected: "a question of the course; none is near", write: LEAVE_OUT }
    : { ...head, expected: `a question of the course; the nearest is "${meant}"`, edits: [{ ...span, text: `"${meant}"` }] };
};

const unknownIn = (course: Course, { must, estimates }: PanelRow, index: number): readonly Finding[] => {
  const isKnown = (name: string): boolean => course.families.some(({ id }) => id === name);
  const located = course.panels.located();
  return [
    ...must.flatMap((name, at) => (isKnown(name) ? [] : [unknown(course, name, located.spanOf([index, "must", at]))])),
    ...Object.keys(estimates).flatMap((name) => (isKnown(name) ? [] : [unknown(course, name, located.keySpanOf([index, "estimates"], name))])),
  ];
};

/** The judges' tables hold to their schema and name questions of the course. */
export const panels: CourseRule = (course) => {
  const faults = schemaFindings(course.panels, PANELS);
  return faults.length > 0 || !Array.isArray(course.panels.value) ? faults : (course.panels.value as readonly PanelRow[]).flatMap((panel, index) => unknownIn(course, panel, index));
};
