import type { Mark, Paper } from "../../engine/cohort/paper.ts";
import { type QuestionDetail, type Statement, type StatementSettings, statementsOf } from "../../engine/cohort/xapi.ts";
import { drawItem } from "../../engine/question/draw.ts";
import { answerOf } from "../../engine/question/explain.ts";
import { gradeItem } from "../../engine/question/grade.ts";
import { cautionText } from "../../facts/cautions.ts";
import { SITE } from "../../facts/site.ts";
import { siteHref } from "../site-href.ts";
import type { Families } from "./use-families.ts";

/** Title and accepted span of a question, where this site draws it by the same version and it asks for one number. */
const detailOf = ({ family: id, version, seed }: Mark, families: Families): QuestionDetail | null => {
  const family = families.get(id);
  if (family === undefined || family.version !== version) return null;
  try {
    const item = drawItem(family, { seed });
    const [span, ...more] = Object.values(gradeItem(family, item, answerOf(family, item)).accepted);
    return span === undefined || more.length > 0 ? { title: item.title } : { title: item.title, accepted: span };
  } catch {
    return null;
  }
};

/** Papers that are turned into statements at one go; between them the page answers. */
const AT_ONCE = 20;

const pause = (): Promise<void> => new Promise((done) => { setTimeout(done, 0); });

/** All papers as statements in one text; ids begin with the address under which the site is open. */
export const statementsText = async (papers: readonly Paper[], families: Families, onDone: (papers: number) => void): Promise<string> => {
  const home = new URL(siteHref("/"), window.location.href).href;
  const settings: StatementSettings = { home, platform: `${SITE.name} ${SITE.edition}`, language: "en-GB", note: `${cautionText("C12")} ${cautionText("C6")}`, detailOf: (mark) => detailOf(mark, families) };
  const statements: Statement[] = [];
  for (let from = 0; from < papers.length; from += AT_ONCE) {
    statements.push(...statementsOf(papers.slice(from, from + AT_ONCE), settings));
    onDone(Math.min(papers.length, from + AT_ONCE));
    await pause();
  }
  return `${JSON.stringify(statements, null, 1)}\n`;
};
