import type { StudiedPath } from "../engine/record/study-code.ts";
import { pathVersion, type StudyPart } from "../engine/record/study-path.ts";
import { paperWordsOf } from "../facts/paper-words.ts";
import { filled } from "../facts/words.ts";

const words = paperWordsOf("en").certificate.path;

export interface PathQuestion {
  readonly id: string;
  readonly code: string;
  readonly title: string;
}

/** A part of a sitting as the page shows it; no questions where the whole module is meant. */
export interface PathPart {
  readonly module: string;
  readonly questions: readonly PathQuestion[] | null;
  /** Where its questions are asked: sections of the module's page. */
  readonly sections: readonly { readonly slug: string; readonly text: string }[];
}

/** A path that a certificate can name. */
export interface CertificatePathFacts {
  readonly number: number;
  readonly title: string;
  readonly who: string;
  readonly sittings: readonly { readonly name: string; readonly parts: readonly PathPart[] }[];
}

const partsOn = ({ sittings }: CertificatePathFacts): readonly PathPart[] => sittings.flatMap(({ parts }) => parts);

/** The parts of a path as the engine counts them. */
export const studyParts = (path: CertificatePathFacts): readonly StudyPart[] =>
  partsOn(path).map(({ module, questions }) => (questions === null ? { module } : { module, families: questions.map(({ id }) => id) }));

/** A path's name as paper and check write it. */
export const pathName = ({ title, who }: CertificatePathFacts): string => filled(words.name, { title, who: who.toLowerCase() });

/** The parts of a path in one line: whole modules together, then the others with each question by its code. */
export const partsText = (path: CertificatePathFacts): string => {
  const whole = partsOn(path).filter(({ questions }) => questions === null).map(({ module }) => module);
  const some = partsOn(path).flatMap(({ module, questions }) => (questions === null ? [] : [filled(words.somePart, { module, codes: questions.map(({ code }) => code).join(", ") })]));
  return [...(whole.length === 0 ? [] : [filled(words.wholePart, { modules: whole.join(", ") })]), ...some].join("; ");
};

/** True for a path that names single questions; one of whole modules names none. */
export const namesQuestions = (path: CertificatePathFacts): boolean => partsOn(path).some(({ questions }) => questions !== null);

/** What was reached on a path, in words. */
export const levelText = (path: CertificatePathFacts, level: StudiedPath["level"]): string => {
  const text = words.levels[level];
  return namesQuestions(path) ? filled(words.once, { level: text }) : text;
};

/** The line that a code gives for its path, by the paths that this copy has. */
export const saidPath = (studied: StudiedPath | null, paths: readonly CertificatePathFacts[]): string => {
  if (studied === null) return words.saysNone;
  const path = paths.find(({ number }) => number === studied.number);
  if (path === undefined) return words.saysUnknown;
  const name = pathName(path);
  if (pathVersion(studyParts(path)) !== studied.version) return filled(words.saysChanged, { name, level: words.levels[studied.level] });
  return filled(words.says, { name, parts: partsText(path), level: levelText(path, studied.level) });
};
