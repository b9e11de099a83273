import { draw, type FamilyEntry, families } from "../bank/index.ts";
import { CURRICULUM } from "../facts/curriculum.ts";
import { shortCite, type SourceData, sourceNamed } from "../facts/sources.ts";
import type { Review } from "./review-text.ts";

/** A question in the table of evidence: what it is called, and on which works its numbers rest. */
export interface MappedFamily {
  readonly id: string;
  readonly code: string;
  readonly title: string;
  readonly version: number;
  readonly isUnsafe: boolean;
  readonly sources: readonly { readonly id: string; readonly cite: string }[];
}

export interface MappedObjective {
  readonly id: string;
  readonly text: string;
  readonly families: readonly MappedFamily[];
}

export interface MappedModule {
  readonly code: string;
  readonly title: string;
  readonly slug: string;
  readonly review: Review;
  readonly objectives: readonly MappedObjective[];
}

interface Written {
  readonly id: string;
  readonly data: { readonly code: string; readonly title: string; readonly review: Review; readonly objectives: readonly { readonly id: string; readonly text: string }[] };
}

const citesOf = ({ sources }: FamilyEntry): MappedFamily["sources"] => {
  const works: readonly SourceData[] = [...new Set(sources.map(({ source }) => source))].map(sourceNamed);
  return works.map((work) => ({ id: work.id, cite: shortCite(work) }));
};

const mapped = (family: FamilyEntry): MappedFamily => ({ id: family.id, code: family.code, title: draw(family.id, 1).title, version: family.version, isUnsafe: family.unsafe, sources: citesOf(family) });

/** Objectives, the questions that serve them, the works behind the questions, and who reviewed the module; in the order of the course. */
export const evidenceMap = (written: readonly Written[]): readonly MappedModule[] =>
  CURRICULUM.flatMap(({ code }) => {
    const found = written.find(({ data }) => data.code === code);
    if (found === undefined) return [];
    const { title, review, objectives } = found.data;
    const serving = (id: string): readonly MappedFamily[] => families.filter((family) => family.objectives.includes(id)).map(mapped);
    return [{ code, title, slug: found.id, review, objectives: objectives.map(({ id, text }) => ({ id, text, families: serving(id) })) }];
  });
