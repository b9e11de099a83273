import type { FamilyEntry } from "../../bank/index.ts";
import type { Row, SheetEntry, SlipRow } from "./entry.ts";

const inOneLine = (rows: readonly Row[]): string => rows.map(({ label, text }) => (rows.length > 1 ? `${label}: ${text}` : text)).join("; ");

const slipLines = ({ name, gives, because, verdict }: SlipRow): readonly string[] => [`  - ${name} [${verdict}]: ${inOneLine(gives)}`, `      ${because.join(" ")}`];

const several = (label: string, texts: readonly string[]): readonly string[] => (texts.length === 0 ? [] : [`  ${label}: ${texts.join(" ")}`]);

const entryLines = (entry: SheetEntry): readonly string[] => [
  `seed ${entry.seed}`,
  `  ${entry.stem.join(" ")}`,
  ...entry.givens.map(({ label, text, from }) => `    ${label}: ${text} (${from})`),
  ...entry.before.map(({ label, items }) => `    ${label}: ${items.join(" | ")}`),
  ...(entry.figure ? [`  Figure: ${entry.figure.text}`] : []),
  `  Q: ${entry.question}`,
  ...entry.answer.map(({ label, text, accepted }) => `  A: ${label}: ${text}${accepted === undefined ? "" : ` (accepted: ${accepted})`}`),
  ...several("Working", entry.working),
  ...several("Right", entry.right),
  ...several("Unnamed", entry.off),
  ...several("When right", entry.inverse),
  ...entry.slips.flatMap(slipLines),
  `  Cautions: ${entry.cautions.map(({ label }) => label).join(" ") || "none"}. Sources: ${entry.sources.join("; ") || "none"}`,
  "",
];

/** The sheet for a terminal. */
export const sheetText = ({ code, id, module, version, kind }: FamilyEntry, entries: readonly SheetEntry[]): string =>
  [`== ${code} ${id}, ${module}, version ${version}, ${kind} ==`, ...entries.flatMap(entryLines)].join("\n");
