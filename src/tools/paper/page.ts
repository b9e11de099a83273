import type { Sheet } from "../../engine/record/sheet-number.ts";
import { cautionText } from "../../facts/cautions.ts";
import { element, escaped } from "../../figures/markup.ts";
import type { Picture } from "../../figures/pictures/picture.ts";
import type { SheetEntry } from "../contact-sheet/entry.ts";
import { givens, list, paragraphs, part, tag } from "../contact-sheet/parts.ts";

/** One question of the sheet: all that is printed of it, in front and on the back. */
export interface PaperQuestion {
  readonly title: string;
  readonly entry: SheetEntry;
  /** The picture that stands before the answer; null for a question without one. */
  readonly picture: Picture | null;
}

const LINES = '<p class="write"></p><p class="write"></p>';
const ALWAYS = ["C1", "C2", "C12"];

const figure = ({ picture }: PaperQuestion): string =>
  picture === null ? "" : element("figure", {}, element("div", { role: "img", "aria-label": picture.text }, picture.markup) + tag("figcaption", picture.text));

const front = (question: PaperQuestion, index: number): string => {
  const { title, entry } = question;
  return element("article", {}, [
    element("h2", {}, `${tag("span", String(index + 1), "n")} ${tag("span", title)}`),
    paragraphs(entry.stem),
    givens(entry),
    ...entry.before.map(({ label, items }) => part(label, list(items))),
    figure(question),
    tag("p", entry.question, "question"),
    LINES,
  ].join(""));
};

const back = ({ title, entry }: PaperQuestion, index: number): string => {
  const answers = entry.answer.map(({ label, text, accepted }) => element("div", {}, tag("dt", label) + element("dd", {}, tag("span", text, "v") + (accepted === undefined ? "" : tag("span", `accepted: ${accepted}`, "accepted"))))).join("");
  return element("section", { class: "back" }, [element("h2", {}, `${tag("span", String(index + 1), "n")} ${tag("span", title)}`), element("dl", { class: "answer" }, answers), list(entry.working)].join(""));
};

const caution = (id: string): string => element("p", { class: "caution" }, `${tag("b", id)} ${escaped(cautionText(id))}`);

const cautionsOf = (questions: readonly PaperQuestion[]): string => {
  const own = questions.flatMap(({ entry }) => entry.cautions.map(({ label }) => label)).filter((id) => id !== "C8" && id !== "C10");
  return [...new Set([...ALWAYS, ...own])].map(caution).join("");
};

export interface PaperParts {
  readonly style: string;
  readonly patterns: string;
}

/** A sheet on paper: the questions with room to write, and on a page of their own the answers with their working. */
export const paperPage = (sheet: Sheet, questions: readonly PaperQuestion[], { style, patterns }: PaperParts): string =>
  `<!doctype html>
<html lang="en-GB">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(`Sheet ${sheet.number}`)}</title><style>${style}</style></head>
<body>
${patterns}
<header>${tag("h1", `Sheet ${sheet.number}`)}${tag("p", `${questions.length} questions. The same number typed into the workbook gives the same questions, to be answered and graded there.`, "facts")}</header>
<main>
${questions.map(front).join("\n")}
<section class="cautions">${cautionsOf(questions)}</section>
<section class="answers"><h1>${escaped(`Answers to sheet ${sheet.number}`)}</h1>
${questions.map(back).join("\n")}
</section>
</main>
</body>
</html>
`;
