import type { Course } from "./course.ts";
import type { Level, Problem } from "./finding.ts";

const count = (number: number, one: string, many = `${one}s`): string => `${number} ${number === 1 ? one : many}`;

const indent = (text: string): string => text.split("\n").join("\n            ");

const block = ({ file, line, column, rule, level, found, expected, corrected }: Problem): string =>
  [
    `${file}:${line}:${column}  ${level === "warning" ? `warning: ${rule}` : rule}`,
    `  found     ${indent(found)}`,
    `  expected  ${indent(expected)}`,
    ...(corrected === "" ? [] : [`  write     ${indent(corrected)}`]),
  ].join("\n");

const note = ({ file, line, rule, found }: Problem): string => `${file}:${line}  note: ${rule}: ${found}`;

const ofLevel = (problems: readonly Problem[], level: Level): readonly Problem[] =>
  problems.filter((problem) => problem.level === level);

const ofPrinted = (problems: readonly Problem[]): readonly Problem[] => problems.filter(({ level }) => level !== "note");

const counts = (problems: readonly Problem[], course: Course, withNotes: boolean): string => {
  const notes = ofLevel(problems, "note").length;
  const modules = course.files.filter((file) => file.kind === "module").length;
  const seen = [
    count(ofLevel(problems, "problem").length, "problem"),
    count(ofLevel(problems, "warning").length, "warning"),
    `${count(notes, "note")}${notes > 0 && !withNotes ? " (--notes lists them)" : ""}`,
  ];
  const read = [
    count(modules, "module"),
    count(course.files.length - modules, "other text"),
    count(course.records.length, "ledger entry", "ledger entries"),
    count(course.families.length, "question family", "question families"),
  ];
  return `${seen.join(", ")}; read ${read.join(", ")}.`;
};

/** Problems and warnings alone, for a run that ends before anything else is read. */
export const printedBlocks = (problems: readonly Problem[]): string => ofPrinted(problems).map(block).join("\n\n");

/** The whole message of a run: problems and warnings, on request notes, then one line of counts. */
export const printed = (problems: readonly Problem[], course: Course, withNotes = false): string =>
  [
    ...ofPrinted(problems).map((problem) => `${block(problem)}\n`),
    ...(withNotes && ofLevel(problems, "note").length > 0 ? [`${ofLevel(problems, "note").map(note).join("\n")}\n`] : []),
    counts(problems, course, withNotes),
  ].join("\n");
