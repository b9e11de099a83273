import { type Ref, useMemo } from "react";
import type { Item } from "../engine/question/item.ts";
import { cautionText } from "../facts/cautions.ts";
import { filled, type Words } from "../facts/words.ts";
import { type LinePlaces, placesOn } from "../figures/line-model.ts";
import { lineOfItem } from "../figures/line-of-item.ts";
import type { Own } from "../figures/pictures/picture.ts";
import { BrokenRules } from "./BrokenRules.tsx";
import { Compare, Shortfall } from "./Compare.tsx";
import { Glyph } from "./Glyph.tsx";
import type { Graded } from "./grading.ts";
import { ItemPicture, usePicture } from "./ItemPicture.tsx";
import { Panels } from "./Panels.tsx";
import { Report } from "./Report.tsx";
import { Stem } from "./Stem.tsx";
import { Valued } from "./Valued.tsx";

interface AnsweredProps {
  readonly item: Item;
  readonly graded: Graded;
  readonly words: Words;
  readonly headingRef: Ref<HTMLHeadingElement>;
}

const TONES: Readonly<Record<string, string>> = { right: "act", "unsafe-side": "stop" };

const headingFor = (item: Item, { response, verdict }: Graded, words: Words): string => {
  if (verdict.verdict === "right" && "says" in response && item.kind === "sum") return filled(words.says.right, { said: item.says[response.says].toLowerCase() });
  if (verdict.verdict === "safe-side" && !item.unsafe) return words.verdicts.off;
  return words.verdicts[verdict.verdict];
};

/** What the learner answered, for the picture. */
const useOwn = ({ response, verdict }: Graded): Own =>
  useMemo(() => ({ response, values: Object.fromEntries(verdict.parts.flatMap(({ ask, value }) => (value === undefined ? [] : [[ask, Number(value)]]))) }), [response, verdict]);

/** Where everything stands on the line of a question about one needle; null for a question about something else. */
const usePlaces = (item: Item): LinePlaces | null =>
  useMemo(() => {
    const model = lineOfItem(item, true);
    return model ? placesOn(model) : null;
  }, [item]);

/** Kinds whose parts are right or wrong one by one, so that their number says something. */
const COUNTED: ReadonlySet<string> = new Set(["sum", "name", "count", "mark", "chain"]);

/** How many parts of a wrong answer were right; nothing where that would not be a whole number of parts. */
const partlyText = (item: Item, { verdict, explanation }: Graded, words: Words): string | null => {
  const of = explanation.compare.length;
  const right = Math.round(verdict.score * of * 1000) / 1000;
  if (!COUNTED.has(item.kind) || verdict.verdict === "right" || right === 0 || !Number.isInteger(right)) return null;
  return filled(words.parts.partly, { right: String(right), of: String(of) });
};

/** The page after an answer: shape and verdict first, then numbers, slip, figure, three panels, the question again. */
export const Answered = ({ item, graded, words, headingRef }: AnsweredProps) => {
  const { verdict, explanation } = graded;
  const places = usePlaces(item);
  const picture = usePicture(item, useOwn(graded));
  const partly = partlyText(item, graded, words);
  return (
    <>
      <h3 className={`verdict ${TONES[verdict.verdict] ?? "near"}`} tabIndex={-1} ref={headingRef}><Glyph id={`v-${verdict.verdict}`} />{headingFor(item, graded, words)}</h3>
      {partly === null ? null : <p className="partly">{partly}</p>}
      <BrokenRules broken={explanation.broken} words={words} />
      <Compare item={item} graded={graded} words={words} />
      {places?.isEmpty ? <Shortfall places={places} words={words} /> : null}
      {explanation.slipName === undefined ? null : <p className="slipname"><b>{filled(words.card.slip, { name: explanation.slipName })}</b></p>}
      {verdict.verdict === "unsafe-side" ? <p className="caution stop" data-caution="C10"><span className="id">C10</span> {cautionText("C10")}</p> : null}
      {picture ? <ItemPicture picture={picture} words={words} /> : null}
      <Panels explanation={explanation} verdict={verdict} words={words} />
      {picture ? <details className="more"><summary>{words.card.figureWords}</summary><p><Valued text={picture.text} /></p></details> : null}
      <details className="more"><summary>{words.card.working}</summary><ul className="working">{explanation.working.map((text) => <li key={text}><Valued text={text} /></li>)}</ul></details>
      <details className="more"><summary>{words.card.stemAgain}</summary><div><Stem item={item} /><p className="question">{item.question}</p></div></details>
      <Report item={item} graded={graded} words={words} />
    </>
  );
};
