import { requireShares } from "../evidence/share.ts";
import { canonicalJson } from "../record/canonical.ts";
import { nameUuid, URL_NAMESPACE } from "../record/name-uuid.ts";
import { accountOf } from "./account.ts";
import { firstMarks, isRight, isUnsafe } from "./first-marks.ts";
import type { Mark, Paper } from "./paper.ts";

/** Statements of the Experience API 1.0.3 (part two, 2.4), as a file: nothing is sent, and their shape holds for 2.0 too. */

/** What a statement may say of a question beyond its mark. */
export interface QuestionDetail {
  readonly title: string;
  /** Span that was right, as plain decimal text; absent where the answer is not one number. */
  readonly accepted?: { readonly from: string; readonly to: string };
}

export interface StatementSettings {
  /** Address of the site, with a stroke at its end; ids of activities begin with it. */
  readonly home: string;
  readonly platform: string;
  readonly language: string;
  /** Sentence that goes with every completed list. */
  readonly note: string;
  readonly detailOf: (mark: Mark) => QuestionDetail | null;
}

export type Statement = Readonly<Record<string, unknown>> & { readonly id: string };

const VERB = "http://adlnet.gov/expapi/verbs/";
const KIND = "http://adlnet.gov/expapi/activities/";
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,3})?Z$/;
const HOME = /^(https?|file):\/\/\S*\/$/;

const verb = (name: string) => ({ id: `${VERB}${name}`, display: { en: name } });

const pathOf = (...parts: readonly (string | number)[]): string => parts.map((part) => encodeURIComponent(String(part).toWellFormed())).join("/");

const activity = (id: string, name: string, definition: { readonly type: string }) => ({ objectType: "Activity", id, definition: { name: { en: name }, ...definition, type: `${KIND}${definition.type}` } });

const listOf = ({ list }: Paper, { home }: StatementSettings) => activity(`${home}list/${pathOf(list)}`, list, { type: "assessment" });

/** The id is made of all that the statement says: the same file sent twice is one, and a corrected mark is another. */
const withId = (statement: object): Statement => ({ id: nameUuid(URL_NAMESPACE, canonicalJson(statement)), ...statement });

const extension = (home: string, values: Readonly<Record<string, string | number | boolean | null>>): object =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null).map(([key, value]) => [`${home}xapi/${key}`, value]));

/** What all statements of a paper share. */
const commonTo = (paper: Paper, { home, platform, language }: StatementSettings) => ({
  actor: { objectType: "Agent", account: { homePage: home, name: accountOf(paper.list, paper.learner) } },
  ...(MOMENT.test(paper.handedInAt) ? { timestamp: paper.handedInAt } : {}),
  registration: nameUuid(URL_NAMESPACE, canonicalJson(["registration", home, paper.list, paper.learner, paper.attempt])),
  platform,
  language,
});

const interaction = (detail: QuestionDetail | null): object => {
  if (detail?.accepted === undefined) return { interactionType: "other" };
  return { interactionType: "numeric", correctResponsesPattern: [`${detail.accepted.from}[:]${detail.accepted.to}`] };
};

type Common = ReturnType<typeof commonTo>;

const answered = (paper: Paper, mark: Mark, { settings, common }: { readonly settings: StatementSettings; readonly common: Common }): Statement => {
  const { home, detailOf } = settings;
  const { actor, timestamp, registration, platform, language } = common;
  const detail = detailOf(mark);
  requireShares({ score: mark.score });
  return withId({
    actor,
    verb: verb("answered"),
    object: activity(`${home}xapi/question/${pathOf(mark.family, mark.version, mark.seed)}`, detail?.title ?? mark.family, { type: "cmi.interaction", ...interaction(detail) }),
    result: { success: isRight(mark), completion: true, score: { scaled: mark.score }, extensions: extension(home, { verdict: mark.verdict, slip: mark.slip }) },
    context: {
      registration, platform, language,
      contextActivities: { parent: [listOf(paper, settings)], grouping: [activity(`${home}xapi/objective/${pathOf(mark.objective)}`, mark.objective, { type: "objective" })] },
      extensions: extension(home, { attempt: paper.attempt, slot: mark.slot, try: mark.try, module: mark.module, "unsafe-side": isUnsafe(mark) }),
    },
    ...(timestamp === undefined ? {} : { timestamp }),
  });
};

/** That a list was worked through: never that it was passed, since nobody stood beside it. */
const completed = (paper: Paper, settings: StatementSettings, common: Common): Statement => {
  const { home, note } = settings;
  const { actor, timestamp, registration, platform, language } = common;
  const marks = firstMarks(paper);
  return withId({
    actor,
    verb: verb("completed"),
    object: listOf(paper, settings),
    result: { completion: true, extensions: extension(home, { answered: marks.length, right: marks.filter(isRight).length, "unsafe-side": marks.filter(isUnsafe).length }) },
    context: { registration, platform, language, extensions: extension(home, { attempt: paper.attempt, note }) },
    ...(timestamp === undefined ? {} : { timestamp }),
  });
};

/** All statements of all papers: each answer, and each list that was worked through. */
export const statementsOf = (papers: readonly Paper[], settings: StatementSettings): readonly Statement[] => {
  if (!HOME.test(settings.home)) throw new RangeError(`home must be an address that ends in a stroke, got ${settings.home}`);
  return papers.flatMap((paper) => {
    const common = commonTo(paper, settings);
    const answers = paper.marks.filter(({ verdict }) => verdict !== "not-recognised");
    return [...answers.map((mark) => answered(paper, mark, { settings, common })), completed(paper, settings, common)];
  });
};
