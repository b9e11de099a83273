import type { CourseRule, FileRule } from "./rule.ts";
import { adultValues } from "./rules/adult-values.ts";
import { bannedInWords, bannedWords } from "./rules/banned-words.ts";
import { bareNumber } from "./rules/bare-number.ts";
import { cardLength } from "./rules/card-length.ts";
import { cautionTexts } from "./rules/caution-texts.ts";
import { dataFiles } from "./rules/data-files.ts";
import { familyAdult } from "./rules/family-adult.ts";
import { familyDraws } from "./rules/family-draws.ts";
import { familyForm } from "./rules/family-form.ts";
import { familySafety } from "./rules/family-safety.ts";
import { familySources } from "./rules/family-sources.ts";
import { familyWords } from "./rules/family-words.ts";
import { formulas } from "./rules/formulas.ts";
import { frontMatter } from "./rules/front-matter.ts";
import { glossary } from "./rules/glossary.ts";
import { headingLevels } from "./rules/heading-levels.ts";
import { headings } from "./rules/headings.ts";
import { knownNames } from "./rules/known-names.ts";
import { knownTags } from "./rules/known-tags.ts";
import { layoutCaution } from "./rules/layout-caution.ts";
import { ledgerDerived } from "./rules/ledger-derived.ts";
import { ledgerEntries } from "./rules/ledger-entries.ts";
import { ledgerFormula } from "./rules/ledger-formula.ts";
import { ledgerMemory } from "./rules/ledger-memory.ts";
import { ledgerRevisions } from "./rules/ledger-revisions.ts";
import { ledgerSchema } from "./rules/ledger-schema.ts";
import { ledgerSources } from "./rules/ledger-sources.ts";
import { ledgerUnits } from "./rules/ledger-units.ts";
import { ledgerValues } from "./rules/ledger-values.ts";
import { links } from "./rules/links.ts";
import { localList } from "./rules/local-list.ts";
import { missingCaution } from "./rules/missing-caution.ts";
import { moduleCircle } from "./rules/module-circle.ts";
import { moduleName } from "./rules/module-name.ts";
import { neededModules } from "./rules/needed-modules.ts";
import { noCode } from "./rules/no-code.ts";
import { numberInMatter } from "./rules/number-in-matter.ts";
import { objectiveIds } from "./rules/objective-ids.ts";
import { pageLists } from "./rules/page-lists.ts";
import { panels } from "./rules/panels.ts";
import { presets } from "./rules/presets.ts";
import { paths } from "./rules/paths.ts";
import { pins } from "./rules/pins.ts";
import { population } from "./rules/population.ts";
import { proseMarks } from "./rules/prose-marks.ts";
import { rawHtml } from "./rules/raw-html.ts";
import { repeatedSentence } from "./rules/repeated-sentence.ts";
import { reviewDate } from "./rules/review-date.ts";
import { sameName } from "./rules/same-name.ts";
import { servedObjectives } from "./rules/served-objectives.ts";
import { sourceTwice } from "./rules/source-twice.ts";
import { stepGraphs } from "./rules/step-graphs.ts";
import { strayBrace } from "./rules/stray-brace.ts";
import { tagAttributes } from "./rules/tag-attributes.ts";
import { tagValues } from "./rules/tag-values.ts";
import { wordCount } from "./rules/word-count.ts";

/** Rules for one file of prose. A syntax error is found in reading and needs no rule. */
export const FILE_RULES: readonly FileRule[] = [
  (file) => file.syntax,
  frontMatter,
  objectiveIds,
  reviewDate,
  numberInMatter,
  missingCaution,
  layoutCaution,
  headingLevels,
  headings,
  knownTags,
  rawHtml,
  tagAttributes,
  tagValues,
  knownNames,
  links,
  formulas,
  population,
  noCode,
  strayBrace,
  bareNumber,
  bannedWords,
  proseMarks,
  adultValues,
  wordCount,
];

/** Rules for everything together. */
export const COURSE_RULES: readonly CourseRule[] = [
  neededModules,
  moduleCircle,
  moduleName,
  sameName,
  repeatedSentence,
  servedObjectives,
  bannedInWords,
  dataFiles,
  glossary,
  paths,
  pageLists,
  panels,
  presets,
  localList,
  cardLength,
  stepGraphs,
  sourceTwice,
  cautionTexts,
  ledgerSchema,
  ledgerEntries,
  ledgerValues,
  ledgerRevisions,
  ledgerSources,
  ledgerUnits,
  ledgerDerived,
  ledgerFormula,
  ledgerMemory,
  pins,
  familyAdult,
  familyForm,
  familyWords,
  familySafety,
  familySources,
  familyDraws,
];
