import { MEASURABLE_VERBS } from "../../schemas/module.ts";
import { anyOf, nearest } from "../check/nearest.ts";
import { slugOf } from "./names.ts";
import type { Question } from "./ask.ts";

export interface PlannedObjective {
  readonly id: string;
  readonly verb: string;
  readonly text: string;
}

/** All that a new module is made from. */
export interface ModulePlan {
  readonly title: string;
  readonly code: string;
  readonly roles: string;
  readonly objectives: readonly PlannedObjective[];
  readonly needs: readonly string[];
  readonly review: string;
  readonly reviewer: string;
}

const ROLES = ["resident", "nurse", "director"] as const;
const NONE = /^(none|-|)$/i;
const LITTLE = new Set(["the", "a", "an", "of", "on", "in", "and", "or", "to", "for", "that", "with", "from", "what", "how", "has", "is", "no"]);

/** Pieces of an answer between semicolons or commas. */
const pieces = (answer: string, sign: RegExp): readonly string[] => answer.split(sign).map((each) => each.trim()).filter((each) => each !== "");

const titleFault = (answer: string): string | null => {
  if (slugOf(answer) === "") return "A title has letters.";
  return /[:#{}[\]"]/.test(answer) ? 'A title has no colon, quote, bracket or "#".' : null;
};

/** "resident core, nurse optional": the role alone is core. */
export const rolesOf = (answer: string): readonly (readonly [role: string, weight: string])[] =>
  pieces(answer, /[,;]/).map((each) => {
    const [role = "", weight = "core"] = each.toLowerCase().split(/[\s:]+/);
    return [role, weight];
  });

const rolesFault = (answer: string): string | null => {
  const roles = rolesOf(answer);
  const [wrong] = roles.filter(([role]) => !(ROLES as readonly string[]).includes(role));
  if (roles.length === 0) return `One role or more: ${anyOf(ROLES)}.`;
  if (wrong !== undefined) return `"${wrong[0]}" is no role; write ${anyOf(ROLES)}, each with "core" or "optional".`;
  const [light] = roles.filter(([, weight]) => weight !== "core" && weight !== "optional");
  return light === undefined ? null : `"${light[1]}" is neither "core" nor "optional".`;
};

const objectivesFault = (answer: string): string | null => {
  const list = pieces(answer, /;/);
  if (list.length === 0) return `One objective or more, each with its verb first: ${anyOf(MEASURABLE_VERBS)}.`;
  for (const each of list) {
    const [verb = "", ...rest] = each.split(/\s+/);
    if (!(MEASURABLE_VERBS as readonly string[]).includes(verb.toLowerCase())) {
      const meant = nearest(verb.toLowerCase(), MEASURABLE_VERBS);
      return `"${verb}" is not a verb that can be checked${meant === null ? "" : `; the nearest is "${meant}"`}. Write ${anyOf(MEASURABLE_VERBS)}.`;
    }
    if (rest.length === 0) return `What is to be ${verb === "calculate" ? "calculated" : "done"}? Write it behind "${verb}".`;
  }
  return null;
};

const needsFault = (answer: string, codes: readonly string[]): string | null => {
  const [wrong] = needsOf(answer).filter((code) => !codes.includes(code));
  return wrong === undefined ? null : `No module has the code "${wrong}"; write ${codes.join(", ")}, or none.`;
};

/** A day that the calendar has; 31 April is none. */
const isDay = (text: string): boolean => /^\d{4}-\d\d-\d\d$/.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text);

const reviewFault = (answer: string): string | null => (NONE.test(answer) || isDay(answer) ? null : `"${answer}" is no day; write it as 2027-03-01, or none.`);

const reviewerFault = (answer: string): string | null => (/["{}#]/.test(answer) ? "A reviewer is named by role, without quotes or brackets." : null);

/** The six things that are asked. */
export const moduleQuestions = (codes: readonly string[]): readonly Question[] => [
  { name: "title", text: "1 of 6  Title, a few words:", fault: titleFault },
  { name: "roles", text: "2 of 6  Who reads it, and is it core or optional for them? For example: resident core, nurse optional", fault: rolesFault },
  { name: "objectives", text: `3 of 6  What can a reader do afterwards? Verb first (${MEASURABLE_VERBS.join(", ")}); a semicolon between two.`, fault: objectivesFault },
  { name: "needs", text: `4 of 6  Which modules come before it? Codes (${codes.join(", ")}), or none.`, fault: (answer) => needsFault(answer, codes) },
  { name: "review", text: "5 of 6  When is it to be reviewed? A day such as 2027-03-01, or none.", fault: reviewFault },
  { name: "reviewer", text: "6 of 6  Who is to review it? A role such as paediatric orthopaedic surgeon, or none.", fault: reviewerFault },
];

export const needsOf = (answer: string): readonly string[] => (NONE.test(answer) ? [] : [...new Set(pieces(answer.toUpperCase(), /[,;\s]+/))]);

/** Objectives with ids from their two weightiest words. */
export const objectivesOf = (answer: string, code: string): readonly PlannedObjective[] => {
  const taken = new Set<string>();
  return pieces(answer, /;/).map((each) => {
    const [verb = "", ...rest] = each.split(/\s+/);
    const words = rest.map(slugOf).filter((word) => word !== "" && !LITTLE.has(word)).slice(0, 2);
    const base = `${code.toLowerCase()}-${words.join("-") || verb.toLowerCase()}`;
    const id = taken.has(base) ? `${base}-${taken.size + 1}` : base;
    taken.add(id);
    return { id, verb: verb.toLowerCase(), text: [verb.toLowerCase(), ...rest].join(" ").replace(/[."]/g, "").replace(/: /g, ", ") };
  });
};

export const isNone = (answer: string): boolean => NONE.test(answer);

/** Questions of DX carry 15 in their codes, so no module has that number. */
const TAKEN_BY_DX = 15;

const numberAfter = (last: number): number => (last + 1 === TAKEN_BY_DX ? last + 2 : last + 1);

/** The code that the curriculum gives to a title, or the next free one for which a line is to be added. */
export const codeFor = (title: string, curriculum: Readonly<Record<string, string>>): { readonly code: string; readonly isListed: boolean } => {
  const listed = Object.entries(curriculum).find(([, name]) => slugOf(name) === slugOf(title));
  if (listed !== undefined) return { code: listed[0], isListed: true };
  const numbers = Object.keys(curriculum).flatMap((code) => Number(/^M(\d\d)$/.exec(code)?.[1] ?? 0));
  return { code: `M${String(numberAfter(Math.max(0, ...numbers))).padStart(2, "0")}`, isListed: false };
};
