import { type Edit, type Finding, linesAround, placeAt, type Problem, type SourceText } from "./finding.ts";
import type { Span } from "./located.ts";
import { LEAVE_OUT } from "./rule.ts";

/** Edits of one file that do not touch each other, in order; of two that do, the first one stays. */
const apart = (edits: readonly Edit[]): readonly Edit[] => {
  const sorted = [...edits].sort((first, second) => first.start - second.start || first.end - second.end);
  const kept: Edit[] = [];
  for (const edit of sorted) {
    const last = kept.at(-1);
    if (last === undefined || edit.start >= last.end) kept.push(edit);
  }
  return kept;
};

/** Lines around a span, and around every edit that reaches into them from another line. */
const wholeLines = (text: string, span: Span, edits: readonly Edit[]): Span => {
  const lines = linesAround(text, span.start, span.end);
  const reaching = edits.filter((edit) => edit.start < lines.end && edit.end > lines.start);
  const start = Math.min(lines.start, ...reaching.map((edit) => edit.start));
  const end = Math.max(lines.end, ...reaching.map((edit) => edit.end));
  return start < lines.start || end > lines.end ? wholeLines(text, { start, end }, edits) : lines;
};

/** The lines around a finding with every edit that falls into them: the line as it is right in the end. */
const correctedLines = (finding: Finding, edits: readonly Edit[]): Pick<Problem, "corrected" | "replaces"> => {
  const own = finding.edits ?? [];
  const starts = own.map(({ start }) => start);
  const ends = own.map((edit) => edit.end);
  const { start, end } = wholeLines(finding.source.text, { start: Math.min(...starts), end: Math.max(...ends) }, edits);
  let text = "";
  let at = start;
  for (const edit of edits.filter((each) => each.start >= start && each.end <= end)) {
    text += finding.source.text.slice(at, edit.start) + edit.text;
    at = edit.end;
  }
  const lines = text + finding.source.text.slice(at, end);
  const replaces = [placeAt(finding.source.text, start).line, placeAt(finding.source.text, end).line] as const;
  return { corrected: lines.trim() === "" ? LEAVE_OUT : lines.replaceAll("\r", ""), replaces };
};

/** The line to write: a corrected one in the place of the old, nothing in its place, or one for somewhere else. */
const correction = (finding: Finding, edits: readonly Edit[]): Pick<Problem, "corrected" | "replaces"> => {
  const { line } = placeAt(finding.source.text, finding.offset);
  if (finding.write !== undefined) return { corrected: finding.write, replaces: finding.write === LEAVE_OUT ? [line, line] : null };
  return (finding.edits ?? []).length > 0 ? correctedLines(finding, edits) : { corrected: "", replaces: null };
};

const problemOf = (finding: Finding, edits: readonly Edit[]): Problem => ({
  file: finding.source.file,
  ...placeAt(finding.source.text, finding.offset),
  rule: finding.rule,
  level: finding.level ?? "problem",
  found: finding.found,
  expected: finding.expected,
  ...correction(finding, edits),
});

const byPlace = (first: Problem, second: Problem): number =>
  first.file.localeCompare(second.file, "en") || first.line - second.line || first.column - second.column;

/** Findings as they are printed, file by file and from top to bottom; every edit of a file goes into its corrected lines. */
export const problemsOf = (findings: readonly Finding[]): readonly Problem[] => {
  const bySource = Map.groupBy(findings, ({ source }) => source.file);
  const edits = new Map<SourceText["file"], readonly Edit[]>();
  for (const [file, each] of bySource) {
    edits.set(file, apart(each.filter(({ level }) => level !== "note").flatMap((finding) => finding.edits ?? [])));
  }
  return findings.map((finding) => problemOf(finding, edits.get(finding.source.file) ?? [])).sort(byPlace);
};
