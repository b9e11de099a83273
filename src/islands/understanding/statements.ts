import type { Mark, Paper } from "../../engine/cohort/paper.ts";
import { type QuestionDetail, statementsOf } from "../../engine/cohort/xapi.ts";
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

/** All papers as statements in one text; ids begin with the address under which the site is open. */
export const statementsText = (papers: readonly Paper[], families: Families): string => {
  const home = new URL(siteHref("/"), window.location.href).href;
  const statements = statementsOf(papers, { home, platform: `${SITE.name} ${SITE.edition}`, language: "en-GB", note: `${cautionText("C12")} ${cautionText("C6")}`, detailOf: (mark) => detailOf(mark, families) });
  return `${JSON.stringify(statements, null, 1)}\n`;
};
