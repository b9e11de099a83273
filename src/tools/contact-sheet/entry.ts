import { answerTo, draw, explain, grade, slipsOf } from "../../bank/index.ts";
import { asWritten, withUnit } from "../../engine/quantity/format.ts";
import type { Compared } from "../../engine/question/kind-rules.ts";
import type { Item, SumItem } from "../../engine/question/item.ts";
import type { Response, SumResponse } from "../../engine/question/response.ts";
import { cautionText } from "../../facts/cautions.ts";
import { shortCite, sourceNamed } from "../../facts/sources.ts";
import { figureOf, type SheetFigure } from "./figure-of.ts";
import { type Before, beforeTheLearner } from "./before.ts";

/** A name and what stands behind it. */
export interface Row {
  readonly label: string;
  readonly text: string;
}

export interface AnswerRow extends Row {
  /** What would be taken as right; absent where only the answer itself would. */
  readonly accepted?: string;
}

export interface SlipRow {
  readonly id: string;
  readonly name: string;
  readonly gives: readonly Row[];
  readonly because: readonly string[];
  readonly verdict: string;
  readonly isUnsafe: boolean;
}

/** One drawn variant with all that a second reader has to judge, as text. */
export interface SheetEntry {
  readonly seed: string;
  readonly stem: readonly string[];
  readonly givens: readonly (Row & { readonly from: string })[];
  readonly question: string;
  readonly before: readonly Before[];
  readonly figure: SheetFigure | null;
  readonly answer: readonly AnswerRow[];
  readonly slips: readonly SlipRow[];
  readonly right: readonly string[];
  readonly off: readonly string[];
  readonly inverse: readonly string[];
  readonly working: readonly string[];
  readonly cautions: readonly Row[];
  readonly sources: readonly string[];
}

const ORIGINS = { study: "published", local: "local", case: "the case's own" } as const;

/** A sum's response by its asks, typed as asked, with the unit of each. */
const sumRows = (item: SumItem, response: SumResponse): readonly Row[] => {
  const [first] = item.asks;
  if ("says" in response) return [{ label: "In words", text: item.says[response.says] }];
  const typed: Readonly<Record<string, string>> = "texts" in response ? response.texts : { [first?.id ?? ""]: response.text };
  return item.asks.map(({ id, label, unit }) => ({ label, text: withUnit(asWritten(typed[id] ?? "", unit), unit) }));
};

const partText = ({ yours, answer }: Compared): string => yours ?? answer;

/** What a response says, part by part, as the page would print it. */
const rowsOf = (item: Item, response: Response): readonly Row[] =>
  item.kind === "sum" && response.kind === "sum" ? sumRows(item, response) : explain(item, response).compare.map((part, _, all) => ({ label: all.length === 1 ? "Whole answer" : part.label, text: partText(part) }));

const answerRows = (item: Item, right: Response): readonly AnswerRow[] => {
  const { compare } = explain(item, right);
  return rowsOf(item, right).map((row, index) => {
    const accepted = item.kind === "sum" || item.kind === "chain" ? compare[index]?.accepted : undefined;
    return accepted === undefined || accepted === "" || accepted === row.text ? row : { ...row, accepted };
  });
};

const slipRows = (item: Item): readonly SlipRow[] =>
  slipsOf(item).map(({ id, response, unsafe }) => {
    const { slipName, happened } = explain(item, response);
    return { id, name: slipName ?? id, gives: rowsOf(item, response), because: happened, verdict: grade(item, response).verdict, isUnsafe: unsafe };
  });

/** A value that no slip gives, so that the sentence for an unnamed error is read too. */
const strayOf = (item: Item): Response | null => {
  if (item.kind !== "sum") return null;
  const [first] = item.asks;
  return item.asks.length === 1 && first ? { kind: "sum", text: "3.7" } : { kind: "sum", texts: Object.fromEntries(item.asks.map(({ id }) => [id, "3.7"])) };
};

const strayText = (item: Item): Pick<SheetEntry, "off" | "inverse"> => {
  const stray = strayOf(item);
  if (stray === null || grade(item, stray).slip !== undefined || grade(item, stray).verdict === "right") return { off: [], inverse: [] };
  const { happened, inverse } = explain(item, stray);
  return { off: happened, inverse };
};

/** Draws one variant and everything that is said about it. */
export const sheetEntry = (familyId: string, seed: number | string): SheetEntry => {
  const item = draw(familyId, seed);
  const right = answerTo(item);
  const told = explain(item, right);
  return {
    seed: item.seed,
    stem: item.stem,
    givens: item.givens.map(({ label, text, unit, from }) => ({ label, text: withUnit(asWritten(text, unit), unit), from: ORIGINS[from] })),
    question: item.question,
    before: beforeTheLearner(item),
    figure: figureOf(item, right),
    answer: answerRows(item, right),
    slips: slipRows(item),
    right: told.happened,
    ...strayText(item),
    working: told.working,
    cautions: item.cautions.map((id) => ({ label: id, text: cautionText(id) })),
    sources: item.sources.map(({ source, entry }) => `${shortCite(sourceNamed(source))} (${entry})`),
  };
};
