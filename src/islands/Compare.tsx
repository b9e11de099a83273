import type { ReactNode } from "react";
import { THIN_SPACE, withUnit } from "../engine/quantity/format.ts";
import type { Item, SumItem } from "../engine/question/item.ts";
import type { Compared } from "../engine/question/kind-rules.ts";
import type { VerdictCode } from "../engine/question/verdict.ts";
import { filled, type Words } from "../facts/words.ts";
import type { LinePlaces } from "../figures/line-model.ts";
import { Glyph } from "./Glyph.tsx";
import type { Graded } from "./grading.ts";
import { Valued } from "./Valued.tsx";

interface CompareProps {
  readonly item: Item;
  readonly graded: Graded;
  readonly words: Words;
}

/** A big value with its unit set smaller. */
const Big = ({ text }: { readonly text: string }) => {
  const [number, unit] = text.split(THIN_SPACE);
  return <span className="v">{number}{unit === undefined ? null : <span className="u">{THIN_SPACE}{unit}</span>}</span>;
};

const Pair = ({ term, text, tone = "", glyph }: { readonly term: string; readonly text: string; readonly tone?: string; readonly glyph?: ReactNode }) => (
  <div><dt>{term}</dt><dd className={tone}>{glyph}<Big text={text} /></dd></div>
);

/** How one part of several went, as the shape of its verdict and in words. */
const PartMark = ({ verdict, words }: { readonly verdict: VerdictCode; readonly words: Words }) => (
  <><Glyph id={`v-${verdict}`} /><span className="vh">{verdict === "safe-side" ? words.verdicts.off : words.verdicts[verdict]}: </span></>
);

/** One of the three answers that are not a number, with the numbers that were right beside each other. */
const SaidInstead = ({ said, rows }: { readonly said: string; readonly rows: readonly Compared[] }) => (
  <>
    <p className="slipname">{said}</p>
    <dl className="compare">{rows.map((part) => <Pair key={part.ask} term={part.label} text={part.answer} />)}</dl>
  </>
);

/** What was typed for one part; of several, with its own mark and label. */
const Yours = ({ part, code, words }: { readonly part: Compared; readonly code: VerdictCode | null; readonly words: Words }) => {
  if (part.yours === undefined) return null;
  if (code === null) return <Pair term={words.card.yours} text={part.yours} tone="own" />;
  return <Pair term={`${words.card.yours}, ${part.label.toLowerCase()}`} text={part.yours} tone="own" glyph={<PartMark verdict={code} words={words} />} />;
};

/** Numbers side by side in one size. */
const CompareSum = ({ item, graded, words }: CompareProps & { readonly item: SumItem }) => {
  const { response, verdict, explanation } = graded;
  const many = item.asks.length > 1;
  const isNumber = verdict.acceptedSays === undefined;
  const said = "says" in response && verdict.verdict !== "right" ? item.says[response.says] : undefined;
  const codeOf = (ask: string): VerdictCode => verdict.parts.find((part) => part.ask === ask)?.verdict ?? verdict.verdict;
  const rows = explanation.compare.filter((part) => isNumber || part.yours !== undefined);
  if (said !== undefined) return <SaidInstead said={filled(words.says.other, { said: said.toLowerCase() })} rows={isNumber ? rows : []} />;
  return (
    <>
      {rows.map((part) => (
        <dl className={many ? "compare many" : "compare"} key={part.ask}>
          <Yours part={part} code={many ? codeOf(part.ask) : null} words={words} />
          {isNumber ? <Pair term={part.label} text={part.answer} /> : null}
          {isNumber && part.accepted !== part.answer ? <div><dt>{words.card.accepted}</dt><dd className="sm"><Valued text={part.accepted} /></dd></div> : null}
        </dl>
      ))}
    </>
  );
};

/** Several things under a heading: numbered where their order is the answer. */
const Lines = ({ term, lines, isOrder, isOwn }: { readonly term: string; readonly lines: readonly string[]; readonly isOrder: boolean; readonly isOwn: boolean }) => {
  const rows = lines.map((line) => <li key={line}>{line}</li>);
  return <div className={isOwn ? "own" : undefined}><dt>{term}</dt><dd>{isOrder ? <ol>{rows}</ol> : <ul>{rows}</ul>}</dd></div>;
};

/** An order or a tray: what was answered beside what is right, line by line. */
const CompareLines = ({ item, graded, words, part }: CompareProps & { readonly part: Compared }) => {
  const { yours, answer = [] } = part.lines ?? {};
  const isOrder = item.kind === "order";
  const isSame = graded.verdict.verdict === "right";
  return (
    <dl className="compare-lines">
      {yours === undefined ? null : <Lines term={isOrder ? words.parts.orderLabel : words.parts.yourPick} lines={yours} isOrder={isOrder} isOwn={!isSame} />}
      {isSame ? null : <Lines term={isOrder ? words.parts.orderAnswer : words.parts.right} lines={answer} isOrder={isOrder} isOwn={false} />}
    </dl>
  );
};

/** Parts of an answer that are words: yours and what is right, one under the other. */
const CompareWords = ({ graded, words }: CompareProps) => (
  <dl className="compare-words">
    {graded.explanation.compare.map((part) => (
      <div key={part.ask}>
        {graded.explanation.compare.length > 1 ? <dt>{part.label}</dt> : null}
        {part.yours === undefined || part.yours === part.answer ? null : <dd className="own"><b>{words.parts.yourPick}:</b> {part.yours}</dd>}
        {graded.verdict.verdict === "right" && part.yours !== part.answer ? null : <dd><b>{words.parts.right}:</b> {part.answer}</dd>}
      </div>
    ))}
  </dl>
);

/** What was answered, what the answer is, and what is accepted. */
export const Compare = ({ item, ...rest }: CompareProps) => {
  if (item.kind === "sum") return <CompareSum item={item} {...rest} />;
  const [part] = rest.graded.explanation.compare;
  return part?.lines === undefined ? <CompareWords item={item} {...rest} /> : <CompareLines item={item} part={part} {...rest} />;
};

/** Where no depth is left: what the line needs, what it has, and what is missing. */
export const Shortfall = ({ places, words }: { readonly places: LinePlaces; readonly words: Words }) => {
  const { leastMm = 0, greatestMm = 0 } = places;
  const mm = (value: number): string => withUnit(value.toFixed(1), "mm");
  return (
    <dl className="compare">
      <Pair term={words.card.needs} text={mm(leastMm)} />
      <Pair term={words.card.has} text={mm(greatestMm)} />
      <Pair term={words.card.missing} text={mm(leastMm - greatestMm)} tone="stop" />
    </dl>
  );
};
