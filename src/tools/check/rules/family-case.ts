import { drawItem } from "../../../engine/question/draw.ts";
import type { Family, SumFamily } from "../../../engine/question/family.ts";
import type { Draw } from "../../../engine/question/family-head.ts";
import type { Response } from "../../../engine/question/response.ts";
import type { FamilyFault } from "../family-finding.ts";
import { numbersIn } from "../number-words.ts";

const rule = "draws";
/** A case that says its answer in more than this share of draws; each wording comes in about a third of them. */
const TOO_OFTEN_TOLD = 0.1;
const MOST_SHOWN = 3;

/** A draw with the answer to it. */
export interface Answered {
  readonly seed: number;
  readonly draw: Draw;
  readonly answer: Response;
}

const isGiven = ({ draw }: Answered, number: string): boolean => Object.values(draw.givens).some((value) => value === Number(number));

/** The answer with its unit, as a learner reads it; none where a given has the same value, so that the case must say it. */
const answerShown = (family: SumFamily, one: Answered): readonly string[] => {
  const { answer } = one;
  if (answer.kind !== "sum" || "says" in answer) return [];
  const texts = "text" in answer ? [answer.text] : family.asks.map(({ id }) => answer.texts[id] ?? "");
  return texts.flatMap((text, index) => (text === "" || isGiven(one, text) ? [] : [`${text} ${family.asks[index]?.unit}`]));
};

const sentencesOf = (family: Family, seed: number): readonly string[] => drawItem(family, { seed }).stem;

/** Numbers with units of a case, as they stand and as plain decimals. */
const shownIn = (sentences: readonly string[]): readonly { readonly written: string; readonly plain: readonly string[] }[] =>
  sentences.flatMap((sentence) => numbersIn(sentence).map(({ start, end, numbers, unit }) => ({ written: sentence.slice(start, end), plain: numbers.map((number) => `${number} ${unit}`) })));

/** A case that says its own answer: now and then a number of the story meets it, and more often somebody wrote it there. */
const telling = (family: SumFamily, draws: readonly Answered[]): readonly FamilyFault[] => {
  const told = draws.filter((one) => {
    const answers = answerShown(family, one);
    return shownIn(sentencesOf(family, one.seed)).some(({ plain }) => plain.some((number) => answers.includes(number)));
  });
  const [first] = told;
  if (first === undefined || told.length <= draws.length * TOO_OFTEN_TOLD) return [];
  return [{
    near: family.id, rule,
    found: `the answer in the case, in ${told.length} of ${draws.length} draws, such as seed ${first.seed}: ${sentencesOf(family, first.seed).join(" ")}`,
    expected: "a case that says the givens, and leaves the answer to the learner",
    write: `(say) => [say.about("child"), say.of("${family.givens[0]?.key ?? "…"}")],`,
  }];
};

/** Numbers that somebody typed into a case: no given has their value. Some are names, such as a 95 % interval, so this is a note. */
const typed = (family: SumFamily, draws: readonly Answered[]): readonly FamilyFault[] => {
  const found = new Set(draws.flatMap((one) => shownIn(sentencesOf(family, one.seed)).filter(({ plain }) => !plain.some((number) => isGiven(one, number.split(" ")[0] ?? ""))).map(({ written }) => written)));
  return [...found].slice(0, MOST_SHOWN).map((written): FamilyFault => ({
    near: family.id, rule, level: "note",
    found: `"${written}" stands in the case and is no given; a published number is read from the ledger, a number of the case is drawn as a given`,
    expected: "numbers that the question reads or draws", write: `say.of("${family.givens[0]?.key ?? "…"}")`,
  }));
};

/** What a case says that it should not: its answer, or a number that was typed into it. */
export const caseFaults = (family: Family, draws: readonly Answered[], withNotes: boolean): readonly FamilyFault[] => {
  if (family.kind !== "sum") return [];
  const told = telling(family, draws);
  return told.length > 0 || !withNotes ? told : typed(family, draws);
};
