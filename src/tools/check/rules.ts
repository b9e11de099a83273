import type { CourseRule, FileRule } from "./rule.ts";
import { adultValues } from "./rules/adult-values.ts";
import { bannedInWords, bannedWords } from "./rules/banned-words.ts";
import { bareNumber } from "./rules/bare-number.ts";
import { frontMatter } from "./rules/front-matter.ts";
import { headingLevels } from "./rules/heading-levels.ts";
import { knownNames } from "./rules/known-names.ts";
import { knownTags } from "./rules/known-tags.ts";
import { ledgerDerived } from "./rules/ledger-derived.ts";
import { ledgerMemory } from "./rules/ledger-memory.ts";
import { ledgerSchema } from "./rules/ledger-schema.ts";
import { ledgerSources } from "./rules/ledger-sources.ts";
import { ledgerUnits } from "./rules/ledger-units.ts";
import { missingCaution } from "./rules/missing-caution.ts";
import { neededModules } from "./rules/needed-modules.ts";
import { noCode } from "./rules/no-code.ts";
import { numberInMatter } from "./rules/number-in-matter.ts";
import { objectiveIds } from "./rules/objective-ids.ts";
import { familyAdult } from "./rules/family-adult.ts";
import { pins } from "./rules/pins.ts";
import { population } from "./rules/population.ts";
import { rawHtml } from "./rules/raw-html.ts";
import { sameName } from "./rules/same-name.ts";
import { servedObjectives } from "./rules/served-objectives.ts";
import { strayBrace } from "./rules/stray-brace.ts";
import { tagAttributes } from "./rules/tag-attributes.ts";
import { wordCount } from "./rules/word-count.ts";

/** Rules for one file of prose. A syntax error is found in reading and needs no rule. */
export const FILE_RULES: readonly FileRule[] = [
  (file) => file.syntax,
  frontMatter,
  objectiveIds,
  numberInMatter,
  missingCaution,
  headingLevels,
  knownTags,
  rawHtml,
  tagAttributes,
  knownNames,
  population,
  noCode,
  strayBrace,
  bareNumber,
  bannedWords,
  adultValues,
  wordCount,
];

/** Rules for everything together. */
export const COURSE_RULES: readonly CourseRule[] = [
  neededModules,
  sameName,
  servedObjectives,
  bannedInWords,
  ledgerSchema,
  ledgerSources,
  ledgerUnits,
  ledgerDerived,
  ledgerMemory,
  pins,
  familyAdult,
];
