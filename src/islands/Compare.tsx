import { THIN_SPACE, withUnit } from "../engine/quantity/format.ts";
import type { Item, SumItem } from "../engine/question/item.ts";
import type { Compared } from "../engine/question/kind-rules.ts";
import { filled, type Words } from "../facts/words.ts";
import type { LinePlaces } from "../figures/line-model.ts";
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

const Pair = ({ term, text, tone = "" }: { readonly term: string; readonly text: string; readonly tone?: string }) => (
  <div><dt>{term}</dt><dd className={tone}><Big text={text} /></dd></div>
);

/** One of the three answers that are not a number, with the numbers that were right beside each other. */
const SaidInstead = ({ said, rows }: { readonly said: string; readonly rows: readonly Compared[] }) => (
  <>
    <p className="slipname">{said}</p>
    <dl className="compare">{rows.map((part) => <Pair key={part.ask} term={part.label} text={part.answer} />)}</dl>
  </>
);

/** Numbers side by side in one size. */
const CompareSum = ({ item, graded, words }: CompareProps & { readonly item: SumItem }) => {
  const { response, verdict, explanation } = graded;
  const many = item.asks.length > 1;
  const isNumber = verdict.acceptedSays === undefined;
  const said = "says" in response && verdict.verdict !== "right" ? item.says[response.says] : undefined;
  const rows = explanation.compare.filter((part) => isNumber || part.yours !== undefined);
  if (said !== undefined) return <SaidInstead said={filled(words.says.other, { said: said.toLowerCase() })} rows={isNumber ? rows : []} />;
  return (
    <>
      {rows.map((part) => (
        <dl className="compare" key={part.ask}>
          {part.yours === undefined ? null : <Pair term={many ? `${words.card.yours}, ${part.label.toLowerCase()}` : words.card.yours} text={part.yours} tone="own" />}
          {isNumber ? <Pair term={part.label} text={part.answer} /> : null}
          {isNumber && part.accepted !== part.answer ? <div><dt>{words.card.accepted}</dt><dd className="sm"><Valued text={part.accepted} /></dd></div> : null}
        </dl>
      ))}
    </>
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
export const Compare = ({ item, ...rest }: CompareProps) =>
  item.kind === "sum" ? <CompareSum item={item} {...rest} /> : <CompareWords item={item} {...rest} />;

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
