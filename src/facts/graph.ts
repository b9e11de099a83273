import type { EdgeSpec } from "../engine/question/family.ts";

/** A step graph as an author writes it: what must stand before what, why, whose rule that is, and whether breaking it can hurt somebody. */
export interface GraphData {
  readonly graph: string;
  readonly title: string;
  readonly cards: readonly string[];
  readonly edges: readonly {
    readonly before: string;
    readonly after: string;
    readonly reason: string;
    readonly whose: string;
    readonly critical?: boolean;
  }[];
}

/** The edges of a graph as a family reads them, in the order of the file. */
export const edgesOf = ({ edges }: GraphData): readonly EdgeSpec[] =>
  edges.map(({ before, after, reason, whose, critical }) => ({ before, after, reason, whose, ...(critical === true ? { critical } : {}) }));
