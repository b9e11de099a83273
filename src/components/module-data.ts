import { families } from "../bank/index.ts";
import { cautionText } from "../facts/cautions.ts";
import { moduleName } from "../facts/curriculum.ts";
import { SITE } from "../facts/site.ts";
import type { Review } from "./review-text.ts";

/** Licence of everything in `content`, as LICENSE says. */
const LICENCE = "https://creativecommons.org/licenses/by/4.0/";
const LANGUAGES: Readonly<Record<string, string>> = { en: "en-GB" };
const READERS: Readonly<Record<string, string>> = { resident: "resident", nurse: "theatre nurse", director: "programme director" };

export interface DescribedModule {
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  readonly needs: readonly string[];
  readonly roles: Readonly<Record<string, string | undefined>>;
  readonly objectives: readonly { readonly id: string; readonly text: string }[];
  readonly review: Review;
  readonly language: string;
}

/** What a module is, in the words of schema.org (LearningResource), for catalogues and search engines; nothing of it is run. */
export const moduleData = (matter: DescribedModule, address: string | null): Readonly<Record<string, unknown>> => {
  const { title, summary, minutes, needs, roles, objectives, review, language } = matter;
  const assessed = objectives.filter(({ id }) => families.some((family) => family.objectives.includes(id)));
  return {
    "@context": "https://schema.org",
    "@type": "LearningResource",
    name: title,
    description: `${summary} ${cautionText("C1")}`,
    ...(address === null ? {} : { url: address }),
    inLanguage: LANGUAGES[language] ?? language,
    license: LICENCE,
    isAccessibleForFree: true,
    isPartOf: { "@type": "Course", name: SITE.name, description: cautionText("C1") },
    version: SITE.edition,
    learningResourceType: "module with questions",
    educationalLevel: "professional education",
    educationalUse: "self study",
    teaches: objectives.map(({ text }) => text),
    assesses: assessed.map(({ text }) => text),
    ...(needs.length === 0 ? {} : { competencyRequired: needs.map((code) => `${code} ${moduleName(code)}`) }),
    // ISO 8601, a duration in minutes.
    timeRequired: `PT${minutes}M`,
    audience: Object.entries(roles).filter(([, weight]) => weight !== undefined).map(([role]) => ({ "@type": "EducationalAudience", educationalRole: READERS[role] ?? role })),
    ...(review.state === "reviewed" ? { dateModified: review.on } : {}),
  };
};

/** JSON for a data block in a page: no sign in it can end the block. */
export const dataBlock = (data: unknown): string => JSON.stringify(data).replaceAll("<", "\\u003c");
