import { families } from "../bank/index.ts";
import { isModuleStep, type ModuleStep, PATHS } from "../facts/paths.ts";
import { studyPathNumber } from "../facts/study-paths.ts";
import type { CertificatePathFacts, PathPart } from "../islands/certificate-path.ts";
import { familyTitles } from "./family-titles.ts";
import type { AskedSection } from "./sections-asked.ts";

type Places = Readonly<Record<string, readonly AskedSection[]>>;

const partOf = ({ module, families: named }: ModuleStep, places: Places, titles: Readonly<Record<string, string>>): PathPart => {
  if (named === undefined) return { module, questions: null, sections: [] };
  const questions = named.flatMap((id) => families.filter((family) => family.id === id)).map(({ id, code }) => ({ id, code, title: titles[id] ?? id }));
  const sections = (places[module] ?? []).filter((section) => section.families.some((id) => named.includes(id))).map(({ slug, text }) => ({ slug, text }));
  return { module, questions, sections };
};

/** Paths that a certificate can name, with the questions and sections of their parts; a sitting that is worked on other pages alone is left out. */
export const certificatePaths = (places: Places): readonly CertificatePathFacts[] => {
  const titles = familyTitles();
  return PATHS.flatMap(({ id, title, who, sittings }) => {
    const number = studyPathNumber(id);
    if (number === 0) return [];
    const worked = sittings.map(({ name, steps }) => ({ name, parts: steps.filter(isModuleStep).map((step) => partOf(step, places, titles)) }));
    return [{ number, title, who, sittings: worked.filter(({ parts }) => parts.length > 0) }];
  });
};
