import type { FamilyEntry } from "../../bank/index.ts";
import { element, escaped } from "../../figures/markup.ts";
import type { AnswerRow, Row, SheetEntry, SlipRow } from "./entry.ts";
import { givens, list, paragraphs, part, tag } from "./parts.ts";

/** What the page needs besides the variants: rules for the print and the patterns that figures point at. */
export interface PageParts {
  readonly title: string;
  readonly style: string;
  readonly patterns: string;
}

const figure = (entry: SheetEntry): string =>
  entry.figure === null ? "" : element("figure", {}, element("div", { role: "img", "aria-label": entry.figure.text }, entry.figure.markup) + tag("figcaption", entry.figure.text));

/** A value stands out; a row of cards or things is set smaller, or it would drown the page. */
const LONGEST_VALUE = 60;
const kindOf = (text: string): string => (text.length > LONGEST_VALUE ? "long" : "v");

const answerRow = ({ label, text, accepted }: AnswerRow): string =>
  element("div", {}, tag("dt", label) + element("dd", {}, tag("span", text, kindOf(text)) + (accepted === undefined ? "" : tag("span", `accepted: ${accepted}`, "accepted"))));

const rowText = (rows: readonly Row[]): string => rows.map(({ label, text }) => (rows.length > 1 ? `${label}: ${text}` : text)).join("; ");

const slipRow = ({ name, gives, because, isUnsafe }: SlipRow): string =>
  element("tr", {}, tag("th", name) + element("td", { class: kindOf(rowText(gives)) }, escaped(rowText(gives))) + tag("td", isUnsafe ? "UNSAFE SIDE" : "–", isUnsafe ? "stop" : undefined) + element("td", {}, paragraphs(because)));

const slips = (entry: SheetEntry): string =>
  element("table", {}, element("thead", {}, element("tr", {}, ["Slip", "What it gives", "Side", "What the page says"].map((head) => tag("th", head)).join(""))) + element("tbody", {}, entry.slips.map(slipRow).join("")));

/** Where the second reader signs. */
const READER = '<div class="reader"><p class="box"><span>Initials</span></p><p class="line"><span>Remark</span></p></div>';

const variant = (entry: SheetEntry, number: number): string =>
  element("article", {}, [
    element("h2", {}, `${tag("span", String(number), "n")} ${tag("span", `seed ${entry.seed}`, "seed")}`),
    paragraphs(entry.stem),
    givens(entry),
    ...entry.before.map(({ label, items }) => part(label, list(items))),
    tag("p", entry.question, "question"),
    figure(entry),
    part("Answer", element("dl", { class: "answer" }, entry.answer.map(answerRow).join("")) + paragraphs(entry.right)),
    part("Working", list(entry.working)),
    part("Slips", slips(entry)),
    part("Where no slip is named", paragraphs([...entry.off, ...entry.inverse])),
    part("Cautions", entry.cautions.map(({ label, text }) => element("p", { class: "caution" }, `${tag("b", label)} ${escaped(text)}`)).join("")),
    part("Sources", entry.sources.length === 0 ? tag("p", "None: every number is the case's own or local.") : list(entry.sources)),
    READER,
  ].join(""));

const facts = ({ code, id, module, version, kind, unsafe, objectives }: FamilyEntry, count: number): string =>
  `${code} ${id} · ${module} · version ${version} · ${kind} · ${unsafe ? "has an unsafe side" : "no unsafe side"} · ${objectives.join(", ")} · ${count} variants`;

const LEAD = "For a second reader: read each variant as the learner would, work it without looking, then read the slips. Put your initials in the box where all of it holds; write on the line what does not. One variant that is absurd or ambiguous sends the family back.";

/** One printable page with every variant, complete in itself. */
export const sheetPage = (family: FamilyEntry, entries: readonly SheetEntry[], { title, style, patterns }: PageParts): string =>
  `<!doctype html>
<html lang="en-GB">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(`${family.code} ${title}: contact sheet`)}</title><style>${style}</style></head>
<body>
${patterns}
<header>${tag("h1", title)}${tag("p", facts(family, entries.length), "facts")}${tag("p", LEAD)}</header>
<main>
${entries.map((entry, index) => variant(entry, index + 1)).join("\n")}
</main>
</body>
</html>
`;
