import { type LedgerHit, ledgerEntry } from "../facts/ledger.ts";

/** A piece of a section: running text, or something that takes the width of text and right margin. */
export interface Piece {
  readonly kind: "body" | "wide" | "ask";
  readonly html: string;
  /** Families asked here, for the left margin. */
  readonly ask?: { readonly code: string; readonly objective: string; readonly number: string };
}

export interface SourceNote {
  readonly number: number;
  readonly id: string;
  readonly source: string | null;
  readonly hits: readonly LedgerHit[];
}

export interface Section {
  readonly pieces: readonly Piece[];
  readonly notes: readonly SourceNote[];
  /** True where a millimetre or degree of a study stands in the section. */
  readonly needsC3: boolean;
  readonly needsC9: boolean;
  /** Other cautions that the author placed here. */
  readonly cautions: readonly string[];
}

const PIECE = /<!--(wide|ask)((?:\|[^|]*?)*)-->([\s\S]*?)<!--\/\1-->/g;
const MARK = /<!--ref\|([^>]+?)-->/g;
const CAUTION = /<!--caution\|(C\d+)-->/g;

const piecesOf = (html: string): Piece[] => {
  const pieces: Piece[] = [];
  let from = 0;
  for (const match of html.matchAll(PIECE)) {
    pieces.push({ kind: "body", html: html.slice(from, match.index) });
    const [code = "", objective = "", number = ""] = (match[2] ?? "").split("|").slice(1);
    pieces.push({ kind: match[1] === "ask" ? "ask" : "wide", html: match[3] ?? "", ...(code === "" ? {} : { ask: { code, objective, number } }) });
    from = match.index + match[0].length;
  }
  pieces.push({ kind: "body", html: html.slice(from) });
  return pieces.filter((piece) => piece.html.trim() !== "");
};

const sourceKey = ({ revision, entry }: LedgerHit): string => revision.source ?? `own:${entry.key}`;

const isMeasured = ({ entry, revision }: LedgerHit): boolean => revision.value !== null && ["mm", "deg"].includes(entry.unit);

/** The notes of one section, by source: one number a source on the whole page. */
const notesOf = (hits: readonly LedgerHit[], numbers: Map<string, number>, section: number): ReadonlyMap<string, SourceNote> => {
  const notes = new Map<string, SourceNote>();
  for (const hit of hits) {
    const key = sourceKey(hit);
    if (!numbers.has(key)) numbers.set(key, numbers.size + 1);
    const number = numbers.get(key) ?? 0;
    const before = notes.get(key)?.hits ?? [];
    const known = before.some(({ entry }) => entry.key === hit.entry.key);
    notes.set(key, { number, id: `note-${section}-${number}`, source: hit.revision.source, hits: known ? before : [...before, hit] });
  }
  return notes;
};

const refMark = (note: SourceNote | undefined): string =>
  note ? `<a class="refmark" href="#${note.id}" aria-label="Source ${note.number}" data-pagefind-ignore>${note.number}</a>` : "";

/** Cuts a module's page into its sections and gathers, for each, what its margins must say. */
export const sectionsOf = (html: string): readonly Section[] => {
  const numbers = new Map<string, number>();
  const parts = html.split(/(?=<h2[ >])/).filter((part) => part.trim() !== "");
  return parts.map((part, index): Section => {
    const hits = [...part.matchAll(MARK)].map((match) => ledgerEntry(match[1] ?? ""));
    const notes = notesOf(hits, numbers, index + 1);
    const marked = part.replace(MARK, (_, name: string) => refMark(notes.get(sourceKey(ledgerEntry(name)))));
    return {
      pieces: piecesOf(marked.replace(CAUTION, "")),
      notes: [...notes.values()],
      needsC3: hits.some((hit) => isMeasured(hit) && !hit.entry.population.adult),
      needsC9: hits.some(({ entry }) => entry.population.adult),
      cautions: [...part.matchAll(CAUTION)].map((match) => match[1] ?? ""),
    };
  });
};
