import { holesIn, type ModuleRow, type ObjectiveRow, rolesIn, staleIn } from "./plan.ts";

const ID_WIDTH = 20;
const VERB_WIDTH = 10;
/** Stands where a question should be: seen without colour, and by whoever reads it aloud. */
const HOLE = "[    no question    ]";

const LEGEND = "Objectives, their verb and the questions that serve them; ! marks a question with an unsafe side.";

const reviewText = ({ review, isWritten }: ModuleRow): string => {
  if (!isWritten) return "not written";
  if (review === "none") return "not reviewed";
  return `${review.isStale ? "REVIEW PAST" : "reviewed"}, due ${review.due}`;
};

const familiesText = ({ families }: ObjectiveRow): string =>
  families.length === 0 ? HOLE : families.map(({ code, id, kind, unsafe, version }) => `${code}${unsafe ? "!" : ""} ${id} (${kind}${version === 0 ? ", draft" : ""})`).join(", ");

const askedText = ({ families, asked }: ObjectiveRow): string => {
  if (families.length === 0) return "";
  return asked === 0 ? "  - not asked in its module" : "";
};

const objectiveLine = (row: ObjectiveRow): string => `  ${row.id.padEnd(ID_WIDTH)} ${row.verb.padEnd(VERB_WIDTH)} ${familiesText(row)}${askedText(row)}`;

const moduleBlock = (row: ModuleRow): string =>
  [
    `${row.code.padEnd(4)}${row.name}  |  ${row.roles.join(", ") || "no roles"}  |  ${reviewText(row)}`,
    ...row.objectives.map(objectiveLine),
    ...row.strays.map(({ code, id, objectives }) => `  ${objectives.join(", ").padEnd(ID_WIDTH)} ${"".padEnd(VERB_WIDTH)} ${code} ${id}${row.isWritten ? "  - its objective is not listed" : ""}`),
  ].join("\n");

const roleTable = (rows: readonly ModuleRow[]): string =>
  [
    "role        core  optional  objectives  with a question  families with an unsafe side (!)",
    ...rolesIn(rows).map(({ role, core, optional, objectives, served, unsafe }) => `${role.padEnd(10)}${String(core).padStart(6)}${String(optional).padStart(10)}${String(objectives).padStart(12)}${String(served).padStart(17)}${String(unsafe).padStart(10)}`),
  ].join("\n");

const list = (title: string, lines: readonly string[]): string => [`${title}: ${lines.length === 0 ? "none" : lines.length}`, ...lines.map((line) => `  ${line}`)].join("\n");

/** The blueprint as text: modules with their objectives and questions, roles, what is missing, and reviews whose day has come. */
export const blueprintText = (rows: readonly ModuleRow[]): string =>
  `${[LEGEND, ...rows.map(moduleBlock), roleTable(rows), list("Holes", holesIn(rows)), list("Reviews past their day", staleIn(rows))].join("\n\n")}\n`;
