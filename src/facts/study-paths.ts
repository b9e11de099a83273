import held from "../../content/study-paths.json" with { type: "json" };

/**
 * Paths that a certificate can name: those that hold every core module of their role. The code of a certificate holds a
 * path's place here, so the list only grows at its end, and a path that is given up keeps its place.
 */
export const STUDY_PATHS: readonly string[] = held;

/** The number of a path in codes, from 1; 0 for a path that no certificate names. */
export const studyPathNumber = (id: string): number => STUDY_PATHS.indexOf(id) + 1;
